package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.surface.SightLines.Points;

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

  /** Per sheet in water axes; wakes with their points one after the other, edge by edge. */
  private double[][][] bound;

  private double[][] wake;
  private double[][] wakeEnd;

  /** Control points, then middles of bound vortices; after them the images of both. */
  private Points targets;

  private int panels;
  private double[] core;
  private double[] ownCore;

  /** 1 at the points of the sheet at hand, 0 at the others. */
  private double[] own;

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
   * @return the flow, with vortices, wakes and image where this motion has them
   */
  public TurnFlow solve(TurnMotion motion, OptionalDouble datumDepth) {
    this.motion = motion;
    boolean deep = datumDepth.isEmpty();
    double surfaceZ = -datumDepth.orElse(0);
    sheets = new ArrayList<>(wings);
    if (mastChord > 0 && !deep) {
      double wetted =
          datumDepth.getAsDouble() / (Math.cos(motion.bank()) * Math.cos(motion.pitch()));
      sheets.add(TurnSheet.mast(mastRake, wetted, mastChord));
    }
    place();
    panels = 0;
    for (TurnSheet s : sheets) {
      panels += s.along * s.count;
    }
    look(deep, surfaceZ);
    return new TurnFlow(sheets, motion, influences(deep));
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

  /** Where the flow is asked for. */
  private void look(boolean deep, double surfaceZ) {
    int count = (deep ? 2 : 4) * panels;
    targets = new Points(count);
    core = new double[count];
    ownCore = new double[count];
    own = new double[count];
    double[] point = new double[3];
    int i = 0;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      for (int m = 0; m < sheet.along; m++) {
        for (int k = 0; k < sheet.count; k++) {
          double[] c = sheet.control[m];
          motion.place(c[3 * k], c[3 * k + 1], c[3 * k + 2], point, 0);
          put(i, point);
          sheet.middle(bound[s][m], k, point);
          put(panels + i, point);
          i++;
        }
      }
    }
    for (int j = 0; j < 2 * panels && !deep; j++) {
      targets.x[2 * panels + j] = targets.x[j];
      targets.y[2 * panels + j] = targets.y[j];
      targets.z[2 * panels + j] = 2 * surfaceZ - targets.z[j];
    }
  }

  private void put(int i, double[] point) {
    targets.x[i] = point[0];
    targets.y[i] = point[1];
    targets.z[i] = point[2];
  }

  /** What unit strengths of all panels induce at control points and middles, image included. */
  private Points[] influences(boolean deep) {
    Points[] all = new Points[panels];
    Arcs arcs = new Arcs(targets.x.length);
    int first = 0;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      mark(first, sheet.along * sheet.count);
      for (int e = 0; e <= sheet.count; e++) {
        cores(sheet, Math.max(e - 1, 0), Math.min(e, sheet.count - 1), core);
        arcs.edge(s, e);
        if (e > 0) {
          cores(sheet, e - 1, e - 1, ownCore);
          for (int m = 0; m < sheet.along; m++) {
            all[first + m * sheet.count + e - 1] = arcs.panel(s, m, e - 1, deep);
          }
        }
        arcs.step();
      }
      first += sheet.along * sheet.count;
    }
    return all;
  }

  private void mark(int first, int count) {
    Arrays.fill(own, 0);
    for (int block = 0; block < own.length; block += panels) {
      Arrays.fill(own, block + first, block + first + count, 1);
    }
  }

  /** Squares of the core of what lies on or between two strips. */
  private void cores(TurnSheet sheet, int inner, int outer, double[] to) {
    double near = OWN_CORE * (sheet.chord[inner] + sheet.chord[outer]);
    double far = WAKE_CORE * (sheet.width[inner] + sheet.width[outer]);
    double apart = far * far;
    double change = near * near - apart;
    for (int i = 0; i < to.length; i++) {
      to[i] = apart + own[i] * change;
    }
  }

  /** What goes along the chord and into the wake at one edge of a sheet, and at the last one. */
  private final class Arcs {
    private final Points wakes;
    private final SightLines[] ends = new SightLines[2];
    private final SightLines trail;
    private Points[] now;
    private Points[] before;
    private SightLines[] here;
    private SightLines[] last;

    Arcs(int count) {
      wakes = new Points(count);
      trail = new SightLines(count);
      for (int i = 0; i < 2; i++) {
        ends[i] = new SightLines(count);
      }
      int along = sheets.stream().mapToInt(s -> s.along).max().orElse(0);
      now = new Points[along];
      before = new Points[along];
      here = new SightLines[along];
      last = new SightLines[along];
      for (int m = 0; m < along; m++) {
        now[m] = new Points(count);
        before[m] = new Points(count);
        here[m] = new SightLines(count);
        last[m] = new SightLines(count);
      }
    }

    /** Gathers an edge: its wake once, and the line along the chord to each bound vortex. */
    void edge(int s, int e) {
      double[] w = wake[s];
      int at = 3 * e * (ARCS.length + 1);
      wakes.clear();
      trail.from(w, at, targets);
      SightLines start = trail;
      for (int a = 0; a < ARCS.length; a++) {
        SightLines end = ends[a % 2];
        end.from(w, at + 3 * (a + 1), targets);
        start.segment(end, square(w, at + 3 * a, w, at + 3 * (a + 1)), core, wakes);
        start = end;
      }
      start.ray(wakeEnd[s][2 * e], wakeEnd[s][2 * e + 1], core, wakes);
      for (int m = 0; m < sheets.get(s).along; m++) {
        now[m].copy(wakes);
        here[m].from(bound[s][m], 3 * e, targets);
        here[m].segment(trail, square(bound[s][m], 3 * e, w, at), core, now[m]);
      }
    }

    /** A panel between the last edge and this one: out along this one, back along the last. */
    Points panel(int s, int m, int k, boolean deep) {
      Points span = wakes;
      span.clear();
      double[] b = bound[s][m];
      last[m].segment(here[m], square(b, 3 * k, b, 3 * k + 3), ownCore, span);
      int count = 2 * panels;
      Points sum = new Points(count);
      for (int i = 0; i < count; i++) {
        sum.x[i] = span.x[i] + now[m].x[i] - before[m].x[i];
        sum.y[i] = span.y[i] + now[m].y[i] - before[m].y[i];
        sum.z[i] = span.z[i] + now[m].z[i] - before[m].z[i];
      }
      for (int i = 0; i < count && !deep; i++) {
        int j = i + count;
        sum.x[i] -= span.x[j] + now[m].x[j] - before[m].x[j];
        sum.y[i] -= span.y[j] + now[m].y[j] - before[m].y[j];
        sum.z[i] += span.z[j] + now[m].z[j] - before[m].z[j];
      }
      return sum;
    }

    /** The next edge comes. */
    void step() {
      Points[] points = before;
      before = now;
      now = points;
      SightLines[] lines = last;
      last = here;
      here = lines;
    }

    private static double square(double[] a, int i, double[] b, int j) {
      double x = a[i] - b[j];
      double y = a[i + 1] - b[j + 1];
      double z = a[i + 2] - b[j + 2];
      return x * x + y * y + z * z;
    }
  }
}
