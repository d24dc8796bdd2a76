package trimwright.exchange.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One row per factor. Right-hand values are the printed SI equivalents of NIST SP 811 (2008),
 * appendix B.8, and of the SI brochure, tables 7 and 8, multiplied by hand where the row is not one
 * unit.
 */
class UnitReferenceTest {
  /** Conversions are exact by definition: what remains is the rounding of doubles. */
  private static final double ROUNDING = 1e-15;

  private static final String ROWS =
      """
      METRE, 1.78, 1.78
      MILLIMETRE, 520, 0.52
      CENTIMETRE, 178, 1.78
      KILOMETRE, 12.5, 12500
      SQUARE_CENTIMETRE, 1500, 0.15
      SQUARE_METRE, 0.5, 0.5
      SQUARE_INCH, 1, 6.4516e-4
      SQUARE_FOOT, 1, 0.09290304
      LITRE, 95, 0.095
      KILOMETRE_PER_HOUR, 25, 6.944444444444445
      MILE, 1, 1609.344
      KNOT, 1, 0.5144444444444445
      MILE_PER_HOUR, 1, 0.44704
      INCH, 1, 0.0254
      FOOT, 1, 0.3048
      KILOGRAM, 82, 82
      KILOGRAM_PER_CUBIC_METRE, 1.225, 1.225
      POUND_PER_CUBIC_FOOT, 1, 16.018463373960138
      POUND, 1, 0.45359237
      GRAM_PER_KILOGRAM, 35, 0.035
      WATT_HOUR, 2000, 7200000
      WATT, 5000, 5000
      SECOND, 0.4, 0.4
      METRE_PER_SECOND_SQUARED, 1.5, 1.5
      VOLT, 48, 48
      AMPERE, 80, 80
      MILLIOHM, 40, 0.04
      REVOLUTION_PER_MINUTE, 3000, 50
      NEWTON, 220, 220
      KILOGRAM_FORCE, 1, 9.80665
      POUND_FORCE, 1, 4.4482216152605
      NEWTON_METRE, 300, 300
      POUND_FORCE_FOOT, 1, 1.3558179483314004
      DEGREE, 180, 3.141592653589793
      CELSIUS, 18, 291.15
      FAHRENHEIT, 64.4, 291.15
      PERCENT, 12, 0.12
      RATIO, 0.55, 0.55
      """;

  @ParameterizedTest
  @CsvSource(textBlock = ROWS)
  void convertsToSiAndBack(Unit unit, double value, double si) {
    assertThat(unit.toSi(value)).isCloseTo(si, within(ROUNDING * Math.abs(si)));
    // Celsius loses digits against the 273.15 K it is taken from, hence the floor of 300
    assertThat(unit.fromSi(si)).isCloseTo(value, within(ROUNDING * Math.max(300, Math.abs(value))));
  }

  @Test
  void everyUnitHasItsRow() {
    assertThat(ROWS.lines().map(row -> row.split(",")[0].trim()).collect(Collectors.toSet()))
        .isEqualTo(Arrays.stream(Unit.values()).map(Enum::name).collect(Collectors.toSet()));
  }

  @Test
  void millimetresBecomeTheNearestDouble() {
    assertThat(Unit.MILLIMETRE.toSi(520)).isEqualTo(0.52);
    assertThat(Unit.MILLIMETRE.toSi(215)).isEqualTo(0.215);
    assertThat(Unit.SQUARE_CENTIMETRE.toSi(1500)).isEqualTo(0.15);
  }
}
