package trimwright.reference.second;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import trimwright.reference.Check;
import trimwright.reference.CheckRunner;
import trimwright.reference.Provenance;

/** Works out again the figures that the tables call evaluated, by the second ways. */
class EvaluatedFiguresTest {
  /** The tables print four decimals. */
  private static final double PRINTED = 6e-5;

  /** The tables print five decimals. */
  private static final double PRINTED_FINE = 6e-6;

  private static final Map<String, Check> CHECKS =
      CheckRunner.checks().stream()
          .filter(check -> check.provenance() == Provenance.EVALUATED)
          .collect(Collectors.toMap(Check::id, Function.identity()));

  @Test
  void liftingLineOfStraightTaper() {
    for (double taper : new double[] {0.2, 0.4, 1}) {
      LiftingLine line = LiftingLine.of(8, e -> 1 - (1 - taper) * e, 2 * Math.PI, 200);
      String id = "d-line-taper-" + (taper == 1 ? "1" : taper) + "-ar8-";
      assertFigure(id + "slope", line.liftSlope(), PRINTED);
      assertFigure(id + "drag", 1 + line.extraDrag(), PRINTED);
    }
  }

  @Test
  void secondLatticeOfStraightTaper() {
    double[][] wings = {{6, 0.4}, {8, 0.2}, {8, 0.4}, {8, 1}, {12, 0.4}, {20, 1}};
    for (double[] wing : wings) {
      SecondLattice lattice = SecondLattice.of(wing[0], wing[1], 0, 48, 24, false);
      String id = "d-surface-taper-" + (wing[1] == 1 ? "1" : wing[1]) + "-ar" + (int) wing[0] + "-";
      assertFigure(id + "slope", lattice.liftSlope(), PRINTED);
      assertFigure(id + "drag-far", 1 + lattice.extraDrag(), PRINTED);
      assertFigure(id + "drag-bound", 1 + lattice.extraDrag(), PRINTED);
    }
  }

  @Test
  void secondLatticeOfTheSweptWing() {
    double sweep = Math.PI / 4;
    // Printed to three decimals.
    assertFigure("d-surface-swept", SecondLattice.of(5, 1, sweep, 64, 4, false).liftSlope(), 6e-4);
    // Bertin's example itself, by the four equal strips it is worked with.
    assertThat(SecondLattice.of(5, 1, sweep, 4, 1, true).liftSlope())
        .isCloseTo(3.443, within(2e-3));
  }

  @Test
  void interferenceFactorOfTheBiplane() {
    for (String gap : new String[] {"0.05", "0.1", "0.2", "0.25", "0.3", "0.5"}) {
      double factor = PlaneIntegrals.biplaneFactor(Double.parseDouble(gap), 2000);
      assertFigure("b-sigma-integral-" + gap, factor, PRINTED);
    }
  }

  @Test
  void plateBelowTheSurface() {
    for (String depth : new String[] {"0.25", "0.5", "1", "2", "4"}) {
      double ratio = PlaneIntegrals.plateRatio(Double.parseDouble(depth), 500);
      // The table's figures come from a thousand vortices.
      assertFigure("b-plate-" + depth, ratio, 2e-5);
    }
  }

  @Test
  void ellipticWingBelowTheSurface() {
    double[][] wings = {{10, 1}, {10, 2}, {20, 1}, {20, 0.5}};
    for (double[] wing : wings) {
      double slope = 2 * Math.PI;
      double induced = 1 / (Math.PI * wing[0]);
      double sigma = PlaneIntegrals.biplaneFactor(2 * wing[1] / wing[0], 2000);
      double ratio =
          (1 / slope + induced)
              / (1 / (slope * PlaneIntegrals.plateRatio(wing[1], 500)) + (1 + sigma) * induced);
      String depth = wing[1] == 0.5 ? "0.5" : Integer.toString((int) wing[1]);
      assertFigure("b-finite-ar" + (int) wing[0] + "-" + depth, ratio, PRINTED);
    }
  }

  @Test
  void meanLinesOfFourDigits() {
    for (String digits : new String[] {"14", "23", "24", "25", "44", "46", "64"}) {
      double camber = (digits.charAt(0) - '0') / 100.0;
      double place = (digits.charAt(1) - '0') / 10.0;
      assertMeanLine(
          digits + "xx",
          x ->
              x < place
                  ? 2 * camber / (place * place) * (place - x)
                  : 2 * camber / ((1 - place) * (1 - place)) * (place - x));
    }
  }

  @Test
  void meanLinesOfFiveDigits() {
    // NACA Report 537, table of m and k1 for a design lift of 0.3, from memory.
    double[][] lines = {
      {10, 0.058, 361.4},
      {20, 0.126, 51.64},
      {30, 0.2025, 15.957},
      {40, 0.29, 6.643},
      {50, 0.391, 3.23}
    };
    for (double[] line : lines) {
      double m = line[1];
      double k = line[2];
      assertMeanLine(
          "2" + (int) line[0] + "xx",
          x -> x < m ? k / 6 * (3 * x * x - 6 * m * x + m * m * (3 - m)) : -k * m * m * m / 6);
    }
  }

  @Test
  void joukowskiSections() {
    assertFigure("c-jouk-slope-sym", joukowskiLift(0.1, 0), PRINTED_FINE);
    assertFigure("c-jouk-slope-cambered", joukowskiLift(0.1, 0.05), PRINTED_FINE);
    assertFigure("c-jouk-slope-more-cambered", joukowskiLift(0.08, 0.1), PRINTED_FINE);
  }

  /** 8 pi R sin(5 degrees) over the chord, the farthest distance from the trailing edge. */
  private static double joukowskiLift(double back, double up) {
    double radius = Math.hypot(1 + back, up);
    double chord = 0;
    for (int i = 0; i < 1_000_000; i++) {
      double angle = 2 * Math.PI * i / 1_000_000;
      double re = -back + radius * Math.cos(angle);
      double im = up + radius * Math.sin(angle);
      double square = re * re + im * im;
      chord = Math.max(chord, Math.hypot(re + re / square - 2, im - im / square));
    }
    return 8 * Math.PI * radius * Math.sin(Math.toRadians(5)) / chord;
  }

  private static void assertMeanLine(String line, DoubleUnaryOperator slope) {
    double[] values = PlaneIntegrals.meanLine(slope, 20_000);
    for (String way : new String[] {"thin", "panel"}) {
      assertFigure("c-" + way + "-a0-" + line, Math.toDegrees(values[0]), PRINTED);
      assertFigure("c-" + way + "-cm-" + line, values[1], PRINTED_FINE);
    }
  }

  private static void assertFigure(String id, double again, double printed) {
    assertThat(CHECKS).containsKey(id);
    assertThat(CHECKS.get(id).expected()).as(id).isCloseTo(again, within(printed));
  }
}
