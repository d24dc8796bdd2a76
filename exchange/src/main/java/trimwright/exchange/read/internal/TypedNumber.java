package trimwright.exchange.read.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import trimwright.exchange.unit.Unit;

/**
 * A number as people type it: with a decimal point or a decimal comma, with spaces between
 * thousands, and with or without a unit. A comma is always a decimal comma: {@code 1,500} is one
 * and a half.
 */
public final class TypedNumber {
  /** Nobody types a longer number; it keeps hostile texts cheap. */
  private static final int LONGEST = 60;

  private static final Pattern FORM =
      Pattern.compile(
          "([-+]?(?:[0-9]+(?:[.,][0-9]*)?|[.,][0-9]+)(?:[eE][-+]?[0-9]{1,3})?)\\s*([^0-9.,+-][^+-]{0,11})?");

  /** A space that parts thousands; the narrow and the unbreakable ones count too. */
  private static final Pattern THOUSANDS =
      Pattern.compile("(?<=[0-9])[ \\u00A0\\u2009\\u202F](?=[0-9]{3}(?![0-9]))");

  private TypedNumber() {}

  /**
   * The number that a text stands for.
   *
   * @param text as typed
   * @param carried the unit that a number without unit is in, and that the result is in
   * @return the number, where the text is one and its unit measures the same kind of thing; it may
   *     be infinite
   */
  public static OptionalDouble find(String text, Unit carried) {
    String stripped = text.strip();
    if (stripped.length() > LONGEST) {
      return OptionalDouble.empty();
    }
    Matcher form = FORM.matcher(THOUSANDS.matcher(stripped.replace('\u2212', '-')).replaceAll(""));
    if (!form.matches()) {
      return OptionalDouble.empty();
    }
    double number = Double.parseDouble(form.group(1).replace(',', '.'));
    if (form.group(2) == null) {
      return OptionalDouble.of(number);
    }
    Optional<Unit> typed = unit(form.group(2).strip(), carried);
    if (typed.isEmpty()) {
      return OptionalDouble.empty();
    }
    return OptionalDouble.of(
        typed.get() == carried || !Double.isFinite(number)
            ? number
            : rounded(carried.fromSi(typed.get().toSi(number))));
  }

  /** 8.2 cm are 82 mm, whatever the way over SI does to the last digits. */
  private static double rounded(double value) {
    return new BigDecimal(value).round(new MathContext(12)).doubleValue();
  }

  /** The unit that a symbol means where a unit of the carried kind is expected. */
  private static Optional<Unit> unit(String symbol, Unit carried) {
    String plain = plain(symbol);
    return Stream.concat(Stream.of(carried), Stream.of(Unit.values()))
        .filter(unit -> unit.siSymbol().equals(carried.siSymbol()))
        .filter(unit -> !unit.symbol().isEmpty() && plain(unit.symbol()).equals(plain))
        .findFirst();
  }

  /** Symbols as keyboards have them: cm2 for cm², deg for °, C for °C. */
  private static String plain(String symbol) {
    String plain =
        symbol
            .toLowerCase(Locale.ROOT)
            .replace('²', '2')
            .replace('³', '3')
            .replaceAll("[\\s·.*]", "");
    return switch (plain) {
      case "deg", "degree", "degrees", "°" -> "°";
      case "°c", "c", "degc" -> "°c";
      case "°f", "f", "degf" -> "°f";
      case "kmh", "kph", "km/h" -> "km/h";
      case "lbs", "lb" -> "lb";
      case "\"", "inch", "inches", "in" -> "in";
      case "litre", "litres", "liter", "liters", "l" -> "l";
      case "nm" -> "nm";
      default -> plain;
    };
  }
}
