package trimwright.kernel.trim;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.LoadShifts;
import trimwright.kernel.surface.Loads;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.ProfileForces;
import trimwright.kernel.surface.ResponseKey;
import trimwright.kernel.surface.SolvedLoads;
import trimwright.kernel.surface.StripPolars;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.surface.SystemResponse;

/**
 * How a craft's lifting surfaces answer: tabulated over pitch, or solved anew at every pitch asked
 * for.
 */
public final class Responses {
  /** Spacing of the tabulated pitches [rad]. */
  private static final double SPACING = Math.toRadians(1.6);

  /**
   * Spacing where the front wing's wake passes the stabilizer [rad], and how far that reaches
   * either way: through the sheet's thickness the wash bends. With these the table's error stays
   * below 0.02 degrees of pitch and 1 mm of foot-pressure position; a test holds it there.
   */
  private static final double CLOSE_SPACING = Math.toRadians(1);

  private static final double CLOSE_REACH = Math.toRadians(2);

  /** Reach beyond the pitch of no lift and beyond the first stall [rad]. */
  private static final double BELOW = Math.toRadians(2.5);

  private static final double BEYOND = Math.toRadians(4);

  /** Pitches outside which nothing is computed [rad]. */
  private static final double FURTHEST = Math.toRadians(32);

  /**
   * A high Reynolds number per metre: lift limits there bound the table [1/m]; 90 km/h in warm
   * water.
   */
  private static final double FASTEST_REYNOLDS = 3e7;

  /** Step of the pitch from which the range is estimated [rad]. Chosen. */
  private static final double ESTIMATE_STEP = Math.toRadians(2);

  /**
   * Least width of the range, so that a table has its nodes whatever the wings are [rad]. Chosen.
   */
  private static final double LEAST_WIDTH = 0.2;

  private Responses() {}

  /**
   * The flow tabulated over every pitch that a ride can have.
   *
   * @param craft the craft
   * @return the table
   */
  public static SurfaceResponse tabulated(Craft craft) {
    Lattice lattice = new Lattice(craft.wings(), false);
    double[] range = range(craft, lattice);
    return SystemResponse.tabulate(lattice, craft::datumDepth, pitches(craft, range));
  }

  /**
   * The flow tabulated at given pitches, whatever a ride can have.
   *
   * @param craft the craft
   * @param pitches to solve at, at least four, rising [rad]
   * @return the table
   */
  public static SurfaceResponse tabulated(Craft craft, double[] pitches) {
    return SystemResponse.tabulate(new Lattice(craft.wings(), false), craft::datumDepth, pitches);
  }

  /**
   * What {@link #tabulated} reads of a craft, and nothing else: lattice of both wings, places,
   * immersion, and the front wing's angles of stall, which bound the range of pitch. Crafts with
   * equal keys have the same table bit for bit. Track, stance, masses, feet, wind, water, wishes,
   * mast, wedge, drive and battery are not in it; a shim is.
   *
   * @param craft the craft
   * @return the key of its table
   */
  public static ResponseKey key(Craft craft) {
    PlacedWing front = craft.wings().get(0);
    PlacedWing tail = craft.wings().get(1);
    double[] places = {
      craft.rideCase().immersion(),
      front.ahead(),
      front.above(),
      front.incidence(),
      front.shape().stations().get(0).chord(),
      tail.ahead(),
      tail.above()
    };
    double[] limits = frontSections(craft).stall().highest();
    return ResponseKey.of(
        craft.wings(),
        DoubleStream.concat(DoubleStream.of(places), DoubleStream.of(limits)).toArray());
  }

  private static double[] pitches(Craft craft, double[] range) {
    double crossing = wakeCrossing(craft);
    DoubleStream.Builder all = DoubleStream.builder();
    double pitch = range[0];
    while (pitch < range[1]) {
      all.add(pitch);
      boolean close = Math.abs(pitch + 0.5 * CLOSE_SPACING - crossing) < CLOSE_REACH;
      double next = pitch + (close ? CLOSE_SPACING : SPACING);
      // Do not step over the beginning of the close stretch.
      double begin = crossing - CLOSE_REACH;
      pitch = !close && pitch < begin && next > begin ? Math.max(begin, pitch + 1e-3) : next;
    }
    all.add(Math.max(range[1], pitch));
    return all.build().toArray();
  }

