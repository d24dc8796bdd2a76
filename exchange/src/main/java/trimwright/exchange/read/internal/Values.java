package trimwright.exchange.read.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A group of a filled document, read in SI.
 *
 * @param path where it stands in the document
 * @param group its keys
 * @param bad paths with a problem: they count as not there
 */
public record Values(String path, ObjectNode group, Set<String> bad) {
  /** Copies the set. */
  public Values {
    bad = Set.copyOf(bad);
  }

  /** The group below a key, where there is one. */
  public Optional<Values> findGroup(String key) {
    return group.get(key) instanceof ObjectNode child
        ? Optional.of(new Values(Paths.child(path, key), child, bad))
        : Optional.empty();
  }

  /**
   * The group below a key.
   *
   * @throws IllegalStateException if there is none, which the schema's check excludes
   */
  public Values getGroup(String key) {
    return findGroup(key).orElseThrow(() -> missing(key));
  }

  /** The groups of a list; empty where there is no list. */
  public List<Values> listGroups(String key) {
    List<Values> groups = new ArrayList<>();
    JsonNode list = group.get(key);
    for (int i = 0; list != null && i < list.size(); i++) {
      if (list.get(i) instanceof ObjectNode child) {
        groups.add(new Values(Paths.element(Paths.child(path, key), i), child, bad));
      }
    }
    return groups;
  }

  /** A number as it is written, in the key's own unit, where it is there and good. */
  public OptionalDouble findWritten(String key) {
    JsonNode value = group.get(key);
    return value != null && value.isNumber() && !bad.contains(Paths.child(path, key))
        ? OptionalDouble.of(value.doubleValue())
        : OptionalDouble.empty();
  }

  /** A number in SI, where it is there and good. */
  public OptionalDouble find(String key) {
    OptionalDouble written = findWritten(key);
    return written.isPresent()
        ? OptionalDouble.of(KeyUnits.toSi(key, written.getAsDouble()))
        : written;
  }

  /**
   * A number in SI.
   *
   * @throws IllegalStateException if it is not there, which the schema's check excludes
   */
  public double get(String key) {
    return find(key).orElseThrow(() -> missing(key));
  }

  /** A text, where it is there. */
  public Optional<String> findText(String key) {
    JsonNode value = group.get(key);
    return value != null && value.isString() ? Optional.of(value.stringValue()) : Optional.empty();
  }

  /** Whether every one of the keys holds a good number. */
  public boolean has(String... keys) {
    for (String key : keys) {
      if (findWritten(key).isEmpty()) {
        return false;
      }
    }
    return true;
  }

  /** Whether something at or below this group has a problem. */
  public boolean troubled() {
    return bad.stream().anyMatch(p -> Paths.within(p, path));
  }

  /** The path of a key. */
  public String at(String key) {
    return Paths.child(path, key);
  }

  private IllegalStateException missing(String key) {
    return new IllegalStateException(
        at(key) + " is not there although the schema accepted the text");
  }
}
