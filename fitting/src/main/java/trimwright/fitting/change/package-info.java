/**
 * The smallest change that makes a ride meet its wishes: each single change from the present setup
 * in order of effort, the best amount of each with its whole effect, and pairs where no single one
 * is enough.
 *
 * <p>A change that leaves a hard limit broken is never advised. Order of effort, steps, reaches and
 * what is enough are chosen by judgement and have no published source; docs/changes.md has their
 * reasons.
 */
package trimwright.fitting.change;
