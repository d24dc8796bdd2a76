/**
 * Published values as data and the runner that holds the computation against them.
 *
 * <p>Every row of the tables carries its source, how the figure came here ({@link
 * trimwright.reference.Provenance}) and a tolerance with its reason. A row that the computation
 * cannot be asked for does not belong here; a source that could not be obtained is listed in {@link
 * trimwright.reference.NotInHand} and is never counted as met.
 */
package trimwright.reference;
