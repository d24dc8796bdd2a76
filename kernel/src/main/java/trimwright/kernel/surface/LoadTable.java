package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.NodeTable;
import trimwright.kernel.numeric.Roots;

/**
 * Loads with their sections, tabulated over pitch and the logarithm of the speed: cubics both ways.
 * A solution takes some ten microseconds, a look-up a tenth of one. Each solution begins at its
 * neighbour's departures, speeds rising, from the lowest pitch upwards: the attached branch is
 * followed. A test says how far the cubics are off.
 *
 * <p>Immutable; may be shared between threads.
 */
final class LoadTable implements Loads {
  /** Speeds that are tabulated [m/s]: 4.7 and 94 km/h. Others are solved as they are asked for. */
  private static final double SLOWEST = 1.3;

  private static final double FASTEST = 26;

  /** Speeds in between, evenly spaced in the logarithm: 3.2 to the doubling. Chosen. */
  private static final int SPEEDS = 11;

  /** Numbers per wing besides those per strip: asked for all the time, and now and then. */
  private static final int FORCES = 3;

  private static final int OTHERS = 4;

  /**
   * How far past the front wing's first stall a speed is solved [rad]: a wing may gain lift for
   * some degrees more.
   */
  private static final double PAST_STALL = Math.toRadians(4);

  /** Half the width of the pitches in which a stall is looked for first [rad]. */
  private static final double NEAR_STALL = 2e-3;

  /**
   * Numbers over speed: pitch of the first stall, last pitch to be asked for, then two angles per
   * strip.
   */
  private static final int STALL = 0;

  private static final int END = 1;
  private static final int FIRST_STRIP = 2;

  private final SurfaceResponse response;
  private final Couplings couplings;
  private final double[] pitches;
  private final int[] strips;
  private final double[][] zeroLiftAngle;

  /** Where each wing's numbers begin in the rows of either kind. */
  private final int[] often;

  private final int[] seldom;

  /** Over pitch, one per speed: forces and angles, and the rest. */
  private final List<NodeTable> loads;

  private final List<NodeTable> rest;

  /** Over speed, see {@link #STALL}. */
  private final NodeTable stall;

  /**
   * Tabulates.
   *
   * @param response lattice
   * @param couplings sections
   * @param pitches to solve at, at least four, rising [rad]
   */
  LoadTable(SurfaceResponse response, Couplings couplings, double[] pitches) {
    this.response = response;
    this.couplings = couplings;
    this.pitches = pitches.clone();
    double[] logs = new double[SPEEDS];
    double[] speeds = new double[SPEEDS];
    for (int i = 0; i < SPEEDS; i++) {
      logs[i] = Math.log(SLOWEST) + i * Math.log(FASTEST / SLOWEST) / (SPEEDS - 1);
      speeds[i] = Math.exp(logs[i]);
    }
    List<StripPolars> sections = couplings.at(speeds[0]).at(pitches[0]).wings();
    strips = sections.stream().mapToInt(StripPolars::count).toArray();
    zeroLiftAngle = sections.stream().map(s -> s.stall().zeroLiftAngle()).toArray(double[][]::new);
    often = new int[strips.length + 1];
    seldom = new int[strips.length + 1];
    often[0] = 1;
    for (int w = 0; w < strips.length; w++) {
      often[w + 1] = often[w] + FORCES + strips[w];
      seldom[w + 1] = seldom[w] + OTHERS + strips[w];
    }
    double[][] angles = new double[FIRST_STRIP + 2 * IntStream.of(strips).sum()][SPEEDS];
    loads = new ArrayList<>();
    rest = new ArrayList<>();
    tabulate(speeds, angles, loads, rest);
    for (int v = 0; v < SPEEDS; v++) {
      double[] there = column(angles, v);
      angles[STALL][v] = new Looked(loads.get(v), rest.get(v), there, there[END]).stallPitch();
    }
    stall = new NodeTable(logs, angles);
  }

  private static double[] column(double[][] rows, int column) {
    return Arrays.stream(rows).mapToDouble(row -> row[column]).toArray();
  }

  private void tabulate(
      double[] speeds, double[][] angles, List<NodeTable> loads, List<NodeTable> rest) {
    Couplings.AtSpeed[] at =
        Arrays.stream(speeds).mapToObj(couplings::at).toArray(Couplings.AtSpeed[]::new);
    double[][][] rows = new double[speeds.length][pitches.length][often[strips.length]];
    double[][][] more = new double[speeds.length][pitches.length][seldom[strips.length]];
    double[] stalls = new double[speeds.length];
    Arrays.fill(stalls, Double.POSITIVE_INFINITY);
    double[] start = null;
    for (int p = 0; p < pitches.length; p++) {
      double pitch = pitches[p];
      List<SurfaceFlow> flows =
          IntStream.range(0, strips.length).mapToObj(w -> response.at(w, pitch)).toList();
      FixedResponse here = new FixedResponse(pitch, flows, () -> response.shifts(pitch));
      double[] before = null;
      double[] last = null;
      for (int v = 0; v < speeds.length; v++) {
        if (p > 1 && pitches[p - 1] - stalls[v] > PAST_STALL) {
          onwards(rows[v], p);
          onwards(more[v], p);
          continue;
        }
        angles[END][v] = pitch;
        StripCoupling coupling = at[v].at(pitch);
        CoupledFlow flow = coupling.solve(here, pitch, last == null ? start : next(before, last));
        before = last;
        last = flow.departure();
        if (before == null) {
          start = last;
        }
        write(flow, rows[v][p], more[v][p]);
        StallAngles front = coupling.wings().get(0).stall();
        if (front.room(flow.wings().get(0).stripAngle()) < 0) {
          stalls[v] = Math.min(stalls[v], pitch);
        }
        if (p == 0) {
          angles(coupling, v, angles);
        }
      }
    }
    for (int v = 0; v < speeds.length; v++) {
      loads.add(NodeTable.ofRows(pitches, rows[v]));
      rest.add(NodeTable.ofRows(pitches, more[v]));
    }
  }

