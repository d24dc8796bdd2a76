package trimwright.kernel.trim;

/**
 * Limits of the rideable window. All are chosen, with no published source; a shop may be stricter.
 *
 * @param stallMargin least nose-up change of pitch to the first stall [rad]
 * @param leastFootShare least part of the load on the front foot [1]
 * @param mostFootShare largest part of the load on the front foot [1]
 * @param pitch largest tilt of the deck either way [rad]
 */
record TrimLimits(double stallMargin, double leastFootShare, double mostFootShare, double pitch) {
  /** Two degrees to the first stall, a tenth of the load on either foot, ten degrees of tilt. */
  static final TrimLimits CHOSEN = new TrimLimits(Math.toRadians(2), 0.1, 0.9, Math.toRadians(10));
}
