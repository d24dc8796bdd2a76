package trimwright.kernel.turn;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.numeric.Roots;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.TurnMotion;
import trimwright.kernel.surface.WingShape;

/** Where a wing's tips are in a turn: geometry alone. */
public final class TurnTips {
  private static final double BANK_TOLERANCE = 1e-6;

  private TurnTips() {}

  /**
   * Bank at which the front wing's upper tip reaches a depth, the wing level fore and aft and its
   * root at the case's immersion.
   *
   * @param rideCase the case
   * @param depth of the tip's quarter chord below the still surface [m]
   * @return bank [rad]; empty where the tip lies deeper even on its side, or higher without a bank
   */
  public static OptionalDouble bankAt(RideCase rideCase, double depth) {
    WingShape shape = rideCase.setup().frontWing().shape();
    Station tip = shape.stations().get(shape.stations().size() - 1);
    double half = 0.5 * shape.span();
    DoubleUnaryOperator spare =
        bank -> rideCase.immersion() - half * Math.sin(bank) - tip.above() * Math.cos(bank) - depth;
    double upright = spare.applyAsDouble(0);
    double aside = spare.applyAsDouble(0.5 * Math.PI);
    return upright < 0 || aside > 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(Roots.between(spare, 0, upright, 0.5 * Math.PI, aside, BANK_TOLERANCE));
  }

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
