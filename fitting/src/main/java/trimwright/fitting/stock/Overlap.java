package trimwright.fitting.stock;

import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;

/** Whether a fuselage keeps its wings apart. */
final class Overlap {
  private Overlap() {}

  /**
   * Whether the front wing's root ends ahead of where the stabilizer's begins. Three quarters of a
   * chord lie behind its quarter chord and one quarter ahead of it; the reader of case files draws
   * the same line.
   */
  static boolean none(
      StockPart<Fuselage> fuselage,
      StockPart<FittedWing> frontWing,
      StockPart<FittedWing> stabilizer) {
    double distance = fuselage.piece().frontWingAhead() + fuselage.piece().stabilizerBehind();
    return distance > 0.75 * rootChord(frontWing) + 0.25 * rootChord(stabilizer);
  }

  private static double rootChord(StockPart<FittedWing> wing) {
    return wing.piece().shape().stations().get(0).chord();
  }
}
