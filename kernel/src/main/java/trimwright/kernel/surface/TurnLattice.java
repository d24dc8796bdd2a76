package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.numeric.LinearSystem;

/**
 * Whole wings and the mast as a vortex lattice in a steady banked turn: the flow that each strip
 * meets turns with the craft, wakes lie along the arcs on which the water passes, and nothing is
 * symmetrical. Sections and the surface's image are as in {@link Lattice}: the image's flow is that
 * of the real vortices at the mirrored point with the level components turned round (the
 * disturbance potential is odd about the surface).
 *
 * <p>Left out beside what {@link Lattice} leaves out: surface waves; forces on the vortices along
 * the chord; the wake's own sinking. Valid for wings under water over their whole span, radii from
 * about three spans.
 *
 * <p>One object is one workspace: not for use by two threads.
 */
public final class TurnLattice {
  /** Arcs of the wake before it goes straight on: ends behind the trailing edge [m]. */
  private static final double[] ARCS = {0.2, 0.5, 1.0, 2.0, 4.0};

  /**
   * Core of a vortex where another surface meets it, over the width of the two strips beside it: so
   * wide that neighbours run into one another, because what they stand for is a sheet. Chosen.
   */
  private static final double WAKE_CORE = 0.1;

  /** Core on a surface's own points, over the two strips' chords: only against division by zero. */
  private static final double OWN_CORE = 1e-6;

  private final List<TurnSheet> wings;
  private final double mastChord;
  private final double mastRake;

  private List<TurnSheet> sheets;
  private TurnMotion motion;
  private double surfaceZ;
  private boolean deep;

  /** Per sheet in water axes; wakes with their points one after the other, edge by edge. */
  private double[][][] bound;

  private double[][] wake;
  private double[][] wakeEnd;
  private double[] strength = {};

  /**
   * A lattice.
   *
   * @param wings from the front to the back, in foil axes
   * @param mastChord [m]; 0 leaves the mast out
   * @param mastRake foot forward positive [rad]
   */
  public TurnLattice(List<PlacedWing> wings, double mastChord, double mastRake) {
    this.wings = wings.stream().map(TurnSheet::wing).toList();
    this.mastChord = mastChord;
    this.mastRake = mastRake;
  }

