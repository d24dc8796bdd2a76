package trimwright.kernel.propel;

/**
 * How a propeller runs.
 *
 * @param revolutions [1/s]
 * @param advance J [1]
 * @param torque on the shaft [N·m]
 * @param shaftPower [W]
 * @param electricPower [W]
 * @param propellerEfficiency thrust power over shaft power [1]
 * @param motorEfficiency shaft power over electric power [1]
 * @param covered whether the propeller's measurements reach to this advance ratio
 */
public record ScrewState(
    double revolutions,
    double advance,
    double torque,
    double shaftPower,
    double electricPower,
    double propellerEfficiency,
    double motorEfficiency,
    boolean covered) {}
