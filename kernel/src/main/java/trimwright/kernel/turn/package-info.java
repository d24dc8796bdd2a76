/**
 * Steady banked turns: how tight, how banked, what they cost, and what ends them.
 *
 * <p>Assumed: a level turn of the datum on a circle; the rider stands square on the deck, so that
 * weight and the turn's pull together press straight into it; the feet may twist the deck, which is
 * reported; the front wing's root quarter chord keeps the case's immersion; no surface waves, no
 * chop but as a loss of depth. The mast slips as far as its side force is needed.
 *
 * <p>Sources: circular motion and the balance of forces are elementary; the flow is {@link
 * trimwright.kernel.surface.TurnLattice}'s.
 */
package trimwright.kernel.turn;
