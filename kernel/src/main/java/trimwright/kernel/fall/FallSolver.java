package trimwright.kernel.fall;

import java.util.EnumSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.motion.Controls;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.Ramp;
import trimwright.kernel.motion.WaterMotion;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Rider;

/**
 * Follows a rider who loses the balance, from a trim point to the first contact with the water.
 *
 * <p>The body keeps upright while its mass goes to one foot ({@link MotionModel.Body#FOLLOWS}), its
 * own quickness left out: who falls steps onto the foot. Kneeling and lying riders shift as far,
 * with a lower mass centre. Still water.
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

  /** Time that a breach is looked for [s]. Chosen: twice what first flights ask for. */
  public static final double BREACH_TIME = 3;

  /** Between moments [s]. */
  private static final double STEP = 0.02;

  private static final Set<MotionEnd> CONTACT =
      EnumSet.of(MotionEnd.BOW_TOUCHES, MotionEnd.STERN_TOUCHES);

  private static final Set<MotionEnd> SURFACE =
      EnumSet.of(
          MotionEnd.WING_BREACHES, MotionEnd.PROPELLER_BREACHES, MotionEnd.STERN_TOUCHES);

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
                new Forward(trim, drive),
                WaterMotion.STILL,
                MotionModel.Body.FOLLOWS,
                NOSE_DROP_TIME,
                STEP,
                CONTACT);
    boolean bow = trace.end() == MotionEnd.BOW_TOUCHES;
    boolean touched = bow || trace.end() == MotionEnd.STERN_TOUCHES;
    return new NoseDrop(
        trace.lowestPitch().pitch(),
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
                new Back(trim, drive),
                WaterMotion.STILL,
                MotionModel.Body.FOLLOWS,
                BREACH_TIME,
                STEP,
                SURFACE);
    boolean out =
        trace.end() == MotionEnd.WING_BREACHES || trace.end() == MotionEnd.PROPELLER_BREACHES;
    return new Breach(
        out ? OptionalDouble.of(trace.last().time()) : OptionalDouble.empty(),
        trace.end(),
        trace);
  }

  private double track() {
    return model.craft().rideCase().setup().board().track();
  }

  private Rider rider() {
    return model.craft().rideCase().rider();
  }

  private final class Forward implements Controls {
    private final MotionTrim trim;
    private final FallDrive drive;

    Forward(MotionTrim trim, FallDrive drive) {
      this.trim = trim;
      this.drive = drive;
    }

    @Override
    public double footPressure(double time) {
      double shifted = Ramp.share(time, 0, SHIFT) - Ramp.share(time, UNCORRECTED, SHIFT);
      double front = rider().frontFoot() - track();
      return trim.footPressure() + shifted * (front - trim.footPressure());
    }

    @Override
    public double thrust(double time, double speed) {
      return model.heldThrust(trim, speed) * (1 - Ramp.share(time, 0, drive.ramp()));
    }
  }

  private final class Back implements Controls {
    private final MotionTrim trim;
    private final FallDrive drive;

    Back(MotionTrim trim, FallDrive drive) {
      this.trim = trim;
      this.drive = drive;
    }

    @Override
    public double footPressure(double time) {
      double back = rider().backFoot() - track();
      return trim.footPressure() + Ramp.share(time, 0, SHIFT) * (back - trim.footPressure());
    }

    @Override
    public double thrust(double time, double speed) {
      double held = model.heldThrust(trim, speed);
      Optional<Powertrain> drives = model.findPowertrain();
      if (drives.isEmpty()) {
        return held;
      }
      double most = Math.max(held, drive.greatestThrust(drives.get(), Math.max(0.1, speed)));
      return held + Ramp.share(time, 0, drive.ramp()) * (most - held);
    }
  }
}
