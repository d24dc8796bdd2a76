package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.SurfaceTables;

class BenchBandsTest {
  private static final CaseFile CASE =
      CaseReader.read(DemoCases.find("nose-up-mismatch").orElseThrow().text(), SectionFiles.NONE)
          .findValue()
          .orElseThrow();

  @Test
  void theBenchsCurveHasTheBandsOfTheCaseStudy() {
    KeptTables moved = new KeptTables();
    BenchBands bench =
        BenchBands.find(
                CASE, Optional.empty(), Measures.METRIC, SurfaceTables.ANEW, moved, () -> false)
            .orElseThrow();
    assertThat(bench.bands().points()).hasSameSizeAs(bench.study().curve().outcomes());
    CauseOutcome cause = bench.study().causes().get(10);
    SplitBands split = bench.splits().get(10).orElseThrow();
    SplitBands alone = CaseStudy.of(CASE).bands(cause).orElseThrow();
    for (Quantity quantity : Quantity.values()) {
      double reach = alone.ridden().find(quantity).orElseThrow().reach();
      assertThat(split.ridden().find(quantity).orElseThrow().reach())
          .isCloseTo(reach, within(1e-9 * reach));
      assertThat(bench.bands().find(10, quantity).orElseThrow().reach())
          .isCloseTo(reach, within(1e-9 * reach));
    }
    // All of them fit among the tables kept, so that the next slider needs few.
    assertThat(moved.size()).isBetween(20, 40);
  }

  @Test
  void whereThereIsNoSplitThereAreNoBandsOfOne() {
    BenchBands bench =
        BenchBands.find(
                CASE,
                Optional.empty(),
                Measures.IMPERIAL,
                SurfaceTables.ANEW,
                SurfaceTables.ANEW,
                () -> false)
            .orElseThrow();
    assertThat(
            BenchBands.find(
                CASE,
                Optional.empty(),
                Measures.METRIC,
                SurfaceTables.ANEW,
                SurfaceTables.ANEW,
                () -> true))
        .isEmpty();
    assertThat(bench.study().causes().get(0)).isInstanceOf(CauseOutcome.NoSplit.class);
    assertThat(bench.splits().get(0)).isEqualTo(Optional.empty());
    assertThat(CaseStudy.of(CASE).bands(bench.study().causes().get(0))).isEmpty();
  }
}
