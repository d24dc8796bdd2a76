package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Words;
import trimwright.kernel.section.ReadOutline;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

/**
 * Reads coordinates files of wing sections: two columns of numbers, separated by spaces, tabs,
 * commas or semicolons, after any title lines; lines that begin with {@code #}, {@code %}, {@code
 * !} or {@code //} are comments. The outline runs from the trailing edge round the leading edge and
 * back; two lists, one for each surface, are joined to that ({@link PointLists}). Decimal commas
 * are understood where they are not ambiguous.
 */
public final class SectionText {
  /** A finely scanned outline has some hundred points. */
  private static final int MOST_POINTS = 5_000;

  private static final int LARGEST_TEXT = 256 * 1024;

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?[0-9]+,[0-9]+");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\.[0-9]+|[0-9]+(?:\\.[0-9]*)?)(?:[eEdD][-+]?[0-9]{1,3})?");

  /** Two numbers of a line. */
  record Point(double x, double y) {}

  private SectionText() {}

  /**
   * Reads a coordinates file.
   *
   * @param name short name of the section for people
   * @param text the file's text
   * @return the section, or what is wrong; no text makes it throw
   */
  public static Reading<Section> read(String name, String text) {
    Reading<ReadSection> reading = readMended(name, text);
    return reading instanceof Accepted<ReadSection> accepted
        ? new Accepted<>(accepted.value().section())
        : new Refused<>(reading.problems());
  }

  /**
   * Reads a coordinates file, and tells what was put right in it.
   *
   * @param name short name of the section for people
   * @param text the file's text
   * @return section and repairs, or what is wrong; no text makes it throw
   */
  public static Reading<ReadSection> readMended(String name, String text) {
    if (text.length() > LARGEST_TEXT) {
      return refuse(
          OptionalInt.empty(),
          "The file is "
              + text.length()
              + " characters long, permitted are up to "
              + LARGEST_TEXT
              + ".");
    }
    List<Point> points = new ArrayList<>();
    int number = 0;
    for (String raw : text.lines().toList()) {
      number++;
      String line = bare(raw);
      if (line.isEmpty()) {
        continue;
      }
      Optional<List<Double>> values = numbers(line);
      if (values.isPresent() && values.get().size() == 2) {
        points.add(new Point(values.get().get(0), values.get().get(1)));
      } else if (!points.isEmpty() || values.filter(v -> v.size() > 1).isPresent()) {
        return refuse(
            OptionalInt.of(number),
            "The line \""
                + Words.shorten(line)
                + "\" is not a pair of numbers; wanted are two columns, x and y.");
      }
      if (points.size() > MOST_POINTS) {
        return refuse(OptionalInt.of(number), "The file has more than " + MOST_POINTS + " points.");
      }
    }
    if (points.isEmpty()) {
      return refuse(
          OptionalInt.empty(),
          "The file has no coordinates; wanted are lines of two numbers, x and y, from the trailing"
              + " edge over the upper surface to the leading edge and back below.");
    }
    return section(name, PointLists.of(points));
  }

  private static Reading<ReadSection> section(String name, PointLists lists) {
    double[] x = lists.outline().stream().mapToDouble(Point::x).toArray();
    double[] y = lists.outline().stream().mapToDouble(Point::y).toArray();
    try {
      ReadOutline read = Sections.readOutline(name, x, y);
      return new Accepted<>(new ReadSection(read.section(), lists.joined(), read.repairs()));
    } catch (IllegalArgumentException e) {
      return refuse(
          OptionalInt.empty(), "The coordinates give no section: " + e.getMessage() + ".");
    }
  }

  private static <T> Reading<T> refuse(OptionalInt line, String message) {
    return new Refused<>(List.of(new Problem("", line, message)));
  }

  private static String bare(String raw) {
    String line = raw.replace("\uFEFF", "").strip();
    for (String mark : new String[] {"#", "%", "!", "//"}) {
      int at = line.indexOf(mark);
      if (at >= 0) {
        line = line.substring(0, at).strip();
      }
    }
    return line;
  }

  /** The numbers of a line; empty where something in it is not a number. */
  private static Optional<List<Double>> numbers(String line) {
    String[] words = line.split("[\\s;]+");
    boolean commas = words.length == 2;
    for (String word : words) {
      commas &= DECIMAL_COMMA.matcher(word).matches() || NUMBER.matcher(word).matches();
    }
    String[] parts =
        commas ? line.replace(',', '.').split("[\\s;]+") : line.split("\\s*[,;]\\s*|\\s+");
    List<Double> values = new ArrayList<>();
    for (String part : parts) {
      if (!NUMBER.matcher(part).matches()) {
        return Optional.empty();
      }
      double value = Double.parseDouble(part.replace('d', 'e').replace('D', 'e'));
      if (!Double.isFinite(value)) {
        return Optional.empty();
      }
      values.add(value);
    }
    return Optional.of(values);
  }
}
