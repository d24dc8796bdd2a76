package trimwright.exchange.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;

class DemoCasesTest {

  static Stream<DemoCase> demos() {
    return DemoCases.list().stream();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void isAccepted(DemoCase demo) {
    Reading<CaseFile> reading = CaseReader.read(demo.text(), SectionFiles.NONE);
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.findValue().orElseThrow().name()).isEqualTo(demo.title());
  }

  @Test
  void isFoundByItsId() {
    assertThat(DemoCases.list())
        .extracting(DemoCase::id)
        .containsExactly("heavy-beginner", "light-carver", "cold-salt-water", "nose-up-mismatch");
    assertThat(DemoCases.find("light-carver")).isPresent();
    assertThat(DemoCases.find("nobody")).isEmpty();
  }
}
