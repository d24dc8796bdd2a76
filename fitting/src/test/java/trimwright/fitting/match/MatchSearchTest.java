package trimwright.fitting.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import trimwright.fitting.judge.FullJudge;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.trim.SurfaceTables;

class MatchSearchTest {
  private static final Workers ONE = new Workers(1, false);

  private static MatchSearch search(RideAsked asked, Workers workers, Progress progress) {
    Screen screen =
        new Screen(
            ExampleStock.space(ExampleStock.stock()),
            new QuickJudge(asked),
            ExampleStock.TEMPERATURE,
            ExampleStock.TABLES);
    return new MatchSearch(
        screen,
        SurfaceTables.ANEW,
        setup -> Envelope.Ratings.NONE,
        ExampleStock.TEMPERATURE,
        workers,
        progress);
  }

  private static MatchResult find(RideAsked asked, MatchSearch.Size size) {
    return search(asked, ONE, Progress.NONE)
        .find(size, Wish.TAKE_OFF, Wish.RANGE, List.of(), Set.of());
  }

  private static String pair(Candidate c) {
    return c.foil().frontWing().id() + c.foil().stabilizer().id();
  }

  @Test
  void theBestShownIsTheBestOfAllSolvedInFull() {
    RideAsked asked = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    MatchResult few = find(asked, new MatchSearch.Size(2, 40));
    // Six pairs of wings under four board sets: all that could be shown.
    MatchResult all = find(asked, new MatchSearch.Size(6, 100));
    assertThat(few.sure()).isTrue();
    assertThat(few.looked()).isLessThanOrEqualTo(all.looked());
    for (int i = 0; i < few.rows().size(); i++) {
      assertThat(few.rows().get(i).shortfall())
          .isCloseTo(all.rows().get(i).shortfall(), within(1e-12));
      assertThat(pair(few.rows().get(i).candidate()))
          .isEqualTo(pair(all.rows().get(i).candidate()));
    }
    Set<String> pairs = new HashSet<>();
    double before = 0;
    for (MatchRow row : all.rows()) {
      assertThat(pairs.add(pair(row.candidate()))).isTrue();
      assertThat(row.shortfall()).isGreaterThanOrEqualTo(before);
      before = row.shortfall();
      for (int other : row.ties()) {
        assertThat(all.rows().get(other).ties()).contains(all.rows().indexOf(row));
      }
      assertThat(row.rank()).isBetween(1, all.rows().size());
    }
  }

  @Test
  void whatIsRecommendedBreaksNoLimitForSomeRandomRiders() {
    recommend(0, 4);
  }

  @Test
  @Tag("long")
  void whatIsRecommendedBreaksNoLimitForManyRandomRiders() {
    recommend(100, 1100);
  }

  private static void recommend(int from, int to) {
    int rows = 0;
    for (int seed = from; seed < to; seed++) {
      SplittableRandom chance = new SplittableRandom(seed);
      RidingKind[] kinds = {RidingKind.LINKING, RidingKind.CARVING, RidingKind.SURF};
      RideAsked asked =
          ExampleStock.asked(
              ExampleStock.rider(45 + 70 * chance.nextDouble(), 18 + 16 * chance.nextDouble()),
              kinds[chance.nextInt(kinds.length)]);
      MatchResult result = find(asked, new MatchSearch.Size(2, 4));
      for (MatchRow row : result.rows()) {
        rows++;
        Candidate c = row.candidate();
        Judged again =
            new FullJudge(asked, SurfaceTables.ANEW)
                .whole(
                    asked.on(c.setup().setup(ExampleStock.TEMPERATURE), c.placement().feet()),
                    Envelope.Ratings.NONE,
                    () -> false);
        assertThat(again.grounds()).isEmpty();
        assertThat(asked.wishes().shortfall(again.values()))
            .isCloseTo(row.shortfall(), within(1e-12));
        // Tables know no manners; what else they miss is small beside any rank.
        assertThat(c.placement().shortfall()).isLessThan(row.shortfall() + 0.03);
      }
    }
    assertThat(rows).isPositive();
  }

  @Test
  void heavierAndLighterAreWorkedOutAndTheWorstIsNoBetterThanTheMean() {
    RideAsked asked = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    List<Variation> variations = new ArrayList<>();
    for (double mass : new double[] {72, 92}) {
      variations.add(
          new Variation(
              "at " + mass,
              asked.of(asked.base().withRider(ExampleStock.rider(mass, 25))),
              ExampleStock.TEMPERATURE));
    }
    MatchRow row =
        search(asked, new Workers(2, false), Progress.NONE)
            .find(new MatchSearch.Size(1, 4), Wish.TAKE_OFF, Wish.RANGE, variations, Set.of())
            .rows()
            .get(0);
    assertThat(row.varied()).hasSize(2);
    assertThat(row.worst()).isGreaterThanOrEqualTo(row.mean());
    assertThat(row.worst()).isGreaterThanOrEqualTo(row.shortfall() + row.reach());
  }

  @Test
  void firstFlightsAreNotTradedForComfort() {
    RideAsked plain = ExampleStock.asked(ExampleStock.rider(82, 21), RidingKind.FIRST_FLIGHTS);
    RideAsked asked =
        new RideAsked(
            plain.base(),
            plain.span(),
            plain.wishes(),
            plain.feetReach(),
            plain.posture(),
            Optional.of(new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty())));
    MatchResult result = find(asked, new MatchSearch.Size(1, 1));
    for (MatchRow row : result.rows()) {
      assertThat(row.judged().falls()).isPresent();
    }
    for (MatchResult.Fallen fallen : result.fallen()) {
      assertThat(fallen.judged().grounds()).isNotEmpty();
    }
    assertThat(result.rows().size() + result.fallen().size()).isEqualTo(1);
    if (!result.fallen().isEmpty()) {
      assertThat(result.fallen().get(0).judged().grounds())
          .containsAnyOf(Ground.BOW_CLEAR, Ground.BREACH);
    }
  }

  @Test
  void aStoppedSearchEndsWithNothing() {
    RideAsked asked = ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);
    Progress inTheMiddle =
        new Progress() {
          private volatile boolean stopped;

          @Override
          public void at(Stage stage, int done, int all) {
            stopped = stage == Stage.CONFIRM;
          }

          @Override
          public boolean isStopped() {
            return stopped;
          }
        };
    MatchSearch search = search(asked, ONE, inTheMiddle);
    assertThatThrownBy(
            () ->
                search.find(MatchSearch.Size.USUAL, Wish.TAKE_OFF, Wish.RANGE, List.of(), Set.of()))
        .isInstanceOf(CancellationException.class);
  }
}
