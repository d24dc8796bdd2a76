package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.seed.RunSeed;

class BoardHullPropertyTest {
  /** Quadrature between kinks, see the hull. */
  private static final double QUADRATURE = 2e-4;

  /** Boxes of a sum by brute force: their own error. */
  private static final double BOXES = 2e-3;

  @Property(tries = 200, seed = RunSeed.VALUE)
  void theVolumeComesOut(@ForAll long seed) {
    BoardHull hull = random(seed);
    Hydrostatics all = hull.under(0, 3 * hull.thickness());
    double volume = hull.volume();
    assertThat(all.volume()).isCloseTo(volume, within(QUADRATURE * volume));
    assertThat(all.centreAhead()).isCloseTo(0.5 * hull.length(), within(1e-9));
    assertThat(all.centreAbove())
        .isCloseTo(0.5 * hull.thickness(), within(QUADRATURE * hull.thickness()));
    assertThat(all.waterplane()).isCloseTo(0, within(1e-9));
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void halfUnderAndLevelTheClosedFormsHold(@ForAll long seed) {
    BoardHull hull = random(seed);
    double n = hull.exponent();
    double width = hull.beam() * (n + 1) / n;
    double length = hull.length();
    Hydrostatics half = hull.under(0, 0.5 * hull.thickness());
    assertThat(half.volume()).isCloseTo(0.5 * hull.volume(), within(QUADRATURE * hull.volume()));
    double plane = width * length * n / (n + 1);
    assertThat(half.waterplane()).isCloseTo(plane, within(QUADRATURE * plane));
    double inertia = width * length * length * length / 4 * (1 / 3.0 - 1 / (n + 3));
    assertThat(half.waterplaneInertia()).isCloseTo(inertia, within(20 * QUADRATURE * inertia));
    assertThat(half.sides()).isCloseTo(length * hull.thickness(), within(1e-9));
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void aTrimmedBoardAgreesWithASumOfBoxes(@ForAll long seed) {
    BoardHull hull = random(seed);
    SplittableRandom random = new SplittableRandom(seed);
    double trim = 0.2 * random.nextDouble();
    double depth = (0.1 + 2 * random.nextDouble()) * hull.thickness();
    Hydrostatics under = hull.under(trim, depth);
    double[] boxes = boxes(hull, trim, depth);
    double volume = hull.volume();
    assertThat(under.volume()).isCloseTo(boxes[0], within(BOXES * volume));
    assertThat(under.volume() * under.centreAhead())
        .isCloseTo(boxes[1], within(BOXES * volume * hull.length()));
    assertThat(under.volume() * under.centreAbove())
        .isCloseTo(boxes[2], within(BOXES * volume * hull.thickness()));
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void deeperByALittleTakesTheWaterplaneMore(@ForAll long seed) {
    BoardHull hull = random(seed);
    SplittableRandom random = new SplittableRandom(seed);
    double trim = 0.1 * random.nextDouble();
    double depth = (0.2 + random.nextDouble()) * hull.thickness();
    double step = 1e-5;
    double more =
        (hull.under(trim, depth + step).volume() - hull.under(trim, depth - step).volume())
            / (2 * step);
    double plane = hull.under(trim, depth).waterplane();
    // The pieces between kinks move with the depth, and with them the quadrature's error: at its
    // steepest it changes by its own size over a hundredth of the thickness.
    assertThat(more).isCloseTo(plane, within(0.02 * hull.beam() * hull.length()));
  }

  @Test
  void numbersThatFitNoBoardMoveTheThicknessAndSaySo() {
    BoardHull hull = new BoardHull(1.6, 0.6, 0.05, 0.1);
    assertThat(hull.contradictory()).isTrue();
    assertThat(hull.thickness()).isGreaterThan(0.1);
    assertThat(hull.under(0, 1).volume()).isCloseTo(0.1, within(1e-3));
    assertThat(new BoardHull(1.65, 0.66, 0.12, 0.095).contradictory()).isFalse();
  }

  @Test
  void nothingIsUnderWaterAboveIt() {
    assertThat(new BoardHull(1.65, 0.66, 0.12, 0.095).under(0.1, 0).volume()).isZero();
    assertThatThrownBy(() -> new BoardHull(0, 1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be above 0");
  }

  private static BoardHull random(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double length = 1.2 + random.nextDouble();
    double width = 0.4 + 0.5 * random.nextDouble();
    double thickness = 0.08 + 0.08 * random.nextDouble();
    double fullness = 0.5 + 0.35 * random.nextDouble();
    return new BoardHull(length, width, thickness, fullness * length * width * thickness);
  }

  /** Volume and first moments along and above the bottom, by small boxes. */
  private static double[] boxes(BoardHull hull, double trim, double depth) {
    int along = 400;
    int up = 200;
    double n = hull.exponent();
    double width = hull.beam() * (n + 1) / n;
    double dx = hull.length() / along;
    double dz = hull.thickness() / up;
    double[] sums = new double[3];
    for (int i = 0; i < along; i++) {
      double x = (i + 0.5) * dx;
      for (int k = 0; k < up; k++) {
        double z = (k + 0.5) * dz;
        if (depth - x * Math.sin(trim) - z * Math.cos(trim) > 0) {
          double box =
              width
                  * (1 - Math.pow(Math.abs(2 * x / hull.length() - 1), n))
                  * (1 - Math.pow(Math.abs(2 * z / hull.thickness() - 1), n))
                  * dx
                  * dz;
          sums[0] += box;
          sums[1] += box * x;
          sums[2] += box * z;
        }
      }
    }
    return sums;
  }

  @Property(tries = 200, seed = RunSeed.VALUE)
  void theTableOfPowersIsThePower(
      @ForAll @DoubleRange(min = 0, max = 1) double share,
      @ForAll @DoubleRange(min = 0.31, max = 0.94) double fullness) {
    BoardHull hull = new BoardHull(1.6, 0.6, 0.1, fullness * 1.6 * 0.6 * 0.1);
    // Emptier boards have an exponent below 2, whose curve bends sharply at 0.
    double tolerance = hull.exponent() < 3 ? 2e-4 : 1e-8;
    assertThat(hull.power(share)).isCloseTo(Math.pow(share, hull.exponent()), within(tolerance));
  }
}
