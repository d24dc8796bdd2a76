package trimwright.kernel.turn;

import java.util.List;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.TurnMotion;

/** Where a wing's tips are in a turn: geometry alone. */
public final class TurnTips {
  private TurnTips() {}

  /**
   * Depth of the higher of a wing's two tips, at its quarter chord.
   *
   * @param wing where it stands
   * @param motion how the craft lies in the water
   * @param datumDepth depth of the datum [m]
   * @return depth below the still surface [m], negative above
   */
  public static double depth(PlacedWing wing, TurnMotion motion, double datumDepth) {
    List<Station> stations = wing.shape().stations();
    Station tip = stations.get(stations.size() - 1);
    double half = 0.5 * wing.shape().span();
    double[] place = new double[3];
    double least = Double.POSITIVE_INFINITY;
    for (int side = -1; side <= 1; side += 2) {
      motion.place(
          wing.ahead() + tip.ahead(), side * half, -(wing.above() + tip.above()), place, 0);
      least = Math.min(least, datumDepth + place[2]);
    }
    return least;
  }
}
