package trimwright.kernel.quick;

import java.util.Optional;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Footing;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.ThrustLine;

/**
 * A craft to be trimmed from tables: all that no speed, pitch or shim changes. The balance is that
 * of {@link trimwright.kernel.trim.CaseSolver}; what is left out is all that it says about a
 * balance beyond {@link QuickBalance}.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class QuickCase {
  private final Craft craft;
  private final ThrustLine thrustLine;
  private final Footing footing;
  private final double riderWeight;
  private final Optional<Powertrain> powertrain;

  /**
   * A case.
   *
   * @param craft the craft; its shim does not count, the table's does
   */
  public QuickCase(Craft craft) {
    this.craft = craft;
    thrustLine = new ThrustLine(craft);
    riderWeight = craft.rideCase().rider().allMass() * Craft.GRAVITY;
    footing = new Footing(craft.deck(), riderWeight);
    powertrain = Propulsion.find(craft.rideCase());
  }

  /**
   * The case at one speed.
   *
   * @param speed [m/s], above 0
   * @return what no pitch or shim changes there
   */
  public QuickSpeed at(double speed) {
    return new QuickSpeed(this, speed);
  }

  /**
   * Part of the load on the front foot with the mast moved in its track.
   *
   * @param balance with the mast where the case has it
   * @param forward how far it is moved from there [m]
   * @return share [1]
   */
  public double footShare(QuickBalance balance, double forward) {
    return footShare(balance.footPressure() + balance.footPressurePerTrack() * forward, forward);
  }

  double footShare(double footPressure, double moved) {
    Rider r = craft.rideCase().rider();
    double back = r.backFoot() - craft.rideCase().setup().board().track() - moved;
    return (footPressure - back) / r.stance();
  }

  Craft craft() {
    return craft;
  }

  Optional<Powertrain> powertrain() {
    return powertrain;
  }

  ThrustLine thrustLine() {
    return thrustLine;
  }

  Footing footing() {
    return footing;
  }

  double riderWeight() {
    return riderWeight;
  }
}
