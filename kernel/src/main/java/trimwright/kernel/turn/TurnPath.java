package trimwright.kernel.turn;

import java.util.Optional;
import trimwright.kernel.rig.Craft;

/**
 * The circle of a turn with a bank, from elementary mechanics: the rider stands square on the deck
 * where g tan(bank) is the acceleration of the rider's mass centre towards the inside. That centre
 * runs on a smaller circle than the foil, since it hangs inwards: with omega the rate of turn,
 * omega² (R - H sin bank) = g tan bank and omega = V / R. For H = 0 this is tan bank = V²/(g R).
 *
 * @param curvature one over the radius of the foil's path [1/m]
 * @param radius of the foil's path [m]; infinite without a bank
 * @param riderRadius of the rider's path [m]
 */
public record TurnPath(double curvature, double radius, double riderRadius) {

  /**
   * The circle.
   *
   * @param speed of the foil [m/s], above 0
   * @param bank from 0 to below a right angle [rad]
   * @param height of the rider's mass centre above the foil, square to the deck [m]
   * @return the wider of the two circles; none where the speed is too low for the bank: the rider
   *     would have to be thrown outwards harder than any circle at this speed does
   */
  public static Optional<TurnPath> of(double speed, double bank, double height) {
    double wanted = Craft.GRAVITY * Math.tan(bank) / (speed * speed);
    double lean = height * Math.sin(bank);
    double root = 1 - 4 * lean * wanted;
    if (root < 0) {
      return Optional.empty();
    }
    // k (1 - k lean) = wanted, in the form that does not cancel for small leans.
    double curvature = 2 * wanted / (1 + Math.sqrt(root));
    double radius = 1 / curvature;
    return Optional.of(new TurnPath(curvature, radius, radius - lean));
  }

  /**
   * The lowest speed at which a circle has a bank.
   *
   * @param bank from 0 to below a right angle [rad]
   * @param height of the rider's mass centre above the foil, square to the deck [m]
   * @return [m/s], rounded up so far that {@link #of} finds the circle
   */
  public static double slowest(double bank, double height) {
    double square = 4 * height * Math.sin(bank) * Craft.GRAVITY * Math.tan(bank);
    return Math.sqrt(square) * (1 + 1e-9);
  }

  /**
   * The steepest bank of a circle at a speed.
   *
   * @param speed of the foil [m/s], above 0
   * @param height of the rider's mass centre above the foil, square to the deck [m], above 0
   * @return [rad], rounded down so far that {@link #of} finds the circle
   */
  public static double steepest(double speed, double height) {
    // sin² / cos = V² / (4 g H)
    double ratio = speed * speed / (4 * Craft.GRAVITY * height);
    double cos = 2 / (ratio + Math.sqrt(ratio * ratio + 4));
    return Math.acos(cos) * (1 - 1e-9);
  }
}
