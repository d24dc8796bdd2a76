package trimwright.command;

import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Turns words into numbers, the same under every locale. */
final class Numbers {
  private Numbers() {}

  /** A number as a person would have typed it. */
  static String text(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e9
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  /** Decimal numbers with a point, and never infinite. */
  static final class Decimal implements ITypeConverter<Double> {
    private static final String FORM = "[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?";

    @Override
    public Double convert(String word) {
      // Double.valueOf alone would let through "NaN", "0x1p3" and "1d".
      if (!word.matches(FORM) || !Double.isFinite(Double.parseDouble(word))) {
        throw new TypeConversionException(
            "'" + word + "' is not a number (digits, with a point before the decimals)");
      }
      return Double.valueOf(word);
    }
  }

  /** Whole numbers. */
  static final class Whole implements ITypeConverter<Integer> {
    @Override
    public Integer convert(String word) {
      try {
        return Integer.valueOf(word);
      } catch (NumberFormatException e) {
        throw new TypeConversionException("'" + word + "' is not a whole number");
      }
    }
  }
}
