package trimwright.exchange.read.internal;

import java.math.BigDecimal;
import java.util.Collection;

/** Numbers and lists as they stand in sentences. */
public final class Words {
  /** Longer values are cut: the reader knows them by their beginning. */
  private static final int LONGEST = 40;

  private Words() {}

  /** A text cut to a length that fits a sentence, without line breaks. */
  public static String shorten(String text) {
    String flat = text.replaceAll("[\\p{Cntrl}\\s]+", " ");
    return flat.length() <= LONGEST ? flat : flat.substring(0, LONGEST - 1) + "…";
  }

  /** A number without needless digits, whatever the locale. */
  public static String number(double value) {
    if (value == 0) {
      return "0";
    }
    BigDecimal exact = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    return Math.abs(exact.scale()) > 30 ? exact.toString() : exact.toPlainString();
  }

  /** Words joined by commas. */
  public static String list(Collection<String> words) {
    return String.join(", ", words);
  }
}
