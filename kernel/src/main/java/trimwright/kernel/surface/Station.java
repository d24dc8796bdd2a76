package trimwright.kernel.surface;

import trimwright.kernel.section.Section;

/**
 * One measured place along the half span of a wing.
 *
 * @param fraction share of the half span, 0 at the root and 1 at the tip [1]
 * @param chord [m]
 * @param ahead quarter chord ahead of the root's quarter chord [m]; negative for a swept-back wing
 * @param above quarter chord above the root's quarter chord [m]; negative where the tip drops
 * @param twist turn of the chord line against the root's, leading edge up positive [rad]
 * @param section the section here
 */
public record Station(
    double fraction, double chord, double ahead, double above, double twist, Section section) {
  /**
   * Checks the physical invariants.
   *
   * @throws IllegalArgumentException if the fraction is outside 0..1, the chord is not above 0, or
   *     a value is not finite
   */
  public Station {
    if (!(fraction >= 0 && fraction <= 1)) {
      throw new IllegalArgumentException("station fraction must be within 0 to 1, was " + fraction);
    }
    if (!(chord > 0) || !Double.isFinite(chord + ahead + above + twist)) {
      throw new IllegalArgumentException(
          "station chord must be above 0 m and every value finite, chord was " + chord + " m");
    }
  }
}
