package trimwright.kernel.quick;

/**
 * Where a pair of wings is solved. The counts are what the accuracy of {@link PairTable} needs and
 * little more; how they were found stands in docs/modules/kernel.md.
 */
final class PairGrid {
  /** Version of everything here: another one makes other tables. */
  static final int VERSION = 4;

  /** Pitches, closer where the front wing's wake passes the stabilizer and towards the stall. */
  private static final int PITCHES = 28;

  /**
   * How much closer where the wake passes all at once, and how far from it half of that is left
   * [rad]. The wash has a fold there.
   */
  private static final double CROSSING_WEIGHT = 30;

  private static final double CROSSING_REACH = Math.toRadians(0.2);

  /**
   * The same about the pitch at which the slow water of the front wing's wake, which sinks with the
   * downwash, lies over the stabilizer: so far above the passage of the sheet [rad]. Chosen from
   * the downwash at no pitch of usual wings; the reach is the wake's own width.
   */
  private static final double SLOW_WATER_WEIGHT = 2;

  private static final double SLOW_WATER_REACH = Math.toRadians(2.2);
  private static final double SLOW_WATER_ABOVE = Math.toRadians(2);

  /** The same about the first stall of the front wing, which lies below the end of the range. */
  private static final double STALL_WEIGHT = 1;

  private static final double STALL_REACH = Math.toRadians(2);
  private static final double STALL_BELOW_END = Math.toRadians(5);

  /** Speeds, evenly spaced in the logarithm [m/s]. */
  private static final int SPEEDS = 9;

  static final double SLOWEST = 2;
  static final double FASTEST = 14;

  /** Shims, evenly spaced [rad]. */
  private static final int SHIMS = 5;

  static final double MOST_SHIM = Math.toRadians(4);

  /**
   * Shims that have a lattice of their own [rad]; the others turn the nearest one's sections by a
   * degree at most.
   */
  static final double[] LATTICES = {Math.toRadians(-3), 0, Math.toRadians(3)};

  /** Parts of the range of pitch by which the density of nodes is summed up. */
  private static final int PARTS = 2000;

  private PairGrid() {}

  static double[] speeds() {
    double[] speeds = new double[SPEEDS];
    for (int i = 0; i < SPEEDS; i++) {
      speeds[i] = SLOWEST * Math.pow(FASTEST / SLOWEST, i / (SPEEDS - 1.0));
    }
    return speeds;
  }

  static double[] shims() {
    double[] shims = new double[SHIMS];
    for (int i = 0; i < SHIMS; i++) {
      shims[i] = MOST_SHIM * (2.0 * i / (SHIMS - 1) - 1);
    }
    return shims;
  }

  /** Pitches between two, smoothly graded. */
  static double[] pitches(WakePassage passage, double from, double to) {
    double width = passage.to() - passage.from();
    // As many nodes for a passage that takes long.
    double weight = CROSSING_WEIGHT / (1 + width / (Math.PI * CROSSING_REACH));
    double stall = to - STALL_BELOW_END;
    double step = (to - from) / PARTS;
    double[] sum = new double[PARTS + 1];
    for (int i = 0; i < PARTS; i++) {
      double pitch = from + (i + 0.5) * step;
      sum[i + 1] =
          sum[i]
              + 1
              + weight * peak(passage.distance(pitch) / CROSSING_REACH)
              + SLOW_WATER_WEIGHT
                  * bell(passage.distance(pitch - SLOW_WATER_ABOVE) / SLOW_WATER_REACH)
              + STALL_WEIGHT * bell((pitch - stall) / STALL_REACH);
    }
    double[] nodes = new double[PITCHES];
    int k = 0;
    for (int n = 0; n < PITCHES; n++) {
      double share = sum[PARTS] * n / (PITCHES - 1);
      while (k < PARTS - 1 && sum[k + 1] < share) {
        k++;
      }
      nodes[n] = from + step * (k + (share - sum[k]) / (sum[k + 1] - sum[k]));
    }
    snap(nodes, 0.5 * (passage.from() + passage.to()));
    return nodes;
  }

  /** Moves the nearest inner node onto a pitch inside the range. */
  private static void snap(double[] nodes, double pitch) {
    int nearest = 1;
    for (int i = 2; i < nodes.length - 1; i++) {
      if (Math.abs(nodes[i] - pitch) < Math.abs(nodes[nearest] - pitch)) {
        nearest = i;
      }
    }
    if (pitch > nodes[nearest - 1] && pitch < nodes[nearest + 1]) {
      nodes[nearest] = pitch;
    }
  }

  private static double peak(double x) {
    return 1 / (1 + x * x);
  }

  private static double bell(double x) {
    return Math.exp(-x * x);
  }
}
