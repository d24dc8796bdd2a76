package trimwright.kernel.section;

/**
 * A section at one angle of attack. Coefficients on the chord.
 *
 * @param angleOfAttack between onset flow and chord line, leading edge up positive [rad]
 * @param lift lift coefficient [1]
 * @param drag drag coefficient [1]
 * @param quarterChordMoment moment coefficient about the quarter chord, nose up positive [1]
 * @param minimumPressure lowest pressure coefficient on the surface [1], from inviscid flow
 * @param attached false past the angle of largest or of most negative lift
 */
public record SectionPoint(
    double angleOfAttack,
    double lift,
    double drag,
    double quarterChordMoment,
    double minimumPressure,
    boolean attached) {}
