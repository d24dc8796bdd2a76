package trimwright.kernel.surface;

/**
 * How a craft moves in a steady turn. Water axes have their x along the datum's path; heading,
 * pitch and bank turn the foil axes out of them, in this order. Immutable.
 */
public final class TurnMotion {
  private final double pitch;
  private final double bank;
  private final double heading;
  private final double curvature;

  /** Foil axes in water axes, row after row. */
  private final double[] axes;

  /**
   * A motion.
   *
   * @param pitch of the fuselage, nose up positive [rad]
   * @param bank starboard side down positive [rad]
   * @param heading fuselage against the path, nose to starboard positive [rad]
   * @param curvature of the datum's path, to starboard positive: one over its radius [1/m]
   */
  public TurnMotion(double pitch, double bank, double heading, double curvature) {
    this.pitch = pitch;
    this.bank = bank;
    this.heading = heading;
    this.curvature = curvature;
    double cr = Math.cos(bank);
    double sr = Math.sin(bank);
    double cp = Math.cos(pitch);
    double sp = Math.sin(pitch);
    double cy = Math.cos(heading);
    double sy = Math.sin(heading);
    axes =
        new double[] {
          cy * cp,
          cy * sp * sr - sy * cr,
          cy * sp * cr + sy * sr,
          sy * cp,
          sy * sp * sr + cy * cr,
          sy * sp * cr - cy * sr,
          -sp,
          cp * sr,
          cp * cr
        };
  }

  /** Of the fuselage, nose up positive [rad]. */
  public double pitch() {
    return pitch;
  }

  /** Starboard side down positive [rad]. */
  public double bank() {
    return bank;
  }

  /** Fuselage against the path, nose to starboard positive [rad]. */
  public double heading() {
    return heading;
  }

  /** Of the datum's path, to starboard positive [1/m]. */
  public double curvature() {
    return curvature;
  }

  /**
   * Turns a point of the foil axes into water axes.
   *
   * @param x forward along the fuselage [m]
   * @param y to starboard [m]
   * @param z down [m]
   * @param out receives x, y, z in water axes
   * @param at where in it
   */
  public void place(double x, double y, double z, double[] out, int at) {
    out[at] = axes[0] * x + axes[1] * y + axes[2] * z;
    out[at + 1] = axes[3] * x + axes[4] * y + axes[5] * z;
    out[at + 2] = axes[6] * x + axes[7] * y + axes[8] * z;
  }

  /** What turns a vector that goes with the craft from another motion's water axes to these. */
  double[] after(TurnMotion other) {
    double[] turn = new double[9];
    for (int r = 0; r < 3; r++) {
      for (int c = 0; c < 3; c++) {
        for (int k = 0; k < 3; k++) {
          turn[3 * r + c] += axes[3 * r + k] * other.axes[3 * c + k];
        }
      }
    }
    return turn;
  }

  /** Where a point of the water streams to, for unit speed of the datum: along x [1]. */
  double streamX(double y) {
    return curvature * y - 1;
  }

  /** Along y [1]. */
  double streamY(double x) {
    return -curvature * x;
  }
}
