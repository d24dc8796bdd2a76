package trimwright.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import trimwright.desk.SpeedRange;

/** A range of speeds. */
final class SpeedOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--from-kmh",
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      defaultValue = "10",
      description = "Lowest speed through the water, 1 to 100 km/h (default: ${DEFAULT-VALUE}).")
  private double from;

  @Option(
      names = "--to-kmh",
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      defaultValue = "40",
      description = "Highest speed, 1 to 100 km/h (default: ${DEFAULT-VALUE}).")
  private double to;

  @Option(
      names = "--step-kmh",
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      defaultValue = "1",
      description =
          "Distance from one speed to the next, above 0; at most 2000 speeds (default:"
              + " ${DEFAULT-VALUE}).")
  private double step;

  /** The speeds. */
  SpeedRange range() {
    return RangeOptions.range(spec, "kmh", from, to, step, SpeedRange::kmh);
  }
}
