package trimwright.web.bench;

import java.util.LinkedHashMap;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * What the page asks.
 *
 * @param sequence number of the question
 * @param measures code of the measures shown
 * @param fields text by path
 */
record BenchRequest(long sequence, String measures, Map<String, String> fields) {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /**
   * Reads a question.
   *
   * @throws BadQuestion if it is none
   */
  static BenchRequest of(byte[] body) {
    JsonNode root;
    try {
      root = MAPPER.readTree(body);
    } catch (JacksonException e) {
      throw new BadQuestion(e);
    }
    if (!(root instanceof ObjectNode) || !(root.get("fields") instanceof ObjectNode given)) {
      throw new BadQuestion(null);
    }
    Map<String, String> fields = new LinkedHashMap<>();
    given.properties().forEach(entry -> fields.put(entry.getKey(), entry.getValue().asString("")));
    String measures = root.path("measures").asString("");
    return new BenchRequest(
        root.path("sequence").asLong(0),
        measures.equals("imperial") ? "imperial" : "metric",
        fields);
  }
}
