package trimwright.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trimwright.desk.AngleRange;

/** A range of angles of attack. */
final class AngleOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--from-deg",
      paramLabel = "DEGREES",
      converter = Numbers.Decimal.class,
      defaultValue = "-4",
      description =
          "Lowest angle of attack, -45 to 45, leading edge up positive (default:"
              + " ${DEFAULT-VALUE}).")
  private double from;

  @Option(
      names = "--to-deg",
      paramLabel = "DEGREES",
      converter = Numbers.Decimal.class,
      defaultValue = "16",
      description = "Highest angle of attack, -45 to 45 (default: ${DEFAULT-VALUE}).")
  private double to;

  @Option(
      names = "--step-deg",
      paramLabel = "DEGREES",
      converter = Numbers.Decimal.class,
      defaultValue = "1",
      description =
          "Distance from one angle to the next, above 0; at most 2000 angles (default:"
              + " ${DEFAULT-VALUE}).")
  private double step;

  /** The angles. */
  AngleRange range() {
    return RangeOptions.range(spec, "deg", from, to, step, AngleRange::degrees);
  }
}
