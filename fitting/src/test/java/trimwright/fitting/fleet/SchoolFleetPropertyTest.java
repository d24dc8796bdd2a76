package trimwright.fitting.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.seed.RunSeed;

/** The fleet against every fleet there is, and what must hold of any. */
class SchoolFleetPropertyTest {
  /** Sums of some tens of marks in another order. */
  private static final double ROUNDING = 1e-9;

  private record Best(int persons, double mean) {}

  @Property(tries = 300, seed = RunSeed.VALUE)
  void noFleetIsBetter(@ForAll long seed) {
    RandomTable random = new RandomTable(seed, 3, 4);
    FitTable table = random.table(7);
    Map<String, Integer> counts = random.counts(table, 3);
    int fleet = 1 + random.random().nextInt(3);
    FleetChoice choice = SchoolFleet.choose(table, counts, fleet, Allowance.unlimited());
    Best best = enumerated(table, counts, fleet, 0, new ArrayList<>());
    assertThat(choice.served().value()).isEqualTo(best.persons());
    assertThat(choice.served().isBest()).isTrue();
    assertThat(choice.mean().value()).isCloseTo(best.mean(), within(Proven.SETTLED));
    assertThat(choice.mean().isBest()).isTrue();
  }

  /** All fleets of the sets from one on beside some. */
  private static Best enumerated(
      FitTable table, Map<String, Integer> counts, int fleet, int from, List<Integer> chosen) {
    Best best = judged(table, chosen);
    if (chosen.size() == fleet) {
      return best;
    }
    for (int set = from; set < table.hardware().size(); set++) {
      chosen.add(set);
      if (canBeBuilt(table, counts, chosen)) {
        Best with = enumerated(table, counts, fleet, set + 1, chosen);
        if (with.persons() > best.persons()
            || with.persons() == best.persons() && with.mean() < best.mean()) {
          best = with;
        }
      }
      chosen.remove(chosen.size() - 1);
    }
    return best;
  }

  private static Best judged(FitTable table, List<Integer> chosen) {
    int persons = 0;
    double sum = 0;
    for (int rider = 0; rider < table.riders().size(); rider++) {
      double least = Double.NaN;
      for (int set : chosen) {
        if (table.fits(rider, set) && !(least <= table.mark(rider, set))) {
          least = table.mark(rider, set);
        }
      }
      if (!Double.isNaN(least)) {
        persons += table.riders().get(rider).persons();
        sum += table.riders().get(rider).persons() * least;
      }
    }
    return new Best(persons, persons == 0 ? 0 : sum / persons);
  }

  private static boolean canBeBuilt(
      FitTable table, Map<String, Integer> counts, List<Integer> sets) {
    Map<String, Integer> used = new HashMap<>();
    for (int set : sets) {
      table.hardware().get(set).forEach(part -> used.merge(part, 1, Integer::sum));
    }
    return used.entrySet().stream().allMatch(e -> e.getValue() <= counts.get(e.getKey()));
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void whatIsSaidHolds(@ForAll long seed) {
    RandomTable random = new RandomTable(seed, 4, 5);
    FitTable table = random.table(15);
    Map<String, Integer> counts = random.counts(table, 3);
    int fleet = 1 + random.random().nextInt(4);
    FleetChoice choice = SchoolFleet.choose(table, counts, fleet, Allowance.unlimited());
    assertThat(choice.sets()).hasSizeLessThanOrEqualTo(fleet).doesNotHaveDuplicates();
    assertThat(canBeBuilt(table, counts, choice.sets())).isTrue();
    Best judged = judged(table, choice.sets());
    assertThat(choice.served().value()).isEqualTo(judged.persons());
    assertThat(choice.mean().value()).isCloseTo(judged.mean(), within(ROUNDING));
    for (Given given : choice.given()) {
      assertThat(choice.sets()).contains(given.set());
      assertThat(given.mark()).isEqualTo(table.mark(given.rider(), given.set()));
    }
  }

  @Property(tries = 40, seed = RunSeed.VALUE)
  void moreSetsOrPartsNeverServeFewer(@ForAll long seed) {
    RandomTable random = new RandomTable(seed, 3, 5);
    FitTable table = random.table(12);
    Map<String, Integer> counts = random.counts(table, 2);
    int fleet = 1 + random.random().nextInt(3);
    FleetChoice choice = SchoolFleet.choose(table, counts, fleet, Allowance.unlimited());
    assertNoWorse(SchoolFleet.choose(table, counts, fleet + 1, Allowance.unlimited()), choice);
    Map<String, Integer> more = new HashMap<>(counts);
    more.replaceAll((part, count) -> count + random.random().nextInt(2));
    assertNoWorse(SchoolFleet.choose(table, more, fleet, Allowance.unlimited()), choice);
  }

  private static void assertNoWorse(FleetChoice more, FleetChoice less) {
    assertThat(more.served().value()).isGreaterThanOrEqualTo(less.served().value());
    if (more.served().value() == less.served().value()) {
      assertThat(more.mean().value()).isLessThanOrEqualTo(less.mean().value() + Proven.SETTLED);
    }
  }

  /** Stopped at once or in between: the bounds still hold the best fleet. */
  @Property(tries = 100, seed = RunSeed.VALUE)
  void boundsHoldWhenStopped(@ForAll long seed) {
    RandomTable random = new RandomTable(seed, 3, 5);
    FitTable table = random.table(12);
    Map<String, Integer> counts = random.counts(table, 2);
    int fleet = 1 + random.random().nextInt(3);
    FleetChoice best = SchoolFleet.choose(table, counts, fleet, Allowance.unlimited());
    FleetChoice stopped =
        SchoolFleet.choose(table, counts, fleet, new Steps(random.random().nextInt(12)));
    assertThat(stopped.served().value()).isLessThanOrEqualTo(best.served().value());
    assertThat(stopped.served().bound()).isGreaterThanOrEqualTo(best.served().value());
    assertThat(canBeBuilt(table, counts, stopped.sets())).isTrue();
    if (stopped.served().value() == best.served().value()) {
      assertThat(stopped.mean().bound()).isLessThanOrEqualTo(best.mean().value() + Proven.SETTLED);
    }
  }
}
