package trimwright.fitting.stock;

import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;

/** Whether a fuselage keeps its wings apart. */
public final class Overlap {
  private Overlap() {}

  /**
   * Whether the front wing's root ends ahead of where the stabilizer's begins. Three quarters of a
   * chord lie behind its quarter chord and one quarter ahead of it; the reader of case files draws
   * the same line.
   *
   * @param fuselage the fuselage
   * @param frontWing the front wing on it
   * @param stabilizer the stabilizer on it
   */
  public static boolean none(Fuselage fuselage, FittedWing frontWing, FittedWing stabilizer) {
    double distance = fuselage.frontWingAhead() + fuselage.stabilizerBehind();
    return distance > 0.75 * rootChord(frontWing) + 0.25 * rootChord(stabilizer);
  }

  static boolean none(
      StockPart<Fuselage> fuselage,
      StockPart<FittedWing> frontWing,
      StockPart<FittedWing> stabilizer) {
    return none(fuselage.piece(), frontWing.piece(), stabilizer.piece());
  }

  private static double rootChord(FittedWing wing) {
    return wing.shape().stations().get(0).chord();
  }
}
