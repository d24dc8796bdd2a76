package trimwright.kernel.surface;

/**
 * How a craft moves in a steady turn. Water axes have their x along the datum's path; heading,
 * pitch and bank turn the foil axes out of them, in this order.
 *
 * @param pitch of the fuselage, nose up positive [rad]
 * @param bank starboard side down positive [rad]
 * @param heading fuselage against the path, nose to starboard positive [rad]
 * @param curvature of the datum's path, to starboard positive: one over its radius [1/m]
 */
public record TurnMotion(double pitch, double bank, double heading, double curvature) {

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
    double cr = Math.cos(bank);
    double sr = Math.sin(bank);
    double y1 = cr * y - sr * z;
    double z1 = sr * y + cr * z;
    double cp = Math.cos(pitch);
    double sp = Math.sin(pitch);
    double x2 = cp * x + sp * z1;
    double z2 = -sp * x + cp * z1;
    double cy = Math.cos(heading);
    double sy = Math.sin(heading);
    out[at] = cy * x2 - sy * y1;
    out[at + 1] = sy * x2 + cy * y1;
    out[at + 2] = z2;
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
