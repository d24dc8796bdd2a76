package trimwright.kernel.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.water.ChopSpectrum;
import trimwright.kernel.water.ChopWave;

/** Works out a {@link ChopAnswer}. */
final class ChopStudy {
  /** Waves that stand for the sea; twice as many change the sums by less than 1 %. */
  private static final int COUNT = 24;

  /** Amplitude at which the pushes of a wave are read [m]. */
  private static final double SMALL = 1e-4;

  private ChopStudy() {}

  /**
   * The answer to the case's own chop, from ahead.
   *
   * @return empty on flat water
   */
  static Optional<ChopAnswer> find(MotionModel model, MotionTrim trim, SmallMotion small) {
    double height = model.craft().rideCase().chopHeight();
    if (!(height > 0)) {
      return Optional.empty();
    }
    List<ChopWave> waves = ChopSpectrum.of(height).components(COUNT, 0);
    List<ChopAnswer.WaveAnswer> answers = new ArrayList<>();
    double[] squares = new double[5];
    for (ChopWave wave : waves) {
      Optional<ChopAnswer.WaveAnswer> found =
          answer(model, trim, small, wave.frequency(), wave.wavenumber());
      if (found.isEmpty()) {
        continue;
      }
      ChopAnswer.WaveAnswer a = found.get();
      answers.add(a);
      double energy = 0.5 * wave.amplitude() * wave.amplitude();
      squares[0] += energy * square(a.footCorrection());
      squares[1] += energy * square(a.pitch()) * a.encounter() / (2 * Math.PI);
      squares[2] += energy * square(a.pitch());
      squares[3] += energy * square(a.rise());
      squares[4] += energy * square(a.acceleration());
    }
    return Optional.of(
        new ChopAnswer(
            height,
            Math.sqrt(squares[0]),
            squares[1] / squares[2],
            Math.sqrt(squares[2]),
            Math.sqrt(squares[3]),
            Math.sqrt(squares[4]),
            answers));
  }

  /** The answer to one wave. */
  static Optional<ChopAnswer.WaveAnswer> answer(
      MotionModel model, MotionTrim trim, SmallMotion small, double frequency, double wavenumber) {
    double chord = model.craft().rideCase().setup().frontWing().shape().meanChord();
    double encounter = frequency + wavenumber * trim.speed();
    double[] press = small.press();
    Optional<double[][]> passive = swing(model, trim, small, frequency, wavenumber, chord);
    Optional<double[][]> pressed = small.motion().swing(press, new double[press.length], encounter);
    if (passive.isEmpty() || pressed.isEmpty()) {
      return Optional.empty();
    }
    Craft craft = model.craft();
    Deck deck = craft.deck();
    double ahead =
        deck.footingAhead(trim.pitch())
            + trim.footPressure() * Math.cos(trim.pitch() + deck.baseAngle());
    double pitch = size(passive.get(), CraftMotion.PITCH);
    double rise = size(passive.get(), CraftMotion.DEPTH);
    double[][] x = passive.get();
    double up =
        encounter
            * encounter
            * Math.hypot(
                -x[0][CraftMotion.DEPTH] + ahead * x[0][CraftMotion.PITCH],
                -x[1][CraftMotion.DEPTH] + ahead * x[1][CraftMotion.PITCH]);
    double hold = pitch / size(pressed.get(), CraftMotion.PITCH);
    return Optional.of(
        new ChopAnswer.WaveAnswer(
            2 * Math.PI / Math.abs(wavenumber), Math.abs(encounter), pitch, rise, up, hold));
  }

  /** The states' swing per metre of a wave's amplitude: real parts, then imaginary ones. */
  static Optional<double[][]> swing(
      MotionModel model,
      MotionTrim trim,
      SmallMotion small,
      double frequency,
      double wavenumber,
      double chord) {
    double[][] parts = new double[2][];
    // What is there at phase 0 is the real part, what is there a quarter of a swing earlier the
    // imaginary one.
    for (int part = 0; part < 2; part++) {
      ChopWave wave = new ChopWave(SMALL, frequency, wavenumber, part == 0 ? 0 : -0.5 * Math.PI);
      parts[part] = push(model, trim, new Chop(List.of(wave), chord));
    }
    return small.motion().swing(parts[0], parts[1], frequency + wavenumber * trim.speed());
  }

  private static double size(double[][] x, int state) {
    return Math.hypot(x[0][state], x[1][state]);
  }

  private static double square(double x) {
    return x * x;
  }

  /** Rates that a water in motion gives a trim, per metre of its amplitude, at time 0. */
  private static double[] push(MotionModel model, MotionTrim trim, WaterMotion water) {
    CraftMotion moving = new CraftMotion(model, trim, model.held(trim), water, false);
    CraftMotion still = new CraftMotion(model, trim, model.held(trim), WaterMotion.STILL, false);
    double[] state = moving.start();
    double[] with = new double[state.length];
    double[] without = new double[state.length];
    moving.rates(0, 0, state, with);
    still.rates(0, 0, state, without);
    for (int i = 0; i < with.length; i++) {
      with[i] = (with[i] - without[i]) / SMALL;
    }
    return with;
  }
}
