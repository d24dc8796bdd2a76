package trimwright.kernel.trim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.SpeedLoads;
import trimwright.kernel.surface.SurfaceResponse;

/**
 * Solves one case. Building a solver computes the lifting surfaces' response over pitch once; every
 * speed asked for afterwards is cheap. The sweep over all speeds that finds the speeds people ask
 * for is made at the first such question and kept.
 *
 * <p>May be shared between threads as far as its response may: a table may, the flow solved anew at
 * every pitch may not. Nothing that a caller can see changes after construction; two threads that
 * ask for the sweep at once may both make it, and both make the same.
 *
 * <p>At each speed three unknowns, pitch, thrust and foot-pressure centre, make two forces and the
 * pitching moment vanish. Thrust follows from the drag and the foot-pressure centre from the moment
 * in closed form, so that one equation in one unknown is left: the vertical forces over pitch.
 */
public final class CaseSolver {
  private final RideCase rideCase;
  private final Craft craft;
  private final SurfaceResponse response;
  private final TrimSolver solver;

  /** Made when first asked for; complete when it can be seen. */
  private volatile SpeedSearch search;

  private CaseSolver(Craft craft, SurfaceResponse response) {
    rideCase = craft.rideCase();
    this.craft = craft;
    this.response = response;
    solver = new TrimSolver(new BalanceModel(craft, response), rideCase.limits());
  }

  /**
   * A solver with the standard lattice, its flow interpolated over pitch.
   *
   * @param rideCase the case
   * @return a solver for it
   */
  public static CaseSolver of(RideCase rideCase) {
    return of(rideCase, SurfaceTables.ANEW);
  }

  /**
   * A solver with the standard lattice, its flow interpolated over pitch in a table that may be at
   * hand already.
   *
   * @param rideCase the case
   * @param tables where the table comes from
   * @return a solver for it
   */
  public static CaseSolver of(RideCase rideCase, SurfaceTables tables) {
    Craft craft = new Craft(rideCase);
    return new CaseSolver(craft, tables.of(craft));
  }

  /**
   * A solver on a given craft and flow: for finer lattices and for the flow solved anew at every
   * pitch.
   *
   * @param craft the craft
   * @param response the flow about its wings
   * @return a solver
   */
  public static CaseSolver of(Craft craft, SurfaceResponse response) {
    return new CaseSolver(craft, response);
  }

  /** The case. */
  public RideCase rideCase() {
    return rideCase;
  }

  /**
   * The trim at one speed.
   *
   * @param speed through the water [m/s], above 0
   * @return a trim point or the reason why there is none
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public TrimOutcome trim(double speed) {
    requireAboveZero(speed);
    return solver.solve(speed);
  }

  /**
   * Why there is no trim at a speed, without all that {@link #trim} says about it.
   *
   * @param speed through the water [m/s], above 0
   * @return the reason; empty where there is a trim
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public Optional<NoTrimReason> findReason(double speed) {
    requireAboveZero(speed);
    return solver.find(speed).reason();
  }

  private static void requireAboveZero(double speed) {
    if (!(speed > 0) || !Double.isFinite(speed)) {
      throw new IllegalArgumentException("speed must be above 0 m/s, was " + speed + " m/s");
    }
  }

  /**
   * Electric power of the trim at a speed, without all that {@link #trim} says about it.
   *
   * @param speed through the water [m/s], above 0
   * @return [W]; empty where there is no trim or no drive
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public OptionalDouble findPower(double speed) {
    requireAboveZero(speed);
    TrimSolver.Found found = solver.find(speed);
    return found.trimmed() ? solver.power(found.balance().orElseThrow()) : OptionalDouble.empty();
  }

  /** The craft. */
  public Craft craft() {
    return craft;
  }

  /** The lattice's flow about its wings over pitch. */
  public SurfaceResponse response() {
    return response;
  }

  /**
   * Both wings' loads at a speed, on which its trim stands.
   *
   * @param speed through the water [m/s], above 0
   * @return loads over pitch
   */
  public SpeedLoads wings(double speed) {
    requireAboveZero(speed);
    return solver.loads(speed);
  }

  /** The drive in its water, where there is one. */
  public Optional<Powertrain> findPowertrain() {
    return solver.powertrain();
  }

  /**
   * The same case in another wind: nothing under water is computed anew.
   *
   * @param headWind [m/s], positive against the rider
   * @return a solver
   */
  public CaseSolver withHeadWind(double headWind) {
    return new CaseSolver(craft.withHeadWind(headWind), response);
  }

  /**
   * The curve over given speeds, with the speeds that people ask for.
   *
   * @param speeds [m/s], rising
   * @return the curve
   * @throws IllegalArgumentException if a speed is not above 0
   */
  public Curve curve(List<Double> speeds) {
    List<TrimOutcome> outcomes = new ArrayList<>(speeds.size());
    for (double v : speeds) {
      outcomes.add(trim(v));
    }
    SpeedSearch over = search();
    List<SpeedInterval> rideable = over.rideable();
    return new Curve(
        outcomes, over.evenFeetSpeeds(), over.levelSpeed(), rideable, window(rideable));
  }

  /**
   * Every speed at which the foot share takes a value.
   *
   * @param footShare part of the load on the front foot [1]
   * @return speeds [m/s], rising; none, one or more
   */
  public List<Double> speedsWithFootShare(double footShare) {
    return search().speedsWith(solver::footShare, footShare);
  }

  /**
   * The speed at which the deck is level.
   *
   * @return [m/s]; empty where no trim point is level
   */
  public OptionalDouble levelSpeed() {
    return search().levelSpeed();
  }

  private SpeedSearch search() {
    SpeedSearch made = search;
    if (made == null) {
      made = new SpeedSearch(solver);
      search = made;
    }
    return made;
  }

  private Optional<SpeedInterval> window(List<SpeedInterval> rideable) {
    double wished = rideCase.rider().wishedSpeed();
    return rideable.stream()
        .filter(i -> i.from() <= wished && wished <= i.to())
        .findFirst()
        .or(() -> rideable.stream().max(Comparator.comparingDouble(i -> i.to() - i.from())));
  }
}
