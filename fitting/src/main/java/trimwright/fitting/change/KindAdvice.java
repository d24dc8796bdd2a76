package trimwright.fitting.change;

import java.util.Objects;
import java.util.Optional;

/**
 * What the changes of one kind can do.
 *
 * @param kind which kind
 * @param verdict in a word
 * @param effect the best of them; where all break limits the one that breaks fewest; empty where
 *     there is none to make
 * @param tried how many amounts or parts were looked at
 */
public record KindAdvice(ChangeKind kind, Verdict verdict, Optional<Effect> effect, int tried) {
  /** What comes of a kind of change. */
  public enum Verdict {
    /** It makes the ride better, inside all limits. */
    HELPS,
    /** Inside the limits, but it makes the ride no better by as much as counts. */
    NO_HELP,
    /** Every one that was looked at breaks a limit. */
    BREAKS_LIMITS,
    /** There is none to make: no other part fits, or none is known to. */
    NONE_THERE
  }

  /** Checks that nothing is missing. */
  public KindAdvice {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(effect, "effect");
  }
}
