package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import trimwright.exchange.read.CaseField.Choice;
import trimwright.exchange.read.CaseField.Kind;
import trimwright.exchange.read.CaseField.Signs;
import trimwright.exchange.read.internal.Paths;
import trimwright.exchange.read.internal.SchemaBook;
import trimwright.exchange.read.internal.Words;
import trimwright.exchange.unit.Unit;

/**
 * Makes the tree of all that a case may hold from its schema.
 *
 * @param heading path of the group under whose heading fields stand
 * @param title what people call that group, in the middle of a sentence
 * @param optional whether that group may be left out
 */
record FieldTree(String heading, String title, boolean optional) {
  private static final Set<String> GROUPS_OF_GROUPS = Set.of("", "setup");

  /** What a file says of itself is nothing that people fill in. */
  private static final String FORMAT = "format";

  static FieldNode of() {
    return new FieldTree("", "", false).group("", SchemaBook.CASE.root(), true);
  }

  private FieldNode group(String path, JsonNode schema, boolean required) {
    // What a group needs that may be left out within its part need not be given either.
    boolean inside = !path.equals(heading) && !path.contains("*") && !required;
    Set<String> needed = inside ? Set.of() : needed(schema);
    Map<String, FieldNode> children = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      String name = property.getKey();
      if (!name.equals(FORMAT)) {
        children.put(
            name,
            place(
                Paths.child(path, name),
                SchemaBook.CASE.resolve(property.getValue()),
                needed.contains(name)));
      }
    }
    return new FieldNode(
        text(schema, "title"), required, Optional.empty(), children, Optional.empty());
  }

  private FieldNode place(String path, JsonNode schema, boolean required) {
    if (schema.has("items")) {
      JsonNode items = SchemaBook.CASE.resolve(schema.get("items"));
      return new FieldNode(
          title + "'s " + text(schema, "title"),
          required,
          Optional.empty(),
          Map.of(),
          Optional.of(group(path + ".*", items, true)));
    }
    Optional<CaseField> field =
        isField(schema) ? Optional.of(field(path, schema, required)) : Optional.empty();
    FieldNode below =
        GROUPS_OF_GROUPS.contains(Paths.parent(path)) && schema.has("properties")
            ? new FieldTree(path, text(schema, "title"), !required).group(path, schema, required)
            : group(path, schema, required);
    return new FieldNode(below.title(), required, field, below.children(), Optional.empty());
  }

  private static boolean isField(JsonNode schema) {
    JsonNode type = schema.path("type");
    return !schema.has("properties")
        || type.valueStream().anyMatch(t -> t.asString().equals("string"));
  }

  private CaseField field(String path, JsonNode schema, boolean required) {
    boolean number = text(schema, "type").equals("number");
    List<Choice> choices = choices(schema);
    String label = text(schema, "title");
    JsonNode signs = schema.path("x-signs");
    return new CaseField(
        path,
        heading,
        FieldNames.capital(title),
        optional,
        FieldNames.capital(label),
        name(path, schema, label),
        text(schema, "description"),
        number ? Optional.of(unit(text(schema, "x-unit"))) : Optional.empty(),
        number(schema.get("minimum")),
        number(schema.get("maximum")),
        signs.isEmpty()
            ? Optional.empty()
            : Optional.of(new Signs(signs.get(0).stringValue(), signs.get(1).stringValue())),
        Optional.ofNullable(schema.get("default")).map(FieldTree::written),
        number ? Kind.NUMBER : choices.isEmpty() ? Kind.TEXT : Kind.CHOICE,
        choices,
        !required);
  }

  /** "front wing's chord": the heading's own, unless the schema has a better name. */
  private String name(String path, JsonNode schema, String label) {
    String own =
        schema.has("x-name") ? text(schema, "x-name") : title + "'s " + label.split("[,:]", 2)[0];
    return path.contains("*") ? own + " at station *" : own;
  }

  private static List<Choice> choices(JsonNode schema) {
    List<Choice> choices = new ArrayList<>();
    JsonNode codes = schema.path("enum");
    for (int i = 0; i < codes.size(); i++) {
      choices.add(
          new Choice(codes.get(i).stringValue(), schema.get("x-words").get(i).stringValue()));
    }
    return choices;
  }

  /** Keys that a group needs; a wing's are those of its sheet, which stations replace. */
  private static Set<String> needed(JsonNode schema) {
    Set<String> needed = new LinkedHashSet<>();
    schema.path("required").forEach(key -> needed.add(key.stringValue()));
    for (JsonNode rule : schema.path("allOf")) {
      SchemaBook.CASE
          .resolve(rule)
          .path("else")
          .path("required")
          .forEach(key -> needed.add(key.stringValue()));
    }
    return needed;
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

  private static String written(JsonNode node) {
    return node.isNumber() ? Words.number(node.doubleValue()) : node.stringValue("");
  }

  private static String text(JsonNode schema, String key) {
    return schema.path(key).stringValue("");
  }
}
