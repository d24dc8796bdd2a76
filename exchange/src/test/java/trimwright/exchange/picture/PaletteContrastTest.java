package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Contrast by WCAG 2.2, "relative luminance" and "contrast ratio". */
class PaletteContrastTest {
  /** WCAG 2.2, success criterion 1.4.3: text. */
  private static final double TEXT = 4.5;

  /** WCAG 2.2, success criterion 1.4.11: what graphics are recognised by. */
  private static final double EDGE = 3;

  /** Opacity of the water's tint in the side view. */
  private static final double WATER = 0.1;

  private static final Map<String, Palette> THEMES =
      Map.of("light", Palette.LIGHT, "dark", Palette.DARK, "sun", Palette.SUN);

  @Test
  void textReachesItsContrastOnEveryGround() {
    THEMES.forEach(
        (name, p) ->
            grounds(p)
                .forEach(
                    (ground, colour) ->
                        List.of(p.ink(), p.muted(), p.front(), p.back(), p.action())
                            .forEach(
                                text ->
                                    assertThat(contrast(rgb(text), colour))
                                        .as("%s: %s on %s", name, text, ground)
                                        .isGreaterThanOrEqualTo(TEXT))));
  }

  @Test
  void edgesReachTheirContrastOnEveryGround() {
    THEMES.forEach(
        (name, p) -> {
          for (String ground : List.of(p.ground(), p.surface(), p.window())) {
            assertThat(contrast(rgb(p.edge()), rgb(ground)))
                .as("%s: edge on %s", name, ground)
                .isGreaterThanOrEqualTo(EDGE);
          }
        });
  }

  @Test
  void textOnActionAndTheVerdictColoursReachTheirContrast() {
    THEMES.forEach(
        (name, p) -> {
          assertThat(contrast(rgb(p.onAction()), rgb(p.action()))).isGreaterThanOrEqualTo(TEXT);
          for (String text : List.of(p.good(), p.warn(), p.bad())) {
            for (String ground : List.of(p.ground(), p.surface())) {
              assertThat(contrast(rgb(text), rgb(ground)))
                  .as("%s: %s on %s", name, text, ground)
                  .isGreaterThanOrEqualTo(TEXT);
            }
          }
        });
  }

  @Test
  void contrastIsThatOfTheStandard() {
    assertThat(contrast(rgb("#FFFFFF"), rgb("#000000"))).isEqualTo(21);
    assertThat(contrast(rgb("#777777"), rgb("#FFFFFF"))).isBetween(4.47, 4.49);
  }

  private static Map<String, double[]> grounds(Palette p) {
    Map<String, double[]> grounds = new LinkedHashMap<>();
    grounds.put("ground", rgb(p.ground()));
    grounds.put("surface", rgb(p.surface()));
    grounds.put("window", rgb(p.window()));
    double[] water = new double[3];
    for (int i = 0; i < 3; i++) {
      water[i] = (1 - WATER) * rgb(p.surface())[i] + WATER * rgb(p.edge())[i];
    }
    grounds.put("water", water);
    return grounds;
  }

  private static double[] rgb(String hex) {
    int value = Integer.parseInt(hex.substring(1), 16);
    return new double[] {value >> 16, value >> 8 & 255, value & 255};
  }

  private static double contrast(double[] a, double[] b) {
    double first = luminance(a);
    double second = luminance(b);
    return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
  }

  private static double luminance(double[] rgb) {
    double[] weights = {0.2126, 0.7152, 0.0722};
    double sum = 0;
    for (int i = 0; i < 3; i++) {
      double c = rgb[i] / 255;
      sum += weights[i] * (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }
    return sum;
  }
}
