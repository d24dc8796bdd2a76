package trimwright.exchange.read;

import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Writes fields as a case file in the plainest way, without the code under test. */
final class Flat {
  private Flat() {}

  /** Fields as JSON, which is YAML; numbers stay numbers, list places must be complete. */
  static String yaml(Map<String, String> fields) {
    Map<String, Object> root = new TreeMap<>();
    fields.forEach((path, text) -> put(root, path.split("\\."), text));
    return json(root);
  }

  @SuppressWarnings("unchecked")
  private static void put(Map<String, Object> root, String[] steps, String text) {
    Map<String, Object> at = root;
    for (int i = 0; i + 1 < steps.length; i++) {
      at = (Map<String, Object>) at.computeIfAbsent(steps[i], key -> new TreeMap<>());
    }
    at.put(steps[steps.length - 1], text);
  }

  @SuppressWarnings("unchecked")
  private static String json(Object value) {
    if (value instanceof String text) {
      return text.matches("[-+]?[0-9.]+(?:[eE][-+]?[0-9]+)?") ? text : '"' + text + '"';
    }
    Map<String, Object> group = (Map<String, Object>) value;
    if (group.containsKey("0")) {
      return group.entrySet().stream()
          .sorted(
              (a, b) -> Integer.compare(Integer.parseInt(a.getKey()), Integer.parseInt(b.getKey())))
          .map(entry -> json(entry.getValue()))
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return group.entrySet().stream()
        .map(entry -> '"' + entry.getKey() + "\": " + json(entry.getValue()))
        .collect(Collectors.joining(", ", "{", "}"));
  }
}
