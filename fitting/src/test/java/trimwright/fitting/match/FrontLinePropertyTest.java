package trimwright.fitting.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.fitting.wish.Wishes;
import trimwright.seed.RunSeed;

/** The trade-off against a look at every pair of points. */
class FrontLinePropertyTest {
  private static final Wishes WISHES = Wishes.of(RidingKind.LINKING);
  private static final SetupSpace SPACE = ExampleStock.space(ExampleStock.stock());
  private static final BoardSet UPPER = SPACE.boardSets().findFirst().orElseThrow();
  private static final FoilSet FOIL = SPACE.foilSets().findFirst().orElseThrow();

  @Property(tries = 500, seed = RunSeed.VALUE)
  void nothingOnItIsBeatenAndNothingUnbeatenIsMissing(@ForAll long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<Candidate> all = new ArrayList<>();
    FrontLine whole = new FrontLine(Wish.TAKE_OFF, Wish.RANGE, WISHES);
    FrontLine half = new FrontLine(Wish.TAKE_OFF, Wish.RANGE, WISHES);
    FrontLine rest = new FrontLine(Wish.TAKE_OFF, Wish.RANGE, WISHES);
    int count = 1 + chance.nextInt(40);
    for (int i = 0; i < count; i++) {
      WishValues values =
          WishValues.none()
              .with(Wish.TAKE_OFF, chance.nextInt(8))
              .with(Wish.RANGE, chance.nextInt(20) == 0 ? Double.NaN : chance.nextInt(8));
      Candidate candidate =
          new Candidate(
              UPPER, FOIL, new Placement(0, 0, Optional.empty(), values, chance.nextDouble()), 0);
      all.add(candidate);
      whole.take(candidate);
      (chance.nextBoolean() ? half : rest).take(candidate);
    }
    half.add(rest);
    List<String> naive =
        all.stream()
            .filter(c -> c.placement().values().has(Wish.RANGE))
            .filter(c -> all.stream().noneMatch(other -> beats(other, c)))
            .map(FrontLinePropertyTest::point)
            .distinct()
            .sorted()
            .toList();
    assertThat(whole.points().stream().map(FrontLinePropertyTest::point).sorted())
        .containsExactlyElementsOf(naive);
    assertThat(half.points().stream().map(FrontLinePropertyTest::point).sorted())
        .containsExactlyElementsOf(naive);
  }

  private static double takeOff(Candidate c) {
    return c.placement().values().of(Wish.TAKE_OFF);
  }

  private static double range(Candidate c) {
    return c.placement().values().of(Wish.RANGE);
  }

  private static boolean beats(Candidate a, Candidate b) {
    return takeOff(a) <= takeOff(b)
        && range(a) >= range(b)
        && (takeOff(a) < takeOff(b) || range(a) > range(b));
  }

  private static String point(Candidate c) {
    return takeOff(c) + " " + range(c);
  }
}
