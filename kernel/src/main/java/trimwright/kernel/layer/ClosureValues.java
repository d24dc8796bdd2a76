package trimwright.kernel.layer;

/** Closure quantities at one station with their derivatives; a work record of the equations. */
final class ClosureValues {
  /** Number of turbulent quantities. */
  static final int COUNT = 5;

  /** Half the friction coefficient. */
  static final int FRICTION = 0;

  /** Logarithm of the entrainment shape factor. */
  static final int LOG_SHAPE = 1;

  /** Entrainment coefficient over entrainment shape factor. */
  static final int ENTRAINMENT = 2;

  /** Rate at which the entrainment follows its equilibrium. */
  static final int RATE = 3;

  /** Rate times the distance from equilibrium. */
  static final int DRIVE = 4;

  /** Laminar: Reθ cf/2. */
  double laminarShear;

  double laminarShearByShape;

  /** Laminar: logarithm of energy over momentum thickness. */
  double logEnergy;

  double logEnergyByShape;

  /** Laminar: 2 Reθ D / H* - Reθ cf/2. */
  double energySource;

  double energySourceByShape;

  /** Turbulent quantities. */
  final double[] turbulent = new double[COUNT];

  /** Their derivatives by shape factor, by logarithm of Reθ, by entrainment coefficient. */
  final double[][] slope = new double[3][COUNT];

  void copyFrom(ClosureValues other) {
    laminarShear = other.laminarShear;
    laminarShearByShape = other.laminarShearByShape;
    logEnergy = other.logEnergy;
    logEnergyByShape = other.logEnergyByShape;
    energySource = other.energySource;
    energySourceByShape = other.energySourceByShape;
    System.arraycopy(other.turbulent, 0, turbulent, 0, COUNT);
    for (int k = 0; k < slope.length; k++) {
      System.arraycopy(other.slope[k], 0, slope[k], 0, COUNT);
    }
  }
}
