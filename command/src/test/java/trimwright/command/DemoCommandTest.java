package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.exchange.demo.DemoCases;

class DemoCommandTest {
  @Test
  void listsTheCases() {
    CommandRun run = CommandRun.of("demo", "--list");
    assertThat(run.status()).isZero();
    assertThat(run.outLines()).hasSameSizeAs(DemoCases.list());
    assertThat(run.out())
        .contains("heavy-beginner", "light-carver", "cold-salt-water", "nose-up-mismatch");
  }

  @ParameterizedTest
  @ValueSource(strings = {"heavy-beginner", "light-carver", "cold-salt-water", "nose-up-mismatch"})
  void printsACaseThatTheCommandsRead(String id) {
    CommandRun run = CommandRun.of("demo", id);
    assertThat(run.status()).isZero();
    assertThat(run.out()).isEqualTo(DemoCases.find(id).orElseThrow().text());
    assertThat(CommandRun.withInput(run.out(), "curve", "-").status()).isZero();
  }

  @Test
  void unknownNamesAreBadInput() {
    CommandRun run = CommandRun.of("demo", "no-such\ncase");
    assertThat(run.status()).isEqualTo(CommandLineEntry.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.errLines()).hasSize(1);
    assertThat(run.err()).contains("no-such case").contains("light-carver");
  }
}
