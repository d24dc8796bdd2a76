package trimwright.cache.polar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.cache.CacheKey;
import trimwright.cache.CacheStore;
import trimwright.cache.ShippedEntries;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.PolarRow;
import trimwright.kernel.section.PolarSweep;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.SectionShape;
import trimwright.kernel.section.Sections;
import trimwright.kernel.section.ViscousSurface;

/**
 * The polars that come with the program are those of this program. When the computation changes,
 * {@code -Dtrimwright.write.polars=true} writes them anew, a few seconds each.
 */
@Execution(ExecutionMode.SAME_THREAD)
class ShippedPolarsTest {
  private static final Path FILES = Path.of("src/main/resources/trimwright/cache/shipped");
  private static final PolarTable.Settings USUAL = PolarTable.Settings.USUAL;

  /** Of the made-up cases, of the examples in the documents, and what people mostly write. */
  private static final List<String> CODES =
      List.of(
          "naca0008",
          "naca0009",
          "naca0010",
          "naca0012",
          "naca1408",
          "naca1410",
          "naca1412",
          "naca2408",
          "naca2410",
          "naca2412",
          "naca2415",
          "naca4412",
          "naca23012");

  /** Another processor rounds otherwise, and the way to agreement may end a step apart. */
  private static final double ROUNDING = 1e-5;

  private static final boolean WRITE = Boolean.getBoolean("trimwright.write.polars");

  static List<String> codes() {
    return CODES;
  }

  @BeforeAll
  static void writeIfAsked() throws IOException {
    if (!WRITE) {
      return;
    }
    Files.createDirectories(FILES);
    try (Stream<Path> old = Files.list(FILES)) {
      for (Path file : old.toList()) {
        Files.delete(file);
      }
    }
    for (String code : CODES) {
      SectionShape shape = Sections.naca(code).shape();
      PolarTable table = PolarTable.build(shape, USUAL, share -> true).orElseThrow();
      CacheKey key = CachedPolars.key(shape, USUAL);
      Files.write(FILES.resolve(key.digits()), ShippedEntries.file(key, CachedPolars.CODEC, table));
    }
  }

  @ParameterizedTest
  @MethodSource("codes")
  void aShippedTableIsOfTodaysComputation(String code) throws IOException {
    assumeFalse(WRITE, "what was just written is in the program from the next build on");
    SectionShape shape = Sections.naca(code).shape();
    CacheKey key = CachedPolars.key(shape, USUAL);
    assertThat(FILES.resolve(key.digits()))
        .as("%s: write the shipped polars anew, see docs/modules/cache.md", code)
        .exists();
    PolarTable shipped =
        new CachedPolars(CacheStore.in(Path.of("nowhere"), 1)).find(shape, USUAL).orElseThrow();
    double[] angles = shipped.numbers().angles();
    double[] logs = shipped.numbers().logReynolds();
    // Near stall a polar follows its Reynolds number's last digit: the table's own, to the bit.
    double again = Math.exp(logs[logs.length - 1]);
    for (Finish finish : Finish.values()) {
      double forced = finish == Finish.CLEAN ? 1 : USUAL.scuffedStation();
      PolarRow row =
          PolarSweep.run(ViscousSurface.of(shape), angles, again, USUAL.disturbance(), forced);
      PolarRow kept = shipped.at(again, finish);
      for (double angle : angles) {
        assertThat(kept.lift(angle)).isCloseTo(row.lift(angle), within(ROUNDING));
        assertThat(kept.drag(angle)).isCloseTo(row.drag(angle), within(ROUNDING));
        assertThat(kept.moment(angle)).isCloseTo(row.moment(angle), within(ROUNDING));
      }
    }
  }

  @Test
  void nothingElseIsShipped() throws IOException {
    try (Stream<Path> files = Files.list(FILES)) {
      assertThat(files).hasSize(CODES.size());
    }
  }
}
