package trimwright.exchange.unit;

/**
 * The shop's units with their exact factors to SI. Factors are kept as a fraction, so that a whole
 * number of millimetres becomes the nearest double to its value in metres.
 *
 * <p>Sources: "SI brochure" is BIPM, The International System of Units, 9th edition (2019); "NIST
 * SP 811" is NIST Special Publication 811 (2008), Guide for the Use of the SI, appendix B; the
 * international yard and pound agreement of 1959 fixes inch, foot, mile and pound (given there).
 */
public enum Unit {
  /** Metre, the SI unit itself. Source: SI brochure, table 2. */
  METRE("m", 1, 1, 0, "m"),
  /** Millimetre to metre. Source: SI brochure, table 7 (prefix milli). */
  MILLIMETRE("mm", 1, 1000, 0, "m"),
  /** Centimetre to metre. Source: SI brochure, table 7 (prefix centi). */
  CENTIMETRE("cm", 1, 100, 0, "m"),
  /** Kilometre to metre. Source: SI brochure, table 7 (prefix kilo). */
  KILOMETRE("km", 1000, 1, 0, "m"),
  /** Square centimetre to square metre. Source: SI brochure, table 7 (prefix centi, squared). */
  SQUARE_CENTIMETRE("cm²", 1, 10_000, 0, "m²"),
  /** Square metre, the SI unit itself. Source: SI brochure, table 5. */
  SQUARE_METRE("m²", 1, 1, 0, "m²"),
  /**
   * Square inch to square metre: 25.4 mm squared, 6.4516e-4 m² exactly. Source: NIST SP 811, B.8.
   */
  SQUARE_INCH("in²", 6.4516, 10_000, 0, "m²"),
  /** Square foot to square metre: 0.3048 m squared, exactly. Source: NIST SP 811, B.8. */
  SQUARE_FOOT("ft²", 929.0304, 10_000, 0, "m²"),
  /** Litre to cubic metre. Source: SI brochure, table 8: 1 L = 1e-3 m³. */
  LITRE("l", 1, 1000, 0, "m³"),
  /** Kilometre per hour to metre per second. Source: SI brochure, table 8: 1 h = 3600 s. */
  KILOMETRE_PER_HOUR("km/h", 1000, 3600, 0, "m/s"),
  /** Mile to metre: 1609.344 m exactly. Source: NIST SP 811, B.8. */
  MILE("mi", 1609.344, 1, 0, "m"),
  /** Knot to metre per second: one nautical mile of 1852 m per hour. Source: NIST SP 811, B.8. */
  KNOT("kn", 1852, 3600, 0, "m/s"),
  /** Mile per hour to metre per second: 1609.344 m per hour. Source: NIST SP 811, B.8. */
  MILE_PER_HOUR("mph", 1609.344, 3600, 0, "m/s"),
  /** Inch to metre: 25.4 mm exactly. Source: NIST SP 811, B.8. */
  INCH("in", 254, 10_000, 0, "m"),
  /** Foot to metre: 0.3048 m exactly. Source: NIST SP 811, B.8. */
  FOOT("ft", 3048, 10_000, 0, "m"),
  /** Kilogram, the SI unit itself. Source: SI brochure, table 2. */
  KILOGRAM("kg", 1, 1, 0, "kg"),
  /** Pound to kilogram: 0.45359237 kg exactly. Source: NIST SP 811, B.8. */
  POUND("lb", 0.45359237, 1, 0, "kg"),
  /** Kilogram per cubic metre, the SI unit itself. Source: SI brochure, table 5. */
  KILOGRAM_PER_CUBIC_METRE("kg/m³", 1, 1, 0, "kg/m³"),
  /** Pound per cubic foot: a pound over the cube of 0.3048 m, exactly. Source: NIST SP 811, B.8. */
  POUND_PER_CUBIC_FOOT("lb/ft³", 0.45359237, 0.3048 * 0.3048 * 0.3048, 0, "kg/m³"),
  /** Gram per kilogram to a plain ratio. Source: SI brochure, table 7 (prefix kilo). */
  GRAM_PER_KILOGRAM("g/kg", 1, 1000, 0, "kg/kg"),
  /** Watt hour to joule. Source: SI brochure, table 8: 1 h = 3600 s. */
  WATT_HOUR("Wh", 3600, 1, 0, "J"),
  /** Watt, the SI unit itself. Source: SI brochure, table 4. */
  WATT("W", 1, 1, 0, "W"),
  /** Second, the SI unit itself. Source: SI brochure, table 2. */
  SECOND("s", 1, 1, 0, "s"),
  /** Metre per second squared, the SI unit itself. Source: SI brochure, table 5. */
  METRE_PER_SECOND_SQUARED("m/s²", 1, 1, 0, "m/s²"),
  /** Volt, the SI unit itself. Source: SI brochure, table 4. */
  VOLT("V", 1, 1, 0, "V"),
  /** Ampere, the SI unit itself. Source: SI brochure, table 2. */
  AMPERE("A", 1, 1, 0, "A"),
  /** Milliohm to ohm. Source: SI brochure, tables 4 and 7 (prefix milli). */
  MILLIOHM("mΩ", 1, 1000, 0, "Ω"),
  /**
   * Revolution per minute to revolutions per second. Source: SI brochure, table 8: 1 min = 60 s.
   */
  REVOLUTION_PER_MINUTE("rpm", 1, 60, 0, "1/s"),
  /** Newton, the SI unit itself. Source: SI brochure, table 4. */
  NEWTON("N", 1, 1, 0, "N"),
  /**
   * Kilogram-force to newton: 9.80665 N exactly. Source: NIST SP 811, B.8 (standard acceleration of
   * free fall).
   */
  KILOGRAM_FORCE("kgf", 9.80665, 1, 0, "N"),
  /**
   * Pound-force to newton: the pound times the standard acceleration of free fall, 4.4482216152605
   * N exactly. Source: NIST SP 811, B.8.
   */
  POUND_FORCE("lbf", 4.4482216152605, 1, 0, "N"),
  /** Newton metre, the SI unit itself. Source: SI brochure, table 5. */
  NEWTON_METRE("N·m", 1, 1, 0, "N·m"),
  /** Pound-force foot to newton metre: the two factors' product. Source: NIST SP 811, B.8. */
  POUND_FORCE_FOOT("lbf·ft", 4.4482216152605 * 0.3048, 1, 0, "N·m"),
  /** Degree of angle to radian: pi/180. Source: SI brochure, table 8. */
  DEGREE("°", Math.PI, 180, 0, "rad"),
  /** Degree Celsius to kelvin: 273.15 K above. Source: SI brochure, section 2.3.1. */
  CELSIUS("°C", 1, 1, 273.15, "K"),
  /** Degree Fahrenheit to kelvin: (t + 459.67)/1.8. Source: NIST SP 811, B.8. */
  FAHRENHEIT("°F", 5, 9, 459.67 / 1.8, "K"),
  /** Percent to a plain ratio. Source: SI brochure, section 5.4.7. */
  PERCENT("%", 1, 100, 0, "1"),
  /** A plain ratio, the SI unit itself. Source: SI brochure, section 5.4.7. */
  RATIO("", 1, 1, 0, "1");

  private final String symbol;
  private final double numerator;
  private final double denominator;
  private final double offset;
  private final String siSymbol;

  Unit(String symbol, double numerator, double denominator, double offset, String siSymbol) {
    this.symbol = symbol;
    this.numerator = numerator;
    this.denominator = denominator;
    this.offset = offset;
    this.siSymbol = siSymbol;
  }

  /** The unit's symbol as people write it. */
  public String symbol() {
    return symbol;
  }

  /** The symbol of the SI unit it converts to. */
  public String siSymbol() {
    return siSymbol;
  }

  /**
   * Converts to SI.
   *
   * @param value in this unit
   * @return the same quantity in the SI unit {@link #siSymbol()}
   */
  public double toSi(double value) {
    return value * numerator / denominator + offset;
  }

  /**
   * Converts from SI.
   *
   * @param value in the SI unit {@link #siSymbol()}
   * @return the same quantity in this unit
   */
  public double fromSi(double value) {
    return (value - offset) * denominator / numerator;
  }

  /**
   * How much of another unit one of this is, as a difference.
   *
   * @param other a unit of the same quantity
   * @return the factor [1]
   */
  double per(Unit other) {
    return numerator * other.denominator / (denominator * other.numerator);
  }
}
