package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.exchange.words.RepairWords;
import trimwright.kernel.section.Section;

/** Coordinates files as they come: one outline in many dresses. */
class SectionTextTest {
  /** The file prints six decimals; the zero-lift angle follows them within a few 1e-5 rad. */
  private static final double PRINTED = 1e-4;

  private static final double THICKNESS = 0.12;

  /**
   * Points of a cambered wedge with a round nose, from the trailing edge over the upper surface.
   */
  private static List<double[]> points(double thickness) {
    List<double[]> points = new ArrayList<>();
    for (int i = 0; i <= 80; i++) {
      double angle = 2 * Math.PI * i / 80;
      double x = 0.5 * (1 + Math.cos(angle));
      double side = i <= 40 ? 1 : -1;
      double half = thickness * 1.3 * Math.sqrt(x) * (1 - x);
      double mean = 0.08 * x * (1 - x);
      points.add(new double[] {x, mean + side * half});
    }
    return points;
  }

  static String outline(double thickness) {
    return text(points(thickness), "%.6f %.6f%n");
  }

  private static String text(List<double[]> points, String format) {
    StringBuilder out = new StringBuilder();
    points.forEach(p -> out.append(String.format(Locale.ROOT, format, p[0], p[1])));
    return out.toString();
  }

  private static Section section(String text) {
    Reading<Section> reading = SectionText.read("test", text);
    assertThat(reading.problems()).isEmpty();
    return reading.findValue().orElseThrow();
  }

  private static void assertSame(String text) {
    assertThat(section(text).zeroLiftAngle())
        .isCloseTo(section(outline(THICKNESS)).zeroLiftAngle(), within(PRINTED));
  }

  @Test
  void readsEveryDress() {
    List<double[]> points = points(THICKNESS);
    assertThat(section(outline(THICKNESS)).zeroLiftAngle()).isNegative();
    assertSame("Made-up section 12\n\n" + outline(THICKNESS));
    assertSame("# measured\nx, y\n" + text(points, "%.6f, %.6f%n"));
    assertSame(text(points, "%.6f\t%.6f\r\n"));
    assertSame(text(points, "  %.6f;%.6f // scan%n"));
    assertSame(text(points, "%.6f %.6f%n").replace('.', ','));
    assertSame(text(points, "%.6f;%.6f%n").replace('.', ','));
    assertSame(text(points, "%.6E %.6E%n"));
    assertSame("\uFEFF" + outline(THICKNESS));
    List<double[]> millimetres =
        points.stream().map(p -> new double[] {180 * p[0], 180 * p[1]}).toList();
    assertSame(text(millimetres, "%.5f %.5f%n"));
    List<double[]> backwards = new ArrayList<>(points);
    Collections.reverse(backwards);
    assertSame(text(backwards, "%.6f %.6f%n"));
  }

  @Test
  void joinsTwoListsThatBeginAtTheLeadingEdge() {
    List<double[]> points = points(THICKNESS);
    List<double[]> upper = new ArrayList<>(points.subList(0, 41));
    Collections.reverse(upper);
    List<double[]> lower = points.subList(40, 81);
    String lists = text(upper, "%.6f %.6f%n") + "\n" + text(lower, "%.6f %.6f%n");
    assertSame(lists);
    assertSame("Two lists\n 41. 41.\n\n" + lists);
    assertSame("41. 41.\n" + lists);
    assertSame("2412\n" + outline(THICKNESS));
    assertSame("41. 41.\n" + outline(THICKNESS));
    assertSame("80. 80.\n" + outline(THICKNESS));
  }

  /** Every way in which two surfaces are listed gives one section. */
  @Test
  void joinsListsFromEitherEdge() {
    List<double[]> points = points(THICKNESS);
    List<double[]> upper = points.subList(0, 41);
    List<double[]> lower = points.subList(40, 81);
    for (List<double[]> first : List.of(upper, reversed(upper))) {
      for (List<double[]> second : List.of(lower, reversed(lower))) {
        for (String gap : new String[] {"", "\n"}) {
          String up = text(first, "%.6f %.6f%n");
          String down = text(second, "%.6f %.6f%n");
          assertSame(up + gap + down);
          assertSame(down + gap + up);
        }
      }
    }
  }

  private static List<double[]> reversed(List<double[]> points) {
    List<double[]> backwards = new ArrayList<>(points);
    Collections.reverse(backwards);
    return backwards;
  }

