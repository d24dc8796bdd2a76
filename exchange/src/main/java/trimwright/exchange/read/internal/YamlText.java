package trimwright.exchange.read.internal;

import java.util.OptionalInt;

/**
 * A text made ready for the YAML reader, line for line: without a byte order mark and without tabs.
 * YAML permits no tab as indentation; people and JSON files have them all the same.
 *
 * @param text the text without tabs
 * @param mixedLine first line whose indentation cannot be told, as tabs and spaces are mixed
 */
record YamlText(String text, OptionalInt mixedLine) {

  /** One tab stands for one level of indentation. */
  private static final String LEVEL = "  ";

  static YamlText of(String raw) {
    String text = raw.startsWith("\uFEFF") ? raw.substring(1) : raw;
    if (text.indexOf('\t') < 0) {
      return new YamlText(text, OptionalInt.empty());
    }
    int open = 0;
    StringBuilder tidy = new StringBuilder(text.length() + 64);
    boolean anySpaces = false;
    int firstTab = 0;
    int number = 0;
    for (String line : text.split("\n", -1)) {
      number++;
      int start = 0;
      while (start < line.length() && (line.charAt(start) == '\t' || line.charAt(start) == ' ')) {
        start++;
      }
      String indent = line.substring(0, start);
      boolean blank = line.substring(start).isBlank() || line.startsWith("#", start);
      if (!blank && open == 0) {
        anySpaces |= indent.indexOf(' ') >= 0;
        if (firstTab == 0 && indent.indexOf('\t') >= 0) {
          firstTab = number;
        }
      }
      open = Math.max(0, open + opened(line));
      if (number > 1) {
        tidy.append('\n');
      }
      tidy.append(indent.replace("\t", LEVEL)).append(line.substring(start).replace('\t', ' '));
    }
    return new YamlText(
        tidy.toString(),
        anySpaces && firstTab > 0 ? OptionalInt.of(firstTab) : OptionalInt.empty());
  }

  /** Brackets that a line opens and does not close: inside them indentation means nothing. */
  private static int opened(String line) {
    int open = 0;
    char quote = 0;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (quote != 0) {
        quote = c == quote ? 0 : quote;
      } else if (c == '"' || c == '\'') {
        quote = c;
      } else if (c == '{' || c == '[') {
        open++;
      } else if (c == '}' || c == ']') {
        open--;
      } else if (c == '#') {
        break;
      }
    }
    return open;
  }
}
