/**
 * What a rider wishes of a ride: each wish a number in its own unit, what of it is good, what is
 * poor, and how much it weighs. None of the grades has a published source: they are chosen by
 * judgement, stand in docs/wishes.md with their reasons, and a shop may weigh them otherwise.
 *
 * <p>Nothing here computes a ride. SI units and radians.
 */
package trimwright.fitting.wish;
