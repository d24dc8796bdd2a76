package trimwright.fitting.fleet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What a table refuses, and choices where there is nothing to choose. */
class FitTableTest {
  private static final RiderLine ANNA = new RiderLine("anna", 2);

  private static FitTable nothingFits() {
    return new FitTable(
        List.of(ANNA), List.of(List.of("board", "wing")), new double[][] {{Double.NaN}});
  }

  private static FitTable noHardware() {
    return new FitTable(List.of(ANNA), List.of(), new double[][] {{}});
  }

  @Test
  void namesStandOnce() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FitTable(List.of(ANNA, ANNA), List.of(), new double[][] {{}, {}}))
        .withMessage("two riders are called anna");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                new FitTable(List.of(ANNA), List.of(List.of("wing", "wing")), new double[][] {{0}}))
        .withMessage("a set has a part twice: [wing, wing]");
  }

  @Test
  void marksGoWithRidersAndHardware() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FitTable(List.of(ANNA), List.of(), new double[][] {}))
        .withMessage("marks must have a row for each of 1 riders, had 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new FitTable(List.of(ANNA), List.of(), new double[][] {{1}}))
        .withMessage("marks of anna must be one for each of 0 sets, were 1");
    assertThatIllegalArgumentException()
        .isThrownBy(
            () -> new FitTable(List.of(ANNA), List.of(List.of("wing")), new double[][] {{-1}}))
        .withMessage("a mark must be 0 or more, or NaN, was -1.0 of anna");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RiderLine("bo", 0))
        .withMessage("a line must stand for 1 person or more, bo stood for 0");
  }

  @Test
  void nothingToChooseFromServesNobody() {
    for (FitTable table : List.of(nothingFits(), noHardware())) {
      assertThat(Household.best(table, 1)).isEmpty();
      assertThat(Household.alone(table)).isEmpty();
      FleetChoice fleet =
          SchoolFleet.choose(table, Map.of("board", 1, "wing", 1), 2, Allowance.unlimited());
      assertThat(fleet.sets()).isEmpty();
      assertThat(fleet.served()).isEqualTo(new Proven(0, 0));
      StockBudget stock = new StockBudget(table, Map.of("board", 9.0, "wing", 9.0), Set.of());
      StockChoice choice = stock.within(100, Allowance.unlimited());
      assertThat(choice.bought()).isEmpty();
      assertThat(choice.served()).isEqualTo(new Proven(0, 0));
      assertThat(stock.curve(100, Allowance.unlimited(), point -> {}).points()).hasSize(1);
    }
  }

  @Test
  void questionsThatMakeNoSenseAreRefused() {
    FitTable table = nothingFits();
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SchoolFleet.choose(table, Map.of(), 1, Allowance.unlimited()))
        .withMessage("the count of board must be 0 or more, was null");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SchoolFleet.choose(table, Map.of(), 0, Allowance.unlimited()))
        .withMessage("a fleet must have 1 set or more, was to have 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Household.best(table, 0))
        .withMessage("1 set or more must be listed, was 0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StockBudget(table, Map.of("wing", -1.0), Set.of()))
        .withMessage("the price of wing must be 0 or more, was -1.0");
    StockBudget stock = new StockBudget(table, Map.of(), Set.of());
    assertThatIllegalArgumentException()
        .isThrownBy(() -> stock.within(Double.NaN, Allowance.unlimited()))
        .withMessage("the budget must be 0 or more, was NaN");
  }
}
