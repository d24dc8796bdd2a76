package trimwright.web.trim;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * Numbers as a page shows them: a point, a real minus sign, no negative zero, whatever the
 * machine's language.
 */
final class Figures {
  private static final String MINUS = "\u2212";
  private static final int MOST_DECIMALS = 6;

  private Figures() {}

  /** With a fixed number of decimals. */
  static String fixed(double value, int decimals) {
    String text =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    boolean zero = new BigDecimal(text).signum() == 0;
    String bare = text.startsWith("-") ? text.substring(1) : text;
    return text.startsWith("-") && !zero ? MINUS + bare : bare;
  }

  /** The same with a plus before what is above zero: for a part of a sum. */
  static String signed(double value, int decimals) {
    String text = fixed(value, decimals);
    boolean aboveZero = !text.startsWith(MINUS) && new BigDecimal(text).signum() != 0;
    return aboveZero ? "+" + text : text;
  }

  /**
   * As few digits as say the same, with an ordinary hyphen: for a field in which a person types.
   */
  static String shortest(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value)
            .setScale(MOST_DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  /** Grouped by thousands with a narrow space. */
  static String grouped(double value) {
    return String.format(Locale.ROOT, "%,.0f", value).replace(',', '\u202f').replace("-", MINUS);
  }
}
