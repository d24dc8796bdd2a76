package trimwright.exchange.unit;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The two families of units that people at a counter read. Case files, documents and the wire
 * between page and server always carry the metric ones; imperial exists where a person reads or
 * types.
 *
 * <p>Degrees, percent, watts, watt hours, volts, amperes, milliohms, revolutions, seconds, litres
 * and grams of salt per kilogram are the same in both.
 */
public enum Measures {
  /** Kilometres per hour, millimetres, kilograms, newtons, degrees Celsius. */
  METRIC,
  /** Miles per hour, inches, pounds, pounds-force, degrees Fahrenheit. */
  IMPERIAL;

  /** Offsets are sums of temperatures near 300 K: digits below this are the doubles' rounding. */
  private static final double OFFSET_STEP = 1e-9;

  private static final Map<Unit, Target> TARGETS = targets();

  private final Map<Unit, ShownUnit> table = new EnumMap<>(Unit.class);

  static {
    for (Measures measures : values()) {
      TARGETS.forEach((carried, target) -> measures.table.put(carried, measures.way(carried)));
    }
  }

  /** What a carried unit becomes in imperial, and the decimals on either side. */
  private record Target(int metricDecimals, Unit imperial, int imperialDecimals) {}

  private static Map<Unit, Target> targets() {
    Map<Unit, Target> targets = new EnumMap<>(Unit.class);
    targets.put(Unit.METRE, new Target(2, Unit.INCH, 1));
    targets.put(Unit.MILLIMETRE, new Target(0, Unit.INCH, 1));
    targets.put(Unit.CENTIMETRE, new Target(1, Unit.INCH, 1));
    targets.put(Unit.SQUARE_CENTIMETRE, new Target(0, Unit.SQUARE_INCH, 0));
    targets.put(Unit.SQUARE_METRE, new Target(2, Unit.SQUARE_FOOT, 1));
    targets.put(Unit.KILOMETRE_PER_HOUR, new Target(1, Unit.MILE_PER_HOUR, 1));
    targets.put(Unit.KILOMETRE, new Target(1, Unit.MILE, 1));
    targets.put(Unit.KILOGRAM, new Target(0, Unit.POUND, 0));
    targets.put(Unit.KILOGRAM_PER_CUBIC_METRE, new Target(3, Unit.POUND_PER_CUBIC_FOOT, 4));
    targets.put(Unit.NEWTON, new Target(0, Unit.POUND_FORCE, 0));
    targets.put(Unit.NEWTON_METRE, new Target(1, Unit.POUND_FORCE_FOOT, 1));
    targets.put(Unit.CELSIUS, new Target(0, Unit.FAHRENHEIT, 0));
    targets.put(Unit.DEGREE, new Target(1, Unit.DEGREE, 1));
    targets.put(Unit.PERCENT, new Target(0, Unit.PERCENT, 0));
    targets.put(Unit.RATIO, new Target(2, Unit.RATIO, 2));
    targets.put(Unit.LITRE, new Target(1, Unit.LITRE, 1));
    targets.put(Unit.GRAM_PER_KILOGRAM, new Target(1, Unit.GRAM_PER_KILOGRAM, 1));
    targets.put(Unit.WATT, new Target(0, Unit.WATT, 0));
    targets.put(Unit.WATT_HOUR, new Target(0, Unit.WATT_HOUR, 0));
    targets.put(Unit.VOLT, new Target(0, Unit.VOLT, 0));
    targets.put(Unit.AMPERE, new Target(0, Unit.AMPERE, 0));
    targets.put(Unit.MILLIOHM, new Target(0, Unit.MILLIOHM, 0));
    targets.put(Unit.REVOLUTION_PER_MINUTE, new Target(0, Unit.REVOLUTION_PER_MINUTE, 0));
    targets.put(Unit.SECOND, new Target(2, Unit.SECOND, 2));
    return targets;
  }

  /**
   * How a quantity is shown that is carried in a unit.
   *
   * @param carried the case file's own unit, or the one of a document
   * @return symbol, factor, offset and decimals
   * @throws IllegalArgumentException if nothing is carried in that unit
   */
  public ShownUnit shown(Unit carried) {
    ShownUnit shown = table.get(carried);
    if (shown == null) {
      throw new IllegalArgumentException("no file or document carries values in " + carried);
    }
    return shown;
  }

  /**
   * The unit in which a quantity is shown that is carried in another.
   *
   * @param carried as in {@link #shown}
   * @return the unit that converts between SI and what is shown
   * @throws IllegalArgumentException if nothing is carried in that unit
   */
  public Unit unit(Unit carried) {
    shown(carried);
    return this == METRIC ? carried : TARGETS.get(carried).imperial();
  }

  /** Every unit that is carried, with how it is shown; for a page that converts by itself. */
  public Map<Unit, ShownUnit> table() {
    return Collections.unmodifiableMap(table);
  }

  private ShownUnit way(Unit carried) {
    Target target = TARGETS.get(carried);
    if (this == METRIC || target.imperial() == carried) {
      return new ShownUnit(carried.symbol(), 1, 0, target.metricDecimals());
    }
    Unit to = target.imperial();
    double offset = Math.rint(to.fromSi(carried.toSi(0)) / OFFSET_STEP) * OFFSET_STEP;
    return new ShownUnit(to.symbol(), carried.per(to), offset, target.imperialDecimals());
  }
}
