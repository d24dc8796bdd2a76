package trimwright.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

/** The water of a command that reads no case. */
final class WaterOptions {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--temperature-c",
      paramLabel = "DEGREES",
      converter = Numbers.Decimal.class,
      defaultValue = "15",
      description = "Water temperature, -2 to 40 degrees Celsius (default: ${DEFAULT-VALUE}).")
  private double temperatureCelsius;

  @Option(
      names = "--salinity-g-kg",
      paramLabel = "GRAMS",
      converter = Numbers.Decimal.class,
      defaultValue = "35",
      description =
          "Grams of salt in a kilogram of water, 0 to 42: 0 fresh water, 35 open sea (default:"
              + " ${DEFAULT-VALUE}).")
  private double salinityGramPerKilogram;

  /** Water temperature [K]. */
  double temperature() {
    double temperature = Unit.CELSIUS.toSi(temperatureCelsius);
    requireWithin(
        "--temperature-c",
        "°C",
        temperatureCelsius,
        Unit.CELSIUS.fromSi(WaterModel.LOWEST_TEMPERATURE),
        Unit.CELSIUS.fromSi(WaterModel.HIGHEST_TEMPERATURE));
    // An end of the range stays inside it, whatever the conversion rounds.
    return Math.min(
        Math.max(temperature, WaterModel.LOWEST_TEMPERATURE), WaterModel.HIGHEST_TEMPERATURE);
  }

  /** Salinity [kg/kg]. */
  double salinity() {
    requireWithin(
        "--salinity-g-kg",
        "g/kg",
        salinityGramPerKilogram,
        0,
        Unit.GRAM_PER_KILOGRAM.fromSi(WaterModel.HIGHEST_SALINITY));
    return Math.min(
        Unit.GRAM_PER_KILOGRAM.toSi(salinityGramPerKilogram), WaterModel.HIGHEST_SALINITY);
  }

  /**
   * Checks the options.
   *
   * @throws ParameterException if one is bad; it speaks of each bad one
   */
  void check() {
    new OptionChecks(spec).check(this::temperature).check(this::salinity).finish();
  }

  /** The water. */
  Water water() {
    check();
    return WaterModel.at(temperature(), salinity());
  }

  private void requireWithin(
      String option, String unit, double value, double lowest, double highest) {
    long low = Math.round(lowest);
    long high = Math.round(highest);
    if (value < low || value > high) {
      throw new ParameterException(
          spec.commandLine(),
          option
              + " must be from "
              + low
              + " to "
              + high
              + " "
              + unit
              + ", was "
              + Numbers.text(value)
              + " "
              + unit
              + ".");
    }
  }
}
