package trimwright.fitting.judge;

import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.TrimOutcome;

/**
 * What a ride gives by the full solution.
 *
 * @param rideCase rider, setup and water
 * @param values of the wishes; NaN for those that the ride has none of, or that were not asked for
 * @param grounds hard limits that it breaks, among those looked at
 * @param outcomes trim at each of the ride's speeds
 * @param wished trim at the wished speed
 * @param envelope take-off, loads and depths, where they were asked for and the wished speed is
 *     trimmed
 * @param manners at the wished speed, likewise
 * @param falls where the rules of first flights hold, likewise
 */
public record Judged(
    RideCase rideCase,
    WishValues values,
    Set<Ground> grounds,
    List<TrimOutcome> outcomes,
    TrimOutcome wished,
    Optional<Envelope> envelope,
    Optional<Manners> manners,
    Optional<FallStudy> falls) {
  /** Copies the collections. */
  public Judged {
    EnumSet<Ground> copy = EnumSet.noneOf(Ground.class);
    copy.addAll(grounds);
    grounds = Collections.unmodifiableSet(copy);
    outcomes = List.copyOf(outcomes);
  }

  /** Whether it breaks none of the limits looked at. */
  public boolean passes() {
    return grounds.isEmpty();
  }

  /** The first ground on which it falls out. */
  public Optional<Ground> firstGround() {
    return grounds.stream().findFirst();
  }
}
