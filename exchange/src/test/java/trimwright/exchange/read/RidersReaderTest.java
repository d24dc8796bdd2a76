package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.RideCase;

class RidersReaderTest {
  static final String TWO =
      """
      format: trimwright-riders/1
      name: Two
      water: {temperature_c: 18, salinity_g_kg: 0.2}
      ride: {mast_immersion_mm: 450}
      riders:
        - {id: mira, mass_kg: 61, front_foot_mm: 480, back_foot_mm: 40, wished_speed_kmh: 22}
        - id: tobin
          count: 3
          mass_kg: 86
          front_foot_mm: 540
          back_foot_mm: 20
          skill: carving
          wished_speed_kmh: 27
          water: {temperature_c: 8, salinity_g_kg: 35}
      """;

  private static RidersFile accepted(String text) {
    Reading<RidersFile> reading = RidersReader.read(text);
    assertThat(reading.problems()).isEmpty();
    return reading.findValue().orElseThrow();
  }

  private static List<String> refused(String from, String to) {
    assertThat(TWO).contains(from);
    Reading<RidersFile> reading = RidersReader.read(TWO.replace(from, to));
    assertThat(reading.findValue()).isEmpty();
    return reading.problems().stream().map(Problem::text).toList();
  }

  private static StockFile stock(String text) {
    return StockReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }

  @Test
  void readsWhoTheyAreAndHowMany() {
    RidersFile file = accepted(TWO);
    assertThat(file.name()).isEqualTo("Two");
    assertThat(file.lines())
        .containsExactly(new RidersFile.Line("mira", 1), new RidersFile.Line("tobin", 3));
    assertThat(file.text()).isEqualTo(TWO);
  }

  @Test
  void aRiderOnAStockIsThatOfACaseFile() {
    StockFile stock = stock(StockReaderTest.SMALL);
    RidersFile file = accepted(TWO);
    StockCases mira = file.cases(0, stock).findValue().orElseThrow();
    RideCase own = mira.base().rideCase();
    assertThat(own.rider().mass()).isEqualTo(61);
    assertThat(own.rider().kitMass()).isZero();
    assertThat(own.immersion()).isEqualTo(0.45);
    assertThat(mira.base().name()).isEqualTo("mira, Two");
    assertThat(CaseReader.read(mira.base().text(), SectionFiles.NONE).findValue().orElseThrow())
        .matches(again -> again.digest().equals(mira.base().digest()));
    StockCases tobin = file.cases(1, stock).findValue().orElseThrow();
    assertThat(tobin.base().notes().skill()).isEqualTo(Skill.CARVING);
    assertThat(tobin.waterTemperature()).isEqualTo(281.15);
    assertThat(tobin.base().rideCase().water().density()).isGreaterThan(1020);
    assertThat(own.water().density()).isLessThan(1000);
  }

  @Test
  void aRideThatNoPartAllowsIsRefusedInWords() {
    RidersFile deep = accepted(TWO.replace("immersion_mm: 450", "immersion_mm: 800"));
    assertThat(deep.cases(0, stock(StockReaderTest.SMALL)).problems())
        .anyMatch(p -> p.text().contains("the board would be in the water"));
    assertThat(accepted(TWO).cases(0, stock("format: trimwright-stock/1\n")).problems())
        .anyMatch(p -> p.text().contains("No parts of the stock mount together"));
  }

  @Test
  void theDigestIsThatOfTheContent() {
    String digest = accepted(TWO).digest();
    assertThat(accepted("# two\n" + TWO.replace("mass_kg: 61,", "mass_kg: 61.0,")).digest())
        .isEqualTo(digest);
    assertThat(accepted(TWO.replace("count: 3", "count: 2")).digest()).isNotEqualTo(digest);
  }

  @Test
  void problemsAreToldTogether() {
    Reading<RidersFile> reading =
        RidersReader.read(
            TWO.replace("id: tobin", "id: mira")
                .replace("count: 3", "count: 2.5")
                .replace("mass_kg: 61", "mass_kg: 6100")
                .replace("skill: carving", "skil: carving"));
    List<String> problems = reading.problems().stream().map(Problem::text).toList();
    assertThat(problems)
        .anyMatch(p -> p.contains("\"mira\"") && p.contains("another name for each rider"))
        .anyMatch(p -> p.contains("2.5") && p.contains("a whole number from 1 to 10000"))
        .anyMatch(p -> p.contains("6100") && p.contains("15") && p.contains("250"))
        .anyMatch(p -> p.contains("skil") && p.contains("skill"));
    assertThat(reading.problems()).allMatch(problem -> problem.line().isPresent());
  }

  @Test
  void feetMustStandApart() {
    assertThat(refused("back_foot_mm: 40", "back_foot_mm: 440"))
        .anyMatch(p -> p.contains("at least 100 mm ahead of the back foot"));
  }

  @Test
  void nobodyIsNoFile() {
    String none = TWO.substring(0, TWO.indexOf("riders:")) + "riders: []\n";
    assertThat(RidersReader.read(none).findValue()).isEmpty();
    assertThat(refused("ride: {mast_immersion_mm: 450}\n", "")).anyMatch(p -> p.contains("ride"));
  }

  @Test
  void aCaseFileIsToldApart() {
    assertThat(RidersReader.read("rider: {}\nsetup: {}\n").problems())
        .anyMatch(p -> p.text().contains("looks like a case file"));
  }
}
