package trimwright.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.CaseStudy;
import trimwright.desk.RangeProblem;
import trimwright.desk.SpeedRange;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.write.CauseWriter;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.cause.CauseOutcome;

/** Prints how much of a ride comes from its speed and how much from the setup. */
@Command(
    name = "cause",
    sortOptions = false,
    description = {
      "Why it rides the way it does: how much comes from the speed ridden, how much from the setup.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  ./run cause my.yaml --speed-kmh 20",
      "",
      "What the numbers mean:",
      "  speed part    pitch at the speed ridden less pitch at the wished speed",
      "  set part      pitch at the wished speed less the pitch wanted (0 unless the case says"
          + " otherwise)",
      "  unexplained   pitch measured on the water less pitch computed, where the case holds a"
          + " measured_pitch_deg",
      "The parts add up exactly, in degrees (nose up positive), in foot share and in millimetres of foot"
          + " pressure (forward positive). Rule out the listed things first: they cost nothing."
    })
final class CauseCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Option(
      names = "--speed-kmh",
      paramLabel = "SPEED",
      required = true,
      converter = Numbers.Decimal.class,
      description = "The speed it is ridden at, 1 to 100 km/h through the water. Needed.")
  private double speed;

  @Mixin private SectionsOption sections;

  @Mixin private JsonOption form;

  CauseCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    double ridden = ridden();
    CaseFile caseFile = sections.of(FileInput.readCase(file, console), console);
    CaseStudy study = CaseStudy.of(caseFile);
    CauseOutcome cause = study.cause(ridden);
    Optional<SplitBands> bands = study.bands(cause);
    console.print(
        form.json()
            ? CauseWriter.json(caseFile, ridden, cause, bands)
            : CauseWriter.table(caseFile, cause, bands));
    return CommandLineEntry.GOOD;
  }

  private double ridden() {
    try {
      return SpeedRange.oneKmh(speed);
    } catch (RangeProblem problem) {
      throw RangeOptions.usageOf(spec, problem, "--speed-kmh");
    }
  }
}
