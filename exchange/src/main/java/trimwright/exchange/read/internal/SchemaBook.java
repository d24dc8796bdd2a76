package trimwright.exchange.read.internal;

import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A JSON Schema (draft 2020-12) from the resources: it validates, knows what it says of each key,
 * and fills in its defaults. Immutable and safe for several threads.
 */
public final class SchemaBook {
  private static final String CASE_ID = "urn:trimwright:case:1";
  private static final String WING_ID = "urn:trimwright:wing:1";
  private static final String LIMITS_ID = "urn:trimwright:limits:1";
  private static final String STOCK_ID = "urn:trimwright:stock:1";
  private static final String RIDERS_ID = "urn:trimwright:riders:1";
  private static final Map<String, String> TEXTS =
      Map.of(
          CASE_ID,
          resource("case.schema.json"),
          WING_ID,
          resource("wing.schema.json"),
          LIMITS_ID,
          resource("limits.schema.json"),
          STOCK_ID,
          SharedParts.filled(resource("stock.schema.json"), CASE_ID, resource("case.schema.json")),
          RIDERS_ID,
          SharedParts.filled(
              resource("riders.schema.json"), CASE_ID, resource("case.schema.json")));

  /** The schema of case files. */
  public static final SchemaBook CASE = new SchemaBook(CASE_ID);

  /** The schema of wing files. */
  public static final SchemaBook WING = new SchemaBook(WING_ID);

  /** The schema of limits files. */
  public static final SchemaBook LIMITS = new SchemaBook(LIMITS_ID);

  /** The schema of stock files. */
  public static final SchemaBook STOCK = new SchemaBook(STOCK_ID);

  /** The schema of riders files. */
  public static final SchemaBook RIDERS = new SchemaBook(RIDERS_ID);

  private final Map<String, JsonNode> documents = new LinkedHashMap<>();
  private final JsonNode root;
  private final Schema validator;

  private SchemaBook(String id) {
    JsonMapper mapper = JsonMapper.builder().build();
    TEXTS.forEach((key, text) -> documents.put(key, mapper.readTree(text)));
    root = documents.get(id);
    SchemaRegistry registry =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(TEXTS));
    validator = registry.getSchema(SchemaLocation.of(id));
    validator.initializeValidators();
  }

  private static String resource(String name) {
    try (InputStream in = SchemaBook.class.getResourceAsStream("/trimwright/exchange/" + name)) {
      if (in == null) {
        throw new IllegalStateException("the schema " + name + " is missing from the program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The schema of the whole document. */
  public JsonNode root() {
    return root;
  }

  /** Everything in which a document departs from the schema. */
  List<Error> validate(ObjectNode document) {
    return validator.validate(document);
  }

  /**
   * A schema with its reference followed.
   *
   * @throws IllegalStateException if the reference leads nowhere
   */
  public JsonNode resolve(JsonNode schema) {
    JsonNode at = schema;
    while (at.has("$ref")) {
      String reference = at.get("$ref").stringValue();
      int hash = reference.indexOf('#');
      JsonNode document =
          hash == 0 ? documents.get(CASE_ID) : documents.get(reference.substring(0, hash));
      JsonNode target = document == null ? null : document.at(reference.substring(hash + 1));
      if (target == null || target.isMissingNode()) {
        throw new IllegalStateException(
            "the schema refers to " + reference + ", which is not there");
      }
      at = target;
    }
    return at;
  }

  /**
   * What the schema says of a path.
   *
   * @param path such as {@code setup.front_wing.stations[2].eta}
   * @return its schema, references followed, where the path is known
   */
  public Optional<JsonNode> find(String path) {
    JsonNode at = root;
    for (String step : path.isEmpty() ? new String[0] : path.split("\\.|(?=\\[)")) {
      JsonNode next = step.startsWith("[") ? at.get("items") : at.path("properties").get(step);
      if (next == null) {
        return Optional.empty();
      }
      at = resolve(next);
    }
    return Optional.of(at);
  }

  /** The keys that may stand in the group at a path. */
  public Set<String> listKeys(String path) {
    return find(path)
        .map(schema -> (Set<String>) new LinkedHashSet<>(schema.path("properties").propertyNames()))
        .orElse(Set.of());
  }

  /** Every path of a group that has a key of this name. */
  public List<String> listGroupsWith(String key) {
    List<String> found = new ArrayList<>();
    collect("", root, key, found);
    return found;
  }

  private void collect(String path, JsonNode schema, String key, List<String> found) {
    for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
      if (property.getKey().equals(key)) {
        found.add(path);
      }
      collect(Paths.child(path, property.getKey()), resolve(property.getValue()), key, found);
    }
  }

  /**
   * A copy of a document with every default of the schema filled in where its group is there.
   *
   * @param document any document, good or bad
   * @return the filled copy
   */
  public ObjectNode filled(ObjectNode document) {
    ObjectNode copy = document.deepCopy();
    fill(copy, root);
    return copy;
  }

  private void fill(JsonNode value, JsonNode schema) {
    if (value instanceof ArrayNode list && schema.has("items")) {
      list.forEach(element -> fill(element, resolve(schema.get("items"))));
    } else if (value instanceof ObjectNode group) {
      Set<String> excluded = excluded(group, schema);
      for (Map.Entry<String, JsonNode> property : schema.path("properties").properties()) {
        String key = property.getKey();
        JsonNode own = resolve(property.getValue());
        if (!group.has(key) && own.has("default") && !excluded.contains(key)) {
          group.set(key, own.get("default").deepCopy());
        }
        if (group.has(key)) {
          fill(group.get(key), own);
        }
      }
    }
  }

  /** Keys that must not stand in a group because of others that do. */
  private Set<String> excluded(ObjectNode group, JsonNode schema) {
    Set<String> keys = new LinkedHashSet<>();
    List<JsonNode> rules = new ArrayList<>(List.of(schema));
    schema.path("allOf").forEach(rule -> rules.add(resolve(rule)));
    for (JsonNode rule : rules) {
      boolean holds = rule.has("if");
      for (JsonNode name : rule.path("if").path("required")) {
        holds &= group.has(name.stringValue());
      }
      JsonNode branch = rule.path(holds ? "then" : "else");
      branch
          .path("properties")
          .properties()
          .forEach(
              property -> {
                if (property.getValue().isBoolean() && !property.getValue().booleanValue()) {
                  keys.add(property.getKey());
                }
              });
    }
    return keys;
  }
}
