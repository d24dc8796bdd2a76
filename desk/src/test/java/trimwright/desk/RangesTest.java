package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.desk.RangeProblem.Bound;
import trimwright.exchange.unit.Unit;
import trimwright.seed.RunSeed;

class RangesTest {
  /** Decimal steps are not exact in binary; far below anything that is printed. */
  private static final double ROUNDING = 1e-12;

  @Test
  void countsBothEnds() {
    assertThat(SpeedRange.kmh(10, 40, 1).list()).hasSize(31);
    assertThat(SpeedRange.kmh(10, 11, 0.1).list()).hasSize(11);
    assertThat(AngleRange.degrees(-4, 16, 1).list()).hasSize(21);
  }

  @Test
  void stopsBeforeAnEndThatNoStepMeets() {
    assertThat(SpeedRange.kmh(10, 12, 0.75).list())
        .hasSize(3)
        .last()
        .satisfies(v -> assertThat(Unit.KILOMETRE_PER_HOUR.fromSi(v)).isEqualTo(11.5));
  }

  @Test
  void givesSiValues() {
    assertThat(SpeedRange.kmh(36, 36, 5).list()).containsExactly(10.0);
    assertThat(SpeedRange.of(10, 12, 1).list()).containsExactly(10.0, 11.0, 12.0);
    assertThat(AngleRange.degrees(0, 45, 45).list().get(1)).isEqualTo(Math.PI / 4);
    assertThat(SpeedRange.oneKmh(18)).isEqualTo(5.0);
  }

  @Test
  void namesTheBoundAndTheUnit() {
    assertProblem(
        () -> SpeedRange.kmh(0, 40, 1), Bound.FROM, "must be from 1 to 100 km/h, was 0 km/h");
    assertProblem(
        () -> SpeedRange.kmh(10, 120, 1), Bound.TO, "must be from 1 to 100 km/h, was 120 km/h");
    assertProblem(
        () -> SpeedRange.kmh(20, 10, 1),
        Bound.TO,
        "must not be below the lower end 20 km/h, was 10 km/h");
    assertProblem(() -> SpeedRange.kmh(10, 40, 0), Bound.STEP, "must be above 0 km/h, was 0 km/h");
    assertProblem(
        () -> SpeedRange.kmh(10, 40, -1), Bound.STEP, "must be above 0 km/h, was -1 km/h");
    assertProblem(
        () -> AngleRange.degrees(-46, 0, 1),
        Bound.FROM,
        "must be from -45 to 45 degrees, was -46 degrees");
    assertProblem(
        () -> SpeedRange.kmh(Double.NaN, 40, 1),
        Bound.FROM,
        "must be from 1 to 100 km/h, was NaN km/h");
    assertProblem(
        () -> SpeedRange.kmh(10, 40, Double.POSITIVE_INFINITY),
        Bound.STEP,
        "must be above 0 km/h, was Infinity km/h");
  }

  @Test
  void refusesMoreThanTwoThousandValues() {
    assertThat(SpeedRange.kmh(10, 29.99, 0.01).list()).hasSize(2000);
    assertProblem(
        () -> SpeedRange.kmh(10, 30, 0.01),
        Bound.STEP,
        "gives more than 2000 values between 10 km/h and 30 km/h; take a larger step, was 0.01 km/h");
    assertProblem(
        () -> SpeedRange.kmh(10, 40, Double.MIN_VALUE),
        Bound.STEP,
        "gives more than 2000 values between 10 km/h and 40 km/h; take a larger step, was 4.9E-324"
            + " km/h");
  }

  @Property(seed = RunSeed.VALUE)
  void valuesRiseEvenlyAndStayInside(
      @ForAll @DoubleRange(min = 1, max = 100) double one,
      @ForAll @DoubleRange(min = 1, max = 100) double other,
      @ForAll @DoubleRange(min = 0.05, max = 50) double step) {
    double from = Math.min(one, other);
    double to = Math.max(one, other);
    var list = SpeedRange.kmh(from, to, step).list();
    double stepSi = Unit.KILOMETRE_PER_HOUR.toSi(step);
    assertThat(list.get(0)).isEqualTo(Unit.KILOMETRE_PER_HOUR.toSi(from));
    // The last value may overshoot by the slack that lets decimal steps meet the end.
    assertThat(list.get(list.size() - 1))
        .isLessThanOrEqualTo(Unit.KILOMETRE_PER_HOUR.toSi(to) + 1e-5 * stepSi);
    IntStream.range(1, list.size())
        .forEach(
            i -> assertThat(list.get(i) - list.get(i - 1)).isCloseTo(stepSi, within(ROUNDING)));
  }

  private static void assertProblem(Runnable task, Bound bound, String message) {
    assertThatThrownBy(task::run)
        .isInstanceOfSatisfying(
            RangeProblem.class, problem -> assertThat(problem.bound()).isEqualTo(bound))
        .hasMessage(message);
  }
}
