package trimwright.exchange.read.internal;

import java.util.Locale;
import java.util.OptionalInt;

/**
 * Characters that no name and no file of this kind holds: they would ring bells, move cursors, turn
 * the direction of writing or break a document that another program reads.
 */
public final class ControlCharacters {
  private ControlCharacters() {}

  /** Where the first one stands in a value [index]; a line break counts as one. */
  public static OptionalInt find(String value) {
    return find(value, "");
  }

  /** Where the first one stands in a whole text [index]; tabs and line ends belong there. */
  static OptionalInt findInText(String text) {
    return find(text, "\t\r\n");
  }

  private static OptionalInt find(String text, String permitted) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int character = text.codePointAt(i);
      if (isControl(character) && permitted.indexOf(character) < 0) {
        return OptionalInt.of(i);
      }
    }
    return OptionalInt.empty();
  }

  private static boolean isControl(int character) {
    int type = Character.getType(character);
    return type == Character.CONTROL
        || type == Character.SURROGATE
        || character >= 0x202A && character <= 0x202E
        || character >= 0x2066 && character <= 0x2069;
  }

  /** The character at a place by its number, since it cannot be shown. */
  public static String name(String text, int index) {
    return String.format(Locale.ROOT, "a control character (U+%04X)", text.codePointAt(index));
  }
}