  private static List<String> repairs(String text) {
    Reading<ReadSection> reading = SectionText.readMended("test", text);
    assertThat(reading.problems()).isEmpty();
    return RepairWords.of(reading.findValue().orElseThrow());
  }

  @Test
  void saysWhatItPutRight() {
    List<double[]> points = points(THICKNESS);
    assertThat(repairs(outline(THICKNESS))).isEmpty();
    assertThat(repairs(text(reversed(points), "%.6f %.6f%n")))
        .containsExactly("The lower surface came first; the order was turned round.");
    String lists =
        text(reversed(points.subList(0, 41)), "%.6f %.6f%n")
            + text(points.subList(40, 81), "%.6f %.6f%n");
    assertThat(repairs(lists))
        .containsExactly("The two surfaces were listed apart and were joined.");
    List<double[]> twice = new ArrayList<>(points);
    twice.add(20, points.get(20));
    assertThat(repairs(text(twice, "%.6f %.6f%n")))
        .containsExactly("One point was repeated and left out.");
    List<double[]> open = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      double[] point = points.get(i);
      open.add(new double[] {point[0], point[1] + (i <= 40 ? 0.002 : -0.002) * point[0]});
    }
    assertThat(repairs(text(open, "%.6f %.6f%n")))
        .containsExactly(
            "The trailing edge was open by 0.40 % of the chord; a wedge over the whole chord closes it.");
    List<double[]> turned =
        points.stream().map(p -> new double[] {p[0] - 0.1 * p[1], p[1] + 0.1 * p[0]}).toList();
    assertThat(repairs(text(turned, "%.6f %.6f%n")))
        .singleElement()
        .asString()
        .startsWith("The outline lay at 5.")
        .endsWith("degrees; angles count from its own chord line.");
    assertThat(repairs(text(points, "%.3f %.3f%n")))
        .singleElement()
        .asString()
        .startsWith("The points scatter by about 0.0");
  }

  @Test
  void saysWhatIsWrong() {
    assertThat(message("")).startsWith("The file has no coordinates");
    assertThat(message("title only\nanother")).startsWith("The file has no coordinates");
    assertThat(message("1 0 0\n0 0 0\n")).startsWith("line 1: The line \"1 0 0\" is not a pair");
    assertThat(message("1 0\n0 0\nthe end\n")).startsWith("line 3: The line \"the end\"");
    assertThat(message("1 0\n0.5 0.1\n0 0\n")).startsWith("The coordinates give no section: ");
    assertThat(message("1 0\n0.5 NaN\n0 0\n")).startsWith("line 2: The line \"0.5 NaN\"");
    assertThat(message("1 0\n0.5 1e999\n0 0\n")).startsWith("line 2: The line \"0.5 1e999\"");
    assertThat(message(text(points(THICKNESS), "%.1f %.2f%n"))).contains("outline must");
    assertThat(message("1 0\n".repeat(6000))).contains("more than 5000 points");
    assertThat(message("x".repeat(300_000))).contains("permitted are up to 262144");
    assertThat(message("1 0\n".repeat(40))).startsWith("The coordinates give no section: ");
  }

  private static String message(String text) {
    Reading<Section> reading = SectionText.read("test", text);
    assertThat(reading.problems()).hasSize(1);
    return reading.problems().get(0).text();
  }

  @Test
  void readsOnlyFilesInTheCasesFolder(@TempDir Path folder) throws Exception {
    Path home = Files.createDirectories(folder.resolve("home/sub"));
    Files.writeString(folder.resolve("home/a.dat"), "inside");
    Files.writeString(home.resolve("b.dat"), "below");
    Files.writeString(folder.resolve("c.dat"), "outside");
    Files.createSymbolicLink(folder.resolve("home/d.dat"), folder.resolve("c.dat"));
    Files.write(folder.resolve("home/e.dat"), new byte[] {(byte) 0xe9, ' ', '1'});
    SectionFiles files = SectionFolder.beside(folder.resolve("home/case.yaml"));
    assertThat(files.find("a.dat")).contains("inside");
    assertThat(files.find("sub/b.dat")).contains("below");
    assertThat(files.find("../c.dat")).isEmpty();
    assertThat(files.find(folder.resolve("c.dat").toString())).isEmpty();
    assertThat(files.find("d.dat")).isEmpty();
    assertThat(files.find("e.dat")).contains("é 1");
    assertThat(files.find("sub")).isEmpty();
    assertThat(files.find("\0.dat")).isEmpty();
    assertThat(files.find("none.dat")).isEmpty();
  }
}
