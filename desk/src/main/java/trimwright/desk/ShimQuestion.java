package trimwright.desk;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import trimwright.exchange.read.Mounting;
import trimwright.kernel.wedge.ShimWedge;

/**
 * The wedge that somebody wants, and the bolts that go through it.
 *
 * @param angle that the stabilizer's leading edge goes up by, negative for down [rad]
 * @param boltDiameter [m]
 * @param boltLength of the bolts that hold without a shim [m], if it was told
 * @param mountings sides of the fuselage to speak of, at least one
 * @param wedge sizes; its angle is this one without the sign
 */
public record ShimQuestion(
    double angle,
    double boltDiameter,
    OptionalDouble boltLength,
    List<Mounting> mountings,
    ShimWedge wedge) {

  /** Least angle either way [degrees]: below it no shim is worth its name. Chosen. */
  public static final double SMALLEST_DEGREES = 0.1;

  /** Largest angle either way [degrees]: that of a shim in a case file. */
  public static final double LARGEST_DEGREES = 6;

  /** Bolts are at least so far apart [mm]. Chosen. */
  public static final double SMALLEST_SPACING_MM = 10;

  /** Bolts are at most so far apart [mm]: longer than a stabilizer's root chord. Chosen. */
  public static final double LARGEST_SPACING_MM = 200;

  /** Thinnest bolt [mm]. Chosen. */
  public static final double SMALLEST_BOLT_MM = 2;

  /** Thickest bolt [mm]. Chosen. */
  public static final double LARGEST_BOLT_MM = 12;

  /** Thinnest of thin ends [mm]: one thread of a usual printer. From memory. */
  public static final double SMALLEST_THIN_END_MM = 0.4;

  /** Thickest of thin ends [mm]. Chosen. */
  public static final double LARGEST_THIN_END_MM = 10;

  /** Longest outline [mm]. Chosen. */
  public static final double LARGEST_LENGTH_MM = 300;

  /** Widest outline [mm]. Chosen. */
  public static final double LARGEST_WIDTH_MM = 120;

  /** Shortest bolt [mm]. Chosen. */
  public static final double SMALLEST_BOLT_LENGTH_MM = 5;

  /** Longest bolt [mm]. Chosen. */
  public static final double LARGEST_BOLT_LENGTH_MM = 150;

  /** A hole is so much wider than its bolt [mm]: printed holes come out narrow. Chosen. */
  public static final double PLAY_MM = 0.5;

  /** Least material round a hole [mm]: some four threads of a usual printer. Chosen. */
  public static final double WALL_MM = 1.5;

  /** Outline beyond the bolts and across them, in holes: one hole's width of material. Chosen. */
  public static final double HOLES_ACROSS = 3;

  /**
   * Checks that it is one question.
   *
   * @throws IllegalArgumentException if the wedge's angle is another, or no mounting is named
   */
  public ShimQuestion {
    Objects.requireNonNull(boltLength, "boltLength");
    mountings = List.copyOf(mountings);
    if (mountings.isEmpty()) {
      throw new IllegalArgumentException("a wedge needs a side of the fuselage to go on");
    }
    if (Math.abs(angle) != wedge.angle()) {
      throw new IllegalArgumentException(
          "the wedge's angle must be " + Math.abs(angle) + " rad, was " + wedge.angle() + " rad");
    }
  }
}
