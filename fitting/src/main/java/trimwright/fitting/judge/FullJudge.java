package trimwright.fitting.judge;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.cause.LowestFlight;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallSolver;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * Judges rides by the full solution. {@link #ride} looks at trim alone (some 20 ms once the wings'
 * table stands), {@link #whole} at take-off, loads, manners and falls too.
 *
 * <p>Immutable; may be shared between threads as far as its tables may.
 */
public final class FullJudge {
  /** Slower than anything flies [m/s]: where the search for the slowest flight begins. */
  static final double SLOW = 1.5;

  private final RideAsked asked;
  private final SurfaceTables tables;

  /**
   * A judge.
   *
   * @param asked what is asked of every setup
   * @param tables where tables of lifting surfaces come from
   */
  public FullJudge(RideAsked asked, SurfaceTables tables) {
    this.asked = asked;
    this.tables = tables;
  }

  /** What is asked. */
  public RideAsked asked() {
    return asked;
  }

  /**
   * Trim, feet, stall and depths.
   *
   * @param c the ride on a setup; see {@link RideAsked#on}
   * @return no envelope, manners or falls, nor their grounds
   */
  public Judged ride(RideCase c) {
    return Room.isThere(c) ? ride(CaseSolver.of(c, tables)) : noRoom(c);
  }

  /**
   * All that is asked.
   *
   * @param c the ride on a setup
   * @param ratings makers' ratings of its parts
   * @param isStopped asked between the steps
   * @return the judgement
   * @throws CancellationException if it was stopped
   */
  public Judged whole(RideCase c, Envelope.Ratings ratings, BooleanSupplier isStopped) {
    if (!Room.isThere(c)) {
      return noRoom(c);
    }
    CaseSolver solver = CaseSolver.of(c, tables);
    Judged ride = ride(solver);
    if (ride.wished().findPoint().isEmpty()) {
      return ride;
    }
    stop(isStopped);
    RideLimits limits = c.limits();
    Set<Ground> grounds = EnumSet.noneOf(Ground.class);
    grounds.addAll(ride.grounds());
    Envelope envelope = Envelope.of(solver, ratings, Optional.empty(), asked.posture());
    Set<RideLimit> broken = envelope.broken(limits);
    if (broken.contains(RideLimit.CAVITATION_SPEED_RATIO)) {
      grounds.add(Ground.CAVITATION);
    }
    if (broken.contains(RideLimit.RATING_SHARE)) {
      grounds.add(Ground.RATING);
    }
    boolean driven = c.setup().drive().isPresent();
    if (driven
        && (!envelope.takeOff().lifts() || broken.contains(RideLimit.TAKE_OFF_THRUST_RATIO))) {
      grounds.add(Ground.TAKE_OFF);
    }
    stop(isStopped);
    Optional<Manners> manners =
        MotionModel.small(solver).with(asked.posture()).findManners(c.rider().wishedSpeed());
    WishValues values =
        ride.values().with(Wish.MANNERS, manners.map(Manners::peakPitchRate).orElse(Double.NaN));
    Optional<FallStudy> falls = Optional.empty();
    if (asked.isFirstFlights()) {
      stop(isStopped);
      FallSolver fall = new FallSolver(MotionModel.large(solver));
      falls = FallStudy.find(fall, asked.firstFlights().orElseThrow(), isStopped);
      stop(isStopped);
      falls.ifPresent(study -> addFalls(study, limits, grounds));
    }
    return new Judged(
        c, values, grounds, ride.outcomes(), ride.wished(), Optional.of(envelope), manners, falls);
  }

  /**
   * Whether a ride could pass the rules of first flights: standing, some cap brings it inside. A
   * quick look before the whole, where those rules hold.
   *
   * @param c the ride on a setup
   * @param isStopped asked between the steps
   * @throws CancellationException if it was stopped
   */
  public boolean mayFall(RideCase c, BooleanSupplier isStopped) {
    if (!Room.isThere(c)) {
      return false;
    }
    FallSolver fall = new FallSolver(MotionModel.large(CaseSolver.of(c, tables)));
    boolean found =
        FallStudy.findCaps(fall, asked.firstFlights().orElseThrow(), Posture.STANDING, isStopped)
            .isPresent();
    stop(isStopped);
    return found;
  }

  private static void stop(BooleanSupplier isStopped) {
    if (isStopped.getAsBoolean()) {
      throw new CancellationException("stopped");
    }
  }

  /** A posture that no cap brings inside falls out on what none of its speeds holds. */
  static void addFalls(FallStudy study, RideLimits limits, Set<Ground> grounds) {
    for (Posture posture : Posture.values()) {
      if (study.findCaps(posture).isPresent()) {
        continue;
      }
      List<FallPoint> points = study.of(posture);
      boolean clear = points.stream().anyMatch(p -> p.bowClear(limits));
      boolean in = points.stream().anyMatch(p -> p.staysIn(limits));
      if (!clear || in) {
        grounds.add(Ground.BOW_CLEAR);
      }
      if (!in || clear) {
        grounds.add(Ground.BREACH);
      }
    }
  }

  private static Judged noRoom(RideCase c) {
    return new Judged(
        c,
        WishValues.none(),
        EnumSet.of(Ground.NO_ROOM),
        List.of(),
        new TrimOutcome.NoTrim(c.rider().wishedSpeed(), NoTrimReason.TOO_SLOW, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private Judged ride(CaseSolver solver) {
    RideCase c = solver.rideCase();
    Set<Ground> grounds = EnumSet.noneOf(Ground.class);
    List<TrimOutcome> outcomes = new ArrayList<>();
    for (double speed : asked.span().speeds()) {
      TrimOutcome outcome = solver.trim(speed);
      outcomes.add(outcome);
      add(solver, outcome, grounds);
    }
    TrimOutcome wished = solver.trim(c.rider().wishedSpeed());
    add(solver, wished, grounds);
    return new Judged(
        c,
        values(solver, outcomes, wished),
        grounds,
        outcomes,
        wished,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private static void add(CaseSolver solver, TrimOutcome outcome, Set<Ground> grounds) {
    if (outcome instanceof TrimOutcome.NoTrim none) {
      grounds.add(Ground.of(none.reason()));
      return;
    }
    TrimPoint point = outcome.findPoint().orElseThrow();
    point.brokenLimits().forEach(limit -> grounds.add(Ground.of(limit)));
    RideLimits limits = solver.rideCase().limits();
    double pitch = point.pitch() - solver.rideCase().setup().mast().baseAngle();
    if (limits.breaks(RideLimit.TIP_DEPTH, Room.tipDepth(solver.craft(), pitch, 0))) {
      grounds.add(Ground.TIP_DEPTH);
    }
    if (limits.breaks(RideLimit.PROPELLER_DEPTH, Room.propellerDepth(solver.craft(), pitch))) {
      grounds.add(Ground.PROPELLER_DEPTH);
    }
  }

  private WishValues values(CaseSolver solver, List<TrimOutcome> outcomes, TrimOutcome wished) {
    RideCase c = solver.rideCase();
    double moved = c.rider().backFoot() - asked.base().rider().backFoot();
    WishValues values =
        WishValues.none()
            .with(Wish.FEET_MOVED, Math.abs(moved))
            .with(Wish.GEAR_MASS, solver.craft().partsMass());
    OptionalDouble slowest = new LowestFlight(solver).above(SLOW);
    if (slowest.isPresent()) {
      values = values.with(Wish.TAKE_OFF, slowest.getAsDouble());
    }
    if (wished.findPoint().isPresent()) {
      TrimPoint p = wished.findPoint().get();
      double fuselage = p.pitch() - c.setup().mast().baseAngle();
      values =
          values
              .with(Wish.LEVEL, Math.abs(p.pitch() - c.rider().wishedPitch()))
              .with(Wish.TURN, Room.tipBank(solver.craft(), fuselage))
              .with(Wish.RANGE, range(c, p.electricPower(), p.speed()));
    }
    return outcomes.stream().allMatch(o -> o.findPoint().isPresent())
        ? overSpeeds(c, outcomes.stream().map(o -> o.findPoint().orElseThrow()).toList(), values)
        : values;
  }

  private static WishValues overSpeeds(RideCase c, List<TrimPoint> points, WishValues values) {
    double feet = 0;
    double stall = Double.POSITIVE_INFINITY;
    for (TrimPoint p : points) {
      feet += Math.abs(p.footShare() - c.rider().wishedFootShare());
      stall = Math.min(stall, p.stallMargin());
    }
    TrimPoint first = points.get(0);
    TrimPoint last = points.get(points.size() - 1);
    double growth = (last.footShare() - first.footShare()) / (last.speed() - first.speed());
    return values
        .with(Wish.FEET, feet / points.size())
        .with(Wish.STALL, stall)
        .with(Wish.GROWTH, Math.abs(growth));
  }

  static double range(RideCase c, OptionalDouble power, double speed) {
    Optional<Battery> battery = c.setup().battery();
    return battery.isPresent() && power.isPresent() && power.getAsDouble() > 0
        ? speed * battery.get().pack().duration(power.getAsDouble())
        : Double.NaN;
  }
}
