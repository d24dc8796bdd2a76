package trimwright.kernel.surface;

/** Loads of a set of wings, sections and all. */
@FunctionalInterface
public interface Loads {

  /**
   * The loads at one speed.
   *
   * @param speed [m/s], above 0
   * @return loads over pitch
   */
  SpeedLoads at(double speed);
}
