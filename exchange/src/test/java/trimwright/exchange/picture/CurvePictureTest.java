package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Element;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.band.Bands;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.seed.RunSeed;

class CurvePictureTest {
  /** Coordinates are written with two decimals. */
  private static final double WRITTEN = 0.011;

  private final Drawn drawn = drawn(CurveQuantity.LEGS, 20, 820);

  private static Drawn drawn(CurveQuantity quantity, double kmh, double width) {
    return Drawn.of(
        CurvePicture.svg(
            Samples.caseFile(),
            Samples.bands(Samples.curve()),
            quantity,
            kmh * Samples.KMH,
            Measures.METRIC,
            PictureStyle.light(width, 280)));
  }

  private static double x(Drawn drawn, double kmh) {
    double from = Drawn.number(drawn.root(), "data-speed-from");
    double to = Drawn.number(drawn.root(), "data-speed-to");
    double left = Drawn.number(drawn.root(), "data-x-from");
    double right = Drawn.number(drawn.root(), "data-x-to");
    return left + (kmh - from) / (to - from) * (right - left);
  }

  @Test
  void curvesStandOverTheirSpeedsAndEndWhereTrimEnds() {
    List<Dot> front = drawn.points("curve");
    assertThat(front).hasSize(22);
    assertThat(front.get(0).x()).isCloseTo(x(drawn, 15), within(WRITTEN));
    assertThat(front.get(21).x()).isCloseTo(x(drawn, 36), within(WRITTEN));
  }

  @Test
  void uprightLineStandsAtTheChosenSpeed() {
    Element mark = drawn.one("mark");
    assertThat(Drawn.number(mark, "x1")).isCloseTo(x(drawn, 20), within(WRITTEN));
    assertThat(mark.getAttribute("x2")).isEqualTo(mark.getAttribute("x1"));
    assertThat(drawn.kind("mark-dot")).hasSize(2);
  }

  @Test
  void windowIsTintedAndTheRestHatched() {
    Element window = drawn.one("window");
    assertThat(Drawn.number(window, "x")).isCloseTo(x(drawn, 17), within(WRITTEN));
    assertThat(Drawn.number(window, "x") + Drawn.number(window, "width"))
        .isCloseTo(x(drawn, 34), within(2 * WRITTEN));
    assertThat(drawn.kind("hatch")).hasSize(2);
  }

  @Test
  void frontLegIsSolidAndBackLegDashedAndBothAreNamed() {
    List<Element> curves = drawn.kind("curve");
    assertThat(curves.get(0).hasAttribute("stroke-dasharray")).isFalse();
    assertThat(curves.get(1).hasAttribute("stroke-dasharray")).isTrue();
    assertThat(drawn.texts()).extracting(Drawn.Text::text).contains("front leg", "back leg");
  }

  @Test
  void aBandIsAPaleAreaBehindEachLine() {
    List<Element> bands = drawn.kind("band");
    assertThat(bands).hasSize(2);
    assertThat(bands.get(0).getAttribute("fill")).isEqualTo(Palette.LIGHT.front());
    assertThat(Drawn.number(bands.get(0), "fill-opacity")).isLessThan(0.2);
    // Up along the upper edge and back along the lower one.
    assertThat(bands.get(0).getAttribute("points").split(" ")).hasSizeGreaterThanOrEqualTo(44);
  }

  @Test
  void aGapSplitsTheLine() {
    List<TrimOutcome> outcomes = new ArrayList<>();
    for (int kmh = 16; kmh <= 32; kmh++) {
      outcomes.add(Samples.outcomeAt(kmh == 24 ? 10 : kmh));
    }
    outcomes.set(
        8,
        new TrimOutcome.NoTrim(
            24 * Samples.KMH,
            trimwright.kernel.trim.NoTrimReason.FEET_CANNOT_REACH,
            Optional.empty()));
    Curve gap = new Curve(outcomes, List.of(), OptionalDouble.empty(), List.of(), Optional.empty());
    Drawn picture =
        Drawn.of(
            CurvePicture.svg(
                Samples.caseFile(),
                Bands.without(gap),
                CurveQuantity.PITCH,
                24 * Samples.KMH,
                Measures.METRIC,
                PictureStyle.sun(390, 240)));
    assertThat(picture.kind("curve")).hasSize(2);
    assertThat(picture.texts()).extracting(Drawn.Text::text).contains("no trim");
  }

