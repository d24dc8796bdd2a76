package trimwright.kernel.wedge;

/**
 * Sizes of a wedge between fuselage and stabilizer. Seen from above it is a rectangle whose shorter
 * sides are rounded to half circles, with one hole per bolt on its long axis, in equal distance
 * from the middle.
 *
 * <p>The bolts stand in the fuselage's thread, so that their spacing is measured on the fuselage's
 * seat and the holes are square to the face that lies there. The other face, on which the
 * stabilizer lies, is tilted by the angle about an axis across the length; each bolt crosses the
 * thickness at its own place, and the two thicknesses differ by spacing x tan(angle).
 *
 * @param angle between the faces, above 0 and below a half right angle [rad]
 * @param boltSpacing between the bolts' axes, on the fuselage's face [m]
 * @param holeDiameter of each bolt's hole [m]
 * @param length of the outline, in the direction of the bolts [m]
 * @param width of the outline [m]
 * @param leastThickness at the outermost point of the thin end, above 0 [m]
 */
public record ShimWedge(
    double angle,
    double boltSpacing,
    double holeDiameter,
    double length,
    double width,
    double leastThickness) {
  /** How far a chord may lie inside its circle: a tenth of what printers resolve [m]. Chosen. */
  public static final double CHORD_ERROR = 1e-5;

  /**
   * Checks that such a body exists.
   *
   * @throws IllegalArgumentException if a size is not above 0, the angle reaches a half right angle
   *     (45 degrees), or the holes meet each other or the outline
   */
  public ShimWedge {
    requirePositive("angle", "rad", angle);
    requirePositive("bolt spacing", "m", boltSpacing);
    requirePositive("hole diameter", "m", holeDiameter);
    requirePositive("length", "m", length);
    requirePositive("width", "m", width);
    requirePositive("least thickness", "m", leastThickness);
    if (angle >= Math.PI / 4) {
      throw new IllegalArgumentException("angle must be below pi/4 rad, was " + angle + " rad");
    }
    if (holeDiameter >= boltSpacing) {
      throw new IllegalArgumentException(
          "hole diameter must be below the bolt spacing of "
              + boltSpacing
              + " m, was "
              + holeDiameter
              + " m");
    }
    if (wall(boltSpacing, holeDiameter, length, width) <= 0) {
      throw new IllegalArgumentException(
          "holes of " + holeDiameter + " m must lie inside " + length + " m by " + width + " m");
    }
  }

  private static void requirePositive(String name, String unit, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw new IllegalArgumentException(
          name + " must be above 0 " + unit + " and finite, was " + value + " " + unit);
    }
  }

  /**
   * Least material between a hole's edge and the outline [m]; below 0 where the hole cuts it.
   *
   * @param boltSpacing between the bolts' axes [m]
   * @param holeDiameter of each hole [m]
   * @param length of the outline [m]
   * @param width of the outline [m]
   */
  public static double wall(double boltSpacing, double holeDiameter, double length, double width) {
    // The rounded corners come no nearer than the middle of an end: hole and half circle, where
    // it reaches so far, share the long axis
    return Math.min(width, length - boltSpacing) / 2 - holeDiameter / 2;
  }

  /**
   * Thickness at a place, square to the fuselage's face, as a bolt there crosses it.
   *
   * @param x from the middle between the bolts towards the thick end [m]
   * @return thickness [m]
   */
  public double thickness(double x) {
    return leastThickness + (length / 2 + x) * Math.tan(angle);
  }

  /** Thickness at the outermost point of the thick end [m]. */
  public double greatestThickness() {
    return thickness(length / 2);
  }

  /** Thickness at the axis of the bolt nearer to the thin end [m]. */
  public double thinBoltThickness() {
    return thickness(-boltSpacing / 2);
  }

  /** Thickness at the axis of the bolt nearer to the thick end [m]. */
  public double thickBoltThickness() {
    return thickness(boltSpacing / 2);
  }

  /** Radius of the outline's rounded corners: half the shorter side [m]. */
  public double cornerRadius() {
    return Math.min(length, width) / 2;
  }

  /**
   * Volume with true circles [m³]: the outline less two holes, times the thickness in the middle,
   * which is the mean one as the outline is the same both ways.
   */
  public double volume() {
    double corner = cornerRadius();
    double outline = length * width - (4 - Math.PI) * corner * corner;
    double hole = Math.PI * holeDiameter * holeDiameter / 4;
    return (outline - 2 * hole) * thickness(0);
  }

  /**
   * The body's surface by triangles, circles as chords at most {@link #CHORD_ERROR} off.
   *
   * @return a closed surface, counter-clockwise seen from outside
   */
  public Solid solid() {
    return new WedgeSurface(this).solid();
  }
}
