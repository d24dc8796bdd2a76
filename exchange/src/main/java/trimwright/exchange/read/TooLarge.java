package trimwright.exchange.read;

import java.util.List;
import trimwright.exchange.read.internal.Findings;
import trimwright.exchange.read.internal.Naming;
import trimwright.exchange.read.internal.Values;

/** The check that one length is no more than another. */
final class TooLarge {
  private TooLarge() {}

  /**
   * Reports a value above its limit; says nothing where one of them is missing or bad by itself.
   *
   * @return whether the value is within its limit, as far as is known
   */
  static boolean check(Values low, String lowKey, Values high, String highKey, Findings findings) {
    if (!low.has(lowKey) || !high.has(highKey)) {
      return true;
    }
    double value = low.findWritten(lowKey).getAsDouble();
    double limit = high.findWritten(highKey).getAsDouble();
    if (value <= limit) {
      return true;
    }
    Naming names = findings.naming();
    String key = low.at(lowKey);
    String limitKey = high.at(highKey);
    findings.report(
        List.of(key, limitKey),
        names.opening(key)
            + " is "
            + names.value(key, value)
            + ", permitted is no more than "
            + names.name(limitKey)
            + ", which is "
            + names.value(limitKey, limit)
            + ".");
    return false;
  }
}
