package trimwright.command;

import java.time.Duration;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.exchange.read.RidersFile;

/** The riders of a command, and how long a choice for them may take. */
final class RidersOptions {
  private static final String TIME = "--time-s";
  private static final double MOST_TIME = 3600;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Parameters(paramLabel = "RIDERS", description = "Riders file in YAML, or - for standard input.")
  private String file;

  @Option(
      names = TIME,
      paramLabel = "TIME",
      converter = Numbers.Decimal.class,
      defaultValue = "60",
      description =
          "How long the choice may take once the stock is looked through, 1 to 3600 s (default:"
              + " ${DEFAULT-VALUE}). What is not settled by then is said, with its bound.")
  private double time;

  /** The riders. */
  RidersFile read(Console console) {
    return FileInput.readRiders(file, console);
  }

  /** How long a choice may take. */
  Duration time() {
    if (!(time >= 1 && time <= MOST_TIME)) {
      throw new ParameterException(
          spec.commandLine(), TIME + " must be from 1 to 3600 s, was " + Numbers.text(time) + ".");
    }
    return Duration.ofMillis(Math.round(1000 * time));
  }
}
