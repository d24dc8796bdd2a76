package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Outlines as files give them: in any unit, order and position, rounded, open at the trailing edge,
 * or wrong.
 */
class CoordinateOutlineTest {
  private static final int POINTS = 35;

  /** What new points on a spline through 71 rounded ones may change: 0.02 degrees. */
  private static final double ANGLE = 3.5e-4;

  /** Relative change of slope. */
  private static final double SLOPE = 2e-3;

  /** Rounded ordinates turn a cusp's last 2 % a little: 0.05 degrees. */
  private static final double CUSP_ANGLE = 9e-4;

  private static final double CUSP_SLOPE = 5e-3;

  private static final double MOMENT = 5e-4;

  /**
   * Facing points lie at equal distances from the nose here and across the mean line there: up to
   * 0.07 % of the chord with much camber far forward.
   */
  private static final double THICKNESS = 7e-4;

  @ParameterizedTest
  @ValueSource(strings = {"0009", "0012", "2412", "4415", "23012", "6409"})
  void readsBackWhatACodeGives(String code) {
    Section exact = Sections.naca(code);
    SectionShape given = NacaShape.parse(code).outline(POINTS);
    same(Sections.fromOutline("copy", rounded(given.x()), rounded(given.y())), exact);
  }

  private static void same(Section read, Section exact) {
    assertThat(read.zeroLiftAngle()).isCloseTo(exact.zeroLiftAngle(), within(ANGLE));
    assertThat(read.liftSlope()).isCloseTo(exact.liftSlope(), within(SLOPE * exact.liftSlope()));
    assertThat(read.momentAtZeroLift()).isCloseTo(exact.momentAtZeroLift(), within(MOMENT));
    assertThat(read.shape().thickness()).isCloseTo(exact.shape().thickness(), within(THICKNESS));
    assertThat(read.shape().camber()).isCloseTo(exact.shape().camber(), within(THICKNESS));
    assertThat(read.drag(0.5, 1e6, Finish.CLEAN))
        .isCloseTo(exact.drag(0.5, 1e6, Finish.CLEAN), within(2e-4));
  }

  /** Five decimals, as coordinate files have. */
  private static double[] rounded(double[] values) {
    return Arrays.stream(values).map(v -> Math.round(v * 1e5) / 1e5).toArray();
  }

  @Test
  void takesTheLowerSurfaceFirst() {
    SectionShape given = NacaShape.parse("2412").outline(POINTS);
    same(
        Sections.fromOutline("reversed", reversed(given.x()), reversed(given.y())),
        Sections.naca("2412"));
  }

  private static double[] reversed(double[] values) {
    double[] turned = new double[values.length];
    for (int i = 0; i < values.length; i++) {
      turned[i] = values[values.length - 1 - i];
    }
    return turned;
  }

  @Test
  void takesRepeatedPoints() {
    SectionShape given = NacaShape.parse("2412").outline(POINTS);
    same(
        Sections.fromOutline("repeated", repeated(given.x()), repeated(given.y())),
        Sections.naca("2412"));
  }

