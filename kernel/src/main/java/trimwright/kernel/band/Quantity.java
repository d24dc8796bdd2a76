package trimwright.kernel.band;

import java.util.function.ToDoubleFunction;
import trimwright.kernel.trim.TrimPoint;

/** What of a trim point gets a band. */
public enum Quantity {
  /** The deck's pitch [rad]. */
  PITCH(TrimPoint::pitch),
  /** Part of the vertical load on the front foot [1]. */
  FOOT_SHARE(TrimPoint::footShare),
  /** Foot-pressure centre ahead of the mast's axis [m]. */
  FOOT_PRESSURE(TrimPoint::footPressureAheadOfMast),
  /** Load on the front foot [kg]. */
  FRONT_LEG(TrimPoint::frontLeg),
  /** Load on the back foot [kg]. */
  BACK_LEG(TrimPoint::backLeg),
  /** Thrust [N]. */
  THRUST(TrimPoint::thrust),
  /** Electric power [W]; a NaN without a drive. */
  ELECTRIC_POWER(p -> p.electricPower().orElse(Double.NaN)),
  /** Lift of the stabilizer [N]. */
  STABILIZER_LIFT(TrimPoint::stabilizerLift),
  /** Nose-up change of pitch to the first stall [rad]. */
  STALL_MARGIN(TrimPoint::stallMargin);

  private final ToDoubleFunction<TrimPoint> value;

  Quantity(ToDoubleFunction<TrimPoint> value) {
    this.value = value;
  }

  /** Its value at a trim point. */
  public double of(TrimPoint point) {
    return value.applyAsDouble(point);
  }
}
