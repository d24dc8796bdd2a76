package trimwright.kernel.motion;

import java.util.List;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;

/**
 * Water that goes along with a foil's heave and pitch, gathered about the datum: masses, their
 * first and second moments ahead of it along the fuselage.
 *
 * <p>Wings by strips, each about its middle chord with the rotation of a plate there, rho pi c⁴/128
 * per span (T. Theodorsen, NACA Report 496, 1935, from memory), less what a plate's ends lose
 * ({@link EllipticPlate}). Fuselage and pod by the water they displace (slender cylinders square to
 * their axis, Lamb article 114, from memory). Nothing for surge, where all parts are slender, nor
 * for the mast, which moves along its chord.
 *
 * @param mass [kg]
 * @param ahead mass times distance ahead of the datum [kg·m]
 * @param square mass times that distance squared, and the plates' own rotation [kg·m²]
 * @param behind mass times the distance ahead of where the force of a turning plate's flow acts,
 *     the three-quarter chord (the same report); a body's middle [kg·m]
 */
record MovedWater(double mass, double ahead, double square, double behind) {
  private static final MovedWater NONE = new MovedWater(0, 0, 0, 0);

  /** Parts of the half span between two stations. */
  private static final int PARTS = 8;

  static MovedWater of(Craft craft) {
    double density = craft.rideCase().water().density();
    MovedWater sum = NONE;
    List<PlacedWing> wings = craft.wings();
    for (PlacedWing wing : wings) {
      sum = sum.plus(wing(wing), density);
    }
    Fuselage f = craft.rideCase().setup().fuselage();
    double middle = 0.5 * (f.frontWingAhead() - f.stabilizerBehind());
    sum = sum.plus(body(f.diameter(), f.length(), middle), density);
    if (craft.rideCase().setup().drive().isPresent()) {
      Drive d = craft.rideCase().setup().drive().get();
      sum = sum.plus(body(d.diameter(), d.length(), craft.podAhead()), density);
    }
    return sum;
  }

  /** Per density. */
  private static MovedWater wing(PlacedWing wing) {
    MovedWater sum = NONE;
    List<Station> stations = wing.shape().stations();
    double share = EllipticPlate.shareOfStrips(wing.shape().aspectRatio());
    for (int i = 1; i < stations.size(); i++) {
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      double width = wing.shape().span() * (b.fraction() - a.fraction()) / PARTS;
      for (int part = 0; part < PARTS; part++) {
        double t = (part + 0.5) / PARTS;
        double chord = a.chord() + t * (b.chord() - a.chord());
        double quarter = a.ahead() + t * (b.ahead() - a.ahead());
        double x = wing.ahead() + quarter - 0.25 * chord;
        double m = share * Math.PI / 4 * chord * chord * width;
        sum =
            sum.plus(
                new MovedWater(m, m * x, m * (x * x + chord * chord / 32), m * (x - 0.25 * chord)),
                1);
      }
    }
    return sum;
  }

  private static MovedWater body(double diameter, double length, double middle) {
    double m = Math.PI / 4 * diameter * diameter * length;
    return new MovedWater(m, m * middle, m * (middle * middle + length * length / 12), m * middle);
  }

  private MovedWater plus(MovedWater more, double factor) {
    return new MovedWater(
        mass + factor * more.mass,
        ahead + factor * more.ahead,
        square + factor * more.square,
        behind + factor * more.behind);
  }
}
