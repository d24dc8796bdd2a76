package trimwright.kernel.hull;

import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.section.FormFactor;
import trimwright.kernel.section.SkinFriction;
import trimwright.kernel.water.Water;

/**
 * A board in the water at one speed: planing, floating, and what lies between.
 *
 * <p><b>Inside the published range</b> of {@link Planing} with the bow dry, lift, centre of
 * pressure and drag are Savitsky's for a flat bottom, friction by the ITTC 1957 line on the mean
 * wetted length (he used Schoenherr's with an allowance for roughness; boards are small and
 * smooth).
 *
 * <p><b>Outside it</b> the dynamic lift stays his. Of the static lift a part w is his and 1 - w is
 * Archimedes' buoyancy of the volume under the still surface: w is (Cv/0.6)² below a speed
 * coefficient of 0.6, times what of the bow's end is dry. So a board at rest floats, a board whose
 * bow is under water keeps floating at any speed, and nothing jumps. What floats drags by its waves
 * ({@link WavePressure}), by friction on bottom, rails and deck with the form factor of its
 * thickness, and by a blunt bow where that is under water. The switch is chosen.
 *
 * <p>Left out: spray beside the bottom, the suction of a bottom at negative trim, the lift of a
 * deck under water. One object is one workspace: not for use by two threads.
 */
final class HullAtSpeed {
  /** Drag of a bluff end with round edges on its wetted front. Chosen from 0.2 to 0.3 [1]. */
  static final double BLUNT = 0.25;

  /** Least height over which a deck goes under: none is flat. Chosen [m]. */
  private static final double CAMBER = 0.01;

  private final BoardHull hull;
  private final Water water;
  private final double speed;
  private final double beam;
  private final double pressure;
  private final double speedCoefficient;
  private final double slowShare;

  /** Found when first asked for; below 0 until then. */
  private double wavePerSquare = -1;

  private final double formFactor;
  private final double longest;

  HullAtSpeed(BoardHull hull, Water water, double speed) {
    this.hull = hull;
    this.water = water;
    this.speed = speed;
    beam = hull.beam();
    pressure = 0.5 * water.density() * speed * speed;
    speedCoefficient = Planing.speedCoefficient(speed, beam, Craft.GRAVITY);
    double slow = speedCoefficient / Planing.SLOWEST;
    slowShare = Math.min(1, slow * slow);
    formFactor = FormFactor.section(Math.min(0.3, hull.thickness() / hull.length()));
    longest = hull.length() / beam;
  }

  private double wavePerSquare() {
    if (wavePerSquare < 0) {
      wavePerSquare =
          WavePressure.perLoadSquared(hull.length(), beam, speed, water.density(), Craft.GRAVITY);
    }
    return wavePerSquare;
  }

  /**
   * The load.
   *
   * @param trim bow up, 0 or more [rad]
   * @param sternDepth of the bottom's end at the stern [m]
   */
  HullLoad at(double trim, double sternDepth) {
    if (!(sternDepth > 0)) {
      return HullLoad.NONE;
    }
    double sin = Math.sin(trim);
    double cos = Math.cos(trim);
    double still = sternDepth >= hull.length() * sin ? longest : sternDepth / (beam * sin);
    double wetted = Math.min(longest, Planing.risen(still));
    double bow = Math.max(0, Math.min(hull.thickness(), (sternDepth - hull.length() * sin) / cos));
    double planing = slowShare * (1 - bow / hull.thickness());
    Hydrostatics under = planing < 1 ? hull.under(trim, sternDepth) : null;

    double area = beam * beam;
    double dynamic = pressure * area * Planing.dynamicLift(trim, wetted);
    double unit = 0.5 * water.density() * Craft.GRAVITY * area * beam;
    double slowLift = unit * Planing.staticLift(trim, wetted);
    double buoyancy =
        under == null ? 0 : (1 - planing) * water.density() * Craft.GRAVITY * under.volume();

    double friction = friction(trim, wetted, planing, under, sternDepth, sin);
    double lift = dynamic + planing * slowLift;
    // The normal force, whose level part is the drag of pressure: Savitsky's W tan τ + D/cos τ.
    double normal = (lift + friction * sin) / cos;
    double pressureDrag = normal * sin;
    double wave = buoyancy > 0 ? wavePerSquare() * buoyancy * buoyancy : 0;
    double blunt = pressure * BLUNT * beam * bow;

    double moment = normal * arm(dynamic, planing * slowLift, wetted);
    PlaneForce force = new PlaneForce(-pressureDrag - friction * cos, lift, moment);
    if (under != null) {
      force =
          force.plus(
              PlaneForce.at(
                  -wave - blunt,
                  buoyancy,
                  under.centreAhead() * cos - under.centreAbove() * sin,
                  under.centreAhead() * sin + under.centreAbove() * cos));
    }
    return new HullLoad(
        force,
        dynamic,
        planing * slowLift + buoyancy,
        pressureDrag,
        wave,
        friction,
        blunt,
        wetted * beam,
        planing,
        buoyancy / (water.density() * Craft.GRAVITY));
  }

  /** How far ahead of the stern planing's lift acts: his centre, its static part by its share. */
  private double arm(double dynamic, double slow, double wetted) {
    double all = dynamic + slow;
    if (!(all > 0)) {
      return 0;
    }
    if (slow <= 0 || speedCoefficient <= 0) {
      return 0.75 * wetted * beam;
    }
    // Cv as it would be for this share of static lift: his own where the whole of it counts.
    double effective = Math.sqrt(dynamic / slow * STATIC_OVER_DYNAMIC) * wetted;
    return Planing.centreOfPressure(wetted, effective) * wetted * beam;
  }

  /** 0.0055 / 0.0120: static over dynamic lift at Cv = λ. */
  private static final double STATIC_OVER_DYNAMIC = 0.0055 / 0.0120;

  private double friction(
      double trim,
      double wetted,
      double planing,
      Hydrostatics under,
      double sternDepth,
      double sin) {
    if (!(speed > 0)) {
      return 0;
    }
    double slower = Planing.bottomSpeed(trim, wetted, 0);
    double reynolds = slower * speed * wetted * beam / water.kinematicViscosity();
    double coefficient = SkinFriction.ittc1957(reynolds);
    double bottom = slower * slower * wetted * beam * beam;
    if (under == null) {
      return pressure * coefficient * bottom;
    }
    double deckDepth = sternDepth - hull.thickness();
    double rising = Math.max(hull.length() * sin, CAMBER);
    double awash = hull.length() * Math.max(0, Math.min(1, deckDepth / rising));
    double others = (1 - planing) * (under.sides() + awash * beam);
    double form = 1 + (1 - planing) * (formFactor - 1);
    return pressure * coefficient * (form * bottom + formFactor * others);
  }
}
