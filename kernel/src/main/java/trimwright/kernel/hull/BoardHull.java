package trimwright.kernel.hull;

import trimwright.kernel.numeric.GaussLegendre;

/**
 * A board as a body of which length, width, thickness and volume are known: a family with one
 * parameter, so that the volume comes out. Plan form and section are the same power curve,
 *
 * <pre>  half width / (width/2) = 1 - |2x/length - 1|^n  times  1 - |2z/thickness - 1|^n
 *   volume = length width thickness (n/(n+1))²</pre>
 *
 * alike at bow and stern and at bottom and deck, its bottom flat, without rocker. Boards of today
 * lie near n = 5.6. Chosen: no drawing of a board was in hand.
 *
 * <p><b>Range.</b> Fullness (volume over the box) from 0.3 to 0.95. Where the four numbers give
 * another, the thickness that counts is the one at the end of that range with which the volume
 * comes out ({@link #thickness}), and {@link #contradictory} says so.
 *
 * <p>Places are ahead of the stern along the bottom, and above the bottom square to it. Immutable;
 * may be shared between threads.
 */
public final class BoardHull {
  private static final double LEAST_FULLNESS = 0.3;
  private static final double MOST_FULLNESS = 0.95;

  /** Nodes between kinks: volumes within 2e-4; a test holds them there. */
  private static final GaussLegendre RULE = GaussLegendre.of(12);

  /** Parts of the table of powers: within 1e-9 for boards as they are, 2e-4 for the emptiest. */
  private static final int PARTS = 256;

  private final double[] powers = new double[PARTS + 1];
  private final double[] slopes = new double[PARTS + 1];
  private final double length;
  private final double width;
  private final double thickness;
  private final double volume;
  private final double exponent;
  private final boolean contradictory;

  /**
   * A board.
   *
   * @param length [m]
   * @param width largest [m]
   * @param thickness largest [m]
   * @param volume [m³]
   * @throws IllegalArgumentException if one of them is not above 0
   */
  public BoardHull(double length, double width, double thickness, double volume) {
    if (!(length > 0 && width > 0 && thickness > 0 && volume > 0)) {
      throw new IllegalArgumentException(
          "length, width, thickness and volume of a board must be above 0, were "
              + length
              + " m, "
              + width
              + " m, "
              + thickness
              + " m, "
              + volume
              + " m³");
    }
    double box = length * width;
    double given = volume / (box * thickness);
    double fullness = Math.max(LEAST_FULLNESS, Math.min(MOST_FULLNESS, given));
    contradictory = fullness != given;
    this.length = length;
    this.width = width;
    this.thickness = contradictory ? volume / (box * fullness) : thickness;
    this.volume = volume;
    double root = Math.sqrt(fullness);
    exponent = root / (1 - root);
    for (int i = 0; i <= PARTS; i++) {
      double t = (double) i / PARTS;
      powers[i] = Math.pow(t, exponent);
      // Over one part
      slopes[i] = exponent * Math.pow(t, exponent - 1) / PARTS;
    }
  }

  /** A share to the power of the exponent: cubics between tabulated values and slopes. */
  double power(double t) {
    double at = t * PARTS;
    int i = Math.min(PARTS - 1, (int) at);
    double s = at - i;
    double rise = powers[i + 1] - powers[i];
    double first = slopes[i] - rise;
    double last = rise - slopes[i + 1];
    return powers[i] + s * (rise + (1 - s) * (first * (1 - s) + last * s));
  }

  /** Length [m]. */
  public double length() {
    return length;
  }

  /** Thickness with which the volume comes out [m]. */
  public double thickness() {
    return thickness;
  }

  /** Volume [m³]. */
  public double volume() {
    return volume;
  }

  /** Exponent n of plan form and section [1]. */
  public double exponent() {
    return exponent;
  }

  /** Whether the volume fits no board of this family with the thickness given. */
  public boolean contradictory() {
    return contradictory;
  }

  /** Mean width of the plan form [m]: the beam that planes. */
  public double beam() {
    return width * exponent / (exponent + 1);
  }

  /**
   * What is under water.
   *
   * @param trim bottom against the horizontal, bow up positive, 0 to about 0.5 [rad]
   * @param sternDepth of the bottom's end at the stern below the still surface [m]
   * @return the part under water
   */
  public Hydrostatics under(double trim, double sternDepth) {
    double sin = Math.sin(trim);
    double cos = Math.cos(trim);
    Sum sum = new Sum(sin, cos, sternDepth);
    double dry = reach(sternDepth, sin);
    double awash = reach(sternDepth - thickness * cos, sin);
    sum.over(0, awash);
    sum.over(awash, dry);
    return sum.result();
  }

  /** How far ahead of the stern a point is that starts so deep and rises with the trim [m]. */
  private double reach(double depth, double sin) {
    if (depth <= 0) {
      return 0;
    }
    return depth >= length * sin ? length : depth / sin;
  }

  private final class Sum {
    private final double sin;
    private final double cos;
    private final double sternDepth;
    private double displaced;
    private double ahead;
    private double above;
    private double plane;
    private double planeMoment;
    private double planeInertia;
    private double sides;

    Sum(double sin, double cos, double sternDepth) {
      this.sin = sin;
      this.cos = cos;
      this.sternDepth = sternDepth;
    }

    void over(double from, double to) {
      if (!(to > from)) {
        return;
      }
      for (int i = 0; i < RULE.size(); i++) {
        double x = RULE.node(i, from, to);
        double dx = RULE.weight(i, from, to);
        double wide = width * (1 - power(Math.abs(2 * x / length - 1)));
        double high = Math.max(0, Math.min(thickness, (sternDepth - x * sin) / cos));
        double u = 2 * high / thickness - 1;
        double power = power(Math.abs(u));
        double half = 0.5 * thickness;
        double odd = (u * power + 1) / (exponent + 1);
        double area = wide * half * (u + 1 - odd);
        double first =
            wide
                * half
                * half
                * (0.5 * (u * u - 1) + u + 1 - (u * u * power - 1) / (exponent + 2) - odd);
        displaced += dx * area;
        ahead += dx * area * x;
        above += dx * first;
        sides += dx * 2 * high;
        double across = wide * (1 - power) / cos;
        double level = x * cos - high * sin;
        plane += dx * across;
        planeMoment += dx * across * level;
        planeInertia += dx * across * level * level;
      }
    }

    Hydrostatics result() {
      if (!(displaced > 0)) {
        return new Hydrostatics(0, 0, 0, 0, 0, 0, 0);
      }
      double centre = plane > 0 ? planeMoment / plane : 0;
      return new Hydrostatics(
          displaced,
          ahead / displaced,
          above / displaced,
          plane,
          centre,
          Math.max(0, planeInertia - plane * centre * centre),
          sides);
    }
  }
}
