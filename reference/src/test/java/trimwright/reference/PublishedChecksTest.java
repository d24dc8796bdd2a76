package trimwright.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Holds the computation against every published value; the ledger alone says which may miss. */
class PublishedChecksTest {

  @Test
  void everyCheckIsMetOrStandsInTheLedgerWithItsFigure() {
    List<CheckResult> results = CheckRunner.runAll();
    assertThat(Ledger.shipped().faults(results)).isEmpty();
  }
}
