package trimwright.kernel.turn;

import java.util.OptionalDouble;

/**
 * A steady turn. Numbers are those of a turn to starboard; one to port is its mirror.
 *
 * @param speed of the foil through the water [m/s]
 * @param bank deck's lower edge towards the inside [rad]
 * @param radius of the foil's path [m]
 * @param riderRadius of the path of the rider's mass centre, further in [m]
 * @param loadFactor what the rider's legs carry over the weight [1]
 * @param pitch of the deck in its own plane of symmetry, nose up positive [rad]
 * @param slip fuselage against the path, nose to the inside positive [rad]
 * @param thrust along the thrust line, or the level force where there is no drive [N]
 * @param drag against the path [N]
 * @param electricPower [W], where there is a drive
 * @param footShare part of the load on the front foot [1]
 * @param footPressureAheadOfMast along the deck [m]
 * @param footPressureInside square to it, towards the inside positive [m]
 * @param footTwist that the feet put into the deck, nose to the inside positive [N·m]
 * @param mastSideForce of the water, towards the inside positive [N]
 * @param tipDepth of the highest tip of both wings below the still surface [m]; negative above it
 * @param stripMargin least rise of a strip's own angle of attack to its stall, either wing [rad]; a
 *     change of pitch to the stall, as for straight rides, is about half as large again or more
 * @param cavitationSpeedRatio speed at which the lowest pressure on either wing would fall to the
 *     vapour's at unchanged angles, over this speed [1]
 * @param loads bending of mast and wings
 * @param forceResidual of up and sideways forces together [N]
 */
public record TurnPoint(
    double speed,
    double bank,
    double radius,
    double riderRadius,
    double loadFactor,
    double pitch,
    double slip,
    double thrust,
    double drag,
    OptionalDouble electricPower,
    double footShare,
    double footPressureAheadOfMast,
    double footPressureInside,
    double footTwist,
    double mastSideForce,
    double tipDepth,
    double stripMargin,
    double cavitationSpeedRatio,
    TurnLoads loads,
    double forceResidual) {}
