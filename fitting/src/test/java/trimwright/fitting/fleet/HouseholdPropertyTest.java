package trimwright.fitting.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.seed.RunSeed;

/** The set to share against every set there is. */
class HouseholdPropertyTest {
  @Property(tries = 300, seed = RunSeed.VALUE)
  void noSetIsBetter(@ForAll long seed) {
    FitTable table = new RandomTable(seed, 3, 4).table(5);
    List<SharedSet> best = Household.best(table, Integer.MAX_VALUE);
    for (int k = 1; k < best.size(); k++) {
      SharedSet better = best.get(k - 1);
      SharedSet worse = best.get(k);
      assertThat(better.persons()).isGreaterThanOrEqualTo(worse.persons());
      if (better.persons() == worse.persons()) {
        assertThat(better.worst()).isLessThanOrEqualTo(worse.worst());
        if (better.worst() == worse.worst()) {
          assertThat(better.mean()).isLessThanOrEqualTo(worse.mean());
        }
      }
    }
    for (int set = 0; set < table.hardware().size(); set++) {
      int of = set;
      int persons = persons(table, set);
      assertThat(best.stream().filter(shared -> shared.set() == of).findFirst())
          .matches(shared -> shared.map(SharedSet::persons).orElse(0) == persons);
    }
  }

  private static int persons(FitTable table, int set) {
    int persons = 0;
    for (int rider = 0; rider < table.riders().size(); rider++) {
      persons += table.fits(rider, set) ? table.riders().get(rider).persons() : 0;
    }
    return persons;
  }

  /** A set for all never suits one better than the set of one's own. */
  @Property(tries = 200, seed = RunSeed.VALUE)
  void sharingNeverGains(@ForAll long seed) {
    FitTable table = new RandomTable(seed, 3, 4).table(5);
    for (Given own : Household.alone(table)) {
      assertThat(Household.cost(table, own.rider(), own.set())).hasValue(0);
      for (SharedSet shared : Household.best(table, 3)) {
        Household.cost(table, own.rider(), shared.set())
            .ifPresent(cost -> assertThat(cost).isGreaterThanOrEqualTo(0));
      }
    }
  }
}
