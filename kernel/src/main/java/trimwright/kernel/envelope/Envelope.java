package trimwright.kernel.envelope;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.hull.RampedRun;
import trimwright.kernel.hull.TakeOff;
import trimwright.kernel.hull.TakeOffSolver;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.range.RangeSolver;
import trimwright.kernel.range.RideRange;
import trimwright.kernel.range.WayHome;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.turn.TurnSolver;
import trimwright.kernel.turn.TurnStudy;

/**
 * The limits of a case at its wished speed and over its speeds.
 *
 * @param speed the wished speed [m/s], for turns, loads and margins
 * @param takeOff from rest to flying, with the posture asked for
 * @param otherTakeOff the same in another posture: on the knees, or standing where the first kneels
 * @param ramped the first with the throttle brought up over the time that the limits name; empty
 *     where no drive lifts it
 * @param slowFlight the slow end; empty where nothing flies
 * @param turns turns at the wished speed; empty where it has no straight ride
 * @param straight that ride as a turn without a bank, for loads and cavitation
 * @param propellerDepth depth of the propeller's upper blade tip below the troughs of the chop in
 *     the straight ride [m]; empty without a drive or ride
 * @param tipDepth of the higher wing tip below the troughs in the straight ride [m]
 * @param mast its bending
 * @param frontWing its bending
 * @param stabilizer its bending
 * @param glide the foil without thrust
 * @param range how long and how far the battery carries; empty without drive or battery
 */
