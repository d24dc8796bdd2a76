package trimwright.kernel.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.NodeTable;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.CoupledFlow;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.Loads;
import trimwright.kernel.surface.SpeedLoads;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.WingCouplings;

/**
 * Both wings' forces over angle, speed, depth and the angle by which the stream at the stabilizer
 * is turned against that at the front wing: the trim's own tables, read at what a motion asks for.
 *
 * <p>The trim's loads hold at the case's immersion. To them come the change with the depth and the
 * change with the stabilizer's turn, each from solutions at few angles: both vary slowly. Cubics
 * all ways (Lagrange); outside the nodes the end value holds. Steady flow throughout.
 *
 * <p>Immutable; may be shared between threads.
 */
final class WingTable {
  /** Forward, up, nose up of the front wing, then of the stabilizer. */
  static final int NUMBERS = 6;

  /** Spacing of the angles at which the trim's loads are read [rad]. */
  private static final double FINE = Math.toRadians(0.8);

  /** Spacing of the angles at which the flow is solved for wide tables [rad]. */
  private static final double SOLVED = Math.toRadians(1.6);

  /** How many angles the changes are solved at. */
  private static final int ANGLES = 7;

  /**
   * How far the angles of small motions stay inside what the trim's table reaches [rad]: trims lie
   * between no lift and the stall, and a cubic across the stall is none for either side.
   */
  private static final double NEAR_ABOVE = Math.toRadians(2);

  private static final double NEAR_BELOW = Math.toRadians(5);

  /** Least width of those angles with what stays below them [rad]. Chosen. */
  private static final double LEAST = Math.toRadians(8);

  /** Lowest angle of a wide table [rad]: a nose that drops goes far below no lift. */
  private static final double LOWEST = Math.toRadians(-14);

  /** Depths of a wide table over the case's immersion [1], and the least depth [m]. */
  private static final double[] WIDE_DEPTHS = {0.12, 0.25, 0.45, 0.7, 1, 1.5, 2.3};

  private static final double LEAST_DEPTH = 0.04;

  private static final double[] NEAR_DEPTHS = {0.8, 1, 1.25};

  /** Turns of the stabilizer's stream [rad]. */
  private static final double[] WIDE_TURNS = degrees(-8, -4, 0, 4, 8);

  private static final double[] NEAR_TURNS = degrees(-2, 0, 2);

  /** Speeds, evenly spaced in the logarithm: those of the trim's own tables [m/s]. */
  private static final double SLOWEST = 1.3;

  private static final double FASTEST = 26;
  private static final int SPEEDS = 11;

  private static final double[] LOGS = logs(SLOWEST, FASTEST, SPEEDS);

  /** Speeds of the changes, which vary slowly: 9 to 54 km/h [m/s]. */
  private static final double[] FEW_LOGS = logs(2.6, 15, 5);

  private static final NodeTable FEW_AXIS = new NodeTable(FEW_LOGS, new double[0][]);

  /** For its places alone. */
  private static final NodeTable SPEED_AXIS = new NodeTable(LOGS, new double[0][]);

  private final double lowest;
  private final double highest;
  private final List<NodeTable> base;

  /** One list of speeds per node: what the depth and the turn add. */
  private final Changes depths;

  private final Changes turns;

  private WingTable(
      double lowest, double highest, List<NodeTable> base, Changes depths, Changes turns) {
    this.lowest = lowest;
    this.highest = highest;
    this.base = base;
    this.depths = depths;
    this.turns = turns;
  }

  /**
   * A table about the trims of a case: for small motions.
   *
   * @param solver of the case
   * @return the table
   */
  static WingTable near(CaseSolver solver) {
    double lowest = solver.response().from();
    double highest = solver.response().to();
    double[] coarse =
        even(lowest + NEAR_ABOVE, Math.max(lowest + LEAST, highest - NEAR_BELOW), ANGLES);
    return of(solver, solver.response(), solver::wings, NEAR_DEPTHS, NEAR_TURNS, coarse);
  }

