package trimwright.kernel.section;

/**
 * Mean friction coefficient of one side of a smooth flat plate, on its own wetted area, at a
 * Reynolds number on its length.
 *
 * <p>Sources: Schlichting, Boundary-Layer Theory (7th edition 1979), chapters VII and XXI; ITTC
 * 1957; Schoenherr 1932. Below a Reynolds number of 1000, where no plate is turbulent, the
 * turbulent lines keep their value of 1000, so that no speed however small gives anything but a
 * finite number.
 */
public final class SkinFriction {
  /** The turbulent lines go no lower [1]. */
  private static final double LOWEST_TURBULENT = 1e3;

  /** The laminar line goes no lower [1]; below it Blasius's layer is no longer thin. */
  private static final double LOWEST_LAMINAR = 1e2;

  private static final int SCHOENHERR_STEPS = 8;

  private SkinFriction() {}

  /**
   * Blasius, laminar: 1.328 / √Re.
   *
   * @param reynolds Reynolds number on the length [1], above 0
   * @return mean friction coefficient [1]
   */
  public static double laminar(double reynolds) {
    return 1.328 / Math.sqrt(Math.max(reynolds, LOWEST_LAMINAR));
  }

  /**
   * Prandtl and Schlichting, turbulent from the leading edge: 0.455 / (log10 Re)^2.58, stated up to
   * 1e9.
   *
   * @param reynolds Reynolds number on the length [1]
   * @return mean friction coefficient [1]
   */
  public static double turbulent(double reynolds) {
    return 0.455 / Math.pow(Math.log10(Math.max(reynolds, LOWEST_TURBULENT)), 2.58);
  }

  /**
   * ITTC 1957 ship-model correlation line: 0.075 / (log10 Re - 2)². It holds some form effect.
   *
   * @param reynolds Reynolds number on the length [1]
   * @return mean friction coefficient [1]
   */
  public static double ittc1957(double reynolds) {
    double log = Math.log10(Math.max(reynolds, LOWEST_TURBULENT)) - 2;
    return 0.075 / (log * log);
  }

  /**
   * Schoenherr's (ATTC) line: 0.242 / √C = log10(Re C), solved by Newton's method.
   *
   * @param reynolds Reynolds number on the length [1]
   * @return mean friction coefficient [1]
   */
  public static double schoenherr(double reynolds) {
    double re = Math.max(reynolds, LOWEST_TURBULENT);
    // In w = 1/√C: 0.242 w + 2 log10 w = log10 Re, smooth and rising.
    double w = 1 / Math.sqrt(turbulent(re));
    double target = Math.log10(re);
    for (int i = 0; i < SCHOENHERR_STEPS; i++) {
      double miss = 0.242 * w + 2 * Math.log10(w) - target;
      w -= miss / (0.242 + 2 / (w * Math.log(10)));
    }
    return 1 / (w * w);
  }

  /**
   * Laminar up to a transition Reynolds number and turbulent behind it (Prandtl's composite: behind
   * transition the layer is taken to be as thick as if it had been turbulent all along).
   *
   * @param reynolds Reynolds number on the length [1]
   * @param transitionReynolds Reynolds number on the distance to transition [1]; 0 or less:
   *     turbulent throughout
   * @return mean friction coefficient [1]
   */
  public static double mixed(double reynolds, double transitionReynolds) {
    if (transitionReynolds <= 0) {
      return turbulent(reynolds);
    }
    if (reynolds <= transitionReynolds) {
      return laminar(reynolds);
    }
    double part = transitionReynolds / reynolds;
    return turbulent(reynolds)
        + part * (laminar(transitionReynolds) - turbulent(transitionReynolds));
  }
}