public record Envelope(
    double speed,
    TakeOff takeOff,
    TakeOff otherTakeOff,
    Optional<RampedRun> ramped,
    Optional<SlowFlight> slowFlight,
    Optional<TurnStudy> turns,
    Optional<TurnPoint> straight,
    OptionalDouble propellerDepth,
    OptionalDouble tipDepth,
    Optional<PartLoads> mast,
    Optional<PartLoads> frontWing,
    Optional<PartLoads> stabilizer,
    Optional<Glide> glide,
    Optional<RideRange> range) {
  /** Speeds over which glide and range are looked at: from the stall to 60 km/h [m/s]. */
  private static final double STEP = 0.5 / 3.6;

  private static final double FASTEST = 60 / 3.6;

  /**
   * Makers' ratings of the bending moment at a root [N·m], where the case gives them.
   *
   * @param mast of the mast
   * @param frontWing of the front wing
   * @param stabilizer of the stabilizer
   */
  public record Ratings(OptionalDouble mast, OptionalDouble frontWing, OptionalDouble stabilizer) {
    /** No ratings. */
    public static final Ratings NONE =
        new Ratings(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * The envelope of a case.
   *
   * @param solver of the case
   * @param ratings makers' ratings
   * @param home the way home that the battery must reach for, where one is given
   * @param posture how the rider rests on the board before it flies
   * @return its limits
   */
  public static Envelope of(
      CaseSolver solver, Ratings ratings, Optional<WayHome> home, Posture posture) {
    RideCase c = solver.rideCase();
    double speed = c.rider().wishedSpeed();
    TurnSolver turns = new TurnSolver(c);
    Optional<SlowFlight> slow = SlowFlight.of(solver, turns);
    Optional<TrimPoint> trim = solver.trim(speed).findPoint();
    double base = c.setup().mast().baseAngle();
    Optional<TurnStudy> study = trim.map(p -> TurnStudy.of(c, speed, p.pitch() - base));
    Optional<TurnPoint> straight = trim.flatMap(p -> turns.at(speed, 0, p.pitch() - base));
    Optional<TurnPoint> tightest = study.flatMap(TurnStudy::tightest);
    List<TrimOutcome> outcomes =
        slow.map(s -> outcomes(solver, s.stallSpeed(), speed)).orElse(List.of());
    double landing = c.limits().of(RideLimit.LANDING_LOAD);
    double fall = c.rider().allMass() * Craft.GRAVITY * 0.5 * c.setup().board().width();
    TakeOffSolver onTheWater = TakeOffSolver.of(c, posture);
    TakeOff takeOff = onTheWater.solve();
    return new Envelope(
        speed,
        takeOff,
        onTheWater.with(other(posture)).solve(),
        RampedRun.of(
            takeOff,
            c.limits().of(RideLimit.TAKE_OFF_RAMP),
            c.limits().of(RideLimit.TAKE_OFF_ACCELERATION)),
        slow,
        study,
        straight,
        trim.isPresent() ? propeller(c, trim.get().pitch() - base) : OptionalDouble.empty(),
        straight.isPresent()
            ? OptionalDouble.of(straight.get().tipDepth() - 0.5 * c.chopHeight())
            : OptionalDouble.empty(),
        straight.map(
            s ->
                new PartLoads(
                    size(s.loads().mastAside(), s.loads().mastForeAft()),
                    of(tightest.map(t -> size(t.loads().mastAside(), t.loads().mastForeAft()))),
                    landing * size(s.loads().mastAside(), s.loads().mastForeAft()),
                    OptionalDouble.of(fall),
                    ratings.mast())),
        straight.map(
            s ->
                new PartLoads(
                    s.loads().frontWingRoot(),
                    of(tightest.map(t -> t.loads().frontWingRoot())),
                    landing * s.loads().frontWingRoot(),
                    OptionalDouble.empty(),
                    ratings.frontWing())),
        straight.map(
            s ->
                new PartLoads(
                    s.loads().stabilizerRoot(),
                    of(tightest.map(t -> t.loads().stabilizerRoot())),
                    landing * s.loads().stabilizerRoot(),
                    OptionalDouble.empty(),
                    ratings.stabilizer())),
        slow.flatMap(s -> Glide.of(outcomes, mass(c), speed, s.stallSpeed())),
        RangeSolver.find(solver, outcomes, home));
  }

  /**
   * Least thrust over drag on the way to lift-off.
   *
   * @return a ratio [1]; NaN without a drive or a run
   */
  public double takeOffThrustRatio() {
    return takeOff.leastThrustRatio();
  }

  /**
   * The limits that take-off and the straight ride at the wished speed break, beyond those of its
   * trim.
   *
   * @param limits the limits
   * @return limits of depth, cavitation and makers' ratings
   */
  public Set<RideLimit> broken(RideLimits limits) {
    Set<RideLimit> broken = EnumSet.noneOf(RideLimit.class);
    if (limits.breaks(RideLimit.TIP_DEPTH, tipDepth.orElse(Double.NaN))) {
      broken.add(RideLimit.TIP_DEPTH);
    }
    if (limits.breaks(RideLimit.PROPELLER_DEPTH, propellerDepth.orElse(Double.NaN))) {
      broken.add(RideLimit.PROPELLER_DEPTH);
    }
    double ratio = straight.map(TurnPoint::cavitationSpeedRatio).orElse(Double.NaN);
    if (limits.breaks(RideLimit.CAVITATION_SPEED_RATIO, ratio)) {
      broken.add(RideLimit.CAVITATION_SPEED_RATIO);
    }
    if (limits.breaks(RideLimit.TAKE_OFF_THRUST_RATIO, takeOffThrustRatio())) {
      broken.add(RideLimit.TAKE_OFF_THRUST_RATIO);
    }
    if (Stream.of(mast, frontWing, stabilizer)
        .flatMap(Optional::stream)
        .anyMatch(loads -> loads.exceeds(limits).orElse(false))) {
      broken.add(RideLimit.RATING_SHARE);
    }
    return broken;
  }

  private static Posture other(Posture posture) {
    return posture == Posture.KNEELING ? Posture.STANDING : Posture.KNEELING;
  }

  private static double size(double a, double b) {
    return Math.hypot(a, b);
  }

  private static OptionalDouble of(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  private static OptionalDouble propeller(RideCase c, double pitch) {
    if (c.setup().drive().isEmpty()) {
      return OptionalDouble.empty();
    }
    Drive d = c.setup().drive().get();
    Craft craft = new Craft(c);
    Attitude at = Attitude.of(pitch);
    double above = d.heightAboveFuselage() * at.cos() + craft.podAhead() * at.sin();
    return OptionalDouble.of(
        craft.datumDepth(pitch) - above - 0.5 * d.propellerDiameter() - 0.5 * c.chopHeight());
  }

  private static List<TrimOutcome> outcomes(CaseSolver solver, double stall, double speed) {
    List<TrimOutcome> outcomes = new ArrayList<>();
    for (double v = stall; v < Math.max(FASTEST, speed + STEP); v += STEP) {
      outcomes.add(solver.trim(v));
    }
    return outcomes;
  }

  private static double mass(RideCase c) {
    return c.rider().allMass() + new Craft(c).partsMass();
  }
}
