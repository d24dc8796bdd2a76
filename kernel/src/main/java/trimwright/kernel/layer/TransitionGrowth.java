package trimwright.kernel.layer;

/**
 * How fast a laminar layer comes nearer to transition: a rate whose integral along the wall starts
 * at 0 and reaches 1 where turbulence begins.
 *
 * <p>Attached layers: Arnal, Habiballah and Coustols (La Recherche Aérospatiale 1984-2), from
 * memory, who fitted linear stability of similar layers: between the neutral point, where Reθ
 * passes exp(52/H - 14.8), and transition Reθ grows by -206 exp(25.7 Λ) (ln(16.8 Tu) - 2.77 Λ), Λ
 * being θ²/ν du/ds and Tu the stream's turbulence, 0.05 to 1 %. Here that growth is used step by
 * step with the Λ and the growth of Reθ of the similar layer of the same shape factor, where the
 * authors take the mean Λ up to the place in question; for similar layers both are the same.
 *
 * <p>Separated layers: the length Δs of the laminar part of a bubble by Roberts (AIAA Journal 18,
 * 1980), from memory: u Δs/ν = 25000 log10 coth(17.32 Tu). Between shape factors of 3.8 and 4.6 one
 * passes into the other. Below 0.05 % both are continued, which nobody has measured.
 */
final class TransitionGrowth {
  /** Shape factors between which the separated layer's rate takes over. */
  private static final double FROM = 3.8;

  private static final double TO = 4.6;

  /** Half width in the logarithm of Reθ over which growth sets in at the neutral point. */
  private static final double ONSET = 0.1;

  private static final double STEP = 1e-6;

  private final double logTurbulence;
  private final double bubbleReynolds;

  TransitionGrowth(Disturbance disturbance) {
    logTurbulence = Math.log(16.8 * disturbance.turbulence());
    bubbleReynolds = -25000 * Math.log10(Math.tanh(17.32 * disturbance.turbulence()));
  }

  /** Rise from 0 to 1 between -1 and 1, smooth at both ends. */
  private static double rise(double z) {
    if (z <= -1) {
      return 0;
    }
    return z >= 1 ? 1 : 0.5 + z * (0.75 - 0.25 * z * z);
  }

  /**
   * The rate times the momentum thickness.
   *
   * @param shape shape factor [1]
   * @param logReynolds natural logarithm of Reθ
   */
  double rate(double shape, double logReynolds) {
    double separated = rise((2 * shape - FROM - TO) / (TO - FROM));
    double sum = 0;
    if (separated < 1) {
      double h = Math.min(shape, TO);
      double onset = rise((logReynolds - (52 / h - 14.8)) / ONSET);
      if (onset > 0) {
        double gradient = LaminarClosure.gradient(h);
        double growth = LaminarClosure.shear(h) - (h + 1) * gradient;
        double further = -206 * Math.exp(25.7 * gradient) * (logTurbulence - 2.77 * gradient);
        sum = (1 - separated) * onset * growth / further;
      }
    }
    if (separated > 0) {
      sum += separated * Math.exp(logReynolds) / bubbleReynolds;
    }
    return sum;
  }

  /** The rate's derivative by the shape factor. */
  double byShape(double shape, double logReynolds) {
    return (rate(shape + STEP, logReynolds) - rate(shape - STEP, logReynolds)) / (2 * STEP);
  }

  /** The rate's derivative by the logarithm of Reθ. */
  double byReynolds(double shape, double logReynolds) {
    return (rate(shape, logReynolds + STEP) - rate(shape, logReynolds - STEP)) / (2 * STEP);
  }
}
