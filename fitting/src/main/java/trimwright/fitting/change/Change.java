package trimwright.fitting.change;

import java.util.Objects;
import java.util.Optional;

/**
 * One change.
 *
 * @param kind of what
 * @param amount by how much, as {@link ChangeKind} says [m/s, m or rad]; 0 for parts
 * @param part the part of the stock that it takes; a shim without one has to be made
 */
public record Change(ChangeKind kind, double amount, Optional<String> part) {
  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a part has an amount, or neither is there
   */
  public Change {
    Objects.requireNonNull(part, "part");
    if (kind.isPart() ? part.isEmpty() || amount != 0 : !(Math.abs(amount) > 0)) {
      throw new IllegalArgumentException(
          kind + " by " + amount + " with " + part.orElse("no part") + " is no change");
    }
  }

  /** By an amount. */
  static Change by(ChangeKind kind, double amount) {
    return new Change(kind, amount, Optional.empty());
  }

  /** To another part. */
  static Change to(ChangeKind kind, String part) {
    return new Change(kind, 0, Optional.of(part));
  }
}
