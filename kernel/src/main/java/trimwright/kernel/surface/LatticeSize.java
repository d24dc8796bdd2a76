package trimwright.kernel.surface;

/**
 * How finely one wing is divided.
 *
 * @param stripsPerHalf strips along each half span, narrowing towards the tip
 * @param panelsAlongChord panels along each strip
 * @param even whether all strips are equally wide instead of narrowing towards the tip; converges
 *     slowly, for comparison with published lattices
 */
public record LatticeSize(int stripsPerHalf, int panelsAlongChord, boolean even) {
  /** What {@code wing} and the checks use: converged to 0.2 % of lift on ordinary planforms. */
  public static final LatticeSize FINE = new LatticeSize(40, 4);

  /** The front wing in the standard coupled lattice; with {@link #STABILIZER} 48 unknowns. */
  public static final LatticeSize FRONT_WING = new LatticeSize(16, 2);

  /** The stabilizer in the standard coupled lattice. */
  public static final LatticeSize STABILIZER = new LatticeSize(8, 2);

  /**
   * Strips that narrow towards the tip.
   *
   * @param stripsPerHalf strips along each half span
   * @param panelsAlongChord panels along each strip
   */
  public LatticeSize(int stripsPerHalf, int panelsAlongChord) {
    this(stripsPerHalf, panelsAlongChord, false);
  }

  /**
   * Checks the counts.
   *
   * @throws IllegalArgumentException if a count is below 1
   */
  public LatticeSize {
    if (stripsPerHalf < 1 || panelsAlongChord < 1) {
      throw new IllegalArgumentException(
          "a lattice needs at least 1 strip and 1 panel, was "
              + stripsPerHalf
              + " and "
              + panelsAlongChord);
    }
  }

  /** Panels on one half of the wing. */
  public int panels() {
    return stripsPerHalf * panelsAlongChord;
  }
}
