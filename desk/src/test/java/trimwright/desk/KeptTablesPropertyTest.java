package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.desk.SliderMoves.Slider;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.ResponseKey;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.seed.RunSeed;

class KeptTablesPropertyTest {
  private record Move(Slider slider, double share) {}

  @Provide
  Arbitrary<List<Move>> moves() {
    return Combinators.combine(
            Arbitraries.of(Slider.class), Arbitraries.doubles().between(0, 1).ofScale(2))
        .as(Move::new)
        .list()
        .ofMinSize(3)
        .ofMaxSize(8);
  }

  /**
   * Records of doubles compare bit for bit: curve, speeds that people ask for, and cause split at
   * every speed.
   */
  @Property(tries = 25, seed = RunSeed.VALUE, shrinking = ShrinkingMode.OFF)
  void aKeptTableChangesNoBitOfTheStudyWhateverIsMoved(@ForAll("moves") List<Move> moves) {
    KeptTables kept = new KeptTables();
    SliderMoves sliders = new SliderMoves();
    for (Move move : moves) {
      sliders.move(move.slider(), move.share());
      CaseFile caseFile = sliders.caseFile();
      BenchStudy first = BenchStudy.of(caseFile, Measures.METRIC, kept);
      BenchStudy again = BenchStudy.of(caseFile, Measures.METRIC, kept);
      BenchStudy anew = BenchStudy.of(caseFile, Measures.METRIC, SurfaceTables.ANEW);
      assertThat(first.curve()).isEqualTo(anew.curve());
      assertThat(first.causes()).isEqualTo(anew.causes());
      assertThat(again.curve()).isEqualTo(anew.curve());
      assertThat(again.causes()).isEqualTo(anew.causes());
    }
  }

  @Test
  void onlyWhatAltersTheLiftingSurfacesAsksForANewTable() {
    for (Slider slider : Slider.values()) {
      KeptTables kept = new KeptTables();
      SliderMoves sliders = new SliderMoves();
      kept.of(new Craft(sliders.caseFile().rideCase()));
      for (double share : new double[] {0.13, 0.87}) {
        sliders.move(slider, share);
        // Read anew: another object for every part of the case, sections included.
        kept.of(new Craft(sliders.caseFile().rideCase()));
        kept.of(new Craft(sliders.caseFile().rideCase()));
      }
      assertThat(kept.size())
          .as("tables after moving %s", slider)
          .isEqualTo(slider.surfaces() ? 3 : 1);
    }
  }

  /** Both stand for a time in one shop: before and after a new outline's polars are there. */
  @Test
  void sectionsOnLayersAndFittedOnesHaveTablesOfTheirOwn(@TempDir Path cache) {
    CaseFile fitted = new SliderMoves().caseFile();
    SectionPolars polars = new SectionPolars(Optional.of(cache));
    CaseFile layered = LayeredCase.find(fitted, polars).orElseThrow();
    KeptTables kept = new KeptTables();
    for (CaseFile caseFile : List.of(fitted, layered, fitted, layered)) {
      BenchStudy study = BenchStudy.of(caseFile, Measures.METRIC, kept);
      assertThat(study.curve())
          .isEqualTo(BenchStudy.of(caseFile, Measures.METRIC, SurfaceTables.ANEW).curve());
    }
    assertThat(kept.size()).isEqualTo(2);
    ResponseKey key = Responses.key(new Craft(layered.rideCase()));
    assertThat(key).isNotEqualTo(Responses.key(new Craft(fitted.rideCase())));
    // Another program's reading of the same polars is the same section.
    CaseFile again = LayeredCase.find(fitted, new SectionPolars(Optional.of(cache))).orElseThrow();
    assertThat(Responses.key(new Craft(again.rideCase()))).isEqualTo(key);
  }

  @Test
  void neverKeepsMoreThanItsBound() {
    KeptTables kept = new KeptTables();
    SliderMoves sliders = new SliderMoves();
    for (int i = 0; i <= 160; i++) {
      sliders.move(Slider.IMMERSION, i / 160.0);
      kept.of(new Craft(sliders.caseFile().rideCase()));
    }
    assertThat(kept.size()).isEqualTo(128);
  }
}
