package trimwright.kernel.trim;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Trim points over a range of speeds, and the speeds that people ask for.
 *
 * @param outcomes one per speed asked for, in order
 * @param evenFeetSpeeds every speed at which the foot share is one half
 * @param levelSpeed speed at which the deck is level, where there is one [m/s]
 * @param rideableIntervals stretches of speed inside every limit
 * @param rideableWindow the stretch that holds the wished speed, else the widest
 */
public record Curve(
    List<TrimOutcome> outcomes,
    List<EvenFeetSpeed> evenFeetSpeeds,
    OptionalDouble levelSpeed,
    List<SpeedInterval> rideableIntervals,
    Optional<SpeedInterval> rideableWindow) {
  /** Copies the lists. */
  public Curve {
    outcomes = List.copyOf(outcomes);
    evenFeetSpeeds = List.copyOf(evenFeetSpeeds);
    rideableIntervals = List.copyOf(rideableIntervals);
  }
}
