package trimwright.kernel.section;

/**
 * How much more than a flat plate of the same wetted area a shape drags, attached flow.
 *
 * <p>Source: Hoerner, Fluid-Dynamic Drag (1965), chapter 6, as recorded in secondary sources.
 */
public final class FormFactor {
  private FormFactor() {}

  /**
   * A streamlined section: 1 + 2 t/c + 60 (t/c)⁴. Its drag on the chord's area is twice this times
   * the mean friction.
   *
   * @param thickness thickness over chord [1], 0 to 0.3
   * @return factor [1]
   */
  public static double section(double thickness) {
    double square = thickness * thickness;
    return 1 + 2 * thickness + 60 * square * square;
  }

  /**
   * A streamlined body: 1 + 1.5 (d/l)^1.5 + 7 (d/l)³ on its wetted area.
   *
   * @param slenderness diameter over length [1], meant for 0 to 0.5; finite up to 1
   * @return factor [1]
   */
  public static double body(double slenderness) {
    return 1
        + slenderness * Math.sqrt(slenderness) * 1.5
        + 7 * slenderness * slenderness * slenderness;
  }
}
