package trimwright.kernel.play;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallSolver;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.motion.Chop;
import trimwright.kernel.motion.Controls;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.Ramp;
import trimwright.kernel.motion.WaterMotion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.water.ChopSpectrum;

/**
 * Plays what can happen on a ride. In all plays but {@link Play#THROTTLE_CUT} the body keeps
 * upright over its place on the deck and nobody corrects; there a standing one sways freely, the
 * feet still.
 */
public final class PlaySolver {
  /** Between moments [s]. */
  private static final double STEP = 0.02;

  /** More thrust when the throttle goes up [1]. */
  private static final double MORE = 0.1;

  /** A gust: its strength [m/s] and how long it lasts [s]. Chosen. */
  public static final double GUST = 5;

  private static final double GUST_TIME = 1;

  /**
   * How far the weight goes forward to touch down and then back past where it was [m], how long it
   * stays back, how long the play goes on, and how long a contact is waited for [s]. Chosen.
   */
  private static final double TOUCH = 0.02;

  private static final double TOUCH_BACK = 0.03;

  private static final double TOUCH_HOLD = 1;

  private static final double TOUCH_AFTER = 2;

  private static final double TOUCH_TIME = 4;

  private static final int HALVINGS = 8;

  /** Waves of the chop, and where their phases begin. */
  private static final int WAVES = 12;

  private static final long SEED = 1;

  private static final Set<MotionEnd> SURFACE =
      EnumSet.of(
          MotionEnd.BOW_TOUCHES,
          MotionEnd.STERN_TOUCHES,
          MotionEnd.WING_BREACHES,
          MotionEnd.PROPELLER_BREACHES,
          MotionEnd.RIDER_FALLS);

  private static final Set<MotionEnd> CONTACT =
      EnumSet.of(MotionEnd.BOW_TOUCHES, MotionEnd.STERN_TOUCHES);

  private static final Set<MotionEnd> AFLOAT =
      EnumSet.of(MotionEnd.WING_BREACHES, MotionEnd.PROPELLER_BREACHES, MotionEnd.RIDER_FALLS);

  private final MotionModel model;
  private final FallSolver falls;

  /**
   * A solver.
   *
   * @param model of large motions, in the rider's posture
   */
  public PlaySolver(MotionModel model) {
    this.model = model;
    falls = new FallSolver(model);
  }

  /** The model. */
  public MotionModel model() {
    return model;
  }

  /**
   * The case's chop as it is played.
   *
   * @return its waves; none on flat water
   */
  public Chop chop() {
    RideCase c = model.craft().rideCase();
    return new Chop(
        ChopSpectrum.of(c.chopHeight()).components(WAVES, SEED),
        c.setup().frontWing().shape().meanChord());
  }

  /**
   * Plays.
   *
   * @param play what
   * @param trim where it begins
   * @param drive the remote's settings
   * @return the motion
   */
  public MotionTrace play(Play play, MotionTrim trim, FallDrive drive) {
    return switch (play) {
      case FOOT_FORWARD -> follow(trim, feet(trim, time -> Manners.STEP), 4, SURFACE);
      case LEAN_FORWARD -> follow(trim, lean(trim, true), 2, SURFACE);
      case LEAN_BACK -> follow(trim, lean(trim, false), 2, SURFACE);
      case THROTTLE_UP ->
          follow(
              trim,
              Controls.of(
                  time -> trim.footPressure(),
                  (time, speed) ->
                      model.heldThrust(trim, speed)
                          * (1 + MORE * Ramp.share(time, 0, drive.ramp()))),
              4,
              SURFACE);
      case THROTTLE_CUT ->
          model.follow(
              trim,
              Controls.of(
                  time -> trim.footPressure(),
                  (time, speed) ->
                      model.heldThrust(trim, speed) * (1 - Ramp.share(time, 0, drive.ramp()))),
              WaterMotion.STILL,
              // Who kneels or lies has no ankle to sway about.
              model.posture() == Posture.STANDING
                  ? MotionModel.Body.FREE
                  : MotionModel.Body.FOLLOWS,
              2,
              STEP,
              SURFACE);
      case GUST ->
          follow(
              trim,
              Controls.of(
                  time -> trim.footPressure(),
                  (time, speed) -> model.heldThrust(trim, speed),
                  PlaySolver::gust),
              4,
              SURFACE);
      case CHOP ->
          model.follow(trim, model.held(trim), chop(), MotionModel.Body.FOLLOWS, 4, STEP, SURFACE);
      case TOUCHDOWN -> touchdown(trim);
      case NOSE_DROP -> falls.noseDrop(trim, model.posture(), drive).trace();
      case BREACH -> falls.breach(trim, model.posture(), drive).trace();
    };
  }

  /**
   * Down until the board just meets the water, the weight going back in time: as late as still lets
   * it touch, found by halving.
   */
  private MotionTrace touchdown(MotionTrim trim) {
    Controls down = feet(trim, time -> TOUCH * Ramp.share(time, 0, FallSolver.SHIFT));
    double contact = follow(trim, down, TOUCH_TIME, CONTACT).last().time();
    double late = contact;
    double early = FallSolver.SHIFT;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (late + early);
      boolean touches =
          follow(trim, backAt(trim, middle), middle + TOUCH_AFTER, CONTACT).end()
              != MotionEnd.RAN_OUT;
      if (touches) {
        late = middle;
      } else {
        early = middle;
      }
    }
    return follow(trim, backAt(trim, late), late + TOUCH_AFTER, AFLOAT);
  }

  /** Forward, from a time on a little further back than the trim's, and back to it. */
  private Controls backAt(MotionTrim trim, double back) {
    return feet(
        trim,
        time ->
            TOUCH * Ramp.share(time, 0, FallSolver.SHIFT)
                - (TOUCH + TOUCH_BACK) * Ramp.share(time, back, FallSolver.SHIFT)
                + TOUCH_BACK * Ramp.share(time, back + TOUCH_HOLD, FallSolver.SHIFT));
  }

  private MotionTrace follow(
      MotionTrim trim, Controls controls, double duration, Set<MotionEnd> ends) {
    return model.follow(
        trim, controls, WaterMotion.STILL, MotionModel.Body.FOLLOWS, duration, STEP, ends);
  }

  private Controls feet(MotionTrim trim, DoubleUnaryOperator forward) {
    return Controls.of(
        time -> trim.footPressure() + forward.applyAsDouble(time),
        (time, speed) -> model.heldThrust(trim, speed));
  }

  private Controls lean(MotionTrim trim, boolean forward) {
    double shift = falls.shift(trim, model.posture(), forward);
    return feet(trim, time -> shift * Ramp.share(time, 0, FallSolver.SHIFT));
  }

  /** Comes and goes as one less the cosine does. */
  private static double gust(double time) {
    return time < GUST_TIME ? 0.5 * GUST * (1 - Math.cos(2 * Math.PI * time / GUST_TIME)) : 0;
  }
}
