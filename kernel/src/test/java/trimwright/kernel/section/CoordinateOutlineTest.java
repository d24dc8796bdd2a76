package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
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

  @Test
  void measuresATurnedCamberedSectionFromItsLongestChord() {
    SectionShape given = NacaShape.parse("4412").outline(POINTS);
    double turn = 0.1;
    double[] x = new double[given.size()];
    double[] y = new double[given.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = 100 * (given.x()[i] * Math.cos(turn) - given.y()[i] * Math.sin(turn));
      y[i] = 100 * (given.x()[i] * Math.sin(turn) + given.y()[i] * Math.cos(turn));
    }
    Section section = Sections.fromOutline("turned", x, y);
    // The furthest place lies a little below the drawn chord line's nose: less than half a degree.
    assertThat(section.zeroLiftAngle())
        .isCloseTo(Sections.naca("4412").zeroLiftAngle(), within(Math.toRadians(0.5)));
    assertThat(section.liftSlope()).isCloseTo(Sections.naca("4412").liftSlope(), within(SLOPE * 6));
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
}
