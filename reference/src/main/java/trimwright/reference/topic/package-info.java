/**
 * The evaluations behind the published values: for each topic a small class that asks the
 * computation for a quantity under the conditions of a row. Nothing here repeats a formula that the
 * computation has itself.
 */
package trimwright.reference.topic;
