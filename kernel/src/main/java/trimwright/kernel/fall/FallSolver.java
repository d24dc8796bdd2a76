package trimwright.kernel.fall;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.motion.Controls;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.Ramp;
import trimwright.kernel.motion.WaterMotion;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;

/**
 * Follows a rider who loses the balance, from a trim point to the first contact with the water.
 *
 * <p>The body keeps upright while its mass goes to one foot ({@link MotionModel.Body#FOLLOWS}), its
 * own quickness left out: who falls steps onto the foot. Kneeling and lying riders shift no further
 * than their bodies let them ({@link Posture#massCentreReach}). Still water.
 *
 * <p>One object may be shared between threads.
 */
public final class FallSolver {
  /** Time in which the weight goes to one foot [s], as the product's contract has it. */
  public static final double SHIFT = 0.3;

  /** Time without a correction [s]; after it the weight goes back as quickly as it came. */
  public static final double UNCORRECTED = 0.6;

  /** Time that a nose-drop is looked at [s]. */
  public static final double NOSE_DROP_TIME = 1;

  /** Time that a breach is looked for [s]. Chosen: the most that first flights may ask for. */
  public static final double BREACH_TIME = 3;

  /** Between moments [s]. */
  private static final double STEP = 0.02;

  /** Thrust is asked for at no lower speed [m/s]. */
  private static final double LEAST_SPEED = 0.1;

  private static final Set<MotionEnd> CONTACT =
      EnumSet.of(MotionEnd.BOW_TOUCHES, MotionEnd.STERN_TOUCHES);

  /** The stern may meet the water on the way: it planes, and the craft goes on up. */
  private static final Set<MotionEnd> SURFACE =
      EnumSet.of(MotionEnd.WING_BREACHES, MotionEnd.PROPELLER_BREACHES);

  private final MotionModel model;

  /**
   * A solver.
   *
   * @param model of large motions
   */
  public FallSolver(MotionModel model) {
    this.model = model;
  }

  /** The model. */
  public MotionModel model() {
    return model;
  }

  /**
   * The steady state from which a fall begins.
   *
   * @param speed [m/s]
   * @return empty where there is no trim
   */
  public Optional<MotionTrim> findTrim(double speed) {
    return model.findTrim(speed);
  }

  /**
   * The nose-drop margin.
   *
   * @param trim where it begins
   * @param posture of the rider
   * @param drive the remote's settings
   * @return the margin
   */
  public NoseDrop noseDrop(MotionTrim trim, Posture posture, FallDrive drive) {
    MotionTrace trace =
        model
            .with(posture)
            .follow(
                trim,
                forward(trim, posture, drive),
                WaterMotion.STILL,
                MotionModel.Body.FOLLOWS,
                Math.max(NOSE_DROP_TIME, limit(RideLimit.BOW_CLEAR_TIME)),
                STEP,
                CONTACT);
    boolean bow = trace.end() == MotionEnd.BOW_TOUCHES;
    boolean touched = bow || trace.end() == MotionEnd.STERN_TOUCHES;
    return new NoseDrop(
        trace.lowestPitch(NOSE_DROP_TIME),
        bow ? 0 : trace.leastBowClearance(),
        touched ? OptionalDouble.of(trace.last().time()) : OptionalDouble.empty(),
        bow,
        trace);
  }

  /**
   * The breach margin.
   *
   * @param trim where it begins
   * @param posture of the rider
   * @param drive the remote's settings
   * @return the margin
   */
  public Breach breach(MotionTrim trim, Posture posture, FallDrive drive) {
    MotionTrace trace =
        model
            .with(posture)
            .follow(
                trim,
                back(trim, posture, drive),
                WaterMotion.STILL,
                MotionModel.Body.FOLLOWS,
                BREACH_TIME,
                STEP,
                SURFACE);
    boolean out =
        trace.end() == MotionEnd.WING_BREACHES || trace.end() == MotionEnd.PROPELLER_BREACHES;
    return new Breach(
        out ? OptionalDouble.of(trace.last().time()) : OptionalDouble.empty(), trace.end(), trace);
  }

  private double limit(RideLimit limit) {
    return model.craft().rideCase().limits().of(limit);
  }

  /**
   * Both margins.
   *
   * @param trim where they begin
   * @param posture of the rider
   * @param drive the remote's settings
   * @return the margins
   */
  public FallPoint at(MotionTrim trim, Posture posture, FallDrive drive) {
    return new FallPoint(
        trim.speed(), posture, noseDrop(trim, posture, drive), breach(trim, posture, drive));
  }

  /** The weight to the front foot, the throttle to nothing. */
  private Controls forward(MotionTrim trim, Posture posture, FallDrive drive) {
    double shift = shift(trim, posture, true);
    return Controls.of(
        time ->
            trim.footPressure()
                + shift * (Ramp.share(time, 0, SHIFT) - Ramp.share(time, UNCORRECTED, SHIFT)),
        (time, speed) -> model.heldThrust(trim, speed) * (1 - Ramp.share(time, 0, drive.ramp())));
  }

  /** The weight to the back foot, the throttle to all that is permitted. */
  private Controls back(MotionTrim trim, Posture posture, FallDrive drive) {
    double shift = shift(trim, posture, false);
    Optional<Powertrain> drives = model.findPowertrain();
    return Controls.of(
        time -> trim.footPressure() + shift * Ramp.share(time, 0, SHIFT),
        (time, speed) -> {
          double held = model.heldThrust(trim, speed);
          double most =
              drives
                  .map(d -> Math.max(held, drive.greatestThrust(d, Math.max(LEAST_SPEED, speed))))
                  .orElse(held);
          return held + Ramp.share(time, 0, drive.ramp()) * (most - held);
        });
  }

  /**
   * How far the weight goes forward.
   *
   * @param trim where it begins
   * @param posture of the rider
   * @param forward to the front foot, or to the back foot
   * @return along the deck [m]: to the foot, or as far as the posture lets the mass centre go;
   *     negative aft
   */
  public double shift(MotionTrim trim, Posture posture, boolean forward) {
    RideCase c = model.craft().rideCase();
    Rider rider = c.rider();
    double foot = (forward ? rider.frontFoot() : rider.backFoot()) - c.setup().board().track();
    double reach = posture.massCentreReach(rider.height());
    double wanted = foot - trim.footPressure();
    return Math.max(-reach, Math.min(reach, wanted));
  }
}
