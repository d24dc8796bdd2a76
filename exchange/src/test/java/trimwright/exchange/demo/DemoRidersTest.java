package trimwright.exchange.demo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.RidersReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.read.StockReader;

/** The riders that come with the program can ride its stock. */
class DemoRidersTest {
  private static final StockFile STOCK =
      StockReader.read(DemoStock.text(), SectionFiles.NONE).findValue().orElseThrow();

  private static RidersFile read(String text) {
    Reading<RidersFile> reading = RidersReader.read(text);
    assertThat(reading.problems().stream().map(Problem::text)).isEmpty();
    RidersFile file = reading.findValue().orElseThrow();
    for (int line = 0; line < file.lines().size(); line++) {
      assertThat(file.cases(line, STOCK).problems().stream().map(Problem::text)).isEmpty();
    }
    return file;
  }

  @Test
  void twoPeopleShareABoard() {
    assertThat(read(DemoRiders.household()).lines()).hasSize(2);
  }

  @Test
  void aSchoolHasManyStudents() {
    RidersFile school = read(DemoRiders.school());
    assertThat(school.lines()).hasSizeBetween(25, 40);
    assertThat(school.lines().stream().mapToInt(RidersFile.Line::persons).sum()).isBetween(80, 140);
  }
}
