package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.read.StlReader;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.kernel.wedge.Solid;
import trimwright.kernel.wedge.SolidCheck;
import trimwright.seed.RunSeed;

/** Whatever may be asked for comes out as a body, in the numbers of the file. */
class ShimStudyPropertyTest {
  private static final double MM = 1e-3;

  /**
   * Heights in the file are rounded to a few millionths of a millimetre over at least 10 mm [rad].
   */
  private static final double ANGLE_IN_FILE = 1e-6;

  /** The whole range of every option, ends included. */
  @Provide
  static Arbitrary<ShimQuestion> questions() {
    return Combinators.combine(
            between(-ShimQuestion.LARGEST_DEGREES, ShimQuestion.LARGEST_DEGREES)
                .filter(degrees -> Math.abs(degrees) >= ShimQuestion.SMALLEST_DEGREES),
            between(ShimQuestion.SMALLEST_BOLT_MM, ShimQuestion.LARGEST_BOLT_MM),
            between(ShimQuestion.SMALLEST_THIN_END_MM, ShimQuestion.LARGEST_THIN_END_MM),
            between(0, 1),
            between(0, 1),
            between(0, 1))
        .as(
            (degrees, bolt, thinEnd, spacing, length, width) -> {
              double hole = bolt + ShimQuestion.PLAY_MM;
              double apart =
                  between(
                      Math.max(ShimQuestion.SMALLEST_SPACING_MM, hole + ShimQuestion.WALL_MM),
                      ShimQuestion.LARGEST_SPACING_MM,
                      spacing);
              double around = hole + 2 * ShimQuestion.WALL_MM;
              return question(
                  degrees,
                  bolt,
                  apart,
                  between(apart + around, ShimQuestion.LARGEST_LENGTH_MM, length),
                  between(around, ShimQuestion.LARGEST_WIDTH_MM, width),
                  thinEnd);
            });
  }

  private static Arbitrary<Double> between(double low, double high) {
    return Arbitraries.doubles().between(low, high).ofScale(6);
  }

  private static double between(double low, double high, double part) {
    return low + (high - low) * part;
  }

  private static ShimQuestion question(
      double degrees, double bolt, double apart, double length, double width, double thinEnd) {
    double angle = Math.toRadians(degrees);
    return new ShimQuestion(
        angle,
        bolt * MM,
        OptionalDouble.empty(),
        List.of(Mounting.values()),
        new ShimWedge(
            Math.abs(angle),
            apart * MM,
            (bolt + ShimQuestion.PLAY_MM) * MM,
            length * MM,
            width * MM,
            thinEnd * MM));
  }

  @Property(tries = 400, seed = RunSeed.VALUE)
  void theFileHoldsTheBody(@ForAll("questions") ShimQuestion question) {
    ShimStudy study = ShimStudy.of(question);
    Solid body = StlReader.read(study.stl());
    SolidCheck check = SolidCheck.of(body);
    assertThat(check).isEqualTo(study.table().check());
    assertThat(check.isSolid()).isTrue();
    assertThat(check.holes()).isEqualTo(2);
    ShimWedge wedge = question.wedge();
    double circles = 2 * Math.PI * (wedge.cornerRadius() + wedge.holeDiameter());
    assertThat(check.volume())
        .isCloseTo(
            wedge.volume(),
            within(circles * ShimWedge.CHORD_ERROR * wedge.thickness(0) + 1e-4 * wedge.volume()));
    assertThat(tilt(body)).isCloseTo(wedge.angle(), within(ANGLE_IN_FILE));
  }

  /** The upper face's slope from its lowest to its highest corner along the length [rad]. */
  private static double tilt(Solid body) {
    double[] thin = null;
    double[] thick = null;
    for (int i = 0; i < body.cornerCount(); i++) {
      double[] at = body.corner(i);
      if (at[2] > 1.0001 * MM) { // The face on the fuselage lies at 1 mm
        thin = thin == null || at[0] < thin[0] ? at : thin;
        thick = thick == null || at[0] > thick[0] ? at : thick;
      }
    }
    return Math.atan2(thick[2] - thin[2], thick[0] - thin[0]);
  }

  @Example
  void aQuestionKnowsOneAngleAndASide() {
    ShimWedge wedge = new ShimWedge(0.02, 0.06, 0.0065, 0.0795, 0.0195, 8e-4);
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new ShimQuestion(
                    0.03, 0.006, OptionalDouble.empty(), List.of(Mounting.ABOVE), wedge))
        .withMessageContaining("angle");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ShimQuestion(-0.02, 0.006, OptionalDouble.empty(), List.of(), wedge))
        .withMessageContaining("side");
  }

  @Example
  void theDigestKnowsWhatWasAsked() {
    ShimStudy one = ShimStudy.of(question(1, 6, 60, 80, 20, 0.8));
    assertThat(ShimStudy.of(question(1, 6, 60, 80, 20, 0.8)).table().digest())
        .isEqualTo(one.table().digest());
    assertThat(ShimStudy.of(question(-1, 6, 60, 80, 20, 0.8)).table().digest())
        .isNotEqualTo(one.table().digest());
  }
}
