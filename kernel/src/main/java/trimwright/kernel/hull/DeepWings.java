package trimwright.kernel.hull;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.NodeTable;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.CoupledFlow;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.StripCoupling;
import trimwright.kernel.surface.SystemResponse;
import trimwright.kernel.surface.WingLoad;
import trimwright.kernel.trim.WingCouplings;

/**
 * Loads of both wings while the board is on the water: the trim's own lattice, sections, waves and
 * wake, at the depth at which the board's stern just touches. How much deeper the board lies
 * changes the surface's image little so far down and is left out; a test says how much.
 *
 * <p>Few nodes keep it cheap: {@link #PITCHES} pitches and {@link #SPEEDS} speeds, cubics in
 * between. Slower than the slowest node the coefficients are those of the slowest, faster than the
 * fastest those of the fastest. Immutable; may be shared between threads.
 */
final class DeepWings {
  /** Pitches solved. Chosen. */
  static final int PITCHES = 8;

  /** Speeds solved, evenly spaced in the logarithm. Chosen. */
  static final int SPEEDS = 6;

  /** Slowest and fastest speed solved [m/s]. */
  static final double SLOWEST = 1.3;

  static final double FASTEST = 10;

  /** How far past the first stall of the front wing a speed is solved [rad]. */
  private static final double PAST_STALL = Math.toRadians(2);

  private static final int FORCES = 3;
  private static final int ROOM = 3;
  private static final int FUNCTIONS = 4;

  /** Both wings' forward, up and nose up, and the least room to a stall, over log speed. */
  private final NodeTable[] overSpeed;

  private final double[] pitches;

  /**
   * Solves and tabulates.
   *
   * @param craft whose immersion is that by which waves count
   * @param datumDepth depth of the datum over pitch [m]
   * @param from lowest pitch of the fuselage [rad]
   * @param to highest
   */
  DeepWings(Craft craft, DoubleUnaryOperator datumDepth, double from, double to) {
    pitches = new double[PITCHES];
    for (int p = 0; p < PITCHES; p++) {
      pitches[p] = from + (to - from) * p / (PITCHES - 1);
    }
    Lattice lattice = new Lattice(craft.wings(), false);
    SystemResponse response = SystemResponse.tabulate(lattice, datumDepth, pitches);
    Couplings couplings = WingCouplings.of(craft, response);
    double[] logs = new double[SPEEDS];
    double[][][] rows = new double[PITCHES][SPEEDS][FUNCTIONS];
    for (int v = 0; v < SPEEDS; v++) {
      logs[v] = Math.log(SLOWEST) + v * Math.log(FASTEST / SLOWEST) / (SPEEDS - 1);
      solve(response, couplings.at(Math.exp(logs[v])), v, rows);
    }
    overSpeed =
        Arrays.stream(rows).map(row -> NodeTable.ofRows(logs, row)).toArray(NodeTable[]::new);
  }

  private void solve(SystemResponse response, Couplings.AtSpeed at, int v, double[][][] rows) {
    double[] departure = null;
    double stalled = Double.POSITIVE_INFINITY;
    for (int p = 0; p < PITCHES; p++) {
      if (pitches[p] - stalled > PAST_STALL && p > 1) {
        onwards(rows, p, v);
        continue;
      }
      StripCoupling coupling = at.at(pitches[p]);
      CoupledFlow flow = coupling.solve(response, pitches[p], departure);
      departure = flow.departure();
      double[] row = rows[p][v];
      row[ROOM] = Double.POSITIVE_INFINITY;
      for (int w = 0; w < flow.wings().size(); w++) {
        WingLoad load = flow.wings().get(w);
        row[0] += load.force().forward();
        row[1] += load.force().up();
        row[2] += load.force().noseUp();
        double room = coupling.wings().get(w).stall().room(load.stripAngle());
        row[ROOM] = Math.min(row[ROOM], room);
        if (w == 0 && room < 0) {
          stalled = Math.min(stalled, pitches[p]);
        }
      }
    }
  }

  /** Past the stall lift stays and drag goes on growing. */
  private static void onwards(double[][][] rows, int p, int v) {
    double[] row = rows[p][v];
    double[] last = rows[p - 1][v];
    double[] before = rows[p - 2][v];
    row[0] = Math.min(last[0], 2 * last[0] - before[0]);
    row[1] = last[1];
    row[2] = last[2];
    row[ROOM] = Math.min(2 * last[ROOM] - before[ROOM], last[ROOM]);
  }

  /** The loads at a speed [m/s]. */
  AtSpeed at(double speed) {
    double log = Math.log(Math.max(SLOWEST, Math.min(FASTEST, speed)));
    double[][] rows = new double[PITCHES][];
    NodeTable.Place place = overSpeed[0].at(log);
    for (int p = 0; p < PITCHES; p++) {
      rows[p] = overSpeed[p].read(place);
    }
    return new AtSpeed(NodeTable.ofRows(pitches, rows));
  }

  /** Loads over pitch at one speed. */
  static final class AtSpeed {
    private final NodeTable table;

    private AtSpeed(NodeTable table) {
      this.table = table;
    }

    /** Force over dynamic pressure, moment about the datum. */
    PlaneForce force(double pitch) {
      double[] out = new double[FORCES];
      table.read(0, table.at(pitch), out);
      return new PlaneForce(out[0], out[1], out[2]);
    }

    /** Angle to the first stall nose up of either wing [rad]. */
    double room(double pitch) {
      return table.read(ROOM, table.at(pitch));
    }

    /** Highest pitch that keeps a room to the stall; the ends of the table otherwise [rad]. */
    OptionalDouble highest(double margin) {
      double low = table.from();
      double high = table.to();
      if (room(low) < margin) {
        return OptionalDouble.empty();
      }
      if (room(high) >= margin) {
        return OptionalDouble.of(high);
      }
      while (high - low > 1e-6) {
        double middle = 0.5 * (low + high);
        if (room(middle) >= margin) {
          low = middle;
        } else {
          high = middle;
        }
      }
      return OptionalDouble.of(low);
    }
  }
}
