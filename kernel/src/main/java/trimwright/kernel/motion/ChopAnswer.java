package trimwright.kernel.motion;

import java.util.List;

/**
 * How a case answers to chop at one speed while its rider keeps upright and holds only what grows
 * slowly: linear, each wave by itself. Quasi-steady, so that what the shortest waves do is rather
 * too much than too little.
 *
 * @param height significant height of the chop [m]
 * @param footCorrection root mean square of how far the foot pressure would have to move to hold
 *     the pitch still [m]
 * @param frequency mean frequency at which the chop is met, by the pitch's energy [Hz]
 * @param pitch root mean square of the pitch where nobody corrects [rad]
 * @param rise root mean square of the craft's own rise and fall [m]
 * @param acceleration root mean square of the deck's upward acceleration under the feet [m/s²]
 * @param waves answer per metre of each wave's amplitude, the longest wave first
 */
public record ChopAnswer(
    double height,
    double footCorrection,
    double frequency,
    double pitch,
    double rise,
    double acceleration,
    List<WaveAnswer> waves) {
  /**
   * Highest frequency of what feet follow [Hz]: there an answer a quarter of a second late comes a
   * quarter of a swing late.
   */
  public static final double FOLLOWED = 1;

  /** Copies the list. */
  public ChopAnswer {
    waves = List.copyOf(waves);
  }

  /**
   * The answer to one wave, per metre of amplitude.
   *
   * @param length of the wave [m]
   * @param encounter frequency at which it is met [rad/s]
   * @param pitch [rad/m]
   * @param rise [1]
   * @param acceleration upward under the feet [1/s²]
   * @param footCorrection that holds the pitch still [1]
   */
  public record WaveAnswer(
      double length,
      double encounter,
      double pitch,
      double rise,
      double acceleration,
      double footCorrection) {}
}
