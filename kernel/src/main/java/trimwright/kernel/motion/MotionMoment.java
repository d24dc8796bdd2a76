package trimwright.kernel.motion;

/**
 * One moment of a motion.
 *
 * @param time since it began [s]
 * @param speed of the datum through still water, forward [m/s]
 * @param pitch of the deck, nose up [rad]
 * @param pitchRate nose up [rad/s]
 * @param immersion of the front wing's root quarter chord below still water [m]
 * @param footPressure where the feet press ahead of the mast's axis, along the deck [m]
 * @param thrust along its line, or pull [N]
 * @param bodyAhead how far the body's mass centre has moved ahead against the deck under the trim's
 *     foot pressure [m]
 * @param bowClearance height of the bottom's end at the bow above the water there [m]
 * @param sternClearance the same at the stern [m]
 * @param wingDepth least depth of a wing's quarter chord below the water there [m]
 * @param propellerDepth depth of the propeller's upper blade tip [m]; infinite without a drive
 * @param water height of the water at the mast above still water [m]
 * @param load of the rider on the deck [N]
 */
public record MotionMoment(
    double time,
    double speed,
    double pitch,
    double pitchRate,
    double immersion,
    double footPressure,
    double thrust,
    double bodyAhead,
    double bowClearance,
    double sternClearance,
    double wingDepth,
    double propellerDepth,
    double water,
    double load) {}
