/**
 * How a rider falls: the two margins that first flights are held against, and what caps bring a
 * case inside them.
 *
 * <p>The margins are the product's own, not published ones. They tell setups apart; that a case
 * lies inside them does not make a fall harmless.
 */
package trimwright.kernel.fall;
