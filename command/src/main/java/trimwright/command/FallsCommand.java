package trimwright.command;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.FallsStudy;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.FallAnswer;
import trimwright.exchange.write.FallWriter;

/** Prints how a setup lets its rider fall. */
@Command(
    name = "falls",
    sortOptions = false,
    description = {
      "How a setup lets its rider fall, standing, kneeling and prone, and what its remote may be set to for first"
          + " flights.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run falls my.yaml",
      "  ./run falls my.yaml --ramp-s 1.5 --max-power-w 2000",
      "",
      "What the numbers mean:",
      "  lowest       lowest deck pitch up to the first contact or 1 s, after the weight went to the front foot"
          + " in 0.3 s and the throttle to nothing",
      "  bow          its least height above the water till then; 0 where it touched",
      "  touches      what of the board met the water first, and when",
      "  comes out    what broke the surface first, and when, after the weight went to the back foot at the"
          + " permitted power",
      "  not followed  the motion went steeper, slower or deeper than the forces are known",
      "  first flights  inside the limits of first flights, or what is not",
      "First flights go with licensed instruction; local rules and makers' limits come first. Nothing here says that"
          + " a fall does no harm."
    })
final class FallsCommand implements Callable<Integer> {
  private static final String RAMP = "--ramp-s";
  private static final String POWER = "--max-power-w";

  /** As quick and as slow as a case may say that a throttle goes [s]. */
  private static final double QUICKEST = 0.05;

  private static final double SLOWEST = 10;

  /** Caps on power that are read [W]. */
  private static final double LEAST_POWER = 1;

  private static final double MOST_POWER = 100_000;

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Option(
      names = RAMP,
      paramLabel = "TIME",
      converter = Numbers.Decimal.class,
      description =
          "Time in which the throttle goes from full to nothing or back, 0.05 to 10 s (default: the"
              + " case's, else 0.3).")
  private Double ramp;

  @Option(
      names = POWER,
      paramLabel = "POWER",
      converter = Numbers.Decimal.class,
      description =
          "Electric power that the remote permits, 1 to 100000 W (default: what the drive has).")
  private Double power;

  @Mixin private SectionsOption sections;

  @Mixin private LimitsOption limits;

  @Mixin private JsonOption form;

  FallsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec)
        .check(() -> requireWithin(RAMP, ramp, QUICKEST, SLOWEST, "s"))
        .check(() -> requireWithin(POWER, power, LEAST_POWER, MOST_POWER, "W"))
        .finish();
    CaseFile caseFile = limits.of(sections.of(FileInput.readCase(file, console), console), console);
    if (power != null && caseFile.rideCase().setup().drive().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), POWER + " caps a drive, and this case has none.");
    }
    FallAnswer answer =
        FallsStudy.find(caseFile, value(ramp), value(power), Thread.currentThread()::isInterrupted)
            .orElseThrow(() -> new CancellationException("stopped"));
    console.print(
        form.json() ? FallWriter.json(caseFile, answer) : FallWriter.table(caseFile, answer));
    return CommandLineEntry.GOOD;
  }

  private static OptionalDouble value(Double option) {
    return option == null ? OptionalDouble.empty() : OptionalDouble.of(option);
  }

  private void requireWithin(String option, Double value, double least, double most, String unit) {
    if (value != null && !(value >= least && value <= most)) {
      throw new ParameterException(
          spec.commandLine(),
          option
              + " must be from "
              + Numbers.text(least)
              + " to "
              + Numbers.text(most)
              + " "
              + unit
              + ", was "
              + Numbers.text(value)
              + ".");
    }
  }
}
