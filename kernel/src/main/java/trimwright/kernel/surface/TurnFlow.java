package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.numeric.LinearSystem;
import trimwright.kernel.surface.SightLines.Points;

/**
 * The flow of a {@link TurnLattice}: what its vortices induce on one another, factored. It answers
 * for the motion it was solved for, and for motions close by, for which vortices, wakes and image
 * keep their places relative to the craft (the stream and the attitude are the new motion's own).
 *
 * <p>One object is one workspace: not for use by two threads.
 */
public final class TurnFlow {
  private final List<TurnSheet> sheets;
  private final TurnMotion solved;
  private final Points[] influences;
  private final LinearSystem system;
  private final double[] right;
  private final double[] strength;

  TurnFlow(List<TurnSheet> sheets, TurnMotion solved, Points[] influences) {
    this.sheets = sheets;
    this.solved = solved;
    this.influences = influences;
    int n = influences.length;
    right = new double[n];
    strength = new double[n];
    double[] columns = new double[n * n];
    double[] normal = new double[3];
    int i = 0;
    for (TurnSheet sheet : sheets) {
      for (int m = 0; m < sheet.along; m++) {
        for (int k = 0; k < sheet.count; k++) {
          place(solved, sheet.normal[m], k, normal);
          for (int j = 0; j < n; j++) {
            Points p = influences[j];
            columns[j * n + i] = p.x[i] * normal[0] + p.y[i] * normal[1] + p.z[i] * normal[2];
          }
          int first = i - m * sheet.count;
          double term = (2 * Math.PI / sheet.liftSlope[k] - 1) / (Math.PI * sheet.chord[k]);
          for (int row = 0; row < sheet.along; row++) {
            columns[(first + row * sheet.count) * n + i] -= term;
          }
          i++;
        }
      }
    }
    system = new LinearSystem(n);
    system.refactorColumns(columns);
  }

  private static void place(TurnMotion motion, double[] foil, int i, double[] out) {
    motion.place(foil[3 * i], foil[3 * i + 1], foil[3 * i + 2], out, 0);
  }

  /**
   * Forces: Kutta and Joukowski on every bound vortex with the velocity that really is there, drag
   * and moment of each strip's section with it.
   *
   * @param motion the one solved for, or one close by
   * @param polars the wings' sections at the datum's speed
   * @return one per wing, in the order given, and last the mast, where there is one
   */
  public List<TurnWing> loads(TurnMotion motion, List<StripPolars> polars) {
    int n = strength.length;
    double[] point = new double[3];
    double[] normal = new double[3];
    int i = 0;
    for (TurnSheet sheet : sheets) {
      for (int m = 0; m < sheet.along; m++) {
        for (int k = 0; k < sheet.count; k++) {
          place(motion, sheet.control[m], k, point);
          place(motion, sheet.normal[m], k, normal);
          right[i] = -normal[0] * motion.streamX(point[1]) - normal[1] * motion.streamY(point[0]);
          i++;
        }
      }
    }
    system.solve(right, strength);
    Points induced = new Points(n);
    for (int j = 0; j < n; j++) {
      add(influences[j].x, strength[j], induced.x);
      add(influences[j].y, strength[j], induced.y);
      add(influences[j].z, strength[j], induced.z);
    }
    double[] turn = motion.after(solved);
    List<TurnWing> loads = new ArrayList<>();
    int first = 0;
    for (int s = 0; s < sheets.size(); s++) {
      TurnSheet sheet = sheets.get(s);
      loads.add(
          load(sheet, first, motion, turn, induced, s < polars.size() ? polars.get(s) : null));
      first += sheet.along * sheet.count;
    }
    return loads;
  }

  /** The middles' half of a column. */
  private static void add(double[] column, double strength, double[] sum) {
    int n = sum.length;
    for (int i = 0; i < n; i++) {
      sum[i] += strength * column[n + i];
    }
  }

  private TurnWing load(
      TurnSheet sheet,
      int first,
      TurnMotion motion,
      double[] turn,
      Points induced,
      StripPolars polars) {
    double[][] bound = sheet.boundIn(motion);
    double[] force = new double[3];
    double[] moment = new double[3];
    double[] stripForce = new double[3 * sheet.count];
    double[] stripPlace = new double[3 * sheet.count];
    double[] lift = new double[sheet.count];
    double margin = Double.POSITIVE_INFINITY;
    for (int k = 0; k < sheet.count; k++) {
      double[] place = new double[3];
      double[] stream = new double[2];
      double circulation = 0;
      for (int m = 0; m < sheet.along; m++) {
        double[] b = bound[m];
        double[] mid = new double[3];
        sheet.middle(b, k, mid);
        int p = first + m * sheet.count + k;
        double[] v = {motion.streamX(mid[1]), motion.streamY(mid[0]), 0};
        for (int c = 0; c < 3; c++) {
          v[c] +=
              turn[3 * c] * induced.x[p]
                  + turn[3 * c + 1] * induced.y[p]
                  + turn[3 * c + 2] * induced.z[p];
        }
        double gamma = strength[p];
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
      addMoment(
          bound[0], k, speed * speed * sheet.momentAtZeroLift[k] * area * sheet.chord[k], moment);
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
  private static void addMoment(double[] b, int k, double couple, double[] moment) {
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
