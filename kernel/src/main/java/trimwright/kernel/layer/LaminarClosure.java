package trimwright.kernel.layer;

import trimwright.kernel.numeric.CubicSpline;

/**
 * What a laminar layer's shape factor says about the rest of its profile, from the similar flows of
 * Falkner and Skan, u ∝ x^m, on both branches: attached from strong acceleration to separation, and
 * with reversed flow beyond.
 *
 * <p>The rows were worked out for this table by solving f''' + f f'' + β (1 - f'²) = 0 with f(0) =
 * f'(0) = 0 and f' to 1 as a boundary value problem in which the displacement thickness is given
 * and β is the unknown, so that the fold at separation is nothing special; a test solves some of
 * them again. All columns run against the shape factor H = displacement over momentum thickness,
 * which rises along both branches. Between the rows a natural spline over ln H is within 3e-4.
 *
 * <p>Source of the flows: Falkner and Skan (1931); Stewartson (1954) for the reversed branch.
 */
final class LaminarClosure {
  /** Shape factor where the wall's shear vanishes [1]. */
  static final double SEPARATION = 4.029;

  /** Shape factor at a stagnation point, β = 1 [1]. */
  static final double STAGNATION = 2.2162;

  /** Pressure gradient parameter θ²/ν du/ds at a stagnation point [1]. */
  static final double STAGNATION_GRADIENT = 0.08545;

  /** Pressure gradient parameter at separation, the lowest there is [1]. */
  static final double SEPARATION_GRADIENT = -0.06815;

  /**
   * Per row: H; energy over momentum thickness; Reθ cf/2; Reθ times the dissipation over ρu³; the
   * pressure gradient parameter θ²/ν du/ds.
   */
  private static final double[][] SIMILAR = {
    {2.127651, 1.643150, 0.403396, 0.222930, 0.117104},
    {2.216280, 1.625739, 0.360318, 0.208409, 0.085450},
    {2.323625, 1.607451, 0.313953, 0.194673, 0.054199},
    {2.458109, 1.588234, 0.263444, 0.182090, 0.023417},
    {2.576873, 1.574118, 0.224816, 0.174183, 0.002225},
    {2.710782, 1.560863, 0.186984, 0.167887, -0.016447},
    {2.859879, 1.548872, 0.150918, 0.163215, -0.032172},
    {3.024420, 1.538438, 0.117305, 0.160011, -0.044809},
    {3.204854, 1.529771, 0.086588, 0.158020, -0.054428},
    {3.401804, 1.523021, 0.059006, 0.156948, -0.061243},
    {3.616052, 1.518292, 0.034641, 0.156495, -0.065559},
    {3.848525, 1.515657, 0.013453, 0.156386, -0.067722},
    {4.100284, 1.515168, -0.004681, 0.156382, -0.068092},
    {4.468037, 1.517919, -0.024434, 0.156216, -0.066396},
    {4.875361, 1.524616, -0.039624, 0.155566, -0.062883},
    {5.325793, 1.535307, -0.050834, 0.154230, -0.058196},
    {5.823241, 1.550036, -0.058655, 0.152111, -0.052853},
    {6.371983, 1.568844, -0.063652, 0.149200, -0.047255},
    {6.976671, 1.591778, -0.066345, 0.145542, -0.041697},
    {7.642325, 1.618890, -0.067199, 0.141225, -0.036383},
    {8.374344, 1.650238, -0.066621, 0.136359, -0.031444},
    {9.178494, 1.685890, -0.064961, 0.131063, -0.026954},
    {10.060919, 1.725917, -0.062511, 0.125453, -0.022943},
    {11.028128, 1.770401, -0.059514, 0.119643, -0.019413},
    {12.086996, 1.819428, -0.056165, 0.113733, -0.016342},
    {13.244756, 1.873090, -0.052620, 0.107811, -0.013699},
    {14.508991, 1.931484, -0.049002, 0.101949, -0.011442},
    {15.887626, 1.994711, -0.045402, 0.096210, -0.009529},
    {17.388914, 2.062874, -0.041890, 0.090639, -0.007918},
    {19.021423, 2.136080, -0.038514, 0.085273, -0.006567},
    {19.889646, 2.174607, -0.036888, 0.082675, -0.005978},
  };

  private static final CubicSpline ENERGY = column(1);
  private static final CubicSpline SHEAR = column(2);
  private static final CubicSpline DISSIPATION = column(3);
  private static final CubicSpline GRADIENT = column(4);

  private LaminarClosure() {}

  private static CubicSpline column(int column) {
    double[] at = new double[SIMILAR.length];
    double[] value = new double[SIMILAR.length];
    for (int i = 0; i < at.length; i++) {
      at[i] = Math.log(SIMILAR[i][0]);
      value[i] = column == 1 ? Math.log(SIMILAR[i][1]) : SIMILAR[i][column];
    }
    return CubicSpline.natural(at, value);
  }

  /** Momentum-thickness Reynolds number times half the friction coefficient [1]. */
  static double shear(double shape) {
    return SHEAR.value(Math.log(shape));
  }

  /** Pressure gradient parameter θ²/ν du/ds [1] of the similar flow. */
  static double gradient(double shape) {
    return GRADIENT.value(Math.log(shape));
  }

  /** Energy over momentum thickness [1]. */
  static double energyShape(double shape) {
    return Math.exp(ENERGY.value(Math.log(shape)));
  }

  /** Reθ times dissipation [1]. */
  static double dissipation(double shape) {
    return DISSIPATION.value(Math.log(shape));
  }

  /**
   * What the equations need, with derivatives by the shape factor.
   *
   * @param shape shape factor [1]
   * @param out receives the shear, the logarithm of the energy shape factor and the energy
   *     equation's source 2 Reθ D / H* - Reθ cf/2
   */
  static void evaluate(double shape, ClosureValues out) {
    double x = Math.log(shape);
    double t = SHEAR.value(x);
    double tx = SHEAR.slope(x);
    double s = ENERGY.value(x);
    double sx = ENERGY.slope(x);
    double d = DISSIPATION.value(x);
    double dx = DISSIPATION.slope(x);
    double per = 2 * Math.exp(-s);
    out.laminarShear = t;
    out.laminarShearByShape = tx / shape;
    out.logEnergy = s;
    out.logEnergyByShape = sx / shape;
    out.energySource = per * d - t;
    out.energySourceByShape = (per * (dx - d * sx) - tx) / shape;
  }
}
