package trimwright.kernel;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads tables of published values: lines of '#' are remarks, the first other line names the
 * columns.
 */
public final class PublishedRows {
  private PublishedRows() {}

  /** Rows of a resource beside a class, each as column name to text. */
  public static List<Map<String, String>> beside(Class<?> place, String resource) {
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(place.getResourceAsStream(resource), StandardCharsets.UTF_8))) {
      List<String> lines = reader.lines().filter(line -> !line.startsWith("#")).toList();
      String[] names = lines.get(0).split(";");
      return lines.stream().skip(1).map(line -> row(names, line.split(";", -1))).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> row(String[] names, String[] cells) {
    Map<String, String> row = new HashMap<>();
    for (int i = 0; i < names.length; i++) {
      row.put(names[i], cells[i]);
    }
    return row;
  }
}
