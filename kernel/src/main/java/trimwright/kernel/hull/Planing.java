package trimwright.kernel.hull;

import trimwright.kernel.numeric.Roots;

/**
 * Prismatic planing surfaces: D. Savitsky, Hydrodynamic Design of Planing Hulls, Marine Technology
 * 1(1), 1964 (formulas from memory; the paper is not in hand). Lift coefficients are on the dynamic
 * pressure and the beam squared; angles in the formulas are degrees.
 *
 * <p><b>Range</b> as published: speed coefficient 0.6 to 13, trim 2 to 15 degrees, mean wetted
 * length up to 4 beams. Below 2 degrees the formulas run smoothly to no lift at no trim and are
 * used as they stand.
 */
public final class Planing {
  /** The published formulas take degrees. */
  private static final double DEGREE = Math.toRadians(1);

  /** Slowest speed coefficient of the published range [1]. */
  public static final double SLOWEST = 0.6;

  /** Longest mean wetted length of the published range [beams]. */
  public static final double LONGEST = 4;

  private static final double DYNAMIC = 0.012;
  private static final double STATIC = 0.0055;
  private static final double TRIM_POWER = 1.1;
  private static final double DEADRISE = 0.0065;
  private static final double DEADRISE_POWER = 0.6;

  private Planing() {}

  /**
   * Speed coefficient V/√(g b).
   *
   * @param speed [m/s]
   * @param beam [m]
   * @param gravity [m/s²]
   * @return coefficient [1]
   */
  public static double speedCoefficient(double speed, double beam, double gravity) {
    return speed / Math.sqrt(gravity * beam);
  }

  /**
   * The dynamic part of a flat bottom's lift: 0.0120 √λ τ^1.1.
   *
   * @param trim [rad], 0 or more
   * @param wettedLength mean [beams]
   * @return coefficient [1]
   */
  public static double dynamicLift(double trim, double wettedLength) {
    return DYNAMIC * Math.sqrt(wettedLength) * trimFactor(trim);
  }

  /**
   * The part of a flat bottom's lift that buoyancy makes, times the speed coefficient squared:
   * 0.0055 λ^2.5 τ^1.1.
   *
   * @param trim [rad], 0 or more
   * @param wettedLength mean [beams]
   * @return coefficient times Cv² [1]: force over half of ρ g b³
   */
  public static double staticLift(double trim, double wettedLength) {
    return STATIC * wettedLength * wettedLength * Math.sqrt(wettedLength) * trimFactor(trim);
  }

  private static double trimFactor(double trim) {
    return Math.pow(trim / DEGREE, TRIM_POWER);
  }

  /**
   * Lift coefficient of a flat bottom.
   *
   * @param trim [rad], 0 or more
   * @param wettedLength mean [beams]
   * @param speedCoefficient above 0 [1]
   * @return coefficient [1]
   */
  public static double flatLift(double trim, double wettedLength, double speedCoefficient) {
    return dynamicLift(trim, wettedLength)
        + staticLift(trim, wettedLength) / (speedCoefficient * speedCoefficient);
  }

  /**
   * Lift coefficient of a bottom with deadrise from that of a flat one.
   *
   * @param flatLift [1]
   * @param deadrise [rad]
   * @return coefficient [1]
   */
  public static double lift(double flatLift, double deadrise) {
    return flatLift - DEADRISE * deadrise / DEGREE * Math.pow(flatLift, DEADRISE_POWER);
  }

  /**
   * The flat bottom's coefficient behind one with deadrise.
   *
   * @param lift [1], above 0
   * @param deadrise [rad]
   * @return coefficient [1]
   */
  public static double flatLiftFor(double lift, double deadrise) {
    // Above it the curve rises: the first factor is 1 at C^0.4 = 0.0065 deadrise.
    double low = lift;
    double high = lift + 1;
    return Roots.between(
        c -> lift(c, deadrise) - lift,
        low,
        lift(low, deadrise) - lift,
        high,
        lift(high, deadrise) - lift,
        1e-12);
  }

  /**
   * Mean wetted length that carries a lift.
   *
   * @param flatLift of a flat bottom [1], above 0
   * @param trim [rad], above 0
   * @param speedCoefficient [1]
   * @return wetted length [beams]
   */
  public static double wettedLength(double flatLift, double trim, double speedCoefficient) {
    double high = 1;
    while (flatLift(trim, high, speedCoefficient) < flatLift) {
      high *= 2;
    }
    return Roots.between(
        l -> flatLift(trim, l, speedCoefficient) - flatLift,
        0,
        -flatLift,
        high,
        flatLift(trim, high, speedCoefficient) - flatLift,
        1e-12);
  }

  /**
   * Centre of pressure ahead of the transom over the mean wetted length: 0.75 - 1/(5.21 Cv²/λ² +
   * 2.39).
   *
   * @param wettedLength mean [beams], above 0
   * @param speedCoefficient [1]
   * @return share [1]
   */
  public static double centreOfPressure(double wettedLength, double speedCoefficient) {
    double ratio = speedCoefficient / wettedLength;
    return 0.75 - 1 / (5.21 * ratio * ratio + 2.39);
  }

  /**
   * Mean speed of the water along the bottom over that of the boat, by Bernoulli's law from the
   * dynamic lift.
   *
   * @param trim [rad]
   * @param wettedLength mean [beams], above 0
   * @param deadrise [rad]
   * @return ratio [1]
   */
  public static double bottomSpeed(double trim, double wettedLength, double deadrise) {
    double flat = dynamicLift(trim, wettedLength);
    double pressure = (deadrise > 0 ? lift(flat, deadrise) : flat) / wettedLength;
    return Math.sqrt(Math.max(0, 1 - pressure / Math.cos(trim)));
  }

  /**
   * Mean wetted length from where the still surface meets a flat bottom: the water rises ahead of
   * it, by 0.3 beams from one beam on.
   *
   * @param still length up to the still surface [beams]
   * @return mean wetted length [beams]
   */
  public static double risen(double still) {
    return still >= 1 ? still + 0.3 : still * (1.6 - 0.3 * still);
  }
}
