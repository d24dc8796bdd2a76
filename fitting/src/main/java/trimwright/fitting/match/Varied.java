package trimwright.fitting.match;

import java.util.Set;
import trimwright.fitting.judge.Ground;

/**
 * What a row is worth when something is other.
 *
 * @param name of the variation
 * @param shortfall then, manners counted as they were [1]; infinite where the ride is lost
 * @param grounds limits of the ride that it breaks then
 */
public record Varied(String name, double shortfall, Set<Ground> grounds) {
  /** Copies the set. */
  public Varied {
    grounds = Set.copyOf(grounds);
  }
}
