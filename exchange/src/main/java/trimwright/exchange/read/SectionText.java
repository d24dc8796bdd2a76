package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import trimwright.exchange.read.Reading.Accepted;
import trimwright.exchange.read.Reading.Refused;
import trimwright.exchange.read.internal.Words;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

/**
 * Reads coordinates files of wing sections: two columns of numbers, separated by spaces, tabs,
 * commas or semicolons, after any title lines; lines that begin with {@code #}, {@code %}, {@code
 * !} or {@code //} are comments. The outline runs from the trailing edge round the leading edge and
 * back; two lists that both begin at the leading edge are joined to that. Decimal commas are
 * understood where they are not ambiguous.
 */
public final class SectionText {
  /** A finely scanned outline has some hundred points. */
  private static final int MOST_POINTS = 5_000;

  private static final int LARGEST_TEXT = 256 * 1024;

  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?[0-9]+,[0-9]+");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(?:\\.[0-9]+|[0-9]+(?:\\.[0-9]*)?)(?:[eEdD][-+]?[0-9]{1,3})?");

  private record Point(double x, double y) {}

  private SectionText() {}

  /**
   * Reads a coordinates file.
   *
   * @param name short name of the section for people
   * @param text the file's text
   * @return the section, or what is wrong; no text makes it throw
   */
  public static Reading<Section> read(String name, String text) {
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
    return section(name, aroundTheLeadingEdge(points));
  }

  private static Reading<Section> section(String name, List<Point> outline) {
    double[] x = outline.stream().mapToDouble(Point::x).toArray();
    double[] y = outline.stream().mapToDouble(Point::y).toArray();
    try {
      return new Accepted<>(Sections.fromOutline(name, x, y));
    } catch (IllegalArgumentException e) {
      return refuse(
          OptionalInt.empty(), "The coordinates give no section: " + e.getMessage() + ".");
    }
  }

  private static Reading<Section> refuse(OptionalInt line, String message) {
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

  /** Joins two lists that both begin at the leading edge; any other order stays as it is. */
  private static List<Point> aroundTheLeadingEdge(List<Point> given) {
    List<Point> points = withoutCounts(given);
    double least = points.stream().mapToDouble(Point::x).min().orElse(0);
    double most = points.stream().mapToDouble(Point::x).max().orElse(0);
    double length = most - least;
    if (points.get(0).x() - least > 0.2 * length) {
      return points;
    }
    int jump = 0;
    for (int i = 1; i < points.size(); i++) {
      // No outline steps forward by half its length at once; a second list does
      if (points.get(i - 1).x() - points.get(i).x() > 0.5 * length) {
        jump = i;
      }
    }
    if (jump == 0) {
      return points;
    }
    List<Point> joined = new ArrayList<>(points.subList(0, jump));
    Collections.reverse(joined);
    int next = points.get(jump).equals(points.get(0)) ? jump + 1 : jump;
    joined.addAll(points.subList(next, points.size()));
    return joined;
  }

  /**
   * Some files begin with the numbers of points above and below; that pair is no point. It is known
   * by its sum, the leading edge counted once or twice, or by standing far from everything else.
   */
  private static List<Point> withoutCounts(List<Point> points) {
    Point first = points.get(0);
    List<Point> rest = points.subList(1, points.size());
    double sum = first.x() + first.y();
    boolean counts =
        first.x() >= 2
            && first.y() >= 2
            && first.x() == Math.rint(first.x())
            && first.y() == Math.rint(first.y());
    boolean apart = rest.stream().allMatch(p -> Math.hypot(p.x(), p.y()) < 2);
    return counts && (sum == rest.size() || sum == rest.size() + 1 || apart) ? rest : points;
  }
}
