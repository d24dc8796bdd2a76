package trimwright.exchange.read.internal;

import java.util.Optional;
import java.util.regex.Pattern;

/** Numbers as the core schema of YAML 1.2.2, section 10.3.2, has them. */
final class CoreNumber {
  private static final Pattern DECIMAL =
      Pattern.compile("[-+]?(?:\\.[0-9]+|[0-9]+(?:\\.[0-9]*)?)(?:[eE][-+]?[0-9]+)?");
  private static final Pattern OCTAL = Pattern.compile("0o[0-7]{1,20}");
  private static final Pattern HEXADECIMAL = Pattern.compile("0x[0-9a-fA-F]{1,15}");
  private static final Pattern INFINITE = Pattern.compile("[-+]?\\.(?:inf|Inf|INF)");
  private static final Pattern NOT_A_NUMBER = Pattern.compile("\\.(?:nan|NaN|NAN)");

  private CoreNumber() {}

  /** The number that a plain text stands for; may be infinite or not a number. */
  static Optional<Double> find(String text) {
    if (DECIMAL.matcher(text).matches()) {
      return Optional.of(Double.parseDouble(text));
    }
    if (OCTAL.matcher(text).matches()) {
      return Optional.of((double) Long.parseLong(text.substring(2), 8));
    }
    if (HEXADECIMAL.matcher(text).matches()) {
      return Optional.of((double) Long.parseLong(text.substring(2), 16));
    }
    if (INFINITE.matcher(text).matches()) {
      return Optional.of(Double.POSITIVE_INFINITY);
    }
    return NOT_A_NUMBER.matcher(text).matches() ? Optional.of(Double.NaN) : Optional.empty();
  }
}
