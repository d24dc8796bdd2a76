package trimwright.command;

import java.nio.file.Files;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.AngleRange;
import trimwright.desk.SectionPolars;
import trimwright.desk.SectionStudy;
import trimwright.exchange.read.ReadSection;
import trimwright.exchange.words.RepairWords;
import trimwright.exchange.write.SectionTable;
import trimwright.exchange.write.SectionWriter;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

/** Prints what a wing section does in two-dimensional flow. */
@Command(
    name = "section",
    sortOptions = false,
    description = {
      "What a wing section alone does at each angle of attack, as if the wing had no ends.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run section naca2412",
      "  ./run section naca0012 --reynolds 300000 --finish scuffed --json",
      "",
      "What the numbers mean (all made dimensionless with the chord):",
      "  angle of attack  from the chord line to the stream, leading edge up positive",
      "  cl, cd           lift and drag",
      "  cm               moment about the quarter chord, nose up positive",
      "  cp_min           lowest pressure on the surface; the more negative, the sooner it cavitates",
      "  converged        no: the flow has let go, or the model does not reach that far"
    })
final class SectionCommand implements Callable<Integer> {
  /** Below, the measured data under the model end; above, no foil of this size. */
  private static final double LOWEST_REYNOLDS = 1e4;

  private static final double HIGHEST_REYNOLDS = 1e8;

  /** Where the polars by boundary layers begin and end. */
  private static final double LOWEST_LAYERED = 1e5;

  private static final double HIGHEST_LAYERED = 5e6;

  /** Letters and signs are let through for the 6-series, which is refused in words of its own. */
  private static final Pattern CODE =
      Pattern.compile("(?i)naca[ _-]?(\\d+(?:\\(\\d+\\)|,\\d)?(?:[-a]-?\\d+)?(?: a=.*)?)");

  /**
   * A code of the 6-series without the word in front, as sheets often print it: no file is meant.
   */
  private static final Pattern SIX_SERIES =
      Pattern.compile("(?i)6[1-7](?:\\(\\d+\\)|,\\d)?(?:-|a-?)\\d{3,4}(?: a=.*)?");

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "SHAPE",
      description =
          "A NACA code of 4 or 5 digits such as naca2412, or a coordinates file: two columns, from the"
              + " trailing edge over the upper surface to the leading edge and back below. - reads"
              + " standard input.")
  private String shape;

  @Option(
      names = "--reynolds",
      paramLabel = "NUMBER",
      converter = Numbers.Decimal.class,
      defaultValue = "600000",
      description =
          "Reynolds number on the chord, 10000 to 100000000; 600000 is a 100 mm chord at 25 km/h."
              + " Below 100000 and above 5000000 fitted sections answer (default:"
              + " ${DEFAULT-VALUE}).")
  private double reynolds;

  @Mixin private AngleOptions angles;

  @Option(
      names = "--finish",
      paramLabel = "STATE",
      defaultValue = "clean",
      converter = FinishConverter.class,
      description =
          "The surface: clean, or scuffed near the leading edge (default: ${DEFAULT-VALUE}).")
  private Finish finish;

  @Option(names = "--inviscid", description = "Leaves out friction, and so drag and stall.")
  private boolean inviscid;

  @Mixin private SectionsOption sections;

  @Mixin private FormOptions form;

  SectionCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec).check(this::requireReynolds).check(angles::range).finish();
    AngleRange range = angles.range();
    ReadSection read = section();
    SectionTable table =
        study(read.section()).table(range, reynolds).withRepairs(RepairWords.of(read));
    console.print(
        form.text(
            () -> SectionWriter.table(table),
            () -> SectionWriter.json(table),
            () -> SectionWriter.csv(table)));
    return CommandLineEntry.GOOD;
  }

  private SectionStudy study(Section section) {
    if (sections.fitted() || inviscid) {
      return SectionStudy.of(section, finish, inviscid);
    }
    PolarProgress progress = new PolarProgress(console);
    if (!(reynolds >= LOWEST_LAYERED && reynolds <= HIGHEST_LAYERED)) {
      progress.remark(
          section.name(),
          "only from Reynolds number "
              + Numbers.text(LOWEST_LAYERED)
              + " to "
              + Numbers.text(HIGHEST_LAYERED)
              + ", so that the fitted section stands in their place");
      return SectionStudy.of(section, finish, false);
    }
    SectionPolars.Found found =
        sections.polars().of(section, share -> progress.say(section.name(), share));
    if (found.section().isEmpty()) {
      progress.remark(
          section.name(),
          "none, so that the fitted section stands in their place: " + found.remark());
    } else if (!found.remark().isEmpty()) {
      progress.remark(section.name(), found.remark());
    }
    return SectionStudy.of(found.section().orElse(section), finish, false);
  }

  private void requireReynolds() {
    if (!(reynolds >= LOWEST_REYNOLDS && reynolds <= HIGHEST_REYNOLDS)) {
      throw new ParameterException(
          spec.commandLine(),
          "--reynolds must be from "
              + Numbers.text(LOWEST_REYNOLDS)
              + " to "
              + Numbers.text(HIGHEST_REYNOLDS)
              + ", was "
              + Numbers.text(reynolds)
              + ".");
    }
  }

  private ReadSection section() {
    var code = CODE.matcher(shape);
    if (code.matches()) {
      return coded(code.group(1));
    }
    boolean absent = TextInput.findPath(shape).filter(Files::exists).isEmpty();
    return absent && SIX_SERIES.matcher(shape).matches()
        ? coded(shape)
        : FileInput.readSection(shape, console);
  }

  private ReadSection coded(String digits) {
    try {
      return new ReadSection(Sections.naca("naca" + digits), false, List.of());
    } catch (IllegalArgumentException e) {
      throw new BadInput("SHAPE " + shape + ": " + e.getMessage() + ".");
    }
  }
}
