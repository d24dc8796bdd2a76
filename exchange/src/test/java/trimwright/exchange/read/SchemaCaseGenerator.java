package trimwright.exchange.read;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.YamlParser;

/**
 * Makes random case files from the schema's own ranges, ends included; what the checks across keys
 * forbid is bent until they permit it. The same seed makes the same case.
 */
public final class SchemaCaseGenerator {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final List<String> SECTIONS =
      List.of(
          "naca2412",
          "naca0009",
          "naca0006",
          "naca4415",
          "naca6320",
          "naca23012",
          "naca0030",
          "naca21008",
          "naca24115",
          "naca25018");

  /** Area of a wing of the fullest tip that is accepted (exponent 8), of its frame [1]. */
  private static final double FULLEST = 0.9784;

  /** Share by which numbers move near a given case. */
  private static final double MOVE = 0.10;

  /** Keys that only go with others; they are set by hand. */
  private static final Set<String> BY_HAND = Set.of("stations", "pull", "section", "name");

  private final Random random;
  private final PowerCaseGenerator power;

  SchemaCaseGenerator(long seed) {
    random = new Random(seed);
    power = new PowerCaseGenerator(seed);
  }

  /**
   * By turns from the whole of the schema's ranges, and from around a demo case, where most fly.
   */
  public static String text(int seed) {
    SchemaCaseGenerator generator = new SchemaCaseGenerator(seed);
    List<DemoCase> demos = DemoCases.list();
    return seed % 2 == 0
        ? generator.next()
        : generator.near(demos.get(seed / 2 % demos.size()).text());
  }

  /** A case file as JSON, which is YAML. */
  String next() {
    ObjectNode ride = group(SchemaBook.CASE.root());
    ObjectNode setup = (ObjectNode) ride.get("setup");
    ObjectNode frontWing = wing((ObjectNode) setup.get("front_wing"));
    ObjectNode stabilizer = wing((ObjectNode) setup.get("stabilizer"));
    feet((ObjectNode) ride.get("rider"));
    board((ObjectNode) setup.get("board"));
    fuselage((ObjectNode) setup.get("fuselage"), chord(frontWing), chord(stabilizer));
    depths(ride, setup, frontWing.path("height_mm").doubleValue(0));
    if (!setup.has("drive") && random.nextBoolean()) {
      ride.set("pull", NODES.objectNode().put("height_above_deck_mm", between(0, 6000)));
    }
    power.into(ride);
    return ride.toString();
  }

  /** A case in the neighbourhood of a given one: every number moved, still within its range. */
  String near(String text) {
    ObjectNode ride = SchemaBook.CASE.filled(YamlParser.parse(text).root().orElseThrow());
    move(ride, SchemaBook.CASE.root());
    for (String key : List.of("front_wing", "stabilizer")) {
      ObjectNode wing = (ObjectNode) ride.get("setup").get(key);
      if (random.nextInt(4) == 0) {
        wing.put("tip_chord_mm", between(1, Math.min(10, chord(wing))));
      }
      wing.put("area_cm2", area(wing.get("span_mm").doubleValue(), chord(wing), tip(wing)));
      if (random.nextInt(3) == 0) {
        wing.set("section", section());
      }
      if (random.nextInt(4) == 0) {
        measured(wing);
      }
    }
    board((ObjectNode) ride.get("setup").get("board"));
    power.into(ride);
    return ride.toString();
  }

  private void move(ObjectNode group, JsonNode schema) {
    for (Map.Entry<String, JsonNode> property : schema.get("properties").properties()) {
      JsonNode own = SchemaBook.CASE.resolve(property.getValue());
      JsonNode value = group.get(property.getKey());
      if (value instanceof ObjectNode inner) {
        move(inner, own);
      } else if (value != null && value.isNumber()) {
        double least = own.get("minimum").doubleValue();
        double most = own.get("maximum").doubleValue();
        double step = MOVE * Math.max(Math.abs(value.doubleValue()), 0.1 * (most - least));
        double moved = value.doubleValue() + (2 * random.nextDouble() - 1) * step;
        group.put(property.getKey(), Math.max(least, Math.min(most, moved)));
      }
    }
  }

  /** The same wing as somebody with a tape would have written it down, more or less. */
  private void measured(ObjectNode wing) {
    double root = chord(wing);
    double tip = tip(wing);
    int last = 1 + random.nextInt(6);
    ArrayNode list = NODES.arrayNode();
    for (int i = 0; i <= last; i++) {
      double eta = (double) i / last;
      ObjectNode station = NODES.objectNode();
      station
          .put("eta", eta)
          .put("chord_mm", tip + (root - tip) * Math.sqrt(1 - eta * eta))
          .put("quarter_chord_mm", -wing.path("sweep_mm").doubleValue(0) * eta * eta)
          .put("height_mm", -wing.path("tip_drop_mm").doubleValue(0) * eta * eta)
          .put("twist_deg", between(-4, 4) * eta);
      if (random.nextBoolean()) {
        station.set("section", section());
      }
      list.add(station);
    }
    withoutSheet(wing);
    wing.set("stations", list);
  }

  private static void withoutSheet(ObjectNode wing) {
    for (String key :
        List.of(
            "area_cm2",
            "root_chord_mm",
            "tip_chord_mm",
            "sweep_mm",
            "tip_drop_mm",
            "twist_tip_deg")) {
      wing.remove(key);
    }
  }

