package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import trimwright.kernel.layer.Disturbance;

/** Holds the page's table of thin sections about no lift to what the solver gives. */
class ThinSectionsPageTest {
  private static final Path PAGE = Path.of("..", "docs", "modules", "kernel.md");
  private static final String TABLE_STARTS = "| section, stream | Reynolds |";
  private static final double[] DEGREES = {-1, -0.5, 0, 0.5, 1, 2, 3};

  /** With {@code -Dtrimwright.write.documents=true} the page's table is written anew. */
  @Test
  void thePageSaysWhatTheSolverGives() throws Exception {
    String page = Files.readString(PAGE, StandardCharsets.UTF_8);
    int from = page.indexOf(TABLE_STARTS);
    int to = page.indexOf("\n\n", from) + 1;
    String table = table();
    if (Boolean.getBoolean("trimwright.write.documents")) {
      Files.writeString(PAGE, page.substring(0, from) + table + page.substring(to));
      return;
    }
    assertThat(page.substring(from, to)).isEqualTo(table);
  }

  private static String table() {
    StringBuilder text =
        new StringBuilder(
            TABLE_STARTS + " 0.5° | 1° | 2° | 3° |\n| --- | --- | --- | --- | --- | --- |\n");
    rows(text, "0009, waters (0.6 %)", "0009", Disturbance.WATERS, 2e5, 4e5, 6e5);
    rows(text, "0009, tunnel (0.07 %)", "0009", Disturbance.TUNNEL, 2e5, 4e5);
    rows(text, "0006, waters", "0006", Disturbance.WATERS, 2e5, 4e5);
    return text.toString();
  }

  private static void rows(
      StringBuilder text, String name, String code, Disturbance disturbance, double... reynolds) {
    ViscousSurface surface = ViscousSurface.of(Sections.naca(code).shape());
    double[] angles = new double[DEGREES.length];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = Math.toRadians(DEGREES[i]);
    }
    String first = name;
    for (double r : reynolds) {
      PolarRow row = PolarSweep.run(surface, angles, r, disturbance, 1);
      text.append(
          String.format(
              Locale.ROOT, "| %s| %.0fe5 |", first.isEmpty() ? first : first + " ", r / 1e5));
      for (int i = 3; i < angles.length; i++) {
        assertThat(row.kind(angles[i])).isEqualTo(PointKind.COMPUTED);
        text.append(String.format(Locale.ROOT, " %.3f |", row.lift(angles[i]) / DEGREES[i]));
      }
      text.append('\n');
      first = "";
    }
  }
}
