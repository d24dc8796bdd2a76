package trimwright.kernel.rig;

import trimwright.kernel.frame.Attitude;

/** Where the feet must press on the deck. Immutable. */
public final class Footing {
  private final double height;
  private final double weight;
  private final Attitude rake;
  private final Attitude base;

  /**
   * The footing of a rider on a deck.
   *
   * @param deck the deck
   * @param weight of the rider with kit [N]
   */
  public Footing(Deck deck, double weight) {
    height = deck.height();
    this.weight = weight;
    rake = Attitude.of(deck.rake());
    base = Attitude.of(deck.baseAngle());
  }

  /**
   * Where the feet must press. They carry the rider's weight down and the drag of the air (less a
   * handle's pull) aft, at one point of the deck: foilMoment - W (a + s cos p) + D (b + s sin p) =
   * 0, with a, b the footing of the mast's axis on the deck, p the deck's pitch and s the distance
   * along the deck.
   *
   * @param at attitude of the fuselage
   * @param foilMoment of all but the feet about the datum, nose up [N·m]
   * @param friction of the feet on the deck, aft [N]
   * @return distance along the deck ahead of the mast's axis [m]
   */
  public double pressure(Attitude at, double foilMoment, double friction) {
    double a = -height * at.sinWith(rake);
    double b = height * at.cosWith(rake);
    return (foilMoment - weight * a + friction * b) / lever(at, friction);
  }

  /**
   * Moment that the feet take away per distance along the deck.
   *
   * @param at attitude of the fuselage
   * @param friction of the feet on the deck, aft [N]
   * @return [N]
   */
  public double lever(Attitude at, double friction) {
    return weight * at.cosWith(base) - friction * at.sinWith(base);
  }
}