  /**
   * Pitch at which the trailing edge of the front wing's root and the stabilizer stand at one
   * height.
   */
  private static double wakeCrossing(Craft craft) {
    PlacedWing front = craft.wings().get(0);
    PlacedWing tail = craft.wings().get(1);
    double behind = 0.75 * front.shape().stations().get(0).chord();
    double ahead = front.ahead() - behind * Math.cos(front.incidence()) - tail.ahead();
    double above = front.above() - behind * Math.sin(front.incidence()) - tail.above();
    return -Math.atan2(above, ahead);
  }

  /**
   * The flow solved anew at every pitch asked for: slow, exact, the measure of the table. Not for
   * use by two threads.
   *
   * @param craft the craft
   * @return the flow
   */
  public static SurfaceResponse unfrozen(Craft craft) {
    Lattice lattice = new Lattice(craft.wings(), false);
    double[] range = range(craft, lattice);
    return new Unfrozen(craft, lattice, range[0], range[1]);
  }

  /**
   * From a little below no lift of both wings to a little past the first stall of the front one.
   */
  private static double[] range(Craft craft, Lattice lattice) {
    double step = ESTIMATE_STEP;
    List<SurfaceFlow> level = flows(craft, lattice, 0);
    List<SurfaceFlow> raised = flows(craft, lattice, step);
    // Both wings together carry the weight; the front one stalls first.
    StripPolars front = frontSections(craft);
    double[] low = front.straightAngles(level.get(0).stripLift());
    double[] high = front.straightAngles(raised.get(0).stripLift());
    double upLow = up(level);
    double slope = (up(raised) - upLow) / step;
    double noLift = slope > 0 ? -upLow / slope : 0;
    double[] slopes = new double[low.length];
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = (high[k] - low[k]) / step;
    }
    double stall = front.stall().margin(low, slopes);
    double from = Math.max(-FURTHEST, noLift - BELOW);
    double to = Math.min(FURTHEST, (Double.isFinite(stall) ? stall : FURTHEST) + BEYOND);
    return new double[] {Math.min(from, FURTHEST - LEAST_WIDTH), Math.max(to, from + LEAST_WIDTH)};
  }

  private static StripPolars frontSections(Craft craft) {
    return new ProfileForces(craft.wings().get(0), craft.rideCase().setup().frontWing().finish())
        .at(FASTEST_REYNOLDS);
  }

  private static List<SurfaceFlow> flows(Craft craft, Lattice lattice, double pitch) {
    lattice.solve(pitch, OptionalDouble.of(craft.datumDepth(pitch)));
    return lattice.flows();
  }

  private static double up(List<SurfaceFlow> flows) {
    return flows.stream().mapToDouble(f -> f.force().up()).sum();
  }

  /** Remembers the last pitch, since both wings are asked for in turn. */
  private static final class Unfrozen implements SurfaceResponse {
    private final Craft craft;
    private final Lattice lattice;
    private final double from;
    private final double to;
    private double last = Double.NaN;
    private List<SurfaceFlow> flows;
    private LoadShifts shifts;

    Unfrozen(Craft craft, Lattice lattice, double from, double to) {
      this.craft = craft;
      this.lattice = lattice;
      this.from = from;
      this.to = to;
    }

    @Override
    public SurfaceFlow at(int wing, double pitch) {
      solve(pitch);
      return flows.get(wing);
    }

    @Override
    public LoadShifts shifts(double pitch) {
      solve(pitch);
      if (shifts == null) {
        shifts = lattice.shifts();
      }
      return shifts;
    }

    private void solve(double pitch) {
      if (pitch != last) {
        flows = Responses.flows(craft, lattice, pitch);
        shifts = null;
        last = pitch;
      }
    }

    @Override
    public double from() {
      return from;
    }

    @Override
    public double to() {
      return to;
    }

    @Override
    public Loads loads(Object sections, Couplings couplings) {
      return speed -> new SolvedLoads(this, couplings.at(speed));
    }
  }
}