  private static double tip(ObjectNode wing) {
    return wing.get("tip_chord_mm").doubleValue();
  }

  /** An area [cm²] between a straight taper's and the fullest tip's, ends included. */
  private double area(double span, double root, double tip) {
    double least = span * (root + tip) / 2 / 100;
    double most = span * (tip + (root - tip) * FULLEST) / 100;
    return between(least, Math.max(least, most));
  }

  private double between(double low, double high) {
    return switch (random.nextInt(12)) {
      case 0 -> low;
      case 1 -> high;
      default -> low + random.nextDouble() * (high - low);
    };
  }

  private double draw(JsonNode schema) {
    return between(schema.get("minimum").doubleValue(), schema.get("maximum").doubleValue());
  }

  private double draw(String path) {
    return draw(SchemaBook.CASE.find(path).orElseThrow());
  }

  private ObjectNode group(JsonNode schema) {
    ObjectNode group = NODES.objectNode();
    for (Map.Entry<String, JsonNode> property : schema.get("properties").properties()) {
      String key = property.getKey();
      boolean required =
          schema.get("required").valueStream().anyMatch(n -> n.asString().equals(key));
      if (BY_HAND.contains(key)
          || PowerCaseGenerator.sets(key, required)
          || !required && random.nextBoolean()) {
        continue;
      }
      JsonNode own = SchemaBook.CASE.resolve(property.getValue());
      if (own.has("enum")) {
        group.set(key, own.get("enum").get(random.nextInt(own.get("enum").size())));
      } else if (own.get("type").asString().equals("number")) {
        group.put(key, draw(own));
      } else {
        group.set(key, group(own));
      }
    }
    return group;
  }

  private ObjectNode wing(ObjectNode wing) {
    double span = wing.path("span_mm").doubleValue(draw("setup.front_wing.span_mm"));
    wing.put("span_mm", span);
    if (random.nextInt(4) == 0) {
      withoutSheet(wing);
      wing.set("stations", stations(span));
      return wing;
    }
    double root = between(20, Math.min(700, span));
    double tip = between(1, random.nextInt(4) == 0 ? Math.min(10, root) : root);
    double area = area(span, root, tip);
    JsonNode range = SchemaBook.CASE.find("setup.stabilizer.area_cm2").orElseThrow();
    if (area < 100 || area > range.get("maximum").doubleValue()) {
      wing.remove("span_mm");
      return wing(wing);
    }
    wing.put("area_cm2", area).put("root_chord_mm", root).put("tip_chord_mm", tip);
    wing.set("section", section());
    return wing;
  }

  private JsonNode section() {
    return random.nextInt(4) == 0
        ? NODES
            .objectNode()
            .put("thickness_percent", between(3, 30))
            .put("camber_percent", between(-10, 10))
        : NODES.stringNode(SECTIONS.get(random.nextInt(SECTIONS.size())));
  }

  private ArrayNode stations(double span) {
    ArrayNode list = NODES.arrayNode();
    int last = 1 + random.nextInt(5);
    for (int i = 0; i <= last; i++) {
      ObjectNode station = NODES.objectNode();
      station.put("eta", (double) i / last);
      station.put("chord_mm", between(1, Math.min(800, span)));
      for (String key : List.of("quarter_chord_mm", "height_mm", "twist_deg")) {
        if (random.nextBoolean()) {
          station.put(key, draw("setup.front_wing.stations[0]." + key));
        }
      }
      station.set("section", section());
      list.add(station);
    }
    return list;
  }

  private static double chord(ObjectNode wing) {
    return wing.has("stations")
        ? wing.get("stations").get(0).get("chord_mm").doubleValue()
        : wing.get("root_chord_mm").doubleValue();
  }

  private void feet(ObjectNode rider) {
    double back = between(-1600, 1500);
    rider
        .put("back_foot_mm", back)
        .put("front_foot_mm", Math.max(-1500, between(back + 100, 2500)));
  }

  private void board(ObjectNode board) {
    double litres =
        board.get("length_mm").doubleValue()
            * board.get("width_mm").doubleValue()
            * board.get("thickness_mm").doubleValue()
            / 1e6;
    board.put("volume_l", Math.max(1, Math.min(board.get("volume_l").doubleValue(), litres)));
    if (litres < 1) {
      board.put("thickness_mm", 20);
    }
  }

  private void fuselage(ObjectNode fuselage, double frontChord, double rearChord) {
    double least = 0.75 * frontChord + 0.25 * rearChord;
    double ahead = fuselage.get("front_wing_ahead_of_mast_mm").doubleValue();
    double behind = between(Math.max(50, least - ahead + 1), 1500);
    fuselage.put("stabilizer_behind_mast_mm", behind);
  }

  private void depths(ObjectNode ride, ObjectNode setup, double wingHeight) {
    ObjectNode mast = (ObjectNode) setup.get("mast");
    mast.put("thickness_mm", between(4, Math.min(50, mast.get("chord_mm").doubleValue())));
    double deepest = mast.get("length_mm").doubleValue() - wingHeight - 1;
    double depth = between(20, Math.max(21, Math.min(1500, deepest)));
    ((ObjectNode) ride.get("ride")).put("mast_immersion_mm", depth);
    if (setup.get("drive") instanceof ObjectNode drive) {
      if (depth + wingHeight <= -199) {
        setup.remove("drive");
      } else {
        drive.put(
            "height_above_fuselage_mm", between(-200, Math.min(1400, depth + wingHeight - 0.5)));
      }
    }
  }
}
