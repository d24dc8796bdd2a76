package trimwright.kernel.surface;

import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;

/**
 * What the sections of one wing add strip by strip to the lattice's flow: viscous drag at the local
 * lift and Reynolds number, and the lift limit. The wing stalls where its first strip reaches its
 * section's largest lift (the critical-section method of R. F. Anderson, NACA Report 572, 1936;
 * method recalled, report not in hand).
 *
 * <p>Immutable; may be shared between threads.
 */
public final class ProfileForces {
  private final Strips strips;
  private final Finish finish;

  /**
   * The sections of a wing.
   *
   * @param wing the wing where it stands
   * @param finish its surface
   */
  public ProfileForces(PlacedWing wing, Finish finish) {
    strips = new Strips(wing);
    this.finish = finish;
  }

  /**
   * Viscous drag per unit of dynamic pressure, acting along the stream at each strip's quarter
   * chord.
   *
   * @param stripLift lift coefficient of each strip, see {@link SurfaceFlow#stripLift}
   * @param pitch fuselage against the stream, nose up positive [rad]
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return drag [m²] and its moment about the datum [m³]
   */
  public PlaneForce drag(double[] stripLift, double pitch, double reynoldsPerMetre) {
    double sin = Math.sin(pitch);
    double cos = Math.cos(pitch);
    double area = 0;
    double moment = 0;
    for (int k = 0; k < strips.count; k++) {
      double reynolds = reynoldsPerMetre * strips.chord[k];
      double cd = strips.section[k].drag(stripLift[k], reynolds, finish);
      if (strips.outerSection[k] != strips.section[k]) {
        cd = strips.mix(k, cd, strips.outerSection[k].drag(stripLift[k], reynolds, finish));
      }
      double a = 2 * strips.chord[k] * strips.width[k] * cd;
      area += a;
      moment += a * (strips.ahead[k] * sin + strips.above[k] * cos);
    }
    return new PlaneForce(-area, 0, moment);
  }

  /**
   * How much lift each strip still has to its limit, as the smallest share over the strips: 1 at no
   * lift, 0 where the first strip stalls, negative past it.
   *
   * @param stripLift lift coefficient of each strip
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return smallest remaining share [1]
   */
  public double liftReserve(double[] stripLift, double reynoldsPerMetre) {
    double least = 1;
    for (int k = 0; k < strips.count; k++) {
      double reynolds = reynoldsPerMetre * strips.chord[k];
      double limit = limit(k, reynolds, stripLift[k] >= 0);
      least = Math.min(least, 1 - stripLift[k] / limit);
    }
    return least;
  }

  /**
   * Nose-up (or nose-down) change of pitch after which the first strip stalls, by the strips' own
   * slopes.
   *
   * @param stripLift lift coefficients at a pitch
   * @param slope change of each with pitch [1/rad]
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return change of pitch to the first stall while turning nose up [rad]; negative past it
   */
  public double stallMargin(double[] stripLift, double[] slope, double reynoldsPerMetre) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < strips.count; k++) {
      if (slope[k] <= 0) {
        continue;
      }
      double reynolds = reynoldsPerMetre * strips.chord[k];
      least = Math.min(least, (limit(k, reynolds, true) - stripLift[k]) / slope[k]);
    }
    return least;
  }

  /**
   * Lift coefficient at which each strip stalls while turning nose up.
   *
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return limits, from root to tip [1]
   */
  public double[] liftLimits(double reynoldsPerMetre) {
    double[] limits = new double[strips.count];
    for (int k = 0; k < strips.count; k++) {
      limits[k] = limit(k, reynoldsPerMetre * strips.chord[k], true);
    }
    return limits;
  }

  /**
   * Lift that is lost if every strip's lift stops at its limit, per unit of dynamic pressure: 0
   * before the first strip stalls, negative where strips are past their limit downwards. What is
   * left is a lower bound of what a stalled wing still carries, since the strips beside a stalled
   * one are left as they are.
   *
   * @param stripLift lift coefficient of each strip
   * @param reynoldsPerMetre speed over kinematic viscosity [1/m]
   * @return lost lift [m²]
   */
  public double lostLift(double[] stripLift, double reynoldsPerMetre) {
    double lost = 0;
    for (int k = 0; k < strips.count; k++) {
      double limit = limit(k, reynoldsPerMetre * strips.chord[k], stripLift[k] >= 0);
      if (stripLift[k] / limit > 1) {
        lost += 2 * strips.chord[k] * strips.width[k] * (stripLift[k] - limit);
      }
    }
    return lost;
  }

  /** Lowest pressure coefficient on any strip at these lift coefficients [1]. */
  public double minimumPressure(double[] stripLift) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < strips.count; k++) {
      double pressure = strips.section[k].minimumPressure(stripLift[k]);
      if (strips.outerSection[k] != strips.section[k]) {
        pressure = strips.mix(k, pressure, strips.outerSection[k].minimumPressure(stripLift[k]));
      }
      least = Math.min(least, pressure);
    }
    return least;
  }

  private double limit(int k, double reynolds, boolean positive) {
    Section a = strips.section[k];
    Section b = strips.outerSection[k];
    double inner = positive ? a.maximumLift(reynolds, finish) : a.minimumLift(reynolds, finish);
    if (a == b) {
      return inner;
    }
    return strips.mix(
        k, inner, positive ? b.maximumLift(reynolds, finish) : b.minimumLift(reynolds, finish));
  }
}
