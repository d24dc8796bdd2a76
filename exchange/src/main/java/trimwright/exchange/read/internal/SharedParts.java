package trimwright.exchange.read.internal;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Fills a schema's lists of parts with what another schema says of each part, so that keys, ranges
 * and words stand in one place. JSON Schema itself cannot add keys to a group that is closed.
 *
 * <p>A list's items name the part ({@code x-part}), the keys left out ({@code x-without}) and what
 * is added; the part's required keys and rules come along.
 */
final class SharedParts {
  private SharedParts() {}

  /**
   * A schema with its parts filled in.
   *
   * @param text the schema
   * @param sourceId name of the schema that describes the parts
   * @param source that schema
   * @return the schema's text
   * @throws IllegalStateException if a part is not there
   */
  static String filled(String text, String sourceId, String source) {
    JsonMapper mapper = JsonMapper.builder().build();
    ObjectNode schema = (ObjectNode) mapper.readTree(text);
    JsonNode other = mapper.readTree(source);
    for (JsonNode list : schema.path("properties")) {
      if (list.path("items") instanceof ObjectNode items && items.has("x-part")) {
        fill(items, sourceId, other);
      }
    }
    return mapper.writeValueAsString(schema);
  }

  private static void fill(ObjectNode items, String sourceId, JsonNode other) {
    JsonNode part = part(items.get("x-part").stringValue(), sourceId, other);
    ObjectNode own = (ObjectNode) items.get("properties");
    for (var property : part.get("properties").properties()) {
      if (own.has(property.getKey())) {
        throw new IllegalStateException("both schemas describe " + property.getKey());
      }
      own.set(property.getKey(), property.getValue());
    }
    ArrayNode required = (ArrayNode) items.get("required");
    part.path("required").forEach(required::add);
    for (JsonNode key : items.get("x-without")) {
      if (own.remove(key.stringValue()) == null) {
        throw new IllegalStateException("the part has no key " + key.stringValue());
      }
    }
    for (String copied : new String[] {"type", "title", "description", "additionalProperties"}) {
      items.set(copied, part.get(copied));
    }
    if (part.has("allOf")) {
      items.set("allOf", part.get("allOf"));
    }
  }

  /** A copy of a part whose references lead back to where it came from. */
  private static JsonNode part(String reference, String sourceId, JsonNode other) {
    JsonNode part = other.at(reference.substring(reference.indexOf('#') + 1));
    while (part.has("$ref")) {
      part = other.at(part.get("$ref").stringValue().substring(1));
    }
    if (part.isMissingNode()) {
      throw new IllegalStateException("there is no part " + reference);
    }
    JsonNode copy = part.deepCopy();
    rename(copy, sourceId);
    return copy;
  }

  private static void rename(JsonNode node, String sourceId) {
    if (node instanceof ObjectNode group && group.path("$ref").asString("").startsWith("#")) {
      group.put("$ref", sourceId + group.get("$ref").stringValue());
    }
    node.forEach(child -> rename(child, sourceId));
  }
}
