package trimwright.exchange.read;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.unit.Measures;

/**
 * What the Bench's page asks.
 *
 * @param sequence number of the question, handed back with the answer
 * @param measures what the words of the answer speak in
 * @param fields text by path, in the order sent
 */
public record BenchRequest(long sequence, Measures measures, Map<String, String> fields) {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /** Copies the map. */
  public BenchRequest {
    fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
  }

  /**
   * Reads a question.
   *
   * @param body JSON in UTF-8
   * @return the question; empty where the text is none
   */
  public static Optional<BenchRequest> find(byte[] body) {
    JsonNode root;
    try {
      root = MAPPER.readTree(body);
    } catch (JacksonException e) {
      return Optional.empty();
    }
    if (!(root instanceof ObjectNode) || !(root.get("fields") instanceof ObjectNode given)) {
      return Optional.empty();
    }
    Map<String, String> fields = new LinkedHashMap<>();
    given.properties().forEach(entry -> fields.put(entry.getKey(), entry.getValue().asString("")));
    return Optional.of(
        new BenchRequest(
            root.path("sequence").asLong(0),
            root.path("measures").asString("").equals("imperial")
                ? Measures.IMPERIAL
                : Measures.METRIC,
            fields));
  }
}
