package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.seed.RunSeed;

/** Whatever a hand does to a stock file, the reader answers with a stock or with problems. */
class StockTextPropertyTest {
  private static final String[] WORDS = {
    "0",
    "-1",
    "1e9",
    ".inf",
    "null",
    "[]",
    "{}",
    "[1, {a: b}]",
    "text",
    "\"\"",
    "true",
    "~",
    "[[x]]"
  };

  @Property(tries = 500, seed = RunSeed.VALUE)
  void noTextMakesItThrow(@ForAll long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    List<String> lines = new ArrayList<>(StockReaderTest.SMALL.lines().toList());
    int changes = 1 + chance.nextInt(3);
    for (int i = 0; i < changes && !lines.isEmpty(); i++) {
      change(lines, chance);
    }
    Reading<StockFile> reading = StockReader.read(String.join("\n", lines), SectionFiles.NONE);
    assertThat(reading.findValue().isPresent()).isEqualTo(reading.problems().isEmpty());
    reading
        .findValue()
        .map(file -> SetupSpace.of(file.stock(), Propulsion.DRIVEN))
        .ifPresent(space -> assertThat(space.setups().count()).isEqualTo(space.count()));
  }

  static void change(List<String> lines, SplittableRandom chance) {
    int at = chance.nextInt(lines.size());
    String line = lines.get(at);
    String word = WORDS[chance.nextInt(WORDS.length)];
    switch (chance.nextInt(4)) {
      case 0 -> lines.remove(at);
      case 1 -> lines.add(at, line);
      case 2 -> lines.set(at, line.replaceFirst("(?<=: )[^,{}\\[\\]]+", word));
      default -> {
        String[] parts = line.split("(?=[,:])");
        int which = chance.nextInt(parts.length);
        parts[which] = parts[which].startsWith(":") ? ": " + word : "," + word;
        lines.set(at, String.join("", parts));
      }
    }
  }
}
