package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** What choices for many riders read like. */
class SharedWriterTest {
  @Test
  void aFleetSaysWhomItServesAndWhatIsNotSettled() {
    String text = FleetWriter.table(SharedSamples.fleet());
    assertThat(text)
        .contains("1 set serves all of 2 persons: no choice serves more.")
        .contains("none that serves as many is below 0.13; the rest was not settled")
        .contains("3 cards were solved in full, of which 1 broke a limit and gave way")
        .contains("1 of those shown stand on tables alone");
  }

  @Test
  void whoeverIsNotServedIsNamed() {
    assertThat(FleetWriter.table(SharedSamples.nobody()))
        .contains("No set of this stock passes all limits for any of these riders.")
        .contains("not served");
    assertThat(BudgetWriter.table(SharedSamples.budget())).contains("Not served: tobin.");
  }

  @Test
  void aBudgetSaysWhatItBuysAndWhatCouldNotBeBought() {
    assertThat(BudgetWriter.table(SharedSamples.budget()))
        .contains("For 5,500.50 of 6,000")
        .contains("serve 1 of 2 persons; whether up to 2 can be served was not settled")
        .contains("Without a price, and so not to be bought: board-1600.")
        .contains("Time ran out before the curve of money came to its end.")
        .contains("5,500.50     5,400");
  }
}
