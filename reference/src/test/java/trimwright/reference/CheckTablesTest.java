package trimwright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import trimwright.reference.topic.Conditions;

/** The tables themselves. */
class CheckTablesTest {

  @Test
  void everyTopicHasChecks() {
    assertThat(CheckRunner.checks().stream().map(Check::topic).distinct())
        .containsExactlyElementsOf(CheckTable.TOPICS);
  }

  @Test
  void sourcesAreNumberedWithoutGapsAndKeysAreUnique() {
    List<Source> sources = Source.list();
    for (int i = 0; i < sources.size(); i++) {
      assertThat(sources.get(i).number()).isEqualTo(i + 1);
    }
    assertThat(sources.stream().map(Source::key).collect(Collectors.toSet()))
        .hasSameSizeAs(sources);
  }

  @Test
  void nothingIsCalledReadWhoseSourceWasNeverSeen() {
    Map<String, String> seen =
        Source.list().stream().collect(Collectors.toMap(Source::citation, Source::seen));
    for (Check check : CheckRunner.checks()) {
      if (check.provenance() == Provenance.READ) {
        String citation =
            seen.keySet().stream().filter(check.source()::startsWith).findFirst().orElseThrow();
        assertThat(seen.get(citation)).as(check.id()).containsAnyOf("read", "second hand");
      }
    }
  }

  @Test
  void aSummaryCountsEveryResultOnceAndMemoryApart() {
    CheckResult read = result(Provenance.READ, true);
    CheckResult recalled = result(Provenance.MEMORY, false);
    CheckSummary summary = CheckSummary.of(List.of(read, read, recalled));
    assertThat(summary.byProvenance().get(Provenance.READ)).isEqualTo(new CheckSummary.Tally(2, 0));
    assertThat(summary.byProvenance().get(Provenance.MEMORY))
        .isEqualTo(new CheckSummary.Tally(0, 1));
    assertThat(summary.total().all()).isEqualTo(3);
    assertThat(summary.notInHand()).isEqualTo(NotInHand.list().size()).isPositive();
  }

  @Test
  void conditionsTellWhatNobodyRead() {
    Conditions conditions = new Conditions(Map.of("speed", "2", "angle", "3"));
    assertThat(conditions.number("speed")).isEqualTo(2);
    assertThat(conditions.unread()).containsExactly("angle");
    assertThatThrownBy(() -> conditions.text("depth")).isInstanceOf(IllegalStateException.class);
  }

  private static CheckResult result(Provenance provenance, boolean met) {
    return new CheckResult("id", "source", provenance, 1, 1, 0, 1, "1", met);
  }
}
