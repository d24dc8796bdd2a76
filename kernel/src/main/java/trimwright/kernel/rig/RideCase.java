package trimwright.kernel.rig;

import java.util.OptionalDouble;
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
 */
public record RideCase(
    Water water,
    double airDensity,
    double headWind,
    double chopHeight,
    Rider rider,
    Setup setup,
    double immersion,
    OptionalDouble pullAboveDeck) {}
