/**
 * Steady states: one trim point, a curve of them, the speeds that people ask for.
 *
 * <p>Assumed: straight and level, no sideslip, the front wing's root quarter chord held at the
 * case's immersion, inviscid flow that depends on the pitch alone (so without waves, see {@link
 * trimwright.kernel.surface.Lattice}), a rider who stands on one point of the deck. What does not
 * exist (too slow, stalled, no power, out of the feet's reach) is a result with its reason.
 *
 * <p>Sources: the balance is elementary statics; limits of the rideable window are chosen ({@link
 * trimwright.kernel.trim.Limit}).
 */
package trimwright.kernel.trim;