  /**
   * A table for large motions, from far below no lift to past the stall, from just below the
   * surface to more than twice the case's immersion.
   *
   * @param solver of the case
   * @return the table
   */
  static WingTable wide(CaseSolver solver) {
    List<Double> pitches = new ArrayList<>();
    double to = solver.response().to();
    for (double p = Math.min(LOWEST, solver.response().from()); p < to; p += SOLVED) {
      pitches.add(p);
    }
    pitches.add(to);
    SurfaceResponse response =
        Responses.tabulated(
            solver.craft(), pitches.stream().mapToDouble(Double::doubleValue).toArray());
    Loads loads = response.loads(new Object(), WingCouplings.of(solver.craft(), response));
    double[] coarse = even(response.from(), response.to(), ANGLES);
    return of(solver, response, loads::at, WIDE_DEPTHS, WIDE_TURNS, coarse);
  }

  private static WingTable of(
      CaseSolver solver,
      SurfaceResponse response,
      DoubleFunction<SpeedLoads> loads,
      double[] depthShares,
      double[] turns,
      double[] coarse) {
    double lowest = response.from();
    double highest = response.to();
    double[] fine = even(lowest, highest, 1 + (int) Math.ceil((highest - lowest) / FINE));
    Craft craft = solver.craft();
    double immersion = craft.rideCase().immersion();
    Couplings.AtSpeed[] level = atFewSpeeds(WingCouplings.of(craft, response));

    List<List<NodeTable>> deep = new ArrayList<>();
    List<Double> depths = new ArrayList<>();
    for (double share : depthShares) {
      double depth = share * immersion;
      if (share == 1) {
        depths.add(Math.log(depth));
        deep.add(solved(response, level, 0, coarse));
      } else if (depth >= LEAST_DEPTH) {
        Craft there = craft.at(depth);
        SurfaceResponse other = Responses.tabulated(there, coarse);
        depths.add(Math.log(depth));
        deep.add(solved(other, atFewSpeeds(WingCouplings.of(there, other)), 0, coarse));
      }
    }

    List<List<NodeTable>> turned = new ArrayList<>();
    for (double turn : turns) {
      turned.add(solved(response, level, turn, coarse));
    }
    return new WingTable(
        lowest,
        highest,
        sample(loads, fine),
        new Changes(
            depths.stream().mapToDouble(Double::doubleValue).toArray(), deep, Math.log(immersion)),
        new Changes(turns, turned, 0));
  }

  /** The waves of a speed are costly: worked out once for all turns. */
  private static Couplings.AtSpeed[] atFewSpeeds(Couplings couplings) {
    return Arrays.stream(FEW_LOGS)
        .mapToObj(log -> couplings.at(Math.exp(log)))
        .toArray(Couplings.AtSpeed[]::new);
  }

  /** Solved anew at few angles and speeds, each beginning where its neighbour ended. */
  private static List<NodeTable> solved(
      SurfaceResponse response, Couplings.AtSpeed[] speeds, double turn, double[] angles) {
    List<NodeTable> tables = new ArrayList<>(FEW_LOGS.length);
    for (Couplings.AtSpeed there : speeds) {
      double[][] rows = new double[angles.length][NUMBERS];
      double[] start = null;
      for (int i = 0; i < angles.length; i++) {
        CoupledFlow flow = there.at(angles[i]).withTurn(1, turn).solve(response, angles[i], start);
        start = flow.departure();
        for (int wing = 0; wing < 2; wing++) {
          write(flow.wings().get(wing).force(), wing, rows[i]);
        }
      }
      tables.add(NodeTable.ofRows(angles, rows));
    }
    return tables;
  }

  private static List<NodeTable> sample(DoubleFunction<SpeedLoads> loads, double[] angles) {
    List<NodeTable> tables = new ArrayList<>(SPEEDS);
    for (double log : LOGS) {
      SpeedLoads there = loads.apply(Math.max(SLOWEST, Math.min(FASTEST, Math.exp(log))));
      double[][] rows = new double[angles.length][NUMBERS];
      for (int i = 0; i < angles.length; i++) {
        double angle = Math.min(angles[i], there.to());
        for (int wing = 0; wing < 2; wing++) {
          write(there.force(wing, angle), wing, rows[i]);
        }
      }
      tables.add(NodeTable.ofRows(angles, rows));
    }
    return tables;
  }

