package trimwright.kernel.hull;

/**
 * What counts as workable on the way to flying. All chosen, no source, but for the stall margin,
 * which with the largest trim is the rideable window's.
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
  /** Level to 10 degrees, two degrees to the stall, 36 km/h, 1.5 m/s², 35 % of drag either way. */
  public static final TakeOffLimits CHOSEN =
      new TakeOffLimits(0, Math.toRadians(10), Math.toRadians(2), 10, 1.5, 0.35);
}
