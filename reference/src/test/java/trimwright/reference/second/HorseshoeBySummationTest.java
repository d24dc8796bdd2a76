package trimwright.reference.second;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/**
 * One horseshoe on each half of a swept, tapered, drooped, twisted wing at pitch, with its image:
 * its strength from the law of Biot and Savart summed over short pieces of the vortices' path,
 * against what the shipped lattice of a single strip gives by closed formulas.
 */
class HorseshoeBySummationTest {
  /** What the pieces leave over. */
  private static final double SUMMATION = 2e-6;

  private static final int PIECES = 40_000;

  private static final double SPAN = 3;
  private static final double ROOT_CHORD = 1;
  private static final double TIP_CHORD = 0.6;
  private static final double TIP_BEHIND = 0.5;
  private static final double TIP_BELOW = 0.2;
  private static final double TIP_TWIST = -0.03;

  @ParameterizedTest
  @CsvSource({"0,0,0", "4,3,0", "4,3,0.7", "-2,1,1.5", "12,0,0.9"})
  void strengthOfOneHorseshoe(double pitchDegrees, double incidenceDegrees, double depth) {
    Section section = Sections.naca("2412");
    double pitch = Math.toRadians(pitchDegrees);
    double incidence = Math.toRadians(incidenceDegrees);
    WingShape shape =
        new WingShape(
            SPAN,
            List.of(
                new Station(0, ROOT_CHORD, 0, 0, 0, section),
                new Station(1, TIP_CHORD, -TIP_BEHIND, -TIP_BELOW, TIP_TWIST, section)));
    Lattice lattice =
        new Lattice(List.of(new PlacedWing(shape, 0, 0, incidence, new LatticeSize(1, 1))), true);
    lattice.solve(pitch, depth == 0 ? OptionalDouble.empty() : OptionalDouble.of(depth));
    double shipped = lattice.flows().get(0).stripLift()[0];

    // The single strip's centre: half way in the angle whose sine is the fraction.
    double e = Math.sin(Math.PI / 4);
    double[] rootStart = water(0, 0, incidence, 0, pitch);
    double[] rootTrail = water(0, 0.75, incidence, 0, pitch);
    double[] tipStart = water(1, 0, incidence, 0.5 * SPAN, pitch);
    double[] tipTrail = water(1, 0.75, incidence, 0.5 * SPAN, pitch);
    double[] control = water(e, 0.5, incidence, 0.5 * SPAN * e, pitch);
    double noLift = pitch + incidence + e * TIP_TWIST - section.zeroLiftAngle();
    double[] along = {Math.cos(noLift), 0, -Math.sin(noLift)};
    double[] normal = cross(minus(tipStart, rootStart), along);

    double[] induced = new double[3];
    double[][] starboard = {rootTrail, rootStart, tipStart, tipTrail};
    double[][] port = {
      sideways(tipTrail), sideways(tipStart), sideways(rootStart), sideways(rootTrail)
    };
    for (double[][] path : List.of(starboard, port)) {
      addHorseshoe(path, control, induced);
      if (depth != 0) {
        // The image at high Froude number: the path mirrored in the surface, the sense kept.
        double[][] image = new double[4][];
        for (int i = 0; i < 4; i++) {
          image[i] = new double[] {path[i][0], path[i][1], -2 * depth - path[i][2]};
        }
        addHorseshoe(image, control, induced);
      }
    }
    // The stream is (-1, 0, 0); no flow crosses the line of no lift.
    double strength = normal[0] / dot(induced, normal);
    double chord = ROOT_CHORD + e * (TIP_CHORD - ROOT_CHORD);
    assertThat(shipped).isCloseTo(2 * strength / chord, within(SUMMATION));
  }

  /** A point of the chord line, a share of the chord behind its quarter, in water axes, z down. */
  private static double[] water(
      double fraction, double behindQuarter, double incidence, double y, double pitch) {
    double chord = ROOT_CHORD + fraction * (TIP_CHORD - ROOT_CHORD);
    double angle = incidence + fraction * TIP_TWIST;
    double ahead = -TIP_BEHIND * fraction - behindQuarter * chord * Math.cos(angle);
    double above = -TIP_BELOW * fraction - behindQuarter * chord * Math.sin(angle);
    return new double[] {
      ahead * Math.cos(pitch) - above * Math.sin(pitch),
      y,
      -(ahead * Math.sin(pitch) + above * Math.cos(pitch))
    };
  }

  /** From far behind to the first point, along the path, and far behind again. */
  private static void addHorseshoe(double[][] path, double[] at, double[] velocity) {
    addWake(path[0], at, -1, velocity);
    for (int i = 0; i < 3; i++) {
      double[] from = path[i];
      double[] step = minus(path[i + 1], from);
      for (int k = 0; k < PIECES; k++) {
        double share = (k + 0.5) / PIECES;
        double[] middle = {
          from[0] + share * step[0], from[1] + share * step[1], from[2] + share * step[2]
        };
        addPiece(middle, step, 1.0 / PIECES, at, velocity);
      }
    }
    addWake(path[3], at, 1, velocity);
  }

  private static void addWake(double[] start, double[] at, int sense, double[] velocity) {
    double[] backward = {-1, 0, 0};
    for (int k = 0; k < PIECES; k++) {
      // Distance u/(1-u): every piece to infinity in finitely many steps.
      double u = (k + 0.5) / PIECES;
      double distance = u / (1 - u);
      double length = 1 / ((1 - u) * (1 - u)) / PIECES;
      double[] middle = {start[0] - distance, start[1], start[2]};
      addPiece(middle, backward, sense * length, at, velocity);
    }
  }

  private static void addPiece(
      double[] middle, double[] direction, double length, double[] at, double[] velocity) {
    double[] r = minus(at, middle);
    double distance = Math.sqrt(dot(r, r));
    double[] turn = cross(direction, r);
    double factor = length / (4 * Math.PI * distance * distance * distance);
    for (int i = 0; i < 3; i++) {
      velocity[i] += factor * turn[i];
    }
  }

  private static double[] sideways(double[] a) {
    return new double[] {a[0], -a[1], a[2]};
  }

  private static double[] minus(double[] a, double[] b) {
    return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
