package trimwright.exchange.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.unit.Measures;

/** What the Bench's page sends: a JSON object of a few texts, and the fields of a case. */
public final class BenchRequest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final String FIELDS = "fields";

  private final ObjectNode root;

  private BenchRequest(ObjectNode root) {
    this.root = root;
  }

  /**
   * Reads what was sent.
   *
   * @param body JSON in UTF-8
   * @return what it says; empty where it is no JSON object
   */
  public static Optional<BenchRequest> find(byte[] body) {
    try {
      return MAPPER.readTree(body) instanceof ObjectNode object
          ? Optional.of(new BenchRequest(object))
          : Optional.empty();
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  /**
   * A question as the page sends it.
   *
   * @param sequence its number
   * @param measures what the words of the answer speak in
   * @param fields text by path
   * @return JSON in UTF-8
   */
  public static byte[] question(long sequence, Measures measures, Map<String, String> fields) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("sequence", sequence);
    root.put("measures", measures == Measures.IMPERIAL ? "imperial" : "metric");
    ObjectNode given = root.putObject(FIELDS);
    fields.forEach(given::put);
    return MAPPER.writeValueAsBytes(root);
  }

  /** Number of the question, handed back with the answer; 0 where there is none. */
  public long sequence() {
    return root.path("sequence").asLong(0);
  }

  /** What the words of the answer speak in; metric unless it says imperial. */
  public Measures measures() {
    return measures(text("measures").orElse(""));
  }

  /**
   * Measures by their code; metric unless it says imperial.
   *
   * @param code from an address, a form or a question
   */
  public static Measures measures(String code) {
    return code.equals("imperial") ? Measures.IMPERIAL : Measures.METRIC;
  }

  /**
   * The fields of a case that come alone, as a form sends them.
   *
   * @param json an object of texts by path
   * @return text by path; empty where it is none
   */
  public static Optional<Map<String, String>> findFields(String json) {
    try {
      return fields(MAPPER.readTree(json));
    } catch (JacksonException e) {
      return Optional.empty();
    }
  }

  /**
   * The fields of the case, text by path in the order sent; empty where there are none or where one
   * of them is no plain value.
   */
  public Optional<Map<String, String>> findFields() {
    return fields(root.get(FIELDS));
  }

  /** The fields of the pinned reference, where there is one; as {@link #findFields}. */
  public Optional<Map<String, String>> findPinned() {
    return fields(root.get("pinned"));
  }

  private static Optional<Map<String, String>> fields(JsonNode node) {
    if (!(node instanceof ObjectNode given)) {
      return Optional.empty();
    }
    Map<String, String> fields = new LinkedHashMap<>();
    for (var entry : given.properties()) {
      if (!entry.getValue().isString() && !entry.getValue().isNumber()) {
        return Optional.empty();
      }
      fields.put(entry.getKey(), entry.getValue().asString());
    }
    return Optional.of(Collections.unmodifiableMap(fields));
  }

  /**
   * A text.
   *
   * @param name of the key
   * @return the text, where there is one
   */
  public Optional<String> text(String name) {
    return root.path(name).isString()
        ? Optional.of(root.get(name).stringValue())
        : Optional.empty();
  }

  /**
   * A yes or no.
   *
   * @param name of the key
   * @return true only where it says so
   */
  public boolean flag(String name) {
    return root.path(name).isBoolean() && root.get(name).booleanValue();
  }

  /**
   * A number.
   *
   * @param name of the key
   * @return the number, where there is a finite one
   */
  public OptionalDouble number(String name) {
    double value = root.path(name).isNumber() ? root.get(name).doubleValue() : Double.NaN;
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
