package trimwright.kernel.rig;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;

/**
 * Drag of mast, spray, corners, fuselage and pod at one speed, over pitch: the friction lines,
 * which ask for logarithms and powers, are worked out once. Immutable; may be shared between
 * threads.
 */
public final class CraftDrags {
  private final Craft craft;

  /** [Pa]. */
  private final double dynamicPressure;

  /** Drag area of the mast per wetted length [m]. */
  private final double mastPerLength;

  /** Drag area of the spray, of the fuselage, and of the pod with its corners [m²]. */
  private final double spray;

  private final double fuselage;
  private final double pod;

  /** What the corners of mast and wings are multiplied by [1]. */
  private final double corners;

  CraftDrags(Craft craft, double speed) {
    this.craft = craft;
    RideCase c = craft.rideCase();
    Setup s = c.setup();
    double perMetre = speed / c.water().kinematicViscosity();
    dynamicPressure = 0.5 * c.water().density() * speed * speed;
    ModelFactors factors = craft.factors();
    Mast m = s.mast();
    mastPerLength =
        factors.mast() * MastDrag.profile(m.chord(), m.thickness(), 1, perMetre, m.finish());
    spray = factors.spray() * MastDrag.spray(m.thickness());
    fuselage =
        factors.bodies() * BodyDrag.of(s.fuselage().length(), s.fuselage().diameter(), perMetre);
    corners = factors.corners();
    pod =
        s.drive()
            .map(
                d ->
                    factors.bodies() * BodyDrag.of(d.length(), d.diameter(), perMetre)
                        + corners * craft.podCorners())
            .orElse(0.0);
  }

  /**
   * The drags at a pitch, the front wing at its immersion.
   *
   * @param at of the fuselage
   * @return force and moment about the datum [N, N·m]
   */
  public PlaneForce at(Attitude at) {
    return at(at, craft.datumDepth(at));
  }

  /**
   * The drags at a pitch and depth.
   *
   * @param at of the fuselage
   * @param depth of the datum below the still surface [m]
   * @return force and moment about the datum [N, N·m]
   */
  public PlaneForce at(Attitude at, double depth) {
    Setup s = craft.rideCase().setup();
    double wetted = craft.wettedMast(at, depth);
    PlaneForce sum = dragAt(mastPerLength * wetted, 0.5 * wetted * at.cosWith(craft.rake()));
    sum = sum.plus(dragAt(spray, depth));
    Moments joined = craft.corners();
    sum = sum.plus(new PlaneForce(-joined.amount(), 0, joined.above(at)).times(corners));
    sum = sum.plus(dragAt(fuselage, Craft.fuselageMiddle(s.fuselage()) * at.sin()));
    if (s.drive().isPresent()) {
      sum = sum.plus(dragAt(craft.podWet(at, depth) * pod, craft.podAbove(at)));
    }
    return sum.times(dynamicPressure);
  }

  private static PlaneForce dragAt(double area, double above) {
    return PlaneForce.at(-area, 0, 0, above);
  }
}
