package trimwright.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.desk.CaseStudy;
import trimwright.desk.EnvelopeStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Spread;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.range.RangePoint;

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

  /** Take-off, stall and battery as the envelope has them; the battery as far off as the power. */
  @ParameterizedTest
  @MethodSource("demos")
  void fromStartToHomeItSaysWhatTheEnvelopeSays(String id) throws Exception {
    CaseFile caseFile = Sheets.read(Sheets.demo(id));
    double speed = caseFile.rideCase().rider().wishedSpeed();
    Envelope envelope = EnvelopeStudy.of(caseFile);
    String text =
        Sheets.text(
            Sheets.print(caseFile, 3.6 * speed, Sheets.choice(Paper.A4, Measures.METRIC, "Rider")));
    assertThat(text)
        .contains("Leavesthewaterat" + kmh(envelope.takeOff().liftOff().orElseThrow().speed()))
        .contains(
            "Stallsat" + kmh(envelope.slowFlight().orElseThrow().stallSpeed()) + ",banked30°");
    RangePoint there =
        envelope.range().orElseThrow().points().stream()
            .flatMap(Optional::stream)
            .min(Comparator.comparingDouble(p -> Math.abs(p.speed() - speed)))
            .orElseThrow();
    double reserve = caseFile.rideCase().limits().of(RideLimit.BATTERY_RESERVE);
    Matcher battery =
        Pattern.compile("kept(\\d+)min,(\\d+)km\\((\\d+)to(\\d+)min\\)").matcher(text);
    assertThat(battery.find()).isTrue();
    double minutes = Double.parseDouble(battery.group(1));
    // The envelope's nearest speed lies within half a km/h.
    assertThat(minutes).isCloseTo((1 - reserve) * there.duration() / 60, withinPercentage(4));
    assertThat(Double.parseDouble(battery.group(3))).isBetween(0.5 * minutes, 0.95 * minutes);
    assertThat(Double.parseDouble(battery.group(4))).isBetween(1.05 * minutes, 2 * minutes);
    assertThat(Double.parseDouble(battery.group(2)))
        .isCloseTo(minutes * 60 * speed / 1000, within(1.0));
  }

  private static String kmh(double speed) {
    return new BigDecimal(shown(3.6 * speed, 1)).stripTrailingZeros().toPlainString() + "km/h";
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