  @Test
  void levelAndEvenFeetSpeedsAreMarked() {
    assertThat(drawn(CurveQuantity.PITCH, 20, 820).texts())
        .extracting(Drawn.Text::text)
        .contains("level 26.9");
    assertThat(drawn(CurveQuantity.FOOT_SHARE, 20, 820).texts())
        .extracting(Drawn.Text::text)
        .contains("even feet 21.4", "even feet 33.2");
  }

  @ParameterizedTest
  @EnumSource(CurveQuantity.class)
  void nothingTrimsAndStillThereIsAPicture(CurveQuantity quantity) {
    Drawn empty =
        Drawn.of(
            CurvePicture.svg(
                Samples.caseFile(),
                Bands.without(Samples.emptyCurve()),
                quantity,
                6 * Samples.KMH,
                Measures.METRIC,
                PictureStyle.light(390, 240)));
    assertThat(empty.kind("curve")).isEmpty();
    assertThat(empty.kind("hatch")).hasSize(1);
    assertThat(empty.overlap()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(CurveQuantity.class)
  void imperialHasNoMetricUnitAndTheSameShape(CurveQuantity quantity) {
    Drawn imperial =
        Drawn.of(
            CurvePicture.svg(
                Samples.caseFile(),
                Samples.bands(Samples.curve()),
                quantity,
                20 * Samples.KMH,
                Measures.IMPERIAL,
                PictureStyle.light(820, 280)));
    assertThat(imperial.texts())
        .extracting(Drawn.Text::text)
        .noneMatch(text -> text.matches(".*(km/h|kg|N)$"))
        .anyMatch(text -> text.contains("mph"));
    // One speed, one place: the axis changes its numbers and not its shape.
    double metric = Drawn.number(drawn(quantity, 20, 820).one("mark"), "x1");
    assertThat(Drawn.number(imperial.one("mark"), "x1")).isCloseTo(metric, within(20.0));
  }

  @Test
  void sheetHasThreePanelsOnOneSpeedAxis() {
    Drawn sheet =
        Drawn.of(
            CurvePicture.sheet(
                Samples.caseFile(),
                Samples.bands(Samples.curve()),
                25 * Samples.KMH,
                Measures.METRIC,
                PictureStyle.light(820, 600)));
    assertThat(sheet.kind("plot")).hasSize(3);
    assertThat(sheet.kind("mark")).hasSize(3);
    assertThat(sheet.kind("mark"))
        .extracting(m -> m.getAttribute("x1"))
        .containsOnly(sheet.one("mark").getAttribute("x1"));
  }

  @Property(tries = 150, seed = RunSeed.VALUE)
  void labelsNeverOverlapAndNeverLeaveThePicture(
      @ForAll @DoubleRange(min = 8, max = 42) double kmh,
      @ForAll @DoubleRange(min = 320, max = 1280) double width,
      @ForAll CurveQuantity quantity,
      @ForAll Measures measures) {
    for (String svg :
        List.of(
            CurvePicture.svg(
                Samples.caseFile(),
                Samples.bands(Samples.curve()),
                quantity,
                kmh * Samples.KMH,
                measures,
                PictureStyle.sun(width, 240)),
            CurvePicture.sheet(
                Samples.caseFile(),
                Samples.bands(Samples.curve()),
                kmh * Samples.KMH,
                measures,
                PictureStyle.light(width, 600)))) {
      assertThat(Drawn.of(svg).overlap()).isEmpty();
      assertThat(Drawn.of(svg).outside()).isEmpty();
    }
  }
}
