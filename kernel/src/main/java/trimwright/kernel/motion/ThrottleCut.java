package trimwright.kernel.motion;

/**
 * What the feet have to do when the thrust is gone at once, before anything has moved.
 *
 * @param needed how far the foot pressure must go forward so that the pitch does not begin to move
 *     [m]; negative back
 * @param passive how far a body that keeps upright over its place presses forward of itself [m]:
 *     the other way, as a rule
 */
public record ThrottleCut(double needed, double passive) {
  /** First step of the body's place [m]. */
  private static final double STEP = -1e-2;

  private static final int MOST_STEPS = 30;

  /** Pitch acceleration that is none [rad/s²]. */
  private static final double STILL = 1e-9;

  /**
   * Of a trim.
   *
   * @param model the case
   * @param trim with its thrust
   * @return the two shifts
   */
  public static ThrottleCut of(MotionModel model, MotionTrim trim) {
    double[] passive = at(model, trim, 0);
    double before = 0;
    double[] last = passive;
    double moved = STEP;
    // Secants: nearly straight, some four of them do.
    for (int i = 0; i < MOST_STEPS; i++) {
      double[] now = at(model, trim, moved);
      if (Math.abs(now[0]) < STILL || now[0] == last[0]) {
        last = now;
        break;
      }
      double next = moved - now[0] * (moved - before) / (now[0] - last[0]);
      before = moved;
      last = now;
      moved = next;
    }
    return new ThrottleCut(last[1], passive[1]);
  }

  /** Pitch acceleration and where the feet press, against the trim, with the body's place moved. */
  private static double[] at(MotionModel model, MotionTrim trim, double moved) {
    Controls cut = Controls.of(time -> trim.footPressure() + moved, (time, speed) -> 0);
    CraftMotion motion = new CraftMotion(model, trim, cut, WaterMotion.STILL, false);
    double[] state = motion.start();
    double[] rates = new double[state.length];
    motion.rates(0, 0, state, rates);
    double along = model.shape().alongDeck(trim.pitch(), motion.pressAhead());
    return new double[] {rates[CraftMotion.RATE], along - trim.footPressure()};
  }
}
