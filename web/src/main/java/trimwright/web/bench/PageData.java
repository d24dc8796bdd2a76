package trimwright.web.bench;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseField;
import trimwright.exchange.read.CaseFields;

/** What the page's scripts start from, as JSON that may stand inside a script element. */
final class PageData {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private PageData() {}

  /**
   * The data block.
   *
   * @param open the case that the page opens with
   * @param shelf what can be opened
   * @param reply the first answer, JSON
   */
  static String of(CaseOnShelf open, List<CaseOnShelf> shelf, String reply) {
    ObjectNode root = MAPPER.createObjectNode();
    ArrayNode fields = root.putArray("fields");
    CaseFields.list().forEach(field -> field(fields.addObject(), field));
    measures(root.putObject("measures"));
    ObjectNode inHand = root.putObject("case");
    inHand.put("id", open.id()).put("title", open.title()).put("kind", open.kind());
    ObjectNode values = inHand.putObject("fields");
    CaseDraft.fields(open.caseFile()).forEach(values::put);
    ArrayNode all = root.putArray("shelf");
    for (CaseOnShelf item : shelf) {
      all.addObject()
          .put("id", item.id())
          .put("title", item.title())
          .put("story", item.story())
          .put("kind", item.kind());
    }
    root.putRawValue("reply", new RawValue(reply));
    return scriptSafe(MAPPER.writeValueAsString(root));
  }

  /** No text can close the element or open a comment in it: both begin with a less-than sign. */
  private static String scriptSafe(String json) {
    return json.replace("<", "\\u003c");
  }

  private static void field(ObjectNode node, CaseField field) {
    node.put("path", field.path())
        .put("group", field.group())
        .put("label", field.label())
        .put("unit", field.unit());
    number(node, "minimum", field.minimum());
    number(node, "maximum", field.maximum());
    node.put("fallback", field.fallback().orElse(null));
    node.put("kind", field.kind().name());
    ArrayNode choices = node.putArray("choices");
    field.choices().forEach(choices::add);
    node.put("optional", field.optional());
  }

  private static void number(ObjectNode node, String name, OptionalDouble value) {
    if (value.isPresent()) {
      node.put(name, value.getAsDouble());
    } else {
      node.putNull(name);
    }
  }

  private record Conversion(String symbol, double factor, double offset, int decimals) {}

  private static final Map<String, List<Conversion>> CONVERSIONS =
      Map.ofEntries(
          Map.entry("km/h", both("km/h", 0, "mph", 1 / 1.609344, 0)),
          Map.entry("mm", both("mm", 0, "in", 1 / 25.4, 2)),
          Map.entry("m", both("m", 2, "ft", 1 / 0.3048, 2)),
          Map.entry("m²", both("m²", 2, "ft²", 1 / (0.3048 * 0.3048), 1)),
          Map.entry("cm²", both("cm²", 0, "in²", 1 / 6.4516, 1)),
          Map.entry("kg", both("kg", 1, "lb", 1 / 0.45359237, 1)),
          Map.entry("N", both("N", 0, "lbf", 1 / (0.45359237 * 9.80665), 0)),
          Map.entry("°C", List.of(new Conversion("°C", 1, 0, 0), new Conversion("°F", 1.8, 32, 0))),
          Map.entry("°", both("°", 1, "°", 1, 1)),
          Map.entry("%", both("%", 0, "%", 1, 0)),
          Map.entry("W", both("W", 0, "W", 1, 0)),
          Map.entry("Wh", both("Wh", 0, "Wh", 1, 0)),
          Map.entry("g/kg", both("g/kg", 1, "g/kg", 1, 1)),
          Map.entry("l", both("l", 0, "l", 1, 0)));

  private static List<Conversion> both(
      String metric, int decimals, String imperial, double factor, int imperialDecimals) {
    return List.of(
        new Conversion(metric, 1, 0, decimals),
        new Conversion(imperial, factor, 0, imperialDecimals));
  }

  private static void measures(ObjectNode root) {
    List<String> names = List.of("metric", "imperial");
    for (int i = 0; i < names.size(); i++) {
      ObjectNode table = root.putObject(names.get(i));
      for (Map.Entry<String, List<Conversion>> entry : CONVERSIONS.entrySet()) {
        Conversion conversion = entry.getValue().get(i);
        table
            .putObject(entry.getKey())
            .put("symbol", conversion.symbol())
            .put("factor", conversion.factor())
            .put("offset", conversion.offset())
            .put("decimals", conversion.decimals());
      }
    }
  }
}
