package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.exchange.demo.DemoCases;

/** Random cases show something only where every kind of wing is among them. */
class SchemaCaseGeneratorTest {
  private static final int CASES = 200;

  /** Each kind in at least one case of forty. */
  private static final int ENOUGH = CASES / 40;

  @Test
  void makesEveryKindOfWing() {
    Map<String, Integer> kinds = new TreeMap<>();
    String demo = DemoCases.list().get(0).text();
    for (int seed = 0; seed < CASES; seed++) {
      SchemaCaseGenerator generator = new SchemaCaseGenerator(seed);
      String text = seed % 2 == 0 ? generator.next() : generator.near(demo);
      JsonNode wing = JsonMapper.shared().readTree(text).get("setup").get("front_wing");
      String family = seed % 2 == 0 ? "anywhere: " : "near: ";
      count(kinds, family + "measured", wing.has("stations"));
      count(kinds, family + "thickness", wing.toString().contains("thickness_percent"));
      count(kinds, family + "five digits", wing.toString().matches(".*naca\\d{5}.*"));
      count(kinds, family + "tiny tip", wing.path("tip_chord_mm").asDouble(99) < 10);
      count(kinds, family + "blunt", fullness(wing) > 0.95);
    }
    assertThat(kinds)
        .hasSize(10)
        .allSatisfy((kind, cases) -> assertThat(cases).as(kind).isGreaterThanOrEqualTo(ENOUGH));
  }

  private static void count(Map<String, Integer> kinds, String kind, boolean is) {
    kinds.merge(kind, is ? 1 : 0, Integer::sum);
  }

  /** Where the area lies between that of a wing as narrow as its tip and its frame [1]. */
  private static double fullness(JsonNode wing) {
    if (wing.has("stations")) {
      return 0;
    }
    double mean = 100 * wing.get("area_cm2").asDouble() / wing.get("span_mm").asDouble();
    double tip = wing.get("tip_chord_mm").asDouble();
    double root = wing.get("root_chord_mm").asDouble();
    return root > tip ? (mean - tip) / (root - tip) : 0;
  }
}
