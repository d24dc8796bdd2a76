package trimwright.exchange.read.internal;

import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * One place where a document departs from its schema.
 *
 * @param keyword the rule of JSON Schema that it breaks; {@code false} where nothing may stand
 * @param path the value that breaks it
 * @param property the key below that value that is missing or too much; empty where it is the value
 *     itself
 * @param value the value
 */
public record SchemaFault(String keyword, String path, String property, JsonNode value) {

  /**
   * Validates a document.
   *
   * @param book the schema
   * @param document any document
   * @return one fault per place, in the schema's order
   */
  public static List<SchemaFault> list(SchemaBook book, ObjectNode document) {
    Map<String, SchemaFault> found = new LinkedHashMap<>();
    for (Error error : book.validate(document)) {
      SchemaFault fault =
          new SchemaFault(
              error.getKeyword() == null ? "false" : error.getKeyword(),
              path(error.getInstanceLocation()),
              error.getProperty() == null ? "" : error.getProperty(),
              error.getInstanceNode());
      found.putIfAbsent(fault.place(), fault);
    }
    return new ArrayList<>(found.values());
  }

  /** The path to look at. */
  public String place() {
    return property.isEmpty() ? path : Paths.child(path, property);
  }

  /** The key beside which nothing may stand here, where that is what is wrong. */
  public Optional<String> findOther() {
    if (!keyword.equals("false")) {
      return Optional.empty();
    }
    String place = place();
    String other = place.contains(".section.") ? "file" : "stations";
    return Optional.of(Paths.child(Paths.parent(place), other));
  }

  private static String path(NodePath location) {
    String path = "";
    for (int i = 0; i < location.getNameCount(); i++) {
      Object step = location.getElement(i);
      path =
          step instanceof Integer index
              ? Paths.element(path, index)
              : Paths.child(path, String.valueOf(step));
    }
    return path;
  }
}
