package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.seed.RunSeed;

/** Whatever a hand does to a riders file, the reader answers with riders or with problems. */
class RidersTextPropertyTest {
  private static final StockFile STOCK =
      StockReader.read(StockReaderTest.SMALL, SectionFiles.NONE).findValue().orElseThrow();

  @Property(tries = 500, seed = RunSeed.VALUE)
  void noTextMakesItThrow(@ForAll long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<String> lines = new ArrayList<>(RidersReaderTest.TWO.lines().toList());
    int changes = 1 + chance.nextInt(3);
    for (int i = 0; i < changes && !lines.isEmpty(); i++) {
      StockTextPropertyTest.change(lines, chance);
    }
    Reading<RidersFile> reading = RidersReader.read(String.join("\n", lines));
    assertThat(reading.findValue().isPresent()).isEqualTo(reading.problems().isEmpty());
    if (reading.findValue().isPresent()) {
      RidersFile file = reading.findValue().get();
      for (int line = 0; line < file.lines().size(); line++) {
        Reading<StockCases> cases = file.cases(line, STOCK);
        assertThat(cases.findValue().isPresent()).isEqualTo(cases.problems().isEmpty());
      }
    }
  }
}
