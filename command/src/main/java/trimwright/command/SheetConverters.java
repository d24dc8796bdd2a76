package trimwright.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;
import trimwright.exchange.unit.Measures;
import trimwright.sheet.Paper;

/** The choices of a print by their names. */
final class SheetConverters {
  private SheetConverters() {}

  /** A size of paper. */
  static final class OfPaper implements ITypeConverter<Paper> {
    @Override
    public Paper convert(String word) {
      return named(Paper.values(), word, "neither a4 nor letter");
    }
  }

  /** A family of units. */
  static final class OfMeasures implements ITypeConverter<Measures> {
    @Override
    public Measures convert(String word) {
      return named(Measures.values(), word, "neither metric nor imperial");
    }
  }

  /** A day. */
  static final class OfDate implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String word) {
      try {
        return LocalDate.parse(word);
      } catch (DateTimeParseException e) {
        throw new TypeConversionException(
            "'" + word + "' is not a day of the calendar (write it like 2026-05-31)");
      }
    }
  }

  private static <E extends Enum<E>> E named(E[] all, String word, String otherwise) {
    for (E one : all) {
      if (one.name().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT))) {
        return one;
      }
    }
    throw new TypeConversionException("'" + word + "' is " + otherwise);
  }
}
