package trimwright.kernel.rig;

/**
 * The rider.
 *
 * @param mass body [kg]
 * @param kitMass suit, vest, helmet [kg]
 * @param height [m]
 * @param airDragArea drag coefficient times frontal area [m²]
 * @param frontFoot ahead of the mast's axis with the mast in the middle of its track [m]
 * @param backFoot ahead of the mast's axis with the mast in the middle of its track [m]
 * @param wishedSpeed [m/s]
 * @param wishedFootShare part of the vertical foot load on the front foot [1]
 * @param wishedPitch of the deck [rad]
 */
public record Rider(
    double mass,
    double kitMass,
    double height,
    double airDragArea,
    double frontFoot,
    double backFoot,
    double wishedSpeed,
    double wishedFootShare,
    double wishedPitch) {

  /**
   * Height of the air drag on a standing body over its stature. Chosen: a little above the hips.
   */
  private static final double AIR_DRAG_HEIGHT = 0.55;

  /** Height of the air drag above the deck, standing [m]. */
  public double airDragHeight() {
    return AIR_DRAG_HEIGHT * height;
  }

  /** Distance between the feet [m]. */
  public double stance() {
    return frontFoot - backFoot;
  }

  /** Body and kit together [kg]. */
  public double allMass() {
    return mass + kitMass;
  }
}
