package trimwright.kernel.water;

/**
 * One small wave on deep water (G. B. Airy's linear theory; H. Lamb, Hydrodynamics, 6th ed. 1932,
 * art. 229, from memory): frequency² = gravity times wavenumber, water that goes round in circles
 * whose radius falls as exp(-wavenumber depth). For waves much lower than they are long, on water
 * deeper than half their length, and longer than some 5 cm, below which surface tension counts.
 *
 * <p>Axes: x forward along the craft's path over still water, up positive, depth positive below the
 * still surface. The wave is as high as amplitude times cos(frequency time + wavenumber x + phase):
 * with a positive wavenumber it runs against the craft, with a negative one along with it.
 *
 * @param amplitude half its height [m]
 * @param frequency seen from still water [rad/s]
 * @param wavenumber 2 pi over its length, positive against the craft [rad/m]
 * @param phase at x = 0 and time 0 [rad]
 */
public record ChopWave(double amplitude, double frequency, double wavenumber, double phase) {

  /**
   * A wave against the craft.
   *
   * @param amplitude half its height [m]
   * @param frequency seen from still water [rad/s]
   * @param phase at x = 0 and time 0 [rad]
   * @param gravity [m/s²]
   */
  public static ChopWave against(double amplitude, double frequency, double phase, double gravity) {
    return new ChopWave(amplitude, frequency, frequency * frequency / gravity, phase);
  }

  /** The same wave running the other way. */
  public ChopWave reversed() {
    return new ChopWave(amplitude, frequency, -wavenumber, phase);
  }

  /**
   * Frequency at which a craft meets it; below 0 where the craft overtakes it.
   *
   * @param speed of the craft [m/s]
   * @return [rad/s]
   */
  public double encounterFrequency(double speed) {
    return frequency + wavenumber * speed;
  }

  /**
   * Phase at a place and time.
   *
   * @param time [s]
   * @param x forward of where the phase was taken [m]
   * @return [rad], not reduced to a turn
   */
  public double phaseAt(double time, double x) {
    return frequency * time + wavenumber * x + phase;
  }

  /**
   * The surface above still water.
   *
   * @param phaseNow {@link #phaseAt} [rad]
   * @return [m]
   */
  public double height(double phaseNow) {
    return amplitude * Math.cos(phaseNow);
  }

  /**
   * The water's velocity upward.
   *
   * @param depth below the still surface [m]; above it the velocity is that at it
   * @param phaseNow {@link #phaseAt} [rad]
   * @return [m/s]
   */
  public double vertical(double depth, double phaseNow) {
    return -orbital(depth) * Math.sin(phaseNow);
  }

  /**
   * The water's velocity forward along the craft's path: backward under the crest of a wave that
   * runs against it.
   *
   * @param depth below the still surface [m]; above it the velocity is that at it
   * @param phaseNow {@link #phaseAt} [rad]
   * @return [m/s]
   */
  public double along(double depth, double phaseNow) {
    return -Math.signum(wavenumber) * orbital(depth) * Math.cos(phaseNow);
  }

  /**
   * Speed of the water on its circle.
   *
   * @param depth below the still surface [m]; above it the speed is that at it
   * @return [m/s]
   */
  public double orbital(double depth) {
    return amplitude * frequency * Math.exp(-Math.abs(wavenumber) * Math.max(0, depth));
  }
}
