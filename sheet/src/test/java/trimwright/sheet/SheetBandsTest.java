package trimwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.desk.CaseStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Spread;

/** What the sheet prints after its ± is what the bands say, rounded up. */
class SheetBandsTest {
  static List<String> demos() {
    return DemoCases.list().stream().map(DemoCase::id).toList();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void theNumbersAfterPlusOrMinusAreTheBands(String id) throws Exception {
    CaseFile caseFile = Sheets.read(Sheets.demo(id));
    double speed = caseFile.rideCase().rider().wishedSpeed();
    Bands bands = CaseStudy.of(caseFile).bands(SpeedRange.kmh(10, 40, 1), speed);
    String text =
        Sheets.text(
            Sheets.print(caseFile, 3.6 * speed, Sheets.choice(Paper.A4, Measures.METRIC, "Rider")));
    int at = bands.curve().outcomes().size() - 1;
    for (int i = 0; i < bands.curve().outcomes().size(); i++) {
      at = Math.abs(bands.curve().outcomes().get(i).speed() - speed) < 1e-9 ? i : at;
    }
    bands
        .find(at, Quantity.ELECTRIC_POWER)
        .ifPresent(s -> assertThat(text).contains(shown(s.value(), 0) + up(s, 1, 0) + "W"));
    bands.levelSpeed().ifPresent(s -> assertThat(text).contains(speed(s)));
    bands.rideableFrom().ifPresent(s -> assertThat(text).contains(speed(s)));
    bands.rideableTo().ifPresent(s -> assertThat(text).contains(speed(s)));
    bands.evenFeetSpeeds().forEach(e -> e.ifPresent(s -> assertThat(text).contains(speed(s))));
  }

  private static String speed(Spread s) {
    return new BigDecimal(shown(3.6 * s.value(), 1)).stripTrailingZeros().toPlainString()
        + up(s, 3.6, 1)
        + "km/h";
  }

  private static String shown(double value, int decimals) {
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
  }

  private static String up(Spread s, double factor, int decimals) {
    BigDecimal reach = BigDecimal.valueOf(factor * s.reach());
    return "±" + reach.setScale(decimals, RoundingMode.UP).toPlainString();
  }
}
