package trimwright.kernel.quick;

/**
 * A balance of forces and moment found in a table.
 *
 * @param pitch of the fuselage, nose up positive [rad]
 * @param thrust along the thrust line [N]
 * @param power electric [W]; 0 without a drive
 * @param footPressure where the feet press on the deck, ahead of the mast's axis [m]
 * @param footPressurePerTrack its change per distance that the mast is moved forward in its track
 *     [1]; pitch and thrust stay
 * @param footShare part of the load on the front foot [1]
 * @param stallMargin nose-up change of pitch to the first stall [rad]
 */
public record QuickBalance(
    double pitch,
    double thrust,
    double power,
    double footPressure,
    double footPressurePerTrack,
    double footShare,
    double stallMargin) {}
