package trimwright.reference.topic;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import trimwright.kernel.motion.Chop;
import trimwright.kernel.motion.EllipticPlate;
import trimwright.kernel.motion.Mode;
import trimwright.kernel.numeric.LinearMotion;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.water.ChopWave;

/** Small motions: eigenvalues, answers of an oscillator, water that goes along with a plate. */
public final class MotionChecks {
  /** Times between rest and the answer that is asked for. */
  private static final int STEPS = 100;

  private MotionChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    return Map.of(
        "rate of a mode", c -> mode(c).growth(),
        "frequency of a mode", c -> mode(c).frequency(),
        "period of a mode", c -> mode(c).period().orElseThrow(),
        "time to half of a mode", c -> mode(c).timeToHalf().orElseThrow(),
        "answer of an oscillator to a step", MotionChecks::answer,
        "swing of an oscillator", MotionChecks::swing,
        "added mass of a plate over its strips",
            c -> EllipticPlate.shareOfStrips(c.number("aspect_ratio")),
        "added mass of a disc", MotionChecks::disc,
        "share of a gust that a wing feels", MotionChecks::gust);
  }

  /**
   * The slow or the quick mode of a motion of two, from its matrix or the polynomial whose roots
   * its eigenvalues are.
   */
  private static Mode mode(Conditions c) {
    double[][] rates = c.has("polynomial") ? companion(c) : matrix(c);
    double[][] values = new LinearMotion(rates).eigenvalues();
    // Ordered by growth; of each pair the one with positive frequency comes first.
    double[] value = values[c.text("mode").equals("slow") ? 0 : values.length - 2];
    return new Mode(value[0], value[1], Mode.Mainly.PITCH);
  }

  private static double[][] matrix(Conditions c) {
    int n = row(c, "row_1").length;
    double[][] rates = new double[n][];
    for (int i = 0; i < n; i++) {
      rates[i] = row(c, "row_" + (i + 1));
    }
    return rates;
  }

  /** The companion matrix of a polynomial, its highest power's coefficient first and 1. */
  private static double[][] companion(Conditions c) {
    double[] coefficient = row(c, "polynomial");
    int n = coefficient.length - 1;
    double[][] rates = new double[n][n];
    for (int i = 0; i < n; i++) {
      rates[0][i] = -coefficient[i + 1] / coefficient[0];
      if (i > 0) {
        rates[i][i - 1] = 1;
      }
    }
    return rates;
  }

  private static double[] row(Conditions c, String name) {
    return Arrays.stream(c.text(name).split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  /** Of one whose deflection at rest under the step is 1. */
  private static double answer(Conditions c) {
    double time = c.number("time_s");
    double[] push = {0, square(c.number("frequency_rad_s"))};
    double[] end = new double[1];
    oscillator(c)
        .fromRest(
            push,
            time / STEPS,
            STEPS,
            (now, state) -> {
              end[0] = state[0];
              return true;
            });
    return end[0];
  }

  /** Size of its swing over its deflection under the same push at rest. */
  private static double swing(Conditions c) {
    double[] push = {0, square(c.number("frequency_rad_s"))};
    double[][] swing =
        oscillator(c).swing(push, new double[2], c.number("push_rad_s")).orElseThrow();
    return Math.hypot(swing[0][0], swing[1][0]);
  }

  private static LinearMotion oscillator(Conditions c) {
    double frequency = c.number("frequency_rad_s");
    double damping = c.number("damping_ratio");
    return new LinearMotion(
        new double[][] {{0, 1}, {-square(frequency), -2 * damping * frequency}});
  }

  /** Per density: strips of a circle hold pi chord² / 4, in all 4/3 pi radius³. */
  private static double disc(Conditions c) {
    double radius = c.number("radius_m");
    double strips = 4.0 / 3 * Math.PI * radius * radius * radius;
    return strips * EllipticPlate.shareOfStrips(4 / Math.PI);
  }

  /** Of a wave's upward velocity, at the surface and a quarter after its crest. */
  private static double gust(Conditions c) {
    double frequency = Math.sqrt(Craft.GRAVITY * c.number("wavenumber_rad_m"));
    ChopWave wave = ChopWave.against(1, frequency, Math.PI / 2, Craft.GRAVITY);
    return new Chop(List.of(wave), c.number("chord_m")).upward(0, 0, 0)
        / wave.vertical(0, wave.phase());
  }

  private static double square(double x) {
    return x * x;
  }
}
