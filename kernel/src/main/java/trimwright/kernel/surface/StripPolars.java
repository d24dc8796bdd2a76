package trimwright.kernel.surface;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Polar;

/**
 * The sections of one wing at one speed, strip by strip: viscous drag at the local lift and
 * Reynolds number, and the lift limit. The wing stalls where its first strip reaches its section's
 * largest lift (the critical-section method of R. F. Anderson, NACA Report 572, 1936; method
 * recalled, report not in hand).
 *
 * <p>Immutable; may be shared between threads.
 */
public final class StripPolars {
  private final Strips strips;
  private final Polar[] polar;

  /** Of the outer section of a strip that lies between two; null where it is the same section. */
  private final Polar[] outer;

  private final double[] maximumLift;
  private final double[] minimumLift;

  StripPolars(Strips strips, Finish finish, double reynoldsPerMetre) {
    this.strips = strips;
    polar = new Polar[strips.count];
    outer = new Polar[strips.count];
    maximumLift = new double[strips.count];
    minimumLift = new double[strips.count];
    for (int k = 0; k < strips.count; k++) {
      double reynolds = reynoldsPerMetre * strips.chord[k];
      Polar a = strips.section[k].polar(reynolds, finish);
      polar[k] = a;
      maximumLift[k] = a.maximumLift();
      minimumLift[k] = a.minimumLift();
      if (strips.outerSection[k] != strips.section[k]) {
        Polar b = strips.outerSection[k].polar(reynolds, finish);
        outer[k] = b;
        maximumLift[k] = strips.mix(k, maximumLift[k], b.maximumLift());
        minimumLift[k] = strips.mix(k, minimumLift[k], b.minimumLift());
      }
    }
  }

  /**
   * Viscous drag per unit of dynamic pressure, acting along the stream at each strip's quarter
   * chord.
   *
   * @param stripLift lift coefficient of each strip, see {@link SurfaceFlow#stripLift}
   * @param at fuselage against the stream
   * @return drag [m²] and its moment about the datum [m³]
   */
  public PlaneForce drag(double[] stripLift, Attitude at) {
    double sin = at.sin();
    double cos = at.cos();
    double area = 0;
    double moment = 0;
    for (int k = 0; k < strips.count; k++) {
      double cd = polar[k].drag(stripLift[k]);
      if (outer[k] != null) {
        cd = strips.mix(k, cd, outer[k].drag(stripLift[k]));
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
   * @return smallest remaining share [1]
   */
  public double liftReserve(double[] stripLift) {
    double least = 1;
    for (int k = 0; k < strips.count; k++) {
      least = Math.min(least, 1 - stripLift[k] / limit(k, stripLift[k]));
    }
    return least;
  }

  /**
   * Nose-up (or nose-down) change of pitch after which the first strip stalls, by the strips' own
   * slopes.
   *
   * @param stripLift lift coefficients at a pitch
   * @param slope change of each with pitch [1/rad]
   * @return change of pitch to the first stall while turning nose up [rad]; negative past it
   */
  public double stallMargin(double[] stripLift, double[] slope) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < strips.count; k++) {
      if (slope[k] <= 0) {
        continue;
      }
      least = Math.min(least, (maximumLift[k] - stripLift[k]) / slope[k]);
    }
    return least;
  }

  /**
   * Lift that is lost if every strip's lift stops at its limit, per unit of dynamic pressure: 0
   * before the first strip stalls, negative where strips are past their limit downwards. What is
   * left is a lower bound of what a stalled wing still carries, since the strips beside a stalled
   * one are left as they are.
   *
   * @param stripLift lift coefficient of each strip
   * @return lost lift [m²]
   */
  public double lostLift(double[] stripLift) {
    double lost = 0;
    for (int k = 0; k < strips.count; k++) {
      double limit = limit(k, stripLift[k]);
      if (stripLift[k] / limit > 1) {
        lost += 2 * strips.chord[k] * strips.width[k] * (stripLift[k] - limit);
      }
    }
    return lost;
  }

  /** Lift coefficient at which each strip stalls while turning nose up, from root to tip [1]. */
  public double[] maximumLift() {
    return maximumLift.clone();
  }

  private double limit(int k, double lift) {
    return lift >= 0 ? maximumLift[k] : minimumLift[k];
  }
}
