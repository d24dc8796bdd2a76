package trimwright.kernel.band;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.trim.Curve;

/**
 * A curve with its bands.
 *
 * @param curve the curve
 * @param points bands of each of the curve's outcomes, in its order; empty where there is no trim
 * @param levelSpeed band of the level speed [m/s], where there is one
 * @param evenFeetSpeeds bands of the even-feet speeds [m/s], in the curve's order
 * @param rideableFrom band of the lower end of the rideable window [m/s]
 * @param rideableTo band of its upper end [m/s]
 */
public record Bands(
    Curve curve,
    List<Optional<PointBand>> points,
    Optional<Spread> levelSpeed,
    List<Optional<Spread>> evenFeetSpeeds,
    Optional<Spread> rideableFrom,
    Optional<Spread> rideableTo) {
  /** Copies the lists. */
  public Bands {
    points = List.copyOf(points);
    evenFeetSpeeds = List.copyOf(evenFeetSpeeds);
    if (points.size() != curve.outcomes().size()) {
      throw new IllegalArgumentException(
          "there must be bands for each of "
              + curve.outcomes().size()
              + " outcomes, were "
              + points.size());
    }
  }

  /**
   * A curve whose bands nobody has asked for.
   *
   * @param curve the curve
   * @return it, without any band
   */
  public static Bands without(Curve curve) {
    return new Bands(
        curve,
        Collections.nCopies(curve.outcomes().size(), Optional.empty()),
        Optional.empty(),
        Collections.nCopies(curve.evenFeetSpeeds().size(), Optional.empty()),
        Optional.empty(),
        Optional.empty());
  }

  /** Whether any point has a band. */
  public boolean any() {
    return points.stream().anyMatch(Optional::isPresent);
  }

  /**
   * One point's band.
   *
   * @param index of the curve's outcome
   * @param quantity which number
   * @return its band, where it has one
   */
  public Optional<Spread> find(int index, Quantity quantity) {
    return points.get(index).flatMap(point -> point.find(quantity));
  }
}
