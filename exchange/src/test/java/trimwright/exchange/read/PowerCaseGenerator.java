package trimwright.exchange.read;

import java.util.List;
import java.util.Random;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.read.internal.SchemaBook;

/** Puts propellers, motors, cells and ways home into random cases. The same seed, the same. */
final class PowerCaseGenerator {
  private static final Set<String> KEYS =
      Set.of(
          "propeller",
          "open_water",
          "motor_efficiency",
          "max_thrust_n",
          "max_rpm",
          "voltage_v",
          "max_current_a",
          "resistance_mohm",
          "home");

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final Random random;

  PowerCaseGenerator(long seed) {
    random = new Random(~seed);
  }

  /** Whether this sets a key: the other generator leaves it alone. Water needs its temperature. */
  static boolean sets(String key, boolean required) {
    return KEYS.contains(key) || key.equals("temperature_c") && !required;
  }

  void into(ObjectNode ride) {
    JsonNode setup = ride.get("setup");
    if (setup.get("drive") instanceof ObjectNode drive) {
      inside(drive);
    }
    if (setup.get("battery") instanceof ObjectNode battery && random.nextBoolean()) {
      draw(
          battery,
          "setup.battery.",
          List.of("temperature_c", "voltage_v", "max_current_a", "resistance_mohm"));
    }
    if (random.nextBoolean()) {
      ObjectNode home = NODES.objectNode();
      draw(home, "ride.home.", List.of("distance_km", "current_kmh", "wind_kmh"));
      ((ObjectNode) ride.get("ride")).set("home", home);
    }
  }

  /** A propeller of the series, a measured one, both, or none; an efficiency stands alone. */
  private void inside(ObjectNode drive) {
    if (random.nextBoolean()) {
      draw(drive, "setup.drive.", List.of("max_thrust_n"));
    }
    if (random.nextBoolean()) {
      if (!drive.has("efficiency")) {
        draw(drive, "setup.drive.", List.of("motor_efficiency"));
      }
      return;
    }
    drive.remove("efficiency");
    draw(drive, "setup.drive.", List.of("motor_efficiency", "max_rpm"));
    boolean table = random.nextBoolean();
    if (!table || random.nextBoolean()) {
      double diameter = drive.get("propeller_diameter_mm").doubleValue();
      drive.set(
          "propeller",
          NODES
              .objectNode()
              .put("blades", 2 + random.nextInt(6))
              .put("pitch_mm", Math.max(15, between(0.501, 1.399) * diameter))
              .put("area_ratio", between(0.3, 1.05)));
    }
    if (table) {
      drive.set("open_water", openWater());
    }
  }

  /** Rows from rest to about no thrust, never better than a propeller can be. */
  private ArrayNode openWater() {
    ArrayNode list = NODES.arrayNode();
    double far = between(0.3, 1.6);
    double most = between(0.1, 0.9);
    int last = 2 + random.nextInt(8);
    for (int i = 0; i <= last; i++) {
      double part = i / (last + 0.5);
      double thrust = most * (1 - part);
      double advance = far * part;
      list.add(
          NODES
              .objectNode()
              .put("advance_ratio", advance)
              .put("thrust_coefficient", thrust)
              .put("torque_coefficient", 0.01 + advance * thrust / 4));
    }
    return list;
  }

  private void draw(ObjectNode group, String path, List<String> keys) {
    for (String key : keys) {
      JsonNode schema = SchemaBook.CASE.find(path + key).orElseThrow();
      group.put(
          key, between(schema.get("minimum").doubleValue(), schema.get("maximum").doubleValue()));
    }
  }

  private double between(double low, double high) {
    return switch (random.nextInt(12)) {
      case 0 -> low;
      case 1 -> high;
      default -> low + random.nextDouble() * (high - low);
    };
  }
}
