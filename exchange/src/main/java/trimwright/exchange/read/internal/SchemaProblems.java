package trimwright.exchange.read.internal;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Says in sentences where a document departs from its schema. */
public final class SchemaProblems {
  private static final Pattern NUMBER_WITH_UNIT =
      Pattern.compile("[-+]?[0-9]+(?:[.,][0-9]+)?\\s*[\\p{L}°%²³/]{1,8}");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[-+]?[0-9]+,[0-9]+");

  private final SchemaBook book;
  private final YamlTree tree;

  private SchemaProblems(SchemaBook book, YamlTree tree) {
    this.book = book;
    this.tree = tree;
  }

  /**
   * Validates a tree.
   *
   * @param book the schema
   * @param tree the text as a tree
   * @param root its top group, or the part of it that the schema speaks of
   * @return one problem per fault, none for places that the tree itself reports already
   */
  public static List<Finding> list(SchemaBook book, YamlTree tree, ObjectNode root) {
    SchemaProblems words = new SchemaProblems(book, tree);
    Set<String> known = new HashSet<>();
    tree.problems().forEach(p -> known.addAll(p.keys()));
    List<Finding> found = new ArrayList<>();
    for (SchemaFault fault : SchemaFault.list(book, root)) {
      if (!known.contains(fault.place())) {
        found.add(words.problem(fault));
      }
    }
    return found;
  }

  private Finding problem(SchemaFault fault) {
    String place = fault.place();
    String message =
        switch (fault.keyword()) {
          case "required" -> place + " is missing; wanted is " + missing(place) + ".";
          case "additionalProperties" -> unknown(fault.path(), fault.property());
          case "type", "minimum", "maximum", "enum", "pattern", "minLength", "maxLength" ->
              wrong(place, fault.value());
          case "minItems", "maxItems" ->
              place + " has " + fault.value().size() + " entries; wanted is " + wanted(place) + ".";
          default ->
              place + " must not stand beside " + fault.findOther().orElse("the other keys") + ".";
        };
    return new Finding(place, line(place), message);
  }

  private OptionalInt line(String place) {
    return tree.findLine(place);
  }

  private String wrong(String place, JsonNode value) {
    boolean number = numberWanted(place);
    String wanted = wanted(place);
    if (value.isNull()) {
      String text = Words.shorten(tree.written().getOrDefault(place, ""));
      return CoreNumber.find(text).isPresent()
          ? place + " is " + text + ", which is not finite; wanted is " + wanted + "."
          : place + " has no value; wanted is " + wanted + ".";
    }
    if (value.isObject() || value.isArray()) {
      String kind = value.isObject() ? "a group of keys" : "a list";
      return place + " is " + kind + "; wanted is " + wanted + ".";
    }
    String written = Words.shorten(tree.written().getOrDefault(place, value.asString()));
    if (value.isString()) {
      String advice = number ? advice(written) : "";
      return place
          + " is \""
          + written
          + "\""
          + advice
          + "; wanted is "
          + wanted
          + meant(place, written)
          + ".";
    }
    if (value.isNumber() && number) {
      return place + " is " + written + ", permitted is " + wanted + ".";
    }
    return place + " is " + written + "; wanted is " + wanted + ".";
  }

  private static String advice(String written) {
    if (DECIMAL_COMMA.matcher(written).matches()) {
      return ", a text (write a decimal point)";
    }
    if (CoreNumber.find(written).isPresent()) {
      return ", a text (write the number without quotes)";
    }
    if (NUMBER_WITH_UNIT.matcher(written).matches()) {
      return ", a text (the key names the unit: write the number alone)";
    }
    return ", a text";
  }

  private String meant(String place, String written) {
    List<String> words = new ArrayList<>();
    book.find(place)
        .ifPresent(schema -> schema.path("enum").forEach(w -> words.add(w.stringValue())));
    if (words.size() == 1) {
      return "";
    }
    return NearestKey.find(written, words).map(w -> " (did you mean " + w + "?)").orElse("");
  }

  private boolean numberWanted(String place) {
    return book.find(place).map(s -> "number".equals(s.path("type").asString(""))).orElse(false);
  }

  /** What the schema wants at a place, as the end of a sentence. */
  private String wanted(String place) {
    Optional<JsonNode> found = book.find(place);
    if (found.isEmpty()) {
      return "what the schema says";
    }
    JsonNode schema = found.get();
    if (schema.has("enum")) {
      List<String> words = new ArrayList<>();
      schema.get("enum").forEach(word -> words.add(word.stringValue()));
      return words.size() == 1 ? words.get(0) : "one of " + Words.list(words);
    }
    if (schema.has("x-wanted")) {
      return schema.get("x-wanted").stringValue();
    }
    if (place.endsWith("section")) {
      return "a code such as naca2412, a coordinates file (.dat, .txt, .csv), or"
          + " {thickness_percent: 12, camber_percent: 2}";
    }
    return switch (schema.path("type").asString("")) {
      case "number" ->
          "a number from "
              + Words.number(schema.get("minimum").doubleValue())
              + " to "
              + Words.number(schema.get("maximum").doubleValue())
              + unit(schema);
      case "array" ->
          "a list of "
              + schema.get("minItems").intValue()
              + " to "
              + schema.get("maxItems").intValue()
              + " "
              + schema.path("x-entries").asString("groups");
      case "object" -> "a group of keys (" + Words.list(book.listKeys(place)) + ")";
      default ->
          "a text of "
              + schema.get("minLength").intValue()
              + " to "
              + schema.get("maxLength").intValue()
              + " characters";
    };
  }

  /** What a missing key is; where its range says little, an example says more. */
  private String missing(String place) {
    Optional<JsonNode> example = book.find(place).map(schema -> schema.path("examples").get(0));
    return example.isEmpty()
        ? wanted(place)
        : "a number"
            + book.find(place)
                .map(SchemaProblems::unit)
                .filter(u -> !u.isEmpty())
                .map(u -> " in" + u)
                .orElse("")
            + ", such as "
            + Words.number(example.get().doubleValue());
  }

  private static String unit(JsonNode schema) {
    String unit = schema.path("x-unit").asString("");
    return unit.isEmpty() || unit.equals("1") ? "" : " " + unit;
  }

  private String unknown(String path, String key) {
    String shown = Paths.child(path, Words.shorten(key));
    Set<String> known = book.listKeys(path);
    Optional<String> near = NearestKey.find(key, known);
    if (near.isPresent()) {
      return shown + " is not a known key; did you mean " + Paths.child(path, near.get()) + "?";
    }
    List<String> homes = book.listGroupsWith(key);
    if (!homes.isEmpty() && homes.size() <= 3) {
      List<String> places =
          homes.stream().map(home -> home.isEmpty() ? "the top of the file" : home).toList();
      return shown + " does not belong here; its place is " + String.join(" or ", places) + ".";
    }
    String where = path.isEmpty() ? "at the top of the file" : "below " + path;
    return shown + " is not a known key; known " + where + " are " + Words.list(known) + ".";
  }
}