  /**
   * Solves the flow.
   *
   * @param motion how the craft moves
   * @param datumDepth depth of the datum below the still surface [m]; empty for deep water, where a
   *     mast has no end and is left out
   */
  public void solve(TurnMotion motion, OptionalDouble datumDepth) {
    this.motion = motion;
    deep = datumDepth.isEmpty();
    surfaceZ = -datumDepth.orElse(0);
    sheets = new ArrayList<>(wings);
    if (mastChord > 0 && !deep) {
      double wetted =
          datumDepth.getAsDouble() / (Math.cos(motion.bank()) * Math.cos(motion.pitch()));
      sheets.add(TurnSheet.mast(mastRake, wetted, mastChord));
    }
    place();
    int n = panels();
    double[] matrix = new double[n * n];
    double[] right = new double[n];
    double[] column = new double[3 * n];
    double[] point = new double[3];
    double[] normal = new double[3];
    int i = 0;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      for (int m = 0; m < sheet.along; m++) {
        for (int k = 0; k < sheet.count; k++) {
          water(sheet.control[m], k, point);
          water(sheet.normal[m], k, normal);
          Arrays.fill(column, 0);
          influences(s, point, column);
          for (int j = 0; j < n; j++) {
            matrix[i * n + j] =
                column[3 * j] * normal[0]
                    + column[3 * j + 1] * normal[1]
                    + column[3 * j + 2] * normal[2];
          }
          int first = i - m * sheet.count;
          double term = (2 * Math.PI / sheet.liftSlope[k] - 1) / (Math.PI * sheet.chord[k]);
          for (int row = 0; row < sheet.along; row++) {
            matrix[i * n + first + row * sheet.count] -= term;
          }
          right[i] = -normal[0] * motion.streamX(point[1]) - normal[1] * motion.streamY(point[0]);
          i++;
        }
      }
    }
    strength = new double[n];
    LinearSystem.factor(matrix, n).solve(right, strength);
  }

  private int panels() {
    int n = 0;
    for (TurnSheet s : sheets) {
      n += s.along * s.count;
    }
    return n;
  }

  private void water(double[] foil, int i, double[] out) {
    motion.place(foil[3 * i], foil[3 * i + 1], foil[3 * i + 2], out, 0);
  }

  /** Puts vortices and wakes where the motion has them. */
  private void place() {
    bound = new double[sheets.size()][][];
    wake = new double[sheets.size()][];
    wakeEnd = new double[sheets.size()][];
    int points = ARCS.length + 1;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      int edges = sheet.count + 1;
      bound[s] = new double[sheet.along][3 * edges];
      wake[s] = new double[3 * edges * points];
      wakeEnd[s] = new double[2 * edges];
      for (int e = 0; e < edges; e++) {
        for (int m = 0; m < sheet.along; m++) {
          double[] b = sheet.bound[m];
          motion.place(b[3 * e], b[3 * e + 1], b[3 * e + 2], bound[s][m], 3 * e);
        }
        double[] t = sheet.trail;
        double[] w = wake[s];
        int at = 3 * e * points;
        motion.place(t[3 * e], t[3 * e + 1], t[3 * e + 2], w, at);
        for (int a = 0; a < ARCS.length; a++) {
          drift(w, at, ARCS[a], motion.curvature() * ARCS[a], at + 3 * (a + 1));
        }
        double dx = motion.streamX(w[at + 3 * ARCS.length + 1]);
        double dy = motion.streamY(w[at + 3 * ARCS.length]);
        double length = Math.hypot(dx, dy);
        wakeEnd[s][2 * e] = dx / length;
        wakeEnd[s][2 * e + 1] = dy / length;
      }
    }
  }

  /** Where water that leaves a point is after a path of the datum's [m], on its arc. */
  private static void drift(double[] w, int at, double path, double angle, int to) {
    double x = w[at];
    double y = w[at + 1];
    // X' = X cos + Y sin, Y' = Y cos - X sin about the turn's centre; in a form without the radius.
    double sin = Math.sin(angle);
    double half = Math.sin(0.5 * angle);
    double versine = 2 * half * half;
    double ratio = Math.abs(angle) < 1e-9 ? 1 : sin / angle;
    double bend = Math.abs(angle) < 1e-9 ? 0.5 * angle : versine / angle;
    w[to] = x * (1 - versine) + y * sin - path * ratio;
    w[to + 1] = y * (1 - versine) - x * sin + path * bend;
    w[to + 2] = w[at + 2];
  }

  /** What unit strengths of all panels induce at a point of a sheet, image included. */
  private void influences(int target, double[] point, double[] column) {
    gather(target, point[0], point[1], point[2], 1, column);
    if (!deep) {
      gather(target, point[0], point[1], 2 * surfaceZ - point[2], -1, column);
    }
  }

  private void gather(int target, double x, double y, double z, double level, double[] column) {
    double[] edge = new double[3];
    double[] v = new double[3];
    int first = 0;
    int points = ARCS.length + 1;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      int panels = sheet.count;
      for (int e = 0; e <= sheet.count; e++) {
        double core = core(sheet, s == target, Math.max(e - 1, 0), Math.min(e, sheet.count - 1));
        Arrays.fill(edge, 0);
        int at = 3 * e * points;
        for (int a = 0; a < ARCS.length; a++) {
          VortexLine.segment(
              wake[s], at + 3 * a, wake[s], at + 3 * (a + 1), x, y, z, core, 1, edge);
        }
        VortexLine.ray(
            wake[s],
            at + 3 * ARCS.length,
            wakeEnd[s][2 * e],
            wakeEnd[s][2 * e + 1],
            0,
            x,
            y,
            z,
            core,
            1,
            edge);
        for (int m = 0; m < sheet.along; m++) {
          v[0] = edge[0];
          v[1] = edge[1];
          v[2] = edge[2];
          VortexLine.segment(bound[s][m], 3 * e, wake[s], at, x, y, z, core, 1, v);
          int p = first + m * panels + e;
          // Downstream at the panel's outer edge, upstream at its inner one.
          if (e > 0) {
            add(column, p - 1, v, 1, level);
          }
          if (e < sheet.count) {
            add(column, p, v, -1, level);
            Arrays.fill(v, 0);
            double own = core(sheet, s == target, e, e);
            VortexLine.segment(bound[s][m], 3 * e, bound[s][m], 3 * e + 3, x, y, z, own, 1, v);
            add(column, p, v, 1, level);
          }
        }
      }
      first += sheet.along * panels;
    }
  }

  /** Square of the core of what lies on or between two strips. */
  private static double core(TurnSheet sheet, boolean own, int inner, int outer) {
    double radius =
        own
            ? OWN_CORE * (sheet.chord[inner] + sheet.chord[outer])
            : WAKE_CORE * (sheet.width[inner] + sheet.width[outer]);
    return radius * radius;
  }

  private static void add(double[] column, int p, double[] v, double sign, double level) {
    column[3 * p] += sign * level * v[0];
    column[3 * p + 1] += sign * level * v[1];
    column[3 * p + 2] += sign * v[2];
  }

  /**
   * Forces of the last solution: Kutta and Joukowski on every bound vortex with the velocity that
   * really is there, drag and moment of each strip's section with it.
   *
   * @param polars the wings' sections at the datum's speed
   * @return one per wing, in the order given, and last the mast, where there is one
   */
  public List<TurnWing> loads(List<StripPolars> polars) {
    List<TurnWing> loads = new ArrayList<>();
    int first = 0;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      loads.add(load(s, first, s < polars.size() ? polars.get(s) : null));
      first += sheet.along * sheet.count;
    }
    return loads;
  }

  private TurnWing load(int s, int first, StripPolars polars) {
    TurnSheet sheet = sheets.get(s);
    int n = panels();
    double[] force = new double[3];
    double[] moment = new double[3];
    double[] stripForce = new double[3 * sheet.count];
    double[] stripPlace = new double[3 * sheet.count];
    double[] lift = new double[sheet.count];
    double[] column = new double[3 * n];
    double margin = Double.POSITIVE_INFINITY;
    for (int k = 0; k < sheet.count; k++) {
      double[] place = new double[3];
      double[] stream = new double[2];
      double circulation = 0;
      for (int m = 0; m < sheet.along; m++) {
        double[] b = bound[s][m];
        double[] mid = new double[3];
        for (int c = 0; c < 3; c++) {
          mid[c] = b[3 * k + c] + sheet.middle[k] * (b[3 * k + 3 + c] - b[3 * k + c]);
        }
        Arrays.fill(column, 0);
        influences(s, mid, column);
        double[] v = {motion.streamX(mid[1]), motion.streamY(mid[0]), 0};
        for (int j = 0; j < n; j++) {
          for (int c = 0; c < 3; c++) {
            v[c] += strength[j] * column[3 * j + c];
          }
        }
        double gamma = strength[first + m * sheet.count + k];
        circulation += gamma;
        double lx = b[3 * k + 3] - b[3 * k];
        double ly = b[3 * k + 4] - b[3 * k + 1];
        double lz = b[3 * k + 5] - b[3 * k + 2];
        double[] f = {
          2 * gamma * (v[1] * lz - v[2] * ly),
          2 * gamma * (v[2] * lx - v[0] * lz),
          2 * gamma * (v[0] * ly - v[1] * lx)
        };
        addAt(f, mid, force, moment);
        for (int c = 0; c < 3; c++) {
          stripForce[3 * k + c] += f[c];
          place[c] += mid[c] / sheet.along;
        }
        if (m == 0) {
          stream[0] = motion.streamX(mid[1]);
          stream[1] = motion.streamY(mid[0]);
        }
      }
      double speed = Math.hypot(stream[0], stream[1]);
      lift[k] = 2 * circulation / (sheet.chord[k] * speed);
      System.arraycopy(place, 0, stripPlace, 3 * k, 3);
      double area = sheet.chord[k] * sheet.width[k];
      addMoment(s, k, speed * speed * sheet.momentAtZeroLift[k] * area * sheet.chord[k], moment);
      if (polars != null) {
        int half = sheet.half(k);
        double angle = lift[k] / sheet.liftSlope[k] + sheet.zeroLift[k];
        double drag = polars.drag(half, angle) * area * speed;
        double[] f = {drag * stream[0], drag * stream[1], 0};
        addAt(f, place, force, moment);
        margin = Math.min(margin, polars.stall().highest()[half] - angle);
      }
    }
    return new TurnWing(force, moment, stripForce, stripPlace, lift, margin);
  }

  /** A nose-up couple of a strip's section, about its own span. */
  private void addMoment(int s, int k, double couple, double[] moment) {
    double[] b = bound[s][0];
    double lx = b[3 * k + 3] - b[3 * k];
    double ly = b[3 * k + 4] - b[3 * k + 1];
    double lz = b[3 * k + 5] - b[3 * k + 2];
    double length = Math.sqrt(lx * lx + ly * ly + lz * lz);
    moment[0] += couple * lx / length;
    moment[1] += couple * ly / length;
    moment[2] += couple * lz / length;
  }

  private static void addAt(double[] f, double[] r, double[] force, double[] moment) {
    for (int c = 0; c < 3; c++) {
      force[c] += f[c];
    }
    moment[0] += r[1] * f[2] - r[2] * f[1];
    moment[1] += r[2] * f[0] - r[0] * f[2];
    moment[2] += r[0] * f[1] - r[1] * f[0];
  }
}
