package trimwright.fitting.stock;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The mount standards that a part is made for, by joint. Two parts fit where they have a standard
 * of that joint in common.
 *
 * @param standards names of standards; a joint without any takes nothing
 */
public record Mounts(Map<Joint, Set<String>> standards) {
  /** Copies map and sets; within a joint the names are sorted. */
  public Mounts {
    Map<Joint, Set<String>> copy = new EnumMap<>(Joint.class);
    standards.forEach(
        (joint, names) -> copy.put(joint, Collections.unmodifiableSet(new TreeSet<>(names))));
    standards = Collections.unmodifiableMap(copy);
  }

  /**
   * The standards of a joint.
   *
   * @param joint which one
   * @return their names, sorted; empty where the part has none
   */
  public Set<String> list(Joint joint) {
    return standards.getOrDefault(joint, Set.of());
  }

  /**
   * Whether two parts go together at a joint.
   *
   * @param other the other part's mounts
   * @param joint where
   */
  public boolean fit(Mounts other, Joint joint) {
    return !Collections.disjoint(list(joint), other.list(joint));
  }
}
