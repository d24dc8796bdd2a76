package trimwright.kernel.quick;

import java.util.Optional;
import trimwright.kernel.trim.NoTrimReason;

/**
 * The trim of a craft at a speed, from a table.
 *
 * @param reason why there is none; empty where there is a trim
 * @param balance the balance of forces and moment, where there is one at all
 */
public record QuickTrim(Optional<NoTrimReason> reason, Optional<QuickBalance> balance) {
  static QuickTrim none(NoTrimReason reason) {
    return new QuickTrim(Optional.of(reason), Optional.empty());
  }

  /** Whether the craft flies in balance, within its power and the rider's stance. */
  public boolean trimmed() {
    return reason.isEmpty();
  }
}
