/**
 * The limits that rides are held against: each with its figure, the way in which a shop may tighten
 * it, where it comes from and why it stands. Nothing here computes.
 */
package trimwright.kernel.limit;
