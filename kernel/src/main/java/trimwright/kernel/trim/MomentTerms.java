package trimwright.kernel.trim;

/**
 * Contributions to the pitching moment about the datum (mast axis on fuselage axis), nose up
 * positive; they sum to zero in trim. They are contributions, not predictions of what a change
 * would do.
 *
 * @param frontWing lift, drag and section moment of the front wing [N·m]
 * @param stabilizer the same of the stabilizer [N·m]
 * @param thrustLine drive's thrust on its line, or a pull's share [N·m]
 * @param drags mast, spray, junctions, fuselage and drive body [N·m]
 * @param masses weights of board, battery and foil [N·m]
 * @param feet the rider's weight at the foot-pressure centre, as if the deck's height did not
 *     matter [N·m]
 * @param deckLever the rider's weight carried aft by the deck's height and the pitch [N·m]
 * @param air drag of the air on the rider, as friction at the deck [N·m]
 * @param buoyancy of every submerged part [N·m]
 */
public record MomentTerms(
    double frontWing,
    double stabilizer,
    double thrustLine,
    double drags,
    double masses,
    double feet,
    double deckLever,
    double air,
    double buoyancy) {

  /** The sum of all terms [N·m]: zero in trim. */
  public double sum() {
    return frontWing + stabilizer + thrustLine + drags + masses + feet + deckLever + air + buoyancy;
  }
}
