package trimwright.exchange.write;

import java.util.List;
import java.util.Map;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;
import trimwright.exchange.read.CaseField;
import trimwright.exchange.read.CaseFields;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.ShownUnit;
import trimwright.exchange.unit.Unit;

/** What the Bench's scripts start from, as JSON that may stand inside a script element. */
public final class BenchPageWriter {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private BenchPageWriter() {}

  /**
   * The data block.
   *
   * @param open the case that the page opens with
   * @param values its fields, text by path
   * @param shelf what can be opened
   * @param reply the first answer, JSON
   * @return JSON without a less-than sign
   */
  public static String json(
      ShelfWriter.Item open,
      Map<String, String> values,
      List<ShelfWriter.Item> shelf,
      String reply) {
    ObjectNode root = MAPPER.createObjectNode();
    JsonFields fields = new JsonFields(root);
    fields.list("fields", CaseFields.list(), BenchPageWriter::field);
    fields.list("repeated_fields", CaseFields.listRepeated(), BenchPageWriter::field);
    measures(fields.object("measures"));
    JsonFields inHand = fields.object("case");
    open.write(inHand);
    JsonFields all = inHand.object("fields");
    values.forEach(all::text);
    fields.list("shelf", shelf, (node, item) -> item.write(node));
    root.putRawValue("reply", new RawValue(reply));
    return scriptSafe(MAPPER.writeValueAsString(root));
  }

  /** No text can close the element or open a comment in it: both begin with a less-than sign. */
  static String scriptSafe(String json) {
    return json.replace("<", "\\u003c");
  }

  private static void field(JsonFields node, CaseField field) {
    node.text("path", field.path())
        .text("group", field.group())
        .text("group_label", field.groupLabel())
        .flag("group_optional", field.groupOptional())
        .text("label", field.label())
        .text("name", field.name())
        .text("help", field.help())
        .text("unit", field.unit().map(Unit::symbol).orElse(""))
        .number("minimum", field.minimum())
        .number("maximum", field.maximum())
        .text("fallback", field.fallback().orElse(null))
        .text("kind", Codes.of(field.kind()))
        .list(
            "choices",
            field.choices(),
            (choice, c) -> choice.text("code", c.code()).text("label", c.label()))
        .flag("optional", field.optional());
    field
        .signs()
        .ifPresent(
            signs ->
                node.object("signs").text("below", signs.below()).text("above", signs.above()));
  }

  /** The table of what people see of each unit. */
  static void measures(JsonFields node) {
    for (Measures measures : Measures.values()) {
      JsonFields table = node.object(Codes.of(measures));
      for (Map.Entry<Unit, ShownUnit> entry : measures.table().entrySet()) {
        ShownUnit shown = entry.getValue();
        table
            .object(entry.getKey().symbol())
            .text("symbol", shown.symbol())
            .exact("factor", shown.factor())
            .exact("offset", shown.offset())
            .whole("decimals", shown.decimals());
      }
    }
  }
}
