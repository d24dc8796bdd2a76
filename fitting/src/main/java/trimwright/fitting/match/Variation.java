package trimwright.fitting.match;

import java.util.Objects;
import trimwright.fitting.judge.RideAsked;

/**
 * The same rider otherwise: another water of theirs, or heavier or lighter than said.
 *
 * @param name what is other, in a word or two
 * @param asked the ride then
 * @param waterTemperature of its water [K]
 */
public record Variation(String name, RideAsked asked, double waterTemperature) {
  /** Checks that nothing is missing. */
  public Variation {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(asked, "asked");
  }
}
