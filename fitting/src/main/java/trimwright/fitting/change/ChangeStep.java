package trimwright.fitting.change;

import java.util.Optional;

/**
 * How far a search is.
 *
 * @param kind looked at last; empty for pairs
 * @param done steps done
 * @param of steps in all
 */
public record ChangeStep(Optional<ChangeKind> kind, int done, int of) {}