  /** Where the departures of two speeds lead. */
  private static double[] next(double[] before, double[] last) {
    if (before == null) {
      return last;
    }
    double[] next = new double[last.length];
    for (int k = 0; k < next.length; k++) {
      next[k] = 2 * last[k] - before[k];
    }
    return next;
  }

  /** Beyond the last pitch that is asked for: straight on, for the cubic up to it to lean on. */
  private static void onwards(double[][] rows, int p) {
    for (int f = 0; f < rows[p].length; f++) {
      rows[p][f] = 2 * rows[p - 1][f] - rows[p - 2][f];
    }
  }

  private static void angles(StripCoupling coupling, int speed, double[][] angles) {
    int k = FIRST_STRIP;
    for (StripPolars wing : coupling.wings()) {
      for (int i = 0; i < wing.count(); i++) {
        angles[k++][speed] = wing.stall().highest()[i];
        angles[k++][speed] = wing.stall().lowest()[i];
      }
    }
  }

  private void write(CoupledFlow flow, double[] row, double[] more) {
    row[0] = flow.residual();
    for (int w = 0; w < strips.length; w++) {
      WingLoad load = flow.wings().get(w);
      int i = often[w];
      row[i] = load.force().forward();
      row[i + 1] = load.force().up();
      row[i + 2] = load.force().noseUp();
      System.arraycopy(load.stripAngle(), 0, row, i + FORCES, strips[w]);
      i = seldom[w];
      more[i] = load.boundDrag();
      more[i + 1] = load.farFieldDrag();
      more[i + 2] = load.profileDrag();
      more[i + 3] = load.onset();
      System.arraycopy(load.stripLift(), 0, more, i + OTHERS, strips[w]);
    }
  }

  @Override
  public SpeedLoads at(double speed) {
    if (speed >= SLOWEST && speed <= FASTEST) {
      NodeTable.Place place = stall.at(Math.log(speed));
      return new Looked(
          NodeTable.mix(loads, place), place, stall.read(place), stall.least(END, place));
    }
    double[][] angles = new double[FIRST_STRIP + 2 * IntStream.of(strips).sum()][1];
    List<NodeTable> here = new ArrayList<>();
    List<NodeTable> more = new ArrayList<>();
    tabulate(new double[] {speed}, angles, here, more);
    return new Looked(here.get(0), more.get(0), column(angles, 0), angles[END][0]);
  }

  private final class Looked implements SpeedLoads {
    private final NodeTable table;
    private final List<StallAngles> stall = new ArrayList<>();

    private final double to;

    /** Pitch of the first stall or a number near it [rad]. */
    private final double nearStall;

    /** Place among the speeds, from which the rest is worked out when it is asked for. */
    private final NodeTable.Place place;

    private volatile NodeTable more;

    Looked(NodeTable table, NodeTable.Place place, double[] angles, double to) {
      this(table, place, null, angles, to);
    }

    Looked(NodeTable table, NodeTable more, double[] angles, double to) {
      this(table, null, more, angles, to);
    }

    private Looked(
        NodeTable table, NodeTable.Place place, NodeTable more, double[] angles, double to) {
      this.to = to;
      this.table = table;
      this.place = place;
      this.more = more;
      nearStall = angles[STALL];
      int k = FIRST_STRIP;
      for (int w = 0; w < strips.length; w++) {
        double[] highest = new double[strips[w]];
        double[] lowest = new double[strips[w]];
        for (int i = 0; i < strips[w]; i++) {
          highest[i] = angles[k++];
          lowest[i] = angles[k++];
        }
        stall.add(new StallAngles(zeroLiftAngle[w], highest, lowest));
      }
    }

    @Override
    public PlaneForce force(int wing, double pitch) {
      NodeTable.Place at = table.at(pitch);
      int i = often[wing];
      return new PlaneForce(table.read(i, at), table.read(i + 1, at), table.read(i + 2, at));
    }

    @Override
    public double[] angles(int wing, double pitch) {
      double[] angles = new double[strips[wing]];
      table.read(often[wing] + FORCES, table.at(pitch), angles);
      return angles;
    }

    @Override
    public WingLoad load(int wing, double pitch) {
      if (more == null) {
        more = NodeTable.mix(rest, place);
      }
      NodeTable.Place at = table.at(pitch);
      double[] lift = new double[strips[wing]];
      int i = seldom[wing];
      more.read(i + OTHERS, at, lift);
      double[] angles = angles(wing, pitch);
      return new WingLoad(
          force(wing, pitch),
          more.read(i, at),
          more.read(i + 1, at),
          more.read(i + 2, at),
          more.read(i + 3, at),
          lift,
          angles,
          stall.get(wing).stalled(angles));
    }

    @Override
    public double residual(double pitch) {
      return table.most(0, table.at(pitch));
    }

    @Override
    public List<StallAngles> stall() {
      return stall;
    }

    @Override
    public double from() {
      return pitches[0];
    }

    @Override
    public double to() {
      return to;
    }

    @Override
    public double stallPitch() {
      double low = nearStall - NEAR_STALL;
      double high = nearStall + NEAR_STALL;
      if (low > from() && high < to) {
        double atLow = room(low);
        double atHigh = room(high);
        if (atLow > 0 && atHigh <= 0) {
          return Roots.between(this::room, low, atLow, high, atHigh, STALL_TOLERANCE);
        }
      }
      return SpeedLoads.super.stallPitch();
    }
  }
}
