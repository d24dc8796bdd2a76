package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.numeric.LinearSystem;

/**
 * A second way to the lattice's answer, as plain as can be: both halves, every image, every vortex
 * as a list of straight segments in three dimensions with the textbook formula, wakes cut off far
 * behind. Shares nothing with the kernel's loops but the strips' geometry.
 */
final class NaiveLattice {
  private static final double FAR = 1e5;

  private record Vector(double x, double y, double z) {
    Vector minus(Vector o) {
      return new Vector(x - o.x, y - o.y, z - o.z);
    }

    Vector plus(Vector o) {
      return new Vector(x + o.x, y + o.y, z + o.z);
    }

    Vector times(double f) {
      return new Vector(x * f, y * f, z * f);
    }

    double dot(Vector o) {
      return x * o.x + y * o.y + z * o.z;
    }

    Vector cross(Vector o) {
      return new Vector(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double length() {
      return Math.sqrt(dot(this));
    }
  }

  private record Panel(
      List<Vector> line, Vector control, Vector normal, Vector middle, Vector bound) {}

  /**
   * Forward and upward force and nose-up moment about the datum, per unit of dynamic pressure, and
   * the largest difference of circulation between port and starboard.
   */
  record Answer(double forward, double up, double noseUp, double asymmetry) {}

  private NaiveLattice() {}

  /** Solves one wing with one panel along the chord. */
  static Answer solve(PlacedWing wing, double pitch, double depth) {
    Strips s = new Strips(wing);
    List<Panel> panels = new ArrayList<>();
    for (int side = -1; side <= 1; side += 2) {
      for (int k = 0; k < s.count; k++) {
        panels.add(panel(s, k, side, pitch));
      }
    }
    int n = panels.size();
    double[] matrix = new double[n * n];
    double[] right = new double[n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        matrix[i * n + j] =
            velocity(panels.get(j), panels.get(i).control, depth).dot(panels.get(i).normal);
      }
      int k = i % s.count;
      matrix[i * n + i] -= (2 * Math.PI / s.liftSlope(k) - 1) / (Math.PI * s.chord[k]);
      right[i] = panels.get(i).normal.x;
    }
    double[] strength = new double[n];
    LinearSystem.factor(matrix, n).solve(right, strength);
    double forward = 0;
    double up = 0;
    double noseUp = 0;
    for (int i = 0; i < n; i++) {
      Panel p = panels.get(i);
      Vector v = new Vector(-1, 0, 0);
      for (int j = 0; j < n; j++) {
        v = v.plus(velocity(panels.get(j), p.middle, depth).times(strength[j]));
      }
      Vector f = v.cross(p.bound).times(2 * strength[i]);
      forward += f.x;
      up -= f.z;
      noseUp += -f.z * p.middle.x + f.x * p.middle.z;
    }
    for (int k = 0; k < s.count; k++) {
      noseUp += 2 * s.momentAtZeroLift(k) * s.chord[k] * s.chord[k] * s.width[k];
    }
    double asymmetry = 0;
    for (int k = 0; k < s.count; k++) {
      asymmetry = Math.max(asymmetry, Math.abs(strength[k] - strength[s.count + k]));
    }
    return new Answer(forward, up, noseUp, asymmetry);
  }

  private static Vector turned(double ahead, double y, double above, double pitch) {
    return new Vector(
        ahead * Math.cos(pitch) - above * Math.sin(pitch),
        y,
        -(ahead * Math.sin(pitch) + above * Math.cos(pitch)));
  }

  private static Panel panel(Strips s, int k, int side, double pitch) {
    int inner = k;
    int outer = k + 1;
    Vector a =
        turned(s.edgeAhead(inner, 0.25), side * s.edgeY[inner], s.edgeAbove(inner, 0.25), pitch);
    Vector b =
        turned(s.edgeAhead(outer, 0.25), side * s.edgeY[outer], s.edgeAbove(outer, 0.25), pitch);
    Vector at = turned(s.edgeAhead(inner, 1), side * s.edgeY[inner], s.edgeAbove(inner, 1), pitch);
    Vector bt = turned(s.edgeAhead(outer, 1), side * s.edgeY[outer], s.edgeAbove(outer, 1), pitch);
    Vector behind = new Vector(-FAR, 0, 0);
    // Circulation runs from port to starboard along the bound part on both sides.
    List<Vector> line =
        side > 0
            ? List.of(at.plus(behind), at, a, b, bt, bt.plus(behind))
            : List.of(bt.plus(behind), bt, b, a, at, at.plus(behind));
    double angle = pitch + s.incidence[k] - s.zeroLiftAngle(k);
    Vector chord = new Vector(Math.cos(angle), 0, -Math.sin(angle));
    Vector bound = side > 0 ? b.minus(a) : a.minus(b);
    Vector normal = bound.cross(chord);
    double t = (s.centreY[k] - s.edgeY[k]) / s.width[k];
    return new Panel(
        line,
        turned(s.centreAhead(k, 0.75), side * s.centreY[k], s.centreAbove(k, 0.75), pitch),
        normal.times(1 / normal.length()),
        a.plus(b.minus(a).times(t)),
        bound);
  }

  /** A real horseshoe and its image, whose vertical parts turn round when mirrored. */
  private static Vector velocity(Panel source, Vector at, double depth) {
    Vector v = new Vector(0, 0, 0);
    List<Vector> line = source.line;
    for (int i = 1; i < line.size(); i++) {
      v = v.plus(segment(line.get(i - 1), line.get(i), at));
      v = v.plus(segment(mirror(line.get(i - 1), depth), mirror(line.get(i), depth), at));
    }
    return v;
  }

  private static Vector mirror(Vector p, double depth) {
    return new Vector(p.x, p.y, -2 * depth - p.z);
  }

  private static Vector segment(Vector a, Vector b, Vector at) {
    Vector r1 = at.minus(a);
    Vector r2 = at.minus(b);
    Vector cross = r1.cross(r2);
    double square = cross.dot(cross);
    double r0 = b.minus(a).length();
    if (square < 1e-20 * r0 * r0) {
      return new Vector(0, 0, 0);
    }
    double along = b.minus(a).dot(r1.times(1 / r1.length()).minus(r2.times(1 / r2.length())));
    return cross.times(along / (4 * Math.PI * square));
  }
}
