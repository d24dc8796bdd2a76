package trimwright.kernel.propel;

import java.util.OptionalDouble;

/**
 * What a battery gives: cold cells hold less, and under load their voltage sags, so that a part of
 * the energy warms them.
 *
 * <p>Capacity over temperature: C. Bubulinca, S. Enache, M. R. Buga, Influence of temperature
 * variation over characteristic capacity in 18650 Li-ion rechargeable battery, Progress of
 * Cryogenics and Isotopes Separation 19 (2), 2016, summary read: 80 mAh/g at 32 °C and 70 at 2 °C
 * at a small current; a straight line between, referred to 20 °C, and carried on below 2 °C (no
 * source). Warmth above 20 °C is not counted as a gain. Other cells differ.
 *
 * <p>Resistance, where none is given: a loss of 3 % of the voltage for each full battery per hour,
 * chosen, no source (common cells of 30 to 40 milliohm at 3 Ah); twice as much for each 20 K below
 * 20 °C, chosen, no source. Load warms the cells during a ride; that is left out.
 *
 * @param energy of the full battery as rated [J]
 * @param usableShare share of it that may be used [1]
 * @param cells what is known of its cells
 */
public record BatteryPack(double energy, double usableShare, Cells cells) {
  /** Temperatures of the two measured capacities [K]. */
  private static final double WARM = 305.15;

  private static final double COLD = 275.15;

  /** Capacity at the lower over that at the higher: 70 over 80. */
  private static final double COLD_OVER_WARM = 0.875;

  /** Time that resistance times charge over voltage makes where none is given: 0.03 h [s]. */
  private static final double RESISTANCE_TIME = 0.03 * 3600;

  /** Cooling that doubles the resistance [K]. */
  private static final double DOUBLING = 20;

  /** No cell is taken to hold less than this share, however cold. */
  private static final double LEAST_CAPACITY = 0.3;

  /**
   * Share of the rated capacity at the cells' temperature.
   *
   * @return at most 1 [1]
   */
  public double capacityShare() {
    double share = line(cells.temperature()) / line(Cells.RATED_TEMPERATURE);
    return Math.max(LEAST_CAPACITY, Math.min(1, share));
  }

  private static double line(double temperature) {
    return 1 - (1 - COLD_OVER_WARM) * (WARM - temperature) / (WARM - COLD);
  }

  /**
   * Energy that may be used at the cells' temperature, at a small load.
   *
   * @return [J]
   */
  public double usableEnergy() {
    return energy * capacityShare() * usableShare;
  }

  /** Times of rated resistance in the cold [1]. */
  private double colder() {
    return Math.max(1, Math.pow(2, (Cells.RATED_TEMPERATURE - cells.temperature()) / DOUBLING));
  }

  /** Resistance times rated energy over voltage squared: it counts alike at any voltage [s]. */
  private double resistanceTime() {
    boolean known = cells.resistance().isPresent() && cells.voltage().isPresent();
    double warm =
        known
            ? cells.resistance().getAsDouble()
                * energy
                / (cells.voltage().getAsDouble() * cells.voltage().getAsDouble())
            : RESISTANCE_TIME;
    return warm * colder();
  }

  /**
   * Voltage under load over the nominal one.
   *
   * @param power drawn [W], 0 or more
   * @return share [1]; at the greatest power that the resistance leaves it is a half, and not
   *     counted lower beyond
   */
  public double voltageShare(double power) {
    double under = 1 - 4 * resistanceTime() * power / energy;
    return 0.5 * (1 + Math.sqrt(Math.max(0, under)));
  }

  /**
   * The rate at which a power empties the battery.
   *
   * @param power drawn [W]
   * @return [W], at least the power
   */
  public double drain(double power) {
    return power / voltageShare(power);
  }

  /**
   * How long a power lasts.
   *
   * @param power drawn [W], above 0
   * @return [s]
   */
  public double duration(double power) {
    return usableEnergy() / drain(power);
  }

  /**
   * The most power at the greatest current, under the sag that it makes.
   *
   * @return [W]; empty where no greatest current or no voltage is known
   */
  public OptionalDouble mostPower() {
    if (cells.maximumCurrent().isEmpty() || cells.voltage().isEmpty()) {
      return OptionalDouble.empty();
    }
    double voltage = cells.voltage().getAsDouble();
    double current = cells.maximumCurrent().getAsDouble();
    double resistance = resistanceTime() * voltage * voltage / energy;
    // Beyond half of the short-circuit current more current gives less power.
    double useful = Math.min(current, 0.5 * voltage / resistance);
    return OptionalDouble.of(useful * (voltage - useful * resistance));
  }
}
