package trimwright.kernel.rig;

import java.util.OptionalDouble;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.water.Water;

/**
 * A rider on a setup in a water: all that the computation reads.
 *
 * @param water the water
 * @param airDensity [kg/m³]
 * @param headWind [m/s], positive against the rider
 * @param chopHeight crest to trough [m]
 * @param rider the rider
 * @param setup the parts and their settings
 * @param immersion depth of the front wing's root quarter chord [m]
 * @param pullAboveDeck height of a handle pull above the deck [m], where a wing, kite or tow line
 *     pulls
 * @param limits what the ride is held against
 */
public record RideCase(
    Water water,
    double airDensity,
    double headWind,
    double chopHeight,
    Rider rider,
    Setup setup,
    double immersion,
    OptionalDouble pullAboveDeck,
    RideLimits limits) {

  /** A case held against the limits chosen for everybody. */
  public RideCase(
      Water water,
      double airDensity,
      double headWind,
      double chopHeight,
      Rider rider,
      Setup setup,
      double immersion,
      OptionalDouble pullAboveDeck) {
    this(
        water,
        airDensity,
        headWind,
        chopHeight,
        rider,
        setup,
        immersion,
        pullAboveDeck,
        RideLimits.CHOSEN);
  }

  /** The same case held against other limits. */
  public RideCase within(RideLimits others) {
    return new RideCase(
        water, airDensity, headWind, chopHeight, rider, setup, immersion, pullAboveDeck, others);
  }

  /**
   * The same case in another wind.
   *
   * @param other head wind [m/s], positive against the rider
   * @return the case
   */
  public RideCase withHeadWind(double other) {
    return new RideCase(
        water, airDensity, other, chopHeight, rider, setup, immersion, pullAboveDeck, limits);
  }

  /**
   * The same case in another water.
   *
   * @param other the water
   * @return the case
   */
  public RideCase withWater(Water other) {
    return new RideCase(
        other, airDensity, headWind, chopHeight, rider, setup, immersion, pullAboveDeck, limits);
  }

  /**
   * The same case with another rider.
   *
   * @param other the rider
   * @return the case
   */
  public RideCase withRider(Rider other) {
    return new RideCase(
        water, airDensity, headWind, chopHeight, other, setup, immersion, pullAboveDeck, limits);
  }

  /**
   * The same case flown at another depth.
   *
   * @param other depth of the front wing's root quarter chord [m]
   * @return the case
   */
  public RideCase withImmersion(double other) {
    return new RideCase(
        water, airDensity, headWind, chopHeight, rider, setup, other, pullAboveDeck, limits);
  }
}
