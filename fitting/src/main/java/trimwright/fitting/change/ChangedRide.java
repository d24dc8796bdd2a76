package trimwright.fitting.change;

import java.util.List;
import java.util.Optional;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.rig.RideCase;

/**
 * The ride after some changes as its case file says it, so that what is promised is what that file
 * gives: numbers in a file are rounded, and a file may refuse what a search would take.
 */
@FunctionalInterface
public interface ChangedRide {
  /**
   * The ride.
   *
   * @param changes in order of effort; none for the present ride
   * @return the ride; empty where no such case is possible
   */
  Optional<Rated> after(List<Change> changes);

  /**
   * Rides without files and ratings, as the search itself computes them.
   *
   * @param changer makes the changes
   */
  static ChangedRide computed(SetupChanger changer) {
    return changes -> changer.after(changes).map(ride -> new Rated(ride, Envelope.Ratings.NONE));
  }

  /**
   * A ride with its makers' ratings.
   *
   * @param rideCase the ride
   * @param ratings of its parts
   */
  record Rated(RideCase rideCase, Envelope.Ratings ratings) {}
}
