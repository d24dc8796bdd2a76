package trimwright.kernel.motion;

import java.util.List;
import trimwright.kernel.water.ChopWave;

/**
 * Waves that meet a craft. A wing feels less of a wave that is not much longer than its chord: the
 * orbital velocities count with the size of Sears's function, near 1 / sqrt(1 + 2 pi k), k half the
 * chord times the wavenumber (H. W. Liepmann, Journal of the Aeronautical Sciences 19, 1952, from
 * memory); its lag is left out. Immutable; may be shared between threads.
 */
public final class Chop implements WaterMotion {
  private final ChopWave[] waves;
  private final double[] felt;

  /**
   * Waves.
   *
   * @param waves on deep water
   * @param chord mean chord of the front wing [m]
   */
  public Chop(List<ChopWave> waves, double chord) {
    this.waves = waves.toArray(new ChopWave[0]);
    felt = new double[this.waves.length];
    for (int i = 0; i < felt.length; i++) {
      double k = 0.5 * chord * Math.abs(this.waves[i].wavenumber());
      felt[i] = 1 / Math.sqrt(1 + 2 * Math.PI * k);
    }
  }

  /** The waves. */
  public List<ChopWave> waves() {
    return List.of(waves);
  }

  @Override
  public double height(double place, double time) {
    double sum = 0;
    for (ChopWave wave : waves) {
      sum += wave.height(wave.phaseAt(time, place));
    }
    return sum;
  }

  @Override
  public double upward(double place, double depth, double time) {
    double sum = 0;
    for (int i = 0; i < waves.length; i++) {
      sum += felt[i] * waves[i].vertical(depth, waves[i].phaseAt(time, place));
    }
    return sum;
  }

  @Override
  public double forward(double place, double depth, double time) {
    double sum = 0;
    for (int i = 0; i < waves.length; i++) {
      sum += felt[i] * waves[i].along(depth, waves[i].phaseAt(time, place));
    }
    return sum;
  }
}
