package trimwright.fitting.change;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What to change.
 *
 * @param present the ride as it is
 * @param kinds every kind of single change, the least effort first
 * @param pairs two changes together where no single one is enough: at most {@link #MOST_PAIRS},
 *     those that are enough by effort, else the best first
 * @param first what to do first: one change of {@code kinds} or a pair; empty where the ride needs
 *     none or none helps
 */
public record ChangeAdvice(
    Effect present, List<KindAdvice> kinds, List<Effect> pairs, Optional<Effect> first) {
  /** Pairs that are told: more nobody weighs up at a counter. Chosen. */
  public static final int MOST_PAIRS = 3;

  /** Copies the lists. */
  public ChangeAdvice {
    Objects.requireNonNull(present, "present");
    Objects.requireNonNull(first, "first");
    kinds = List.copyOf(kinds);
    pairs = List.copyOf(pairs);
  }
}
