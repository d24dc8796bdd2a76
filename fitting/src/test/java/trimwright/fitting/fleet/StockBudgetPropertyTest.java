package trimwright.fitting.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.seed.RunSeed;

/** What to own against every choice of parts there is, and what must hold of any. */
class StockBudgetPropertyTest {
  private record Judged(int persons, double mean, double money) {}

  @Property(tries = 300, seed = RunSeed.VALUE)
  void noChoiceIsBetter(@ForAll long seed) {
    Asked asked = new Asked(seed, 3, 3, 7);
    StockChoice choice = asked.stock().within(asked.budget, Allowance.unlimited());
    Judged best = null;
    for (Set<String> bought : asked.choices()) {
      Judged judged = asked.judged(bought);
      if (judged.money() <= asked.budget
          && (best == null
              || judged.persons() > best.persons()
              || judged.persons() == best.persons() && judged.mean() < best.mean())) {
        best = judged;
      }
    }
    assertThat(choice.served().value()).isEqualTo(best.persons());
    assertThat(choice.served().isBest()).isTrue();
    assertThat(choice.mean().value()).isCloseTo(best.mean(), within(Proven.SETTLED));
    assertThat(choice.mean().isBest()).isTrue();
  }

  @Property(tries = 150, seed = RunSeed.VALUE)
  void noPointOfTheCurveIsCheaper(@ForAll long seed) {
    Asked asked = new Asked(seed, 3, 3, 7);
    StockCurve curve =
        asked.stock().curve(Double.POSITIVE_INFINITY, Allowance.unlimited(), point -> {});
    TreeMap<Integer, Double> least = new TreeMap<>();
    for (Set<String> bought : asked.choices()) {
      Judged judged = asked.judged(bought);
      least.merge(judged.persons(), judged.money(), Math::min);
    }
    assertThat(curve.complete()).isTrue();
    assertThat(curve.points().get(curve.points().size() - 1).persons()).isEqualTo(least.lastKey());
    for (int persons = 1; persons <= least.lastKey(); persons++) {
      double money =
          least.tailMap(persons, true).values().stream().mapToDouble(m -> m).min().orElseThrow();
      int wanted = persons;
      StockPoint point =
          curve.points().stream().filter(p -> p.persons() >= wanted).findFirst().orElseThrow();
      assertThat(point.money().value()).isEqualTo(money);
      assertThat(point.money().isBest()).isTrue();
      assertThat(asked.judged(Set.copyOf(point.bought())).persons()).isEqualTo(point.persons());
    }
  }

  @Property(tries = 60, seed = RunSeed.VALUE)
  void whatIsSaidHolds(@ForAll long seed) {
    Asked asked = new Asked(seed, 4, 5, 15);
    StockChoice choice = asked.stock().within(asked.budget, Allowance.unlimited());
    Judged judged = asked.judged(Set.copyOf(choice.bought()));
    assertThat(choice.money()).isEqualTo(judged.money()).isLessThanOrEqualTo(asked.budget);
    assertThat(choice.served().value()).isEqualTo(judged.persons());
    assertThat(choice.mean().value()).isCloseTo(judged.mean(), within(Proven.SETTLED));
    assertThat(choice.bought()).noneMatch(asked.owned::contains);
  }

  @Property(tries = 40, seed = RunSeed.VALUE)
  void moreMoneyOrPartsNeverServeFewer(@ForAll long seed) {
    Asked asked = new Asked(seed, 3, 5, 12);
    StockChoice choice = asked.stock().within(asked.budget, Allowance.unlimited());
    assertNoWorse(asked.stock().within(asked.budget + 70, Allowance.unlimited()), choice);
    Set<String> more = new HashSet<>(asked.owned);
    List<String> parts = asked.random.parts(asked.table);
    if (!parts.isEmpty()) {
      more.add(parts.get(asked.random.random().nextInt(parts.size())));
    }
    StockBudget richer = new StockBudget(asked.table, asked.prices, more);
    assertNoWorse(richer.within(asked.budget, Allowance.unlimited()), choice);
  }

  private static void assertNoWorse(StockChoice more, StockChoice less) {
    assertThat(more.served().value()).isGreaterThanOrEqualTo(less.served().value());
    if (more.served().value() == less.served().value()) {
      assertThat(more.mean().value()).isLessThanOrEqualTo(less.mean().value() + Proven.SETTLED);
    }
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void boundsHoldWhenStopped(@ForAll long seed) {
    Asked asked = new Asked(seed, 3, 5, 12);
    StockChoice best = asked.stock().within(asked.budget, Allowance.unlimited());
    StockChoice stopped =
        asked.stock().within(asked.budget, new Steps(asked.random.random().nextInt(8)));
    assertThat(stopped.money()).isLessThanOrEqualTo(asked.budget);
    assertThat(stopped.served().value()).isLessThanOrEqualTo(best.served().value());
    assertThat(stopped.served().bound()).isGreaterThanOrEqualTo(best.served().value());
    if (stopped.served().value() == best.served().value()) {
      assertThat(stopped.mean().bound()).isLessThanOrEqualTo(best.mean().value() + Proven.SETTLED);
    }
  }

  /** A question with all its answers. */
  private static final class Asked {
    private final RandomTable random;
    private final FitTable table;
    private final Map<String, Double> prices;
    private final Set<String> owned = new HashSet<>();
    private final double budget;

    Asked(long seed, int kinds, int ofKind, int riders) {
      random = new RandomTable(seed, kinds, ofKind);
      table = random.table(riders);
      prices = random.prices(table);
      for (String part : random.parts(table)) {
        if (random.random().nextInt(6) == 0) {
          owned.add(part);
        }
      }
      budget = 10 * random.random().nextInt(50);
    }

    StockBudget stock() {
      return new StockBudget(table, prices, owned);
    }

    List<Set<String>> choices() {
      List<String> parts =
          prices.keySet().stream().filter(part -> !owned.contains(part)).sorted().toList();
      return IntStream.range(0, 1 << parts.size())
          .mapToObj(
              mask -> {
                Set<String> some = new HashSet<>();
                for (int i = 0; i < parts.size(); i++) {
                  if ((mask >> i & 1) == 1) {
                    some.add(parts.get(i));
                  }
                }
                return some;
              })
          .toList();
    }

    Judged judged(Set<String> bought) {
      Set<String> there = new HashSet<>(owned);
      there.addAll(bought);
      int persons = 0;
      double sum = 0;
      for (int rider = 0; rider < table.riders().size(); rider++) {
        double least = Double.NaN;
        for (int set = 0; set < table.hardware().size(); set++) {
          if (table.fits(rider, set)
              && there.containsAll(table.hardware().get(set))
              && !(least <= table.mark(rider, set))) {
            least = table.mark(rider, set);
          }
        }
        if (!Double.isNaN(least)) {
          persons += table.riders().get(rider).persons();
          sum += table.riders().get(rider).persons() * least;
        }
      }
      Map<String, Double> paid = new HashMap<>(prices);
      paid.keySet().retainAll(bought);
      return new Judged(
          persons,
          persons == 0 ? 0 : sum / persons,
          paid.values().stream().mapToDouble(m -> m).sum());
    }
  }
}
