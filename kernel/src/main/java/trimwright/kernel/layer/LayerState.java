package trimwright.kernel.layer;

/**
 * A boundary layer at one station, in the variables that the equations are solved in; a work
 * record. Lengths in chords, speeds in onset speeds.
 */
final class LayerState {
  /** Position of the logarithm of the momentum thickness among the unknowns. */
  static final int MOMENTUM = 0;

  /** Position of the shape factor. */
  static final int SHAPE = 1;

  /** Position of the entrainment coefficient. */
  static final int ENTRAINMENT = 2;

  /** Position of the logarithm of the edge speed. */
  static final int SPEED = 3;

  /** Number of unknowns of the equations. */
  static final int COUNT = 4;

  /** Position of the progress towards transition, 0 to 1, which follows from the others. */
  static final int PROGRESS = 4;

  /** Number of values handed downstream. */
  static final int CARRIED = 5;

  final double[] y = new double[CARRIED];

  void copyFrom(LayerState other) {
    System.arraycopy(other.y, 0, y, 0, CARRIED);
  }

  /** Edge speed times displacement thickness. */
  double massDefect() {
    return Math.exp(y[SPEED] + y[MOMENTUM]) * y[SHAPE];
  }

  /** Natural logarithm of Reθ. */
  double logReynolds(double logUnitReynolds) {
    return logUnitReynolds + y[SPEED] + y[MOMENTUM];
  }
}
