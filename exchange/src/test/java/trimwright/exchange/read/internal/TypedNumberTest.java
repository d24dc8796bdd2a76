package trimwright.exchange.read.internal;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.exchange.unit.Unit;

/** Numbers as people type them at a counter. */
class TypedNumberTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "82 | KILOGRAM | 82",
        "+82. | KILOGRAM | 82",
        "-0,5 | DEGREE | -0.5",
        "\u22120.5° | DEGREE | -0.5",
        ".5 deg | DEGREE | 0.5",
        "2,5e1 | KILOGRAM | 25",
        "82kg | KILOGRAM | 82",
        "82 KG | KILOGRAM | 82",
        "500 lbs | KILOGRAM | 226.796185",
        "1 500 | SQUARE_CENTIMETRE | 1500",
        "1\u00a0234\u202f567 | MILLIMETRE | 1234567",
        "0.15 m2 | SQUARE_CENTIMETRE | 1500",
        "12 cm | MILLIMETRE | 120",
        "8.2 cm | MILLIMETRE | 82",
        "10 in | MILLIMETRE | 254",
        "10\" | MILLIMETRE | 254",
        "68 F | CELSIUS | 20",
        "20 °C | CELSIUS | 20",
        "10 mph | KILOMETRE_PER_HOUR | 16.09344",
        "25 kmh | KILOMETRE_PER_HOUR | 25",
        "55 % | RATIO | 0.55",
        "12% | PERCENT | 12",
        "2 kg/m³ | KILOGRAM_PER_CUBIC_METRE | 2",
        "10 Nm | NEWTON_METRE | 10",
      })
  void reads(String text, Unit carried, double number) {
    assertThat(TypedNumber.find(text, carried)).hasValue(number);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "heavy",
        "82 stone",
        "82 mm",
        "1.2.3",
        "1,2,3",
        "1.500,5",
        "12 34",
        "0x1F",
        "NaN",
        "Infinity",
        "--1",
        "1-",
        "1e",
        "1e5000",
        "e5",
        "82 kg kg",
        "1 000 0",
        "٣"
      })
  void refuses(String text) {
    assertThat(TypedNumber.find(text, Unit.KILOGRAM)).isEmpty();
  }

  @Test
  void saysWhenANumberIsFarTooLarge() {
    assertThat(TypedNumber.find("1e999", Unit.KILOGRAM)).hasValue(Double.POSITIVE_INFINITY);
    assertThat(TypedNumber.find("-1e999 lb", Unit.KILOGRAM)).hasValue(Double.NEGATIVE_INFINITY);
  }

  @Test
  void longTextsCostNothing() {
    assertThat(TypedNumber.find("1".repeat(1_000_000), Unit.KILOGRAM)).isEmpty();
  }
}
