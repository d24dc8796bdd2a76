/**
 * A shop's parts, how they mount, and the setups that can be put together from them.
 *
 * <p>Assumes that each joint joins two parts and that the joints form a tree (board, mast,
 * fuselage, wings, and what hangs on them), so that setups are counted by sums and products without
 * being listed. Immutable throughout; lengths are metres, angles radians.
 */
package trimwright.fitting.stock;
