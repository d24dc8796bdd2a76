package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Input;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Reference;
import trimwright.kernel.band.SharedInputs;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.band.Spread;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

class SureWordsTest {
  private static final TrimPoint WISHED = Samples.point(25, 0.6, 0.53);

  private static PointBand band(TrimPoint point, double degrees, double share) {
    return new PointBand(
        Map.of(
            Quantity.PITCH,
            Spread.of(point.pitch(), Map.of(Input.MAST_BASE_ANGLE, 0.5 * Math.toRadians(degrees))),
            Quantity.FOOT_SHARE,
            Spread.of(point.footShare(), Map.of(Input.STABILIZER_SETTING, 0.5 * share))));
  }

  private static List<String> words(CaseFile caseFile, TrimPoint ridden, double degrees) {
    CauseOutcome.Split split = Samples.split(caseFile, ridden, WISHED);
    SplitBands bands = new SplitBands(band(ridden, degrees, 0.08), band(WISHED, degrees, 0.08));
    return SureWords.of(caseFile, split, bands, Measures.METRIC);
  }

  @Test
  void whatLiesInsideTheBandCannotBeToldApart() {
    List<String> words = words(Samples.caseFile(), WISHED, 1.0);
    assertThat(words.get(0))
        .isEqualTo(
            "The pitch is sure to ±1.0°: 0.6° nose-up cannot be told from the level that you"
                + " want.");
    assertThat(words.get(1)).startsWith("The front foot's load is sure to ±8 %");
    assertThat(words)
        .anySatisfy(
            w ->
                assertThat(w)
                    .isEqualTo(
                        "The set's part of 0.6° nose-up lies inside its band of ±1.0°: measure the"
                            + " parts before you change any."));
  }

  @Test
  void whatLiesOutsideIsToldApart() {
    List<String> words = words(Samples.caseFile(), Samples.point(18, 4.4, 0.3), 0.4);
    assertThat(words.get(0)).isEqualTo("The pitch is sure to ±0.4°.");
    assertThat(words.get(1)).isEqualTo("The front foot's load is sure to ±8 %.");
    assertThat(words).noneMatch(w -> w.startsWith("The set's part"));
    // The base's angle errs alike at both speeds.
    assertThat(words).contains("What the speed makes of it is sure to ±0.0°.");
  }

  @Test
  void aMeasuredPitchIsHeldAgainstTheBand() {
    TrimPoint ridden = Samples.point(18, 4.4, 0.3);
    assertThat(words(Samples.measured(4.9), ridden, 1))
        .contains("Your measured pitch lies inside the band: the computation allows it.");
    assertThat(words(Samples.measured(6), ridden, 1))
        .contains("Your measured pitch lies outside the band: tolerances alone do not explain it.");
  }

  @Test
  void whatToMeasureNextIsWhatACalliperTells() {
    Bands bands = Samples.bands(Samples.curve());
    assertThat(SureWords.next(Samples.caseFile(), bands))
        .contains(
            "To know the foot load better, measure the stabilizer's angle with a calliper: it makes"
                + " 36 % of the doubt at 25 km/h.");
    assertThat(SureWords.next(Samples.caseFile(), Bands.without(Samples.curve()))).isEmpty();
  }

  @Test
  void theReferenceIsToldApartWhereTheBandOfTheDifferenceSaysSo() {
    Bands bands = Samples.bands(Samples.curve());
    // All from one source: nothing is left of the band of the difference.
    assertThat(ApartWords.of(bands, 15, new Reference(bands, SharedInputs.ALL)))
        .containsExactly(
            "At this speed it cannot be told apart from the pinned reference: pitch (0.0° ±0.0°),"
                + " front foot (0 ±0 %), power (0 ±0 W).");
    Bands lighter = shifted(Samples.curve(), 3);
    List<String> apart = ApartWords.of(lighter, 15, new Reference(bands, Set.of()));
    assertThat(apart.get(0))
        .isEqualTo("The deck rides 3.0° more nose-up than in the pinned reference, sure to ±1.5°.");
    assertThat(apart.get(1)).isEqualTo("Front foot (0 ±12 %) cannot be told apart.");
    assertThat(ApartWords.of(bands, 0, new Reference(bands, Set.of()))).isEmpty();
  }

  @Test
  void aNumberIsAlikeWhereItsDifferenceLiesInsideTheBand() {
    Bands bands = Samples.bands(Samples.curve());
    Bands lighter = shifted(Samples.curve(), 3);
    Reference reference = new Reference(bands, Set.of());
    assertThat(ApartWords.isAlike(lighter, 15, reference, Quantity.FOOT_SHARE)).isTrue();
    assertThat(ApartWords.isAlike(lighter, 15, reference, Quantity.PITCH)).isFalse();
    assertThat(ApartWords.isAlike(bands, 0, reference, Quantity.PITCH))
        .as("nothing is alike where there is no trim")
        .isFalse();
  }

  private static Bands shifted(Curve curve, double degrees) {
    Bands bands = Samples.bands(curve);
    return new Bands(
        curve,
        bands.points().stream().map(p -> p.map(b -> raised(b, degrees))).toList(),
        bands.levelSpeed(),
        bands.evenFeetSpeeds(),
        bands.rideableFrom(),
        bands.rideableTo());
  }

  private static PointBand raised(PointBand band, double degrees) {
    Map<Quantity, Spread> spreads = new EnumMap<>(band.spreads());
    Spread pitch = band.find(Quantity.PITCH).orElseThrow();
    spreads.put(
        Quantity.PITCH,
        Spread.of(
            pitch.value() + Math.toRadians(degrees),
            Map.of(Input.STABILIZER_SETTING, pitch.deviation())));
    return new PointBand(spreads);
  }

  @ParameterizedTest
  @EnumSource(Input.class)
  void everyInputHasWords(Input input) {
    assertThat(InputWords.of(input)).isNotBlank();
    assertThat(InputWords.how(input)).isNotBlank();
  }
}
