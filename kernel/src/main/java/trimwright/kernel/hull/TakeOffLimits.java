package trimwright.kernel.hull;

import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;

/**
 * What counts as workable on the way to flying.
 *
 * @param leastTrim bottom against the horizontal: below it a flat bow digs in [rad]
 * @param mostTrim steepest board on which people keep standing [rad]
 * @param stallMargin least room to the first stall of a wing where the board leaves the water [rad]
 * @param fastest speed up to which a take-off is looked for [m/s]
 * @param mostAcceleration that a rider without a handle rides out on the feet: more thrust is not
 *     given [m/s²]
 * @param dragBand half width of the band of all drags on the way, as a share [1]
 */
public record TakeOffLimits(
    double leastTrim,
    double mostTrim,
    double stallMargin,
    double fastest,
    double mostAcceleration,
    double dragBand) {
  /** How far drags on the water may be off. Chosen, no source: no tow test of a board in hand. */
  private static final double DRAG_BAND = 0.35;

  /** With the limits chosen for everybody. */
  public static final TakeOffLimits CHOSEN = of(RideLimits.CHOSEN);

  /**
   * Those of a shop.
   *
   * @param limits chosen or tightened
   * @return what they say of a take-off
   */
  public static TakeOffLimits of(RideLimits limits) {
    return new TakeOffLimits(
        limits.of(RideLimit.TAKE_OFF_LEAST_TRIM),
        limits.of(RideLimit.TAKE_OFF_MOST_TRIM),
        limits.of(RideLimit.STALL_MARGIN),
        limits.of(RideLimit.TAKE_OFF_SPEED),
        limits.of(RideLimit.TAKE_OFF_ACCELERATION),
        DRAG_BAND);
  }
}
