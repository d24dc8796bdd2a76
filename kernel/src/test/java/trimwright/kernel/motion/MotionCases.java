package trimwright.kernel.motion;

import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;

/** Cases and motions that the tests share. */
final class MotionCases {
  static final double KMH = 1 / 3.6;

  /** Where the plain example rides. */
  static final List<Double> SPEEDS = List.of(14 * KMH, 18 * KMH, 22 * KMH, 27 * KMH, 34 * KMH);

  static final CaseSolver PLAIN = CaseSolver.of(ExampleCase.PLAIN.build());
  static final MotionModel SMALL = MotionModel.small(PLAIN);
  static final MotionModel LARGE = MotionModel.large(PLAIN);

  /** A handle that pulls in place of a drive. */
  static final CaseSolver PULLED =
      CaseSolver.of(ExampleCase.PLAIN.withoutDrive(OptionalDouble.of(1.2)).build());

  private MotionCases() {}

  static CraftMotion held(MotionModel model, MotionTrim trim, boolean free) {
    return new CraftMotion(model, trim, model.held(trim), WaterMotion.STILL, free);
  }

  static double[] rates(CraftMotion motion, double[] state) {
    double[] rates = new double[state.length];
    motion.rates(0, 0, state, rates);
    return rates;
  }
}
