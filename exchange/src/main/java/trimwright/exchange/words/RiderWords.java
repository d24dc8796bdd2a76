package trimwright.exchange.words;

import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.fitting.wish.RidingKind;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;

/** A case's rider in a line, for a screen on which nothing else of the case stands. */
public final class RiderWords {
  private RiderWords() {}

  /** What people call a kind of riding. */
  public static String title(RidingKind kind) {
    return switch (kind) {
      case FIRST_FLIGHTS -> "first flights";
      case LINKING -> "linking flights";
      case CARVING -> "carving";
      case SURF -> "riding waves";
    };
  }

  /**
   * Mass, kind of riding, speed and load that are wished.
   *
   * @param caseFile the case
   * @param kind of riding
   * @param measures in which units
   */
  public static String of(CaseFile caseFile, RidingKind kind, Measures measures) {
    RideCase c = caseFile.rideCase();
    Rider rider = c.rider();
    return text(Unit.KILOGRAM, rider.mass(), measures)
        + " and "
        + text(Unit.KILOGRAM, rider.kitMass(), measures)
        + " of kit; "
        + title(kind)
        + "; wishes "
        + text(Unit.KILOMETRE_PER_HOUR, rider.wishedSpeed(), measures)
        + " with "
        + Shown.decimals(100 * rider.wishedFootShare(), 0)
        + " % on the front foot"
        + (c.pullAboveDeck().isPresent() ? "; pulled by a handle." : ".");
  }

  private static String text(Unit carried, double value, Measures measures) {
    return Shown.decimals(measures.unit(carried).fromSi(value), measures.shown(carried).decimals())
        + " "
        + measures.shown(carried).symbol();
  }
}
