package trimwright.fitting.wish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.seed.RunSeed;

class WishesTest {
  @Test
  void aGradeIsNothingInsideAndOneWherePoor() {
    Grade grade = new Grade(2, 5, 3);
    assertThat(grade.shortfall(2)).isZero();
    assertThat(grade.shortfall(5)).isZero();
    assertThat(grade.shortfall(8)).isEqualTo(1);
    assertThat(grade.shortfall(-1)).isEqualTo(1);
    assertThat(Grade.upTo(5, 3).shortfall(-100)).isZero();
    assertThat(Grade.from(5, 3).shortfall(100)).isZero();
    assertThatThrownBy(() -> new Grade(3, 2, 1)).hasMessageContaining("3.0 to 2.0");
    assertThatThrownBy(() -> Grade.upTo(1, 0)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> new Grade(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Property(seed = RunSeed.VALUE)
  void aGradeIsConvex(
      @ForAll @DoubleRange(min = -20, max = 20) double a,
      @ForAll @DoubleRange(min = -20, max = 20) double b) {
    // Placing the feet by halving rests on it.
    Grade grade = new Grade(-1, 4, 2.5);
    assertThat(grade.shortfall(0.5 * (a + b)))
        .isLessThanOrEqualTo(0.5 * (grade.shortfall(a) + grade.shortfall(b)) + 1e-12);
  }

  @Test
  void everyKindOfRidingGradesEveryWish() {
    for (RidingKind kind : RidingKind.values()) {
      Wishes wishes = Wishes.of(kind);
      assertThat(wishes.weight()).isPositive();
      for (Wish wish : Wish.values()) {
        assertThat(wishes.grade(wish)).isNotNull();
        assertThat(wishes.weight(wish)).isBetween(0, Wishes.MOST_WEIGHT);
      }
    }
  }

  @Test
  void theWholeIsTheMeanByWeightsAndAMissingValueCountsAsMet() {
    Wishes wishes = Wishes.of(RidingKind.LINKING);
    Grade level = wishes.grade(Wish.LEVEL);
    WishValues values = WishValues.none().with(Wish.LEVEL, level.to() + 2 * level.poor());
    assertThat(wishes.shortfall(WishValues.none())).isZero();
    assertThat(wishes.shortfall(values))
        .isCloseTo(2.0 * wishes.weight(Wish.LEVEL) / wishes.weight(), within(1e-12));
    Wishes without = wishes.weighing(Wish.LEVEL, 0);
    assertThat(without.shortfall(values)).isZero();
    assertThat(without.weight()).isEqualTo(wishes.weight() - wishes.weight(Wish.LEVEL));
    assertThatThrownBy(() -> wishes.weighing(Wish.LEVEL, 5)).hasMessageContaining("0 to 4");
  }

  @Test
  void aFurtherValueNeverLowersTheWhole() {
    // The search for the best rests on it: manners come last.
    Wishes wishes = Wishes.of(RidingKind.CARVING);
    WishValues values = WishValues.none().with(Wish.LEVEL, 0.1).with(Wish.FEET, 0.2);
    for (double rate = 0; rate < 0.2; rate += 0.01) {
      assertThat(wishes.shortfall(values.with(Wish.MANNERS, rate)))
          .isGreaterThanOrEqualTo(wishes.shortfall(values));
    }
  }

  @Test
  void valuesAreAsManyAsWishes() {
    assertThatThrownBy(() -> WishValues.of(new double[3])).hasMessageContaining("were 3");
    WishValues values = WishValues.none();
    assertThat(values.has(Wish.FEET)).isFalse();
    assertThat(values.with(Wish.FEET, 0.1).has(Wish.FEET)).isTrue();
    assertThat(values.has(Wish.FEET)).isFalse();
  }
}
