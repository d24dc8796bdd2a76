package trimwright.exchange.write;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimOutcome;

/** The lower-case codes of outcomes and limits, as other programs read them. */
public final class Codes {
  private Codes() {}

  /**
   * The code of a constant: its name in lower case.
   *
   * @param constant an outcome, a reason or a limit
   * @return such as {@code feet_cannot_reach}
   */
  public static String of(Enum<?> constant) {
    // The root locale: in Turkish the lower case of I has no dot.
    return constant.name().toLowerCase(Locale.ROOT);
  }

  /**
   * The code of an outcome.
   *
   * @param outcome at one speed
   * @return {@code trimmed}, or the reason's code
   */
  public static String of(TrimOutcome outcome) {
    return outcome instanceof TrimOutcome.NoTrim none ? of(none.reason()) : "trimmed";
  }

  /**
   * The codes of limits in the order of the enumeration, so that a document never depends on a
   * set's order.
   *
   * @param limits broken limits
   * @return their codes
   */
  public static List<String> of(Set<Limit> limits) {
    return limits.stream().sorted().map(Codes::of).toList();
  }
}
