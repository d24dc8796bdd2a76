package trimwright.kernel.layer;

/**
 * Closures of the lag-entrainment method for turbulent layers and wakes.
 *
 * <p>Friction, equilibrium entrainment and the lag equation are those of Green, Weeks and Brooman
 * (RAE Technical Report 72231, 1972; R&amp;M 3791), incompressible, from memory. The relation
 * between shape factor and entrainment shape factor, which must turn round for separated layers to
 * be possible, is the one of Lock and Williams (Progress in Aerospace Sciences 24, 1987), from
 * memory: H1 = 2 + 1.5 (1.12/(H-1))^1.093 + 0.5 ((H-1)/1.12)^1.093, beyond H = 4 the straight line
 * 4 + (H-4)/3. In a wake there is no friction and the dissipation length is doubled.
 *
 * <p>Range: Reθ above about 100 (below, the friction law is held), shape factors 1.1 to about 10.
 */
final class TurbulentClosure {
  /** Green's dissipation length in a wake is twice that of a layer, its square root's factor. */
  private static final double WAKE_LENGTH = 0.5;

  private static final double LN10 = Math.log(10);

  /** Lowest decimal logarithm of Reθ at which the friction law is used. */
  private static final double LOWEST = 1.7;

  private static final double STEP = 1e-6;

  private TurbulentClosure() {}

  /** Half the friction coefficient of a flat plate [1]. */
  static double plateFriction(double logReynolds) {
    double decimal = logReynolds / LN10;
    // Eased into the lowest value without a corner.
    double above = decimal - LOWEST;
    double eased = LOWEST + 0.5 * (above + Math.sqrt(above * above + 0.01));
    return 0.5 * (0.01013 / (eased - 1.02) - 0.00075);
  }

  /** Shape factor of a flat plate [1] from half its friction coefficient. */
  static double plateShape(double halfFriction) {
    return 1 / (1 - 6.55 * Math.sqrt(halfFriction));
  }

  /** Half the friction coefficient [1]; negative in reversed flow. */
  static double friction(double shape, double halfPlate) {
    return halfPlate * (0.9 / (shape / plateShape(halfPlate) - 0.4) - 0.5);
  }

  /** Entrainment shape factor [1]. */
  static double entrainmentShape(double shape) {
    if (shape > 4) {
      return 4 + (shape - 4) / 3 - AT_FOUR;
    }
    double p = Math.pow((shape - 1) / 1.12, 1.093);
    return 2 + 1.5 / p + 0.5 * p;
  }

  /** The published straight line starts 0.02 above the curve; it is let down onto it. */
  private static final double AT_FOUR =
      4 - (2 + 1.5 * Math.pow(1.12 / 3, 1.093) + 0.5 * Math.pow(3 / 1.12, 1.093));

  /** Entrainment coefficient of a flat plate's layer [1]. */
  static double plateEntrainment(double logReynolds) {
    double half = plateFriction(logReynolds);
    return entrainmentShape(plateShape(half)) * half;
  }

  /**
   * All quantities with derivatives by differences.
   *
   * @param shape shape factor [1]
   * @param logReynolds natural logarithm of Reθ
   * @param entrainment entrainment coefficient [1]
   * @param wake whether there is no wall
   * @param out receives them
   */
  static void evaluate(
      double shape, double logReynolds, double entrainment, boolean wake, ClosureValues out) {
    values(shape, logReynolds, entrainment, wake, out.turbulent);
    differences(out, 0, shape + STEP, logReynolds, entrainment, wake);
    if (wake) {
      java.util.Arrays.fill(out.slope[1], 0);
    } else {
      differences(out, 1, shape, logReynolds + STEP, entrainment, false);
    }
    differences(out, 2, shape, logReynolds, entrainment + STEP, wake);
  }

  private static void differences(
      ClosureValues out, int by, double h, double l, double c, boolean wake) {
    double[] slope = out.slope[by];
    values(h, l, c, wake, slope);
    for (int k = 0; k < ClosureValues.COUNT; k++) {
      slope[k] = (slope[k] - out.turbulent[k]) / STEP;
    }
  }

  private static void values(
      double shape, double logReynolds, double entrainment, boolean wake, double[] out) {
    double halfPlate = wake ? 0 : plateFriction(logReynolds);
    double cf = wake ? 0 : friction(shape, halfPlate);
    double h1 = entrainmentShape(shape);
    double plate = 2 * halfPlate;
    double ce = Math.max(entrainment, -0.009);
    double stress = softened(0.024 * ce + 1.2 * ce * ce + 0.32 * plate);
    double g = (shape - 1) / (6.432 * shape);
    double gradient = 1.25 / shape * (cf - g * g);
    double equilibrium = h1 * (cf - (shape + 1) * gradient);
    double equilibriumStress =
        softened(0.024 * equilibrium + 1.2 * equilibrium * equilibrium + 0.32 * plate);
    double lambda = wake ? WAKE_LENGTH : 1;
    double rate = (0.02 * ce + ce * ce + 0.8 * plate / 3) / (0.01 + ce);
    double drive = 2.8 / (shape + h1) * (Math.sqrt(equilibriumStress) - lambda * Math.sqrt(stress));
    if (!wake) {
      drive += gradient;
    } else {
      // Secondary influence on the equilibrium: stress over the square of the length's factor.
      double raised = equilibriumStress / (lambda * lambda);
      double ceq = Math.sqrt(raised / 1.2 + 1e-4) - 0.01;
      drive += -ceq / h1 / (shape + 1);
    }
    out[ClosureValues.FRICTION] = cf;
    out[ClosureValues.LOG_SHAPE] = Math.log(h1);
    out[ClosureValues.ENTRAINMENT] = entrainment / h1;
    out[ClosureValues.RATE] = rate;
    out[ClosureValues.DRIVE] = rate * drive;
  }

  /** Kept above 0 without a corner. */
  private static double softened(double stress) {
    double e = 1e-5;
    return 0.5 * (stress + Math.sqrt(stress * stress + e * e));
  }
}
