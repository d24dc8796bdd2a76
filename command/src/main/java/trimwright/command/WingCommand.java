package trimwright.command;

import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.AngleRange;
import trimwright.desk.RangeProblem;
import trimwright.desk.SpeedRange;
import trimwright.desk.WingStudy;
import trimwright.exchange.read.WingFile;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.write.WingTable;
import trimwright.exchange.write.WingWriter;
import trimwright.kernel.water.Water;

/** Prints what one wing alone does. */
@Command(
    name = "wing",
    sortOptions = false,
    description = {"What one wing alone does at each angle of attack.", ""},
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run wing wing.yaml --speed-kmh 25 --immersion-mm 450",
      "  ./run wing wing.yaml --inviscid --from-deg 0 --to-deg 4 --json",
      "",
      "The file holds the keys that a case has under front_wing, at its top:",
      "  {area_cm2: 1500, span_mm: 900, root_chord_mm: 215, tip_chord_mm: 60, section: naca2412}",
      "",
      "What the numbers mean (dimensionless with the area, the moment with area times area/span):",
      "  angle of attack  from the root's chord line to the stream, leading edge up positive",
      "  cl, cd           lift across the stream, drag along it",
      "  cm               moment about the root's quarter chord, nose up positive",
      "  cp_min           lowest pressure on any strip; the more negative, the sooner it cavitates",
      "  converged        no: at least one strip has stalled",
      "  induced drag factor  1 for the ideal flat wing in deep water; more near the surface"
    })
final class WingCommand implements Callable<Integer> {
  private static final double LEAST_IMMERSION_MM = 10;
  private static final double MOST_IMMERSION_MM = 10_000;

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "WING", description = "Wing file in YAML, or - for standard input.")
  private String file;

  @Option(
      names = "--speed-kmh",
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      defaultValue = "25",
      description = "Speed through the water, 1 to 100 km/h (default: ${DEFAULT-VALUE}).")
  private double speed;

  @Option(
      names = "--immersion-mm",
      paramLabel = "DEPTH",
      converter = Numbers.Decimal.class,
      description =
          "Depth of the root's quarter chord below the surface, 10 to 10000 mm (left out: deep).")
  private Double immersion;

  @Option(names = "--inviscid", description = "Leaves out friction, and so its drag and stall.")
  private boolean inviscid;

  @Mixin private AngleOptions angles;

  @Mixin private WaterOptions water;

  @Mixin private SectionsOption sections;

  @Mixin private FormOptions form;

  WingCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec)
        .check(this::speed)
        .check(this::depth)
        .check(angles::range)
        .check(water::check)
        .finish();
    double metresPerSecond = speed();
    OptionalDouble depth = depth();
    AngleRange range = angles.range();
    Water around = water.water();
    WingFile read = FileInput.readWing(file, console);
    WingFile wing = inviscid ? read : sections.of(read, console);
    WingTable table = WingStudy.of(wing, depth, inviscid).table(range, metresPerSecond, around);
    console.print(
        form.text(
            () -> WingWriter.table(table),
            () -> WingWriter.json(table),
            () -> WingWriter.csv(table)));
    return CommandLineEntry.GOOD;
  }

  private double speed() {
    try {
      return SpeedRange.oneKmh(speed);
    } catch (RangeProblem problem) {
      throw RangeOptions.usageOf(spec, problem, "--speed-kmh");
    }
  }

  private OptionalDouble depth() {
    if (immersion == null) {
      return OptionalDouble.empty();
    }
    if (!(immersion >= LEAST_IMMERSION_MM && immersion <= MOST_IMMERSION_MM)) {
      throw new ParameterException(
          spec.commandLine(),
          "--immersion-mm must be from "
              + Numbers.text(LEAST_IMMERSION_MM)
              + " to "
              + Numbers.text(MOST_IMMERSION_MM)
              + " mm, was "
              + Numbers.text(immersion)
              + " mm.");
    }
    return OptionalDouble.of(Unit.MILLIMETRE.toSi(immersion));
  }
}