  private static double[] repeated(double[] values) {
    double[] twice = new double[2 * values.length];
    for (int i = 0; i < twice.length; i++) {
      twice[i] = values[i / 2];
    }
    return twice;
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.2, 0.05, 0.3})
  void takesAnyUnitPlaceAndAngle(double turn) {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] x = new double[given.size()];
    double[] y = new double[given.size()];
    for (int i = 0; i < x.length; i++) {
      double px = given.x()[i];
      double py = given.y()[i];
      x[i] = 120 * (px * Math.cos(turn) - py * Math.sin(turn)) + 7;
      y[i] = 120 * (px * Math.sin(turn) + py * Math.cos(turn)) - 40;
    }
    same(Sections.fromOutline("turned", x, y), Sections.naca("0012"));
  }

  @ParameterizedTest
  @CsvSource({
    "2412, 215, 0, 0",
    "2412, 1, 3, 1",
    "4415, 100, 0, 0",
    "23012, 180, 90, 4",
    "6424, 60, 5, -5"
  })
  void unitAndPlaceOfACamberedSectionDoNotMatter(String code, double scale, double dx, double dy) {
    SectionShape given = NacaShape.parse(code).outline(POINTS);
    double[] x = Arrays.stream(given.x()).map(v -> scale * v + dx).toArray();
    double[] y = Arrays.stream(given.y()).map(v -> scale * v + dy).toArray();
    double read = Sections.fromOutline("elsewhere", x, y).zeroLiftAngle();
    assertThat(read).isCloseTo(Sections.naca(code).zeroLiftAngle(), within(ANGLE));
  }

  /** The mean line's end is found to this: 0.05 degrees, of sections of up to 24 % thickness. */
  private static final double TURNED = 9e-4;

  @ParameterizedTest
  @CsvSource({"0012", "2412", "4412", "4415", "6409", "23012", "23015", "2424"})
  void aTurnedCamberedSectionIsMeasuredFromTheEndsOfItsMeanLine(String code) {
    SectionShape given = NacaShape.parse(code).outline(POINTS);
    for (double turn : new double[] {-0.1, 0.02, 0.1}) {
      double[] x = new double[given.size()];
      double[] y = new double[given.size()];
      for (int i = 0; i < x.length; i++) {
        double px = Math.round(given.x()[i] * 1e5) / 1e3;
        double py = Math.round(given.y()[i] * 1e5) / 1e3;
        x[i] = px * Math.cos(turn) - py * Math.sin(turn);
        y[i] = px * Math.sin(turn) + py * Math.cos(turn);
      }
      ReadOutline read = Sections.readOutline("turned", x, y);
      Section exact = Sections.naca(code);
      assertThat(read.section().zeroLiftAngle()).isCloseTo(exact.zeroLiftAngle(), within(TURNED));
      assertThat(read.section().liftSlope())
          .isCloseTo(exact.liftSlope(), within(SLOPE * exact.liftSlope()));
      OutlineRepair turned = read.repairs().get(0);
      assertThat(turned.kind()).isEqualTo(OutlineRepair.Kind.TURNED);
      assertThat(turned.size()).isCloseTo(turn, within(TURNED));
    }
  }

  @Test
  void closesAnOpenTrailingEdge() {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] y = given.y();
    for (int i = 0; i < y.length; i++) {
      double side = i < y.length / 2 ? 1 : -1;
      y[i] += side * 0.00126 * given.x()[i];
    }
    same(Sections.fromOutline("open", given.x(), y), Sections.naca("0012"));
  }

  @ParameterizedTest
  @CsvSource({"0.1, 0.0", "0.1, 0.1", "0.08, 0.05"})
  void readsACuspWhoseGapTheRoundingSwallows(double eccentricity, double beta) {
    JoukowskiSection exact = new JoukowskiSection(eccentricity, beta);
    SectionShape given = exact.shape(POINTS);
    Section section = Sections.fromOutline("cusp", rounded(given.x()), rounded(given.y()));
    PanelMethod flow = PanelMethod.of(section.shape());
    assertThat(flow.zeroLiftAngle()).isCloseTo(exact.zeroLiftAngle(), within(CUSP_ANGLE));
    assertThat(flow.liftSlope())
        .isCloseTo(exact.liftSlope(), within(CUSP_SLOPE * exact.liftSlope()));
  }

  @Test
  void refusesAWideTrailingEdge() {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] y = given.y();
    for (int i = 0; i < y.length; i++) {
      y[i] += (i < y.length / 2 ? 0.02 : -0.02) * given.x()[i];
    }
    assertThatThrownBy(() -> Sections.fromOutline("wide", given.x(), y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("trailing edge")
        .hasMessageContaining("at most 0.03 chords apart");
  }

  @Test
  void refusesAnOutlineThatStartsAtTheLeadingEdge() {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    int n = POINTS;
    double[] x = new double[2 * n + 2];
    double[] y = new double[2 * n + 2];
    for (int k = 0; k <= n; k++) {
      x[k] = given.x()[n - k];
      y[k] = given.y()[n - k];
      x[n + 1 + k] = given.x()[n + k];
      y[n + 1 + k] = given.y()[n + k];
    }
    assertThatThrownBy(() -> Sections.fromOutline("split", x, y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("trailing edge");
  }

  @Test
  void refusesTooFewPoints() {
    assertThatThrownBy(
            () ->
                Sections.fromOutline(
                    "few", new double[] {1, 0.5, 0, 0.5, 1}, new double[] {0, 0.1, 0, -0.1, 0}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("an outline must have at least 15 different points, had 5");
  }

  @Test
  void refusesWhatIsNotANumberAndUnequalColumns() {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] y = given.y();
    y[3] = Double.NaN;
    assertThatThrownBy(() -> Sections.fromOutline("nan", given.x(), y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("point 4 of an outline");
    assertThatThrownBy(() -> Sections.fromOutline("uneven", given.x(), new double[3]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("as many x as y");
    assertThatThrownBy(() -> Sections.fromOutline("none", new double[0], new double[0]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 15");
    assertThatThrownBy(() -> Sections.fromOutline("one", new double[40], new double[40]))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("at least 15");
  }

  @Test
  void refusesSurfacesThatCross() {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] y = given.y();
    for (int i = 0; i < y.length; i++) {
      if (given.x()[i] > 0.6 && given.x()[i] < 0.95) {
        y[i] = -0.3 * y[i];
      }
    }
    assertThatThrownBy(() -> Sections.fromOutline("crossed", given.x(), y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must not cross");
  }

  @Test
  void refusesASurfaceThatTurnsBack() {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] x = given.x();
    x[10] += 0.3;
    assertThatThrownBy(() -> Sections.fromOutline("back", x, given.y()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("without turning back");
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.05, 3.5})
  void refusesThicknessOutOfRange(double factor) {
    SectionShape given = NacaShape.parse("0012").outline(POINTS);
    double[] y = Arrays.stream(given.y()).map(v -> v * factor).toArray();
    assertThatThrownBy(() -> Sections.fromOutline("thick", given.x(), y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("section thickness must be 0.01 to 0.3 chords");
  }

  private static List<OutlineRepair.Kind> kinds(double[] x, double[] y) {
    return Sections.readOutline("any", x, y).repairs().stream().map(OutlineRepair::kind).toList();
  }

  @Test
  void saysWhatItPutRight() {
    SectionShape given = NacaShape.parse("2412").outline(POINTS);
    double[] x = rounded(given.x());
    double[] y = rounded(given.y());
    assertThat(kinds(x, y)).isEmpty();
    assertThat(kinds(reversed(x), reversed(y))).containsExactly(OutlineRepair.Kind.LOWER_FIRST);
    assertThat(Sections.readOutline("twice", repeated(x), repeated(y)).repairs())
        .containsExactly(new OutlineRepair(OutlineRepair.Kind.REPEATED, x.length, 0));
    double[] open = y.clone();
    for (int i = 0; i < y.length; i++) {
      open[i] += (i < y.length / 2 ? 1 : -1) * 0.00126 * x[i];
    }
    OutlineRepair closed = Sections.readOutline("open", x, open).repairs().get(0);
    assertThat(closed.kind()).isEqualTo(OutlineRepair.Kind.CLOSED);
    assertThat(closed.size()).isCloseTo(0.00252, within(1e-5));
  }

  /** What a dozen points out of place by half a percent of the chord may do: 0.2 degrees. */
  private static final double SLIPPED = 3.5e-3;

  @Test
  void leavesOutPointsThatStepBackALittle() {
    SectionShape given = NacaShape.parse("2412").outline(200);
    double[] x = rounded(given.x());
    double[] y = rounded(given.y());
    for (int i = 30; i < x.length - 30; i += 30) {
      double kept = x[i];
      x[i] = x[i + 1];
      x[i + 1] = kept;
      kept = y[i];
      y[i] = y[i + 1];
      y[i + 1] = kept;
    }
    ReadOutline read = Sections.readOutline("slips", x, y);
    assertThat(read.repairs())
        .singleElement()
        .satisfies(
            repair -> {
              assertThat(repair.kind()).isEqualTo(OutlineRepair.Kind.STEPPED_BACK);
              assertThat(repair.points()).isBetween(10, 13);
              assertThat(repair.size()).isLessThan(0.01);
            });
    assertThat(read.section().zeroLiftAngle())
        .isCloseTo(Sections.naca("2412").zeroLiftAngle(), within(SLIPPED));
  }

  @Test
  void saysThatPointsScatterAndRefusesTooMuchOfIt() {
    SectionShape given = NacaShape.parse("2412").outline(60);
    SplittableRandom random = new SplittableRandom(1);
    double[] noise = random.doubles(given.size(), -1, 1).toArray();
    double[] x = given.x();
    double[] y = given.y();
    for (int i = 1; i < y.length - 1; i++) {
      y[i] += 5e-4 * noise[i];
    }
    OutlineRepair rough = Sections.readOutline("scan", x, y).repairs().get(0);
    assertThat(rough.kind()).isEqualTo(OutlineRepair.Kind.ROUGH);
    assertThat(rough.size()).isBetween(1e-4, 1e-3);
    for (int i = 1; i < y.length - 1; i++) {
      y[i] += 1e-2 * noise[i];
    }
    assertThatThrownBy(() -> Sections.fromOutline("sketch", x, y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("smooth line")
        .hasMessageContaining("scattered by about");
  }

  @Test
  void refusesPointsInNoOrder() {
    SectionShape given = NacaShape.parse("2412").outline(POINTS);
    double[] x = given.x();
    double[] y = given.y();
    for (int i = 0; i < x.length; i++) {
      int j = (i * 29) % x.length;
      x[i] = given.x()[j];
      y[i] = given.y()[j];
    }
    assertThatThrownBy(() -> Sections.fromOutline("shuffled", x, y))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("outline must");
  }
}
