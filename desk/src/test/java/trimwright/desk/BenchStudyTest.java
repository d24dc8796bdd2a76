package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.desk.SliderMoves.Slider;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;

class BenchStudyTest {
  /** Two searches for the lowest speed that flies end in brackets this wide [m/s]. */
  private static final double BRACKET = 1e-3;

  private static final double ROUNDING = 1e-9;

  @ParameterizedTest
  @CsvSource({
    "METRIC, 25, 10, 40",
    "METRIC, 9, 9, 40",
    "METRIC, 44.2, 10, 45",
    "METRIC, 45, 10, 45",
    "IMPERIAL, 25, 6, 25",
    "IMPERIAL, 9, 5, 25",
    "IMPERIAL, 44.2, 6, 28"
  })
  void theGridStepsByOneUnitAndHoldsTheWishedSpeed(
      Measures measures, double wishedKmh, int from, int to) {
    Unit unit = measures == Measures.METRIC ? Unit.KILOMETRE_PER_HOUR : Unit.MILE_PER_HOUR;
    var grid = BenchStudy.grid(measures, Unit.KILOMETRE_PER_HOUR.toSi(wishedKmh));
    assertThat(grid).hasSize(to - from + 1);
    for (int i = 0; i < grid.size(); i++) {
      assertThat(unit.fromSi(grid.get(i))).isCloseTo(from + i, within(ROUNDING));
    }
  }

  @Test
  void curveAndSplitsAreThoseOfTheCaseStudy() {
    for (DemoCase demo : DemoCases.list()) {
      compare(CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow());
    }
    SliderMoves tooSlowAWish = new SliderMoves();
    tooSlowAWish.move(Slider.WISHED_SPEED, 0);
    compare(tooSlowAWish.caseFile());
  }

  private static void compare(CaseFile caseFile) {
    BenchStudy bench = BenchStudy.of(caseFile, Measures.METRIC);
    CaseStudy study = CaseStudy.of(caseFile);
    Curve curve = study.curve(SpeedRange.kmh(10, 40, 1));
    assertThat(bench.curve()).isEqualTo(curve);
    for (int i = 0; i < curve.outcomes().size(); i++) {
      CauseOutcome alone = study.cause(curve.outcomes().get(i).speed());
      CauseOutcome along = bench.causes().get(i);
      if (alone instanceof CauseOutcome.NoSplit none) {
        CauseOutcome.NoSplit other = (CauseOutcome.NoSplit) along;
        assertThat(other.ridden()).isEqualTo(none.ridden());
        assertThat(other.wished()).isEqualTo(none.wished());
        assertThat(other.fliesFrom().orElse(0))
            .isCloseTo(none.fliesFrom().orElse(0), within(BRACKET));
      } else {
        assertThat(along).isEqualTo(alone);
      }
    }
  }
}
