package trimwright.kernel.hull;

/**
 * How a rider rests on the board before it flies, and with it how much of the body lies under water
 * when the deck does.
 *
 * <p>Volumes are those of the segments' masses (D. A. Winter, Biomechanics and Motor Control of
 * Human Movement, after Dempster 1955: foot 1.45 %, shank 4.65 %, thigh 10 % of the mass each, knee
 * at 0.285 and hip at 0.53 of the stature; from memory), a body as dense as fresh water (with air
 * in the lungs a little less, bones and muscle a little more). Kit is taken to float in balance.
 * Heights of lying and kneeling bodies are chosen.
 */
public enum Posture {
  /** On both feet: shanks and feet up to the knees, thighs up to the hips, the rest above. */
  STANDING(new double[] {0, 0.285, 0.53, 0.95}, new double[] {0, 0.122, 0.322, 1}, 0.56, 1),
  /** On both knees, shanks along the deck, upright from the knees. */
  KNEELING(new double[] {0, 0.06, 0.305, 0.73}, new double[] {0, 0.122, 0.322, 1}, 0.36, 0.1),
  /** Lying on the belly. */
  PRONE(new double[] {0, 0.12}, new double[] {0, 1}, 0.06, 0.03);

  private final double[] height;
  private final double[] share;

  /** Height of the mass centre above the deck over the stature. */
  private final double massCentre;

  /** How far the mass centre can go forward or back over the stature. */
  private final double reach;

  Posture(double[] height, double[] share, double massCentre, double reach) {
    this.height = height;
    this.share = share;
    this.massCentre = massCentre;
    this.reach = reach;
  }

  /**
   * How far a rider can throw the mass centre forward or back from where it rests: standing, as far
   * as the feet are; kneeling 0.1 of the stature (trunk, head and arms, two thirds of the mass,
   * leaning 0.15 of it); lying 0.03 (both arms, a tenth of the mass, from beside the chest to
   * stretched out). Chosen, from the segments' masses.
   *
   * @param stature [m]
   * @return distance [m]
   */
  public double massCentreReach(double stature) {
    return reach * stature;
  }

  /**
   * Height of the body's mass centre above the deck: standing 0.56 of the stature (Winter, from
   * memory); kneeling and lying the segments' own heights with the masses above, rounded.
   *
   * @param stature [m]
   * @return height [m]
   */
  public double massCentreHeight(double stature) {
    return massCentre * stature;
  }

  /**
   * Part of the body under water.
   *
   * @param deckDepth depth of the deck where the body rests [m]; negative above the surface
   * @param stature [m]
   * @return share of the body's volume [1]
   */
  public double submerged(double deckDepth, double stature) {
    if (!(deckDepth > 0)) {
      return 0;
    }
    double h = deckDepth / stature;
    for (int i = 1; i < height.length; i++) {
      if (h < height[i]) {
        double part = (h - height[i - 1]) / (height[i] - height[i - 1]);
        return share[i - 1] + part * (share[i] - share[i - 1]);
      }
    }
    return 1;
  }

  /** Height over the stature at which all of the body is under water [1]. */
  double all() {
    return height[height.length - 1];
  }
}
