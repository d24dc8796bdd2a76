package trimwright.kernel.surface;

import java.util.List;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.Roots;

/**
 * The loads of a set of wings at one speed over pitch, sections and all. Wings count from the
 * front.
 */
public interface SpeedLoads {
  /** How near the pitch of stall is found [rad]. */
  double STALL_TOLERANCE = 1e-7;

  /**
   * The force on a wing.
   *
   * @param wing which
   * @param pitch of the fuselage [rad]
   * @return per unit of dynamic pressure, see {@link WingLoad#force}
   */
  PlaneForce force(int wing, double pitch);

  /**
   * Effective angles of a wing's strips.
   *
   * @param wing which
   * @param pitch of the fuselage [rad]
   * @return from root to tip [rad]
   */
  double[] angles(int wing, double pitch);

  /**
   * All that is known of a wing's load.
   *
   * @param wing which
   * @param pitch of the fuselage [rad]
   * @return load per unit of dynamic pressure
   */
  WingLoad load(int wing, double pitch);

  /** Largest residual behind the loads at a pitch [rad], see {@link CoupledFlow#residual} [1]. */
  double residual(double pitch);

  /** Where the strips stall, from the front wing to the back. */
  List<StallAngles> stall();

  /** Lowest pitch that it holds for [rad]. */
  double from();

  /** Highest pitch that it holds for [rad]. */
  double to();

  /** Angle that the strip nearest to its stall nose up has left at a pitch [rad]. */
  default double room(double pitch) {
    List<StallAngles> stall = stall();
    double least = Double.POSITIVE_INFINITY;
    for (int wing = 0; wing < stall.size(); wing++) {
      least = Math.min(least, stall.get(wing).room(angles(wing, pitch)));
    }
    return least;
  }

  /**
   * The pitch at which the first strip of any wing stalls nose up.
   *
   * @return pitch [rad]: the lowest where a strip is past its stall there; where none stalls up to
   *     the highest what the strips' angles there say, at most half a turn more
   */
  default double stallPitch() {
    double from = from();
    double to = to();
    double atFrom = room(from);
    double atTo = room(to);
    if (atFrom <= 0) {
      return from;
    }
    if (atTo > 0) {
      double step = 1e-3;
      double slope = (room(to - step) - atTo) / step;
      return to + Math.min(Math.PI, slope > 0 ? atTo / slope : Math.PI);
    }
    return Roots.between(this::room, from, atFrom, to, atTo, STALL_TOLERANCE);
  }
}
