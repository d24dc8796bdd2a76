package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.kernel.propel.PowerBasis;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;

/** What is said of watts, and of a drive that is short of something. */
class PowerWordsTest {
  @ParameterizedTest
  @EnumSource(PowerBasis.class)
  void everyBasisSaysThatNoRideHasMeasuredIt(PowerBasis basis) {
    assertThat(PowerWords.of(basis)).startsWith("Watts ").contains("no ride has measured", "±");
  }

  @Test
  void saysTheDoubtAtNinetyFivePercent() {
    assertThat(PowerWords.of(PowerBasis.ESTIMATED)).contains("±20 %");
    assertThat(PowerWords.of(PowerBasis.SERIES)).contains("±14 %");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "max_thrust_n: 60 | N of thrust, the drive gives 60 N",
        "{propeller: {blades: 3, pitch_mm: 100}, max_rpm: 1500} | rpm, the propeller turns at most 1500 rpm",
      })
  void namesTheLimitThatADriveMeets(String keys, String words) {
    String more = keys.strip().replaceAll("^\\{(.*)}$", "$1").replace(", max_rpm", "\n    max_rpm");
    String text =
        DemoCases.list().get(0).text().replaceFirst("(  drive:\n)", "$1    " + more + "\n");
    CaseFile file = CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
    TrimOutcome outcome = CaseSolver.of(file.rideCase()).trim(9);
    assertThat(outcome).isInstanceOf(TrimOutcome.NoTrim.class);
    TrimOutcome.NoTrim none = (TrimOutcome.NoTrim) outcome;
    assertThat(Optional.of(ReasonWords.power(file, none))).get().asString().contains(words.strip());
  }
}
