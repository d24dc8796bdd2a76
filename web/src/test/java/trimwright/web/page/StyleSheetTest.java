package trimwright.web.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Contrast of every pair of colours that meet on a page, computed from the style sheet itself. */
class StyleSheetTest {
  /** WCAG 2.2, success criterion 1.4.3: text of ordinary size. */
  private static final double TEXT = 4.5;

  /** WCAG 2.2, success criterion 1.4.11: edges of controls and lines of pictures. */
  private static final double EDGE = 3.0;

  private static final List<String> TEXT_COLOURS =
      List.of("ink", "muted", "action", "front", "back", "good", "warn", "bad");
  private static final List<String> GROUNDS = List.of("ground", "surface", "window");

  @ParameterizedTest
  @EnumSource(Theme.class)
  void textReachesItsContrastOnEveryGround(Theme theme) throws IOException {
    Map<String, String> colours = colours(theme);
    for (String text : TEXT_COLOURS) {
      for (String ground : List.of("ground", "surface")) {
        assertThat(contrast(colours.get(text), colours.get(ground)))
            .as("%s on %s in %s", text, ground, theme)
            .isGreaterThanOrEqualTo(TEXT);
      }
    }
    assertThat(contrast(colours.get("ink"), colours.get("window")))
        .as("ink on window in %s", theme)
        .isGreaterThanOrEqualTo(TEXT);
    assertThat(contrast(colours.get("on-action"), colours.get("action")))
        .as("text on action in %s", theme)
        .isGreaterThanOrEqualTo(TEXT);
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void edgesAndLinesReachTheirContrast(Theme theme) throws IOException {
    Map<String, String> colours = colours(theme);
    for (String line : List.of("edge", "action", "front", "back", "good", "warn", "bad")) {
      for (String ground : GROUNDS) {
        assertThat(contrast(colours.get(line), colours.get(ground)))
            .as("%s on %s in %s", line, ground, theme)
            .isGreaterThanOrEqualTo(EDGE);
      }
    }
  }

  @Test
  void coloursAreWrittenOnlyWhereTheyAreNamed() throws IOException {
    String rules = sheet().replaceAll("(?m)^ *--[a-z-]+: #[0-9A-F]{6};$", "");
    assertThat(rules).doesNotContainPattern("#[0-9A-Fa-f]{3,8}\\b").doesNotContain("rgb(");
  }

  private static Map<String, String> colours(Theme theme) throws IOException {
    Map<String, String> colours = new HashMap<>(block(":root"));
    if (theme != Theme.LIGHT) {
      colours.putAll(block(":root[data-theme=\"" + theme.code() + "\"]"));
    }
    return colours;
  }

  private static Map<String, String> block(String selector) throws IOException {
    String sheet = sheet();
    int from = sheet.indexOf("\n" + selector + " {");
    assertThat(from).as("block %s", selector).isNotNegative();
    Map<String, String> colours = new HashMap<>();
    Matcher matcher =
        Pattern.compile("--([a-z-]+): (#[0-9A-F]{6});")
            .matcher(sheet.substring(from, sheet.indexOf('}', from)));
    while (matcher.find()) {
      colours.put(matcher.group(1), matcher.group(2));
    }
    return colours;
  }

  private static String sheet() throws IOException {
    try (InputStream in =
        Objects.requireNonNull(
            StyleSheetTest.class.getResourceAsStream("/static/trimwright.css"))) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  /** Contrast ratio as WCAG 2.2 defines it. */
  private static double contrast(String a, String b) {
    double first = luminance(a);
    double second = luminance(b);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(String hex) {
    double sum = 0;
    double[] weights = {0.2126, 0.7152, 0.0722};
    for (int i = 0; i < weights.length; i++) {
      double channel = Integer.parseInt(hex.substring(1 + 2 * i, 3 + 2 * i), 16) / 255.0;
      double linear =
          channel <= 0.04045 ? channel / 12.92 : Math.pow((channel + 0.055) / 1.055, 2.4);
      sum += weights[i] * linear;
    }
    return sum;
  }
}