  private static void write(PlaneForce force, int wing, double[] row) {
    row[3 * wing] = force.forward();
    row[3 * wing + 1] = force.up();
    row[3 * wing + 2] = force.noseUp();
  }

  /** Lowest angle [rad]. */
  double lowest() {
    return lowest;
  }

  /** Highest angle [rad]. */
  double highest() {
    return highest;
  }

  /**
   * The forces.
   *
   * @param angle of the fuselage to the stream at the front wing [rad]
   * @param turn more angle at the stabilizer than a steady level ride has [rad]
   * @param speed through the water [m/s]
   * @param depth of the front wing's root quarter chord [m]
   * @param out receives {@link #NUMBERS} values over the dynamic pressure, in axes in which the
   *     stream at the front wing is level, moments about the datum [m², m³]
   */
  void read(double angle, double turn, double speed, double depth, double[] out) {
    double held = Math.max(lowest, Math.min(highest, angle));
    NodeTable.Place speeds = SPEED_AXIS.at(Math.log(Math.max(SLOWEST, Math.min(FASTEST, speed))));
    Arrays.fill(out, 0);
    double[] row = new double[NUMBERS];
    add(base, speeds, held, 1, row, out);
    double log = Math.log(Math.max(1e-9, speed));
    NodeTable.Place few = FEW_AXIS.at(Math.max(FEW_AXIS.from(), Math.min(FEW_AXIS.to(), log)));
    depths.add(Math.log(Math.max(1e-9, depth)), few, held, row, out);
    turns.add(turn, few, held, row, out);
  }

  private static void add(
      List<NodeTable> tables,
      NodeTable.Place speeds,
      double angle,
      double factor,
      double[] row,
      double[] out) {
    NodeTable.Place place = tables.get(0).at(angle);
    double[] weights = {speeds.a(), speeds.b(), speeds.c(), speeds.d()};
    for (int i = 0; i < 4; i++) {
      tables.get(speeds.first() + i).read(0, place, row);
      double weight = factor * weights[i];
      for (int k = 0; k < NUMBERS; k++) {
        out[k] += weight * row[k];
      }
    }
  }

  /** What another variable changes, against a value of it at which nothing changes. */
  private static final class Changes {
    private final double[] nodes;
    private final List<List<NodeTable>> tables;
    private final double[] without;

    Changes(double[] nodes, List<List<NodeTable>> tables, double none) {
      this.nodes = nodes;
      this.tables = tables;
      without = weights(none);
    }

    /** A weight per node: Lagrange's of the four around, of three where there are no more. */
    private double[] weights(double x) {
      int n = nodes.length;
      double held = Math.max(nodes[0], Math.min(nodes[n - 1], x));
      int used = Math.min(4, n);
      int first = 0;
      while (first < n - used && nodes[first + used / 2] <= held) {
        first++;
      }
      double[] weights = new double[n];
      for (int i = first; i < first + used; i++) {
        double weight = 1;
        for (int k = first; k < first + used; k++) {
          weight *= k == i ? 1 : (held - nodes[k]) / (nodes[i] - nodes[k]);
        }
        weights[i] = weight;
      }
      return weights;
    }

    void add(double x, NodeTable.Place speeds, double angle, double[] row, double[] out) {
      double[] weights = weights(x);
      for (int i = 0; i < weights.length; i++) {
        double weight = weights[i] - without[i];
        if (weight != 0) {
          WingTable.add(tables.get(i), speeds, angle, weight, row, out);
        }
      }
    }
  }

  private static double[] even(double from, double to, int parts) {
    double[] nodes = new double[parts];
    for (int i = 0; i < parts; i++) {
      nodes[i] = from + (to - from) * i / (parts - 1);
    }
    return nodes;
  }

  private static double[] degrees(double... angles) {
    double[] radians = new double[angles.length];
    for (int i = 0; i < angles.length; i++) {
      radians[i] = Math.toRadians(angles[i]);
    }
    return radians;
  }

  private static double[] logs(double from, double to, int count) {
    return even(Math.log(from), Math.log(to), count);
  }
}
