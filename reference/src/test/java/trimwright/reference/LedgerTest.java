package trimwright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The ledger must notice every way in which it can be wrong. */
class LedgerTest {
  private static final Ledger LEDGER =
      Ledger.of(new Ledger.Entry("known", "1.50", "for a stated reason"));

  @Test
  void aKnownMissWithItsFigureIsNoFault() {
    assertThat(LEDGER.faults(List.of(result("known", 1.504)))).isEmpty();
  }

  @Test
  void aMissOutsideTheLedgerIsAFault() {
    assertThat(LEDGER.faults(List.of(result("known", 1.5), result("new", 2))))
        .singleElement()
        .asString()
        .contains("new", "misses");
  }

  @Test
  void anEntryThatIsMetIsAFault() {
    assertThat(LEDGER.faults(List.of(result("known", 1.05))))
        .singleElement()
        .asString()
        .contains("known", "met now");
  }

  @Test
  void aFigureThatMovedByMoreThanItsPrintedDigitsIsAFault() {
    assertThat(LEDGER.faults(List.of(result("known", 1.506))))
        .singleElement()
        .asString()
        .contains("the ledger says 1.50");
  }

  @Test
  void anEntryWithoutACheckIsAFault() {
    assertThat(LEDGER.faults(List.of())).singleElement().asString().contains("is no check");
  }

  @Test
  void anEntryNeedsAReason() {
    assertThatThrownBy(() -> Ledger.of(new Ledger.Entry("known", "1.50", " ")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** A result that misses its expected 1.0 beyond 0.1. */
  private static CheckResult result(String id, double computed) {
    double error = computed - 1.0;
    return new CheckResult(
        id, "source", Provenance.READ, 1.0, computed, error, 0.1, "1", Math.abs(error) <= 0.1);
  }
}
