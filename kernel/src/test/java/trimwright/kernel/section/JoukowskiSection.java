package trimwright.kernel.section;

/**
 * The exact flow about a Joukowski section, from the map z + 1/z of a circle through z = 1 with its
 * centre at (-eccentricity, k): the yardstick for the panel method. Sources: Katz and Plotkin,
 * Low-Speed Aerodynamics (2nd edition 2001), section 6.5; Anderson, Fundamentals of Aerodynamics.
 * Own arithmetic on pairs of real numbers.
 */
final class JoukowskiSection {
  private final double centreX;
  private final double centreY;
  private final double radius;

  /**
   * Angle on the circle, below the centre's level, of the point that becomes the trailing edge;
   * also the angle of no lift.
   */
  private final double beta;

  private final double noseAngle;
  private final double[] edge;
  private final double[] nose;

  JoukowskiSection(double eccentricity, double beta) {
    this.beta = beta;
    centreX = -eccentricity;
    centreY = (1 + eccentricity) * Math.tan(beta);
    radius = Math.hypot(1 - centreX, centreY);
    edge = map(0);
    noseAngle = furthestAngle();
    nose = map(noseAngle);
  }

  /**
   * Point of the section at an angle round the circle from the trailing edge, counter-clockwise.
   */
  private double[] map(double angle) {
    double zx = centreX + radius * Math.cos(angle - beta);
    double zy = centreY + radius * Math.sin(angle - beta);
    double square = zx * zx + zy * zy;
    return new double[] {zx + zx / square, zy - zy / square};
  }

  private double furthestAngle() {
    double a = 2;
    double b = 4.3;
    for (int i = 0; i < 200; i++) {
      double c = a + (b - a) / 3;
      double d = b - (b - a) / 3;
      if (fromEdge(c) > fromEdge(d)) {
        b = d;
      } else {
        a = c;
      }
    }
    return 0.5 * (a + b);
  }

  private double fromEdge(double angle) {
    double[] p = map(angle);
    return Math.hypot(p[0] - edge[0], p[1] - edge[1]);
  }

  /** In the radius of the map, whose unit is the distance b of the textbooks. */
  double chord() {
    return Math.hypot(edge[0] - nose[0], edge[1] - nose[1]);
  }

  /** Angle of the chord line against the map's real axis, trailing edge up positive. */
  private double chordAngle() {
    return Math.atan2(edge[1] - nose[1], edge[0] - nose[0]);
  }

  /** Angle of attack of no lift, from the chord line [rad]. */
  double zeroLiftAngle() {
    return -beta - chordAngle();
  }

  /** Lift coefficient over the sine of the angle from zero lift: 8 π radius over chord. */
  double liftSlope() {
    return 8 * Math.PI * radius / chord();
  }

  /** A point in chords: nose at (0, 0), trailing edge at (1, 0). */
  double[] point(double angle) {
    double[] p = map(angle);
    double cos = (edge[0] - nose[0]) / (chord() * chord());
    double sin = (edge[1] - nose[1]) / (chord() * chord());
    double dx = p[0] - nose[0];
    double dy = p[1] - nose[1];
    return new double[] {dx * cos + dy * sin, dy * cos - dx * sin};
  }

  /**
   * Angle round the circle of the point of a surface at a distance x behind the nose; bisection.
   */
  private double angleAt(double x, boolean upper) {
    double a = upper ? 0 : 2 * Math.PI;
    double b = noseAngle;
    for (int i = 0; i < 80; i++) {
      double middle = 0.5 * (a + b);
      if (point(middle)[0] > x) {
        a = middle;
      } else {
        b = middle;
      }
    }
    return 0.5 * (a + b);
  }

  /** Angles round the circle of the points of {@link #shape}, in its order. */
  double[] angles(int panelsPerSide) {
    int n = panelsPerSide;
    double[] angles = new double[2 * n + 1];
    angles[2 * n] = 2 * Math.PI;
    angles[n] = noseAngle;
    for (int k = 1; k < n; k++) {
      double x = 0.5 * (1 - Math.cos(Math.PI * k / n));
      angles[n - k] = angleAt(x, true);
      angles[n + k] = angleAt(x, false);
    }
    return angles;
  }

  SectionShape shape(int panelsPerSide) {
    double[] angles = angles(panelsPerSide);
    double[] x = new double[angles.length];
    double[] y = new double[angles.length];
    for (int i = 0; i < angles.length; i++) {
      double[] p = point(angles[i]);
      x[i] = p[0];
      y[i] = p[1];
    }
    return new SectionShape(x, y);
  }

  /**
   * Speed on the surface at an angle round the circle and an angle of attack from the chord line.
   */
  double speed(double angle, double angleOfAttack) {
    double alpha = angleOfAttack + chordAngle();
    double place = angle - beta;
    // On the circle 2 (sin(place - alpha) + sin(alpha + beta)); over the derivative of the map, |1
    // - 1/z²|.
    double onCircle = 2 * (Math.sin(place - alpha) + Math.sin(alpha + beta));
    double zx = centreX + radius * Math.cos(place);
    double zy = centreY + radius * Math.sin(place);
    double square = (zx * zx + zy * zy) * (zx * zx + zy * zy);
    double real = 1 - (zx * zx - zy * zy) / square;
    double imaginary = 2 * zx * zy / square;
    return Math.abs(onCircle) / Math.hypot(real, imaginary);
  }

  /**
   * Moment coefficient about the quarter chord, nose up positive, by adding up the exact pressures
   * on a fine outline.
   */
  double quarterChordMoment(double angleOfAttack) {
    int steps = 200000;
    double sum = 0;
    double[] before = point(0);
    for (int i = 1; i <= steps; i++) {
      double[] after = point(2 * Math.PI * i / steps);
      double speed = speed(2 * Math.PI * (i - 0.5) / steps, angleOfAttack);
      double dx = after[0] - before[0];
      double dy = after[1] - before[1];
      double lever = 0.5 * (after[0] + before[0]) - 0.25;
      double height = 0.5 * (after[1] + before[1]);
      // Suction speed² pulls outward, along (dy, -dx).
      sum += speed * speed * (lever * dx + height * dy);
      before = after;
    }
    return sum;
  }
}
