package trimwright.exchange.words;

import java.util.Optional;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * How far the pressure centre lies outside the feet.
 *
 * @param ahead whether it lies ahead of the front foot (otherwise behind the back foot)
 * @param distance from that foot [m], above 0
 */
record FootReach(boolean ahead, double distance) {
  /** The reach missing, where a balance exists that the feet cannot make. */
  static Optional<FootReach> find(TrimOutcome.NoTrim none) {
    return none.wouldNeed().flatMap(FootReach::find);
  }

  private static Optional<FootReach> find(TrimPoint point) {
    double share = point.footShare();
    if (share > 1) {
      return Optional.of(new FootReach(true, -point.forwardReserve()));
    }
    if (share < 0) {
      double stance = point.forwardReserve() / (1 - share);
      return Optional.of(new FootReach(false, -share * stance));
    }
    return Optional.empty();
  }

  /** Feet forward positive [m]. */
  double shift() {
    return ahead ? distance : -distance;
  }

  /** Where it lies; rounded up, since less does not reach. */
  String where(Amounts amounts) {
    return amounts.lengthUp(distance)
        + (ahead ? " ahead of your front foot" : " behind your back foot");
  }

  String place(Amounts amounts) {
    return "the pressure centre lies " + where(amounts);
  }
}
