package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.databind.JsonNode;
import trimwright.reference.CheckResult;
import trimwright.reference.CheckRunner;
import trimwright.reference.Ledger;
import trimwright.reference.Provenance;

class ChecksCommandTest {
  private static final CheckResult MISSED =
      new CheckResult("planted", "nobody", Provenance.MEMORY, 1, 2, 1, 0.1, "m", false);

  @Test
  void printsADocument() {
    CommandRun run = CommandRun.of("checks", "--json");
    JsonNode document = Documents.of(run, "checks");
    assertThat(document.get("checks")).hasSize(CheckRunner.checks().size());
    assertThat(document.get("faults")).isEmpty();
    for (JsonNode check : document.get("checks")) {
      assertThat(Math.abs(check.get("error").asDouble()) <= check.get("tolerance").asDouble())
          .as(check.get("id").asString())
          .isEqualTo(check.get("met").asBoolean());
    }
  }

  @Test
  void printsATable() {
    CommandRun run = CommandRun.of("checks");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("all together:").contains("memory:").contains("not in hand");
  }

  @Test
  void aMissOutsideTheLedgerIsAFault() {
    ChecksReport report = ChecksReport.of(List.of(MISSED), Ledger.shipped());
    assertThat(report.faults()).anySatisfy(fault -> assertThat(fault).contains("planted"));
    assertThat(report.table()).contains("MISSED");
    assertThat(Documents.read(report.json(), "checks").get("faults")).isNotEmpty();
  }
}
