package trimwright.kernel.quick;

import trimwright.kernel.rig.Craft;

/**
 * Loads of a front wing and a stabilizer on their fuselage at one immersion, in one water, over
 * pitch, speed and shim: both wings together, sections and stalls and all that flows between them,
 * from the same coupling of lattice and sections that the trim stands on. Small, so that the pairs
 * of a whole shop fit into memory, and quick to read.
 *
 * <p>A shim needs no lattice of its own: three lattices, with the stabilizer turned by -3, 0 and 3
 * degrees, serve all, and in between its sections turn by a degree at most ({@link
 * trimwright.kernel.surface.StripCoupling#withTurn}). One lattice alone missed the foot pressure by
 * up to 6 mm where the front wing's wake passes a stabilizer turned by 2.6 degrees.
 *
 * <p><b>Range.</b> Speeds from {@link #slowest} to {@link #fastest}, shims up to {@link #mostShim}
 * either way, pitches from a little below no lift to a little past the front wing's first stall.
 * Cubics through the four nodes around in all three. How far a trim from it lies from the full
 * solution is asserted over random setups and stated in docs/performance.md.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class PairTable {
  /** Functions over pitch: up, forward, nose up. */
  static final int FUNCTIONS = 3;

  /** Numbers besides: pitch of the first stall nose up, lowest pitch without a stall nose down. */
  static final int OTHERS = 2;

  private final PitchNodes pitches;
  private final double[] pitchArray;
  private final Spacing speeds;
  private final Spacing shims;

  /** One block per speed and shim: the functions' values over pitch in turn, then the others. */
  private final float[] values;

  private final int block;

  /**
   * A table from its numbers.
   *
   * @param pitches at least four, rising [rad]
   * @param values one block per speed and shim, see {@link #values}
   * @throws IllegalArgumentException if there are too few pitches, they do not rise, or the values
   *     are not as many as they must be
   */
  public PairTable(double[] pitches, float[] values) {
    if (pitches.length < 4) {
      throw new IllegalArgumentException(
          "a pair's table needs at least 4 pitches, was " + pitches.length);
    }
    for (int i = 1; i < pitches.length; i++) {
      if (!(pitches[i] > pitches[i - 1])) {
        throw new IllegalArgumentException(
            "pitches must rise, were " + pitches[i - 1] + " then " + pitches[i]);
      }
    }
    pitchArray = pitches.clone();
    this.pitches = new PitchNodes(pitchArray);
    double[] v = PairGrid.speeds();
    double[] s = PairGrid.shims();
    speeds = new Spacing(Math.log(v[0]), Math.log(v[v.length - 1]), v.length);
    shims = new Spacing(s[0], s[s.length - 1], s.length);
    block = FUNCTIONS * pitches.length + OTHERS;
    if (values.length != v.length * s.length * block) {
      throw new IllegalArgumentException(
          "a pair's table of "
              + pitches.length
              + " pitches has "
              + v.length * s.length * block
              + " values, was "
              + values.length);
    }
    for (float value : values) {
      if (!Float.isFinite(value)) {
        throw new IllegalArgumentException("values of a pair's table must be finite");
      }
    }
    this.values = values.clone();
  }

  /**
   * Solves and tabulates.
   *
   * @param craft whose wings, fuselage, immersion and water count; its shim is left out
   * @return the table
   */
  public static PairTable of(Craft craft) {
    return new PairBuilder(craft).build();
  }

  /** Pitches of the nodes [rad]; a copy. */
  public double[] pitches() {
    return pitchArray.clone();
  }

  /**
   * All values; a copy. For each speed, and within it for each shim, both rising: upward force over
   * dynamic pressure at each pitch [m²], forward force likewise [m²], moment about the datum nose
   * up likewise [m³], then the pitch at which the first strip of either wing stalls nose up [rad],
   * then that below which one is stalled nose down [rad].
   */
  public float[] values() {
    return values.clone();
  }

  /** What it takes in memory without its frame, and as an entry of a store [byte]. */
  public int bytes() {
    return Float.BYTES * values.length + Double.BYTES * pitchArray.length;
  }

  /** Least speed [m/s]. */
  public static double slowest() {
    return PairGrid.SLOWEST;
  }

  /** Largest speed [m/s]. */
  public static double fastest() {
    return PairGrid.FASTEST;
  }

  /** Largest shim either way [rad]. */
  public static double mostShim() {
    return PairGrid.MOST_SHIM;
  }

  /** Version of the nodes and of how they are filled; for whoever keeps tables. */
  public static int version() {
    return PairGrid.VERSION;
  }

  /**
   * The loads at one speed with one shim.
   *
   * @param speed [m/s], from {@link #slowest} to {@link #fastest}
   * @param shim leading edge up positive [rad], up to {@link #mostShim} either way
   * @return loads over pitch
   * @throws IllegalArgumentException if either lies outside
   */
  public PairLoads at(double speed, double shim) {
    if (!(speed >= PairGrid.SLOWEST && speed <= PairGrid.FASTEST)) {
      throw new IllegalArgumentException(
          "speed must be within "
              + PairGrid.SLOWEST
              + " to "
              + PairGrid.FASTEST
              + " m/s, was "
              + speed
              + " m/s");
    }
    if (!(Math.abs(shim) <= PairGrid.MOST_SHIM)) {
      throw new IllegalArgumentException(
          "shim must be within " + PairGrid.MOST_SHIM + " rad either way, was " + shim + " rad");
    }
    double[] atSpeed = new double[4];
    double[] atShim = new double[4];
    int v = speeds.weights(Math.log(speed), atSpeed);
    int s = shims.weights(shim, atShim);
    double[] row = new double[block];
    for (int i = 0; i < 4; i++) {
      for (int j = 0; j < 4; j++) {
        double weight = atSpeed[i] * atShim[j];
        if (weight != 0) {
          add(weight, ((v + i) * shims.count() + s + j) * block, row);
        }
      }
    }
    return new PairLoads(pitches, row);
  }

  private void add(double weight, int from, double[] row) {
    for (int k = 0; k < row.length; k++) {
      row[k] += weight * values[from + k];
    }
  }
}
