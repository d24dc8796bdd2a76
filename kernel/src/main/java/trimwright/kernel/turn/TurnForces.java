package trimwright.kernel.turn;

import trimwright.kernel.frame.PlaneForce;

/**
 * A force with its moment about the datum in water axes: x along the path, y to starboard, z down.
 * A sum that is added to.
 */
final class TurnForces {
  final double[] force = new double[3];
  final double[] moment = new double[3];

  /** Adds a force at a place. */
  void add(double fx, double fy, double fz, double[] at) {
    force[0] += fx;
    force[1] += fy;
    force[2] += fz;
    moment[0] += at[1] * fz - at[2] * fy;
    moment[1] += at[2] * fx - at[0] * fz;
    moment[2] += at[0] * fy - at[1] * fx;
  }

  /** Adds a force and moment, times a factor. */
  void add(double[] f, double[] m, double factor) {
    for (int i = 0; i < 3; i++) {
      force[i] += factor * f[i];
      moment[i] += factor * m[i];
    }
  }

  /** Adds a force in the craft's plane of symmetry, which leans by a bank. */
  void addInPlane(PlaneForce f, double bank) {
    double sin = Math.sin(bank);
    double cos = Math.cos(bank);
    force[0] += f.forward();
    force[1] += f.up() * sin;
    force[2] -= f.up() * cos;
    moment[1] += f.noseUp() * cos;
    moment[2] += f.noseUp() * sin;
  }

  /** Moment about the craft's own sideways axis, nose up positive. */
  double noseUp(double bank) {
    return moment[1] * Math.cos(bank) + moment[2] * Math.sin(bank);
  }

  /** Moment about the craft's own upward axis turned downwards, nose to starboard positive. */
  double noseIn(double bank) {
    return moment[2] * Math.cos(bank) - moment[1] * Math.sin(bank);
  }
}
