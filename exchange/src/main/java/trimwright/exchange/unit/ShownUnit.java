package trimwright.exchange.unit;

/**
 * The unit in which a person reads a quantity, and the way to it from the unit in which the files
 * and the wire carry it.
 *
 * @param symbol of the unit shown
 * @param factor shown units per carried unit, for a difference [1]
 * @param offset what is added after the factor, in the unit shown; 0 for all but temperatures
 * @param decimals that a plain value is shown with
 */
public record ShownUnit(String symbol, double factor, double offset, int decimals) {

  /**
   * A value as shown.
   *
   * @param carried in the unit that is carried
   * @return the same in the unit shown
   */
  public double shown(double carried) {
    return carried * factor + offset;
  }

  /**
   * A value as carried.
   *
   * @param shown in the unit shown
   * @return the same in the unit that is carried
   */
  public double carried(double shown) {
    return (shown - offset) / factor;
  }
}
