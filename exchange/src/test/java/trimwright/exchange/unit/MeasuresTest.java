package trimwright.exchange.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class MeasuresTest {
  /** Two multiplications and an offset near 300: what remains is the rounding of doubles. */
  private static final double ROUNDING = 1e-12;

  @ParameterizedTest
  @CsvSource({
    "KILOMETRE_PER_HOUR, 16.09344, mph, 10",
    "MILLIMETRE, 520.7, in, 20.5",
    "METRE, 1.778, in, 70",
    "KILOMETRE, 16.09344, mi, 10",
    "REVOLUTION_PER_MINUTE, 3000, rpm, 3000",
    "SQUARE_CENTIMETRE, 645.16, in², 100",
    "SQUARE_METRE, 0.09290304, ft², 1",
    "KILOGRAM, 90.718474, lb, 200",
    "NEWTON, 44.482216152605, lbf, 10",
    "CELSIUS, 0, °F, 32",
    "CELSIUS, 100, °F, 212",
    "CELSIUS, -40, °F, -40",
    "DEGREE, 2.5, °, 2.5",
    "WATT_HOUR, 2000, Wh, 2000"
  })
  void imperialIsReachedByFactorAndOffset(Unit carried, double value, String symbol, double shown) {
    ShownUnit unit = Measures.IMPERIAL.shown(carried);
    assertThat(unit.symbol()).isEqualTo(symbol);
    assertThat(unit.shown(value)).isCloseTo(shown, within(ROUNDING * 300));
    assertThat(unit.carried(shown)).isCloseTo(value, within(ROUNDING * 300));
  }

  @Test
  void temperatureOffsetIsWhole() {
    assertThat(Measures.IMPERIAL.shown(Unit.CELSIUS).offset()).isEqualTo(32);
    assertThat(Measures.IMPERIAL.shown(Unit.CELSIUS).factor()).isEqualTo(1.8);
  }

  @ParameterizedTest
  @EnumSource(Measures.class)
  void bothWaysLeadThroughSiToTheSameValue(Measures measures) {
    measures
        .table()
        .forEach(
            (carried, shown) -> {
              double value = 37.5;
              Unit unit = measures.unit(carried);
              assertThat(unit.symbol()).isEqualTo(shown.symbol());
              assertThat(unit.siSymbol()).isEqualTo(carried.siSymbol());
              assertThat(shown.shown(value))
                  .isCloseTo(
                      unit.fromSi(carried.toSi(value)),
                      within(ROUNDING * Math.max(300, shown.shown(value))));
            });
  }

  @Test
  void metricIsWhatTheFilesCarry() {
    Measures.METRIC
        .table()
        .forEach(
            (carried, shown) -> {
              assertThat(shown.symbol()).isEqualTo(carried.symbol());
              assertThat(shown.factor()).isEqualTo(1);
              assertThat(shown.offset()).isZero();
            });
    assertThat(Measures.IMPERIAL.table().keySet()).isEqualTo(Measures.METRIC.table().keySet());
  }

  @Test
  void unitsThatNothingIsCarriedInAreRefused() {
    assertThatThrownBy(() -> Measures.IMPERIAL.shown(Unit.KNOT))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("KNOT");
  }
}
