package trimwright.kernel.motion;

/**
 * A steady state from which a motion begins.
 *
 * @param speed [m/s]
 * @param pitch of the fuselage [rad]
 * @param thrust along its line, or pull [N]
 * @param footPressure ahead of the mast's axis along the deck [m]
 * @param air drag of the air on the rider [N]
 * @param pull the part of the thrust that pulls at a handle [N]
 * @param wash change of the downwash at the stabilizer with the front wing's angle [1]
 */
public record MotionTrim(
    double speed,
    double pitch,
    double thrust,
    double footPressure,
    double air,
    double pull,
    double wash) {}
