package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.unit.Unit;

/** The inputs of a case, as the schema of case files lists them. */
public final class CaseFields {
  private static final List<CaseField> ALL = all();

  private CaseFields() {}

  /** Every single input, in the schema's order; those of lists are not among them. */
  public static List<CaseField> list() {
    return ALL.stream().filter(field -> !field.path().contains("*")).toList();
  }

  /** The inputs of one entry of a list, such as a wing's measured stations. */
  public static List<CaseField> listRepeated() {
    return ALL.stream().filter(field -> field.path().contains("*")).toList();
  }

  private static List<CaseField> all() {
    List<CaseField> all = new ArrayList<>();
    collect("", SchemaBook.CASE.root(), all);
    return List.copyOf(all);
  }

  private static void collect(String path, JsonNode group, List<CaseField> all) {
    Set<String> required = new LinkedHashSet<>();
    group.path("required").forEach(name -> required.add(name.stringValue()));
    for (Map.Entry<String, JsonNode> property : group.path("properties").properties()) {
      JsonNode schema = SchemaBook.CASE.resolve(property.getValue());
      String own = Paths.child(path, property.getKey());
      if (!schema.has("properties") && !schema.has("items") && !own.equals("format")) {
        all.add(field(own, path, schema, !required.contains(property.getKey())));
      }
      if (schema.path("type").toString().contains("string") && schema.has("properties")) {
        all.add(field(own, path, schema, !required.contains(property.getKey())));
      }
      if (schema.has("items")) {
        collect(own + ".*", SchemaBook.CASE.resolve(schema.get("items")), all);
      }
      collect(own, schema, all);
    }
  }

  private static CaseField field(String path, String group, JsonNode schema, boolean optional) {
    List<CaseField.Choice> choices = new ArrayList<>();
    schema
        .path("enum")
        .forEach(c -> choices.add(new CaseField.Choice(c.stringValue(), c.stringValue())));
    boolean number = schema.path("type").stringValue("").equals("number");
    String title = schema.path("title").stringValue("");
    return new CaseField(
        path,
        group,
        group,
        false,
        title,
        title,
        schema.path("description").stringValue(""),
        number ? Optional.of(unit(schema.path("x-unit").stringValue("1"))) : Optional.empty(),
        number(schema.get("minimum")),
        number(schema.get("maximum")),
        Optional.ofNullable(schema.get("default")).map(CaseFields::text),
        number
            ? CaseField.Kind.NUMBER
            : choices.isEmpty() ? CaseField.Kind.TEXT : CaseField.Kind.CHOICE,
        choices,
        optional);
  }

  /** A unit by its symbol; words after it, as in "% of chord", say of what. */
  private static Unit unit(String symbol) {
    String first = symbol.split(" ", 2)[0];
    return Stream.of(Unit.values())
        .filter(unit -> unit.symbol().equals(first))
        .findFirst()
        .orElse(Unit.RATIO);
  }

  private static OptionalDouble number(JsonNode node) {
    return node == null ? OptionalDouble.empty() : OptionalDouble.of(node.doubleValue());
  }

  private static String text(JsonNode node) {
    return node.isNumber() ? Words.number(node.doubleValue()) : node.stringValue("");
  }
}
