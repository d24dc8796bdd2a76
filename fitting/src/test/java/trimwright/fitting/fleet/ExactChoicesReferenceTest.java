package trimwright.fitting.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fleets, stocks and shared sets against a second way: the mixed-integer solver of the library
 * OR-Tools 9.15 (SCIP) on {@link ChoiceProgramme}, over tables too large to try every choice.
 */
class ExactChoicesReferenceTest {
  private static final int TABLES = 4;

  private static final int TABLES_OF_CURVES = 12;

  /** Of mean marks; unequal ones of these tables lie farther apart. */
  private static final double SAME = 1e-6;

  /** The build fetches the library's native part for one platform only. */
  @BeforeAll
  static void nativeLibraryIsThere() {
    String system = System.getProperty("os.name");
    String processor = System.getProperty("os.arch");
    assumeTrue(
        system.equals("Linux") && Set.of("amd64", "x86_64").contains(processor),
        () -> "OR-Tools is fetched for Linux on x86-64 alone, this is " + system + " " + processor);
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, TABLES);
  }

  static LongStream moreSeeds() {
    return LongStream.rangeClosed(1, TABLES_OF_CURVES);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void fleetIsTheLibrarys(long seed) {
    LargeTable asked = new LargeTable(seed);
    FleetChoice choice =
        SchoolFleet.choose(asked.table, asked.counts, asked.fleet, Allowance.unlimited());
    try (ChoiceProgramme programme =
        ChoiceProgramme.fleet(asked.table, asked.counts, asked.fleet)) {
      assertSame(programme, choice.served(), choice.mean());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void stockIsTheLibrarys(long seed) {
    LargeTable asked = new LargeTable(seed);
    StockChoice choice =
        new StockBudget(asked.table, asked.prices, asked.owned)
            .within(asked.budget, Allowance.unlimited());
    try (ChoiceProgramme programme =
        ChoiceProgramme.stock(asked.table, asked.prices, asked.owned)) {
      programme.budget(asked.prices, asked.budget);
      assertSame(programme, choice.served(), choice.mean());
    }
  }

  private static void assertSame(ChoiceProgramme programme, Proven served, Proven mean) {
    int persons = programme.mostPersons();
    assertThat(persons).isPositive();
    programme.serve(persons);
    assertThat(served).isEqualTo(Proven.exactly(persons));
    assertThat(mean.isBest()).isTrue();
    assertThat(mean.value()).isCloseTo(programme.leastMarks() / persons, within(SAME));
  }

  /** The least money that serves one person more than the point before, up to all who can be. */
  @Tag("long")
  @ParameterizedTest
  @MethodSource("moreSeeds")
  void curveIsTheLibrarys(long seed) {
    LargeTable asked = new LargeTable(seed);
    StockCurve curve =
        new StockBudget(asked.table, asked.prices, asked.owned)
            .curve(Double.POSITIVE_INFINITY, Allowance.unlimited(), point -> {});
    assertThat(curve.complete()).isTrue();
    assertThat(curve.points().get(0).money()).isEqualTo(Proven.exactly(0));
    int before = curve.points().get(0).persons();
    try (ChoiceProgramme programme =
        ChoiceProgramme.stock(asked.table, asked.prices, asked.owned)) {
      for (StockPoint point : curve.points().subList(1, curve.points().size())) {
        programme.serve(before + 1);
        assertThat(point.money().isBest()).isTrue();
        assertThat(point.money().value())
            .isCloseTo(programme.leastMoney(asked.prices), within(SAME));
        before = point.persons();
      }
      assertThat(programme.mostPersons()).isEqualTo(before);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sharedSetIsTheLibrarys(long seed) {
    LargeTable asked = new LargeTable(seed);
    List<SharedSet> best = Household.best(asked.table, 1);
    try (ChoiceProgramme programme = ChoiceProgramme.sets(asked.table, 1)) {
      int persons = programme.mostPersons();
      assertThat(best).singleElement().returns(persons, SharedSet::persons);
      programme.serve(persons);
      double worst = best.get(0).worst();
      assertThat(worst).isCloseTo(programme.leastWorst(), within(SAME));
      programme.noWorseThan(worst);
      assertThat(best.get(0).mean()).isCloseTo(programme.leastMarks() / persons, within(SAME));
    }
  }
}
