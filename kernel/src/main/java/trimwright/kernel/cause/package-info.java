/**
 * The cause of a trim: how much of it comes from the speed ridden and how much from the set.
 *
 * <p>A definition, not a model: speed part plus set part are what was ridden less what was wanted,
 * exactly, in pitch, foot share and foot-pressure place; with a measured pitch what is left is the
 * unexplained part. Both speeds must have a trim point.
 */
package trimwright.kernel.cause;
