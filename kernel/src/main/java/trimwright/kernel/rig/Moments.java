package trimwright.kernel.rig;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;

/**
 * Masses (or volumes) gathered with their first moments in foil axes, so that turning them to any
 * pitch costs nothing.
 *
 * @param amount sum [kg or m³]
 * @param aheadMoment amount times distance ahead of the datum
 * @param aboveMoment amount times distance above the datum
 */
record Moments(double amount, double aheadMoment, double aboveMoment) {
  static final Moments NONE = new Moments(0, 0, 0);

  Moments plus(double more, double ahead, double above) {
    return new Moments(amount + more, aheadMoment + more * ahead, aboveMoment + more * above);
  }

  Moments plus(Moments other) {
    return new Moments(
        amount + other.amount, aheadMoment + other.aheadMoment, aboveMoment + other.aboveMoment);
  }

  /** First moment ahead of the datum in water axes. */
  double ahead(Attitude at) {
    return aheadMoment * at.cos() - aboveMoment * at.sin();
  }

  /** First moment above the datum in water axes. */
  double above(Attitude at) {
    return aheadMoment * at.sin() + aboveMoment * at.cos();
  }

  /** Vertical force of so much per amount. */
  PlaneForce lifted(double perAmount, Attitude at) {
    return new PlaneForce(0, perAmount * amount, perAmount * ahead(at));
  }
}
