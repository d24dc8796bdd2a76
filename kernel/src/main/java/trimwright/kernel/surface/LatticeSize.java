package trimwright.kernel.surface;

/**
 * How finely one wing is divided.
 *
 * @param stripsPerHalf strips along each half span, narrowing towards the tip
 * @param panelsAlongChord panels along each strip
 */
public record LatticeSize(int stripsPerHalf, int panelsAlongChord) {
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
