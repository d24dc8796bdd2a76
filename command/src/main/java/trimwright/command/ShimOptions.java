package trimwright.command;

import java.util.List;
import java.util.OptionalDouble;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trimwright.desk.ShimQuestion;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.wedge.ShimWedge;

/** The sizes of a wedge. */
final class ShimOptions {
  private static final String ANGLE = "--angle-deg";
  private static final String SPACING = "--bolt-spacing-mm";
  private static final String DIAMETER = "--bolt-diameter-mm";
  private static final String BOLT_LENGTH = "--bolt-length-mm";
  private static final String LENGTH = "--length-mm";
  private static final String WIDTH = "--width-mm";
  private static final String THIN_END = "--least-thickness-mm";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = ANGLE,
      paramLabel = "DEGREES",
      required = true,
      converter = Numbers.Decimal.class,
      description =
          "How far the stabilizer's leading edge goes up, negative for down: 0.1 to 6 degrees either"
              + " way. Needed.")
  private double angle;

  @Option(
      names = SPACING,
      paramLabel = "MM",
      required = true,
      converter = Numbers.Decimal.class,
      description =
          "From the middle of one bolt to the middle of the other, on the fuselage, 10 to 200 mm."
              + " Needed.")
  private double spacing;

  @Option(
      names = "--mounted",
      paramLabel = "SIDE",
      converter = MountingConverter.class,
      description =
          "Side of the fuselage the stabilizer is bolted to, above or below (default: says it for"
              + " both).")
  private Mounting mounted;

  @Option(
      names = DIAMETER,
      paramLabel = "MM",
      defaultValue = "6",
      converter = Numbers.Decimal.class,
      description =
          "Diameter of the bolts, 2 to 12 mm; the holes are 0.5 mm wider (default:"
              + " ${DEFAULT-VALUE}).")
  private double diameter;

  @Option(
      names = BOLT_LENGTH,
      paramLabel = "MM",
      converter = Numbers.Decimal.class,
      description =
          "Length of the bolts that hold without a shim, 5 to 150 mm: says how long the new ones"
              + " are (default: says only how much longer).")
  private Double boltLength;

  @Option(
      names = LENGTH,
      paramLabel = "MM",
      converter = Numbers.Decimal.class,
      description =
          "Length of the wedge, to 300 mm (default: the bolts' spacing and three holes' width).")
  private Double length;

  @Option(
      names = WIDTH,
      paramLabel = "MM",
      converter = Numbers.Decimal.class,
      description = "Width of the wedge, to 120 mm (default: three holes' width).")
  private Double width;

  @Option(
      names = THIN_END,
      paramLabel = "MM",
      defaultValue = "0.8",
      converter = Numbers.Decimal.class,
      description =
          "Thickness at the tip of the thin end, 0.4 to 10 mm (default: ${DEFAULT-VALUE}).")
  private double thinEnd;

  /**
   * The wedge that is asked for.
   *
   * @throws ParameterException if an option is bad; it speaks of each bad one
   */
  ShimQuestion question() {
    new OptionChecks(spec)
        .check(this::checkAngle)
        .check(
            () ->
                within(
                    SPACING,
                    spacing,
                    ShimQuestion.SMALLEST_SPACING_MM,
                    ShimQuestion.LARGEST_SPACING_MM,
                    ""))
        .check(
            () ->
                within(
                    DIAMETER,
                    diameter,
                    ShimQuestion.SMALLEST_BOLT_MM,
                    ShimQuestion.LARGEST_BOLT_MM,
                    ""))
        .check(
            () ->
                within(
                    THIN_END,
                    thinEnd,
                    ShimQuestion.SMALLEST_THIN_END_MM,
                    ShimQuestion.LARGEST_THIN_END_MM,
                    ""))
        .check(this::checkBoltLength)
        .finish();
    double hole = diameter + ShimQuestion.PLAY_MM;
    double wall = ShimQuestion.WALL_MM;
    double lengthMm = length == null ? spacing + ShimQuestion.HOLES_ACROSS * hole : length;
    double widthMm = width == null ? ShimQuestion.HOLES_ACROSS * hole : width;
    String bolts = " for bolts of " + Numbers.text(diameter) + " mm";
    String apart = bolts + ", " + Numbers.text(spacing) + " mm apart";
    new OptionChecks(spec)
        .check(() -> within(SPACING, spacing, hole + wall, ShimQuestion.LARGEST_SPACING_MM, bolts))
        .check(
            () ->
                within(
                    LENGTH,
                    lengthMm,
                    spacing + hole + 2 * wall,
                    ShimQuestion.LARGEST_LENGTH_MM,
                    apart))
        .check(() -> within(WIDTH, widthMm, hole + 2 * wall, ShimQuestion.LARGEST_WIDTH_MM, bolts))
        .finish();
    return new ShimQuestion(
        Unit.DEGREE.toSi(angle),
        metres(diameter),
        boltLength == null ? OptionalDouble.empty() : OptionalDouble.of(metres(boltLength)),
        mounted == null ? List.of(Mounting.values()) : List.of(mounted),
        new ShimWedge(
            Math.abs(Unit.DEGREE.toSi(angle)),
            metres(spacing),
            metres(hole),
            metres(lengthMm),
            metres(widthMm),
            metres(thinEnd)));
  }

  private static double metres(double millimetres) {
    return Unit.MILLIMETRE.toSi(millimetres);
  }

  private void checkAngle() {
    double size = Math.abs(angle);
    if (size < ShimQuestion.SMALLEST_DEGREES || size > ShimQuestion.LARGEST_DEGREES) {
      throw usage(
          ANGLE
              + " must be from "
              + Numbers.text(ShimQuestion.SMALLEST_DEGREES)
              + " to "
              + Numbers.text(ShimQuestion.LARGEST_DEGREES)
              + " degrees, or the same below zero, was "
              + Numbers.text(angle)
              + " degrees.");
    }
  }

  private void checkBoltLength() {
    if (boltLength != null) {
      within(
          BOLT_LENGTH,
          boltLength,
          ShimQuestion.SMALLEST_BOLT_LENGTH_MM,
          ShimQuestion.LARGEST_BOLT_LENGTH_MM,
          "");
    }
  }

  private void within(String option, double value, double lowest, double highest, String why) {
    if (value < lowest || value > highest) {
      throw usage(
          option
              + " must be from "
              + Numbers.text(lowest)
              + " to "
              + Numbers.text(highest)
              + " mm"
              + why
              + ", was "
              + Numbers.text(value)
              + " mm.");
    }
  }

  private ParameterException usage(String words) {
    return new ParameterException(spec.commandLine(), words);
  }
}
