package trimwright.exchange.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.ShownUnit;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.seed.RunSeed;

class SplitRowsTest {
  /** Decimal numbers handed on as doubles: what remains is their rounding. */
  private static final double ROUNDING = 1e-9;

  @Property(tries = 100, seed = RunSeed.VALUE)
  void everyColumnAddsUpAsShown(
      @ForAll Measures measures,
      @ForAll @DoubleRange(min = -12, max = 12) double ridden,
      @ForAll @DoubleRange(min = -12, max = 12) double wished,
      @ForAll @DoubleRange(min = -1, max = 2) double riddenShare,
      @ForAll @DoubleRange(min = -1, max = 2) double share) {
    CaseFile caseFile = Samples.measured(3.3);
    CauseOutcome.Split split =
        Samples.split(
            caseFile, Samples.point(18, ridden, riddenShare), Samples.point(25, wished, share));
    List<SplitRows.Row> rows = SplitRows.of(split, measures);
    ShownUnit length = measures.shown(Unit.MILLIMETRE);
    double pitch = 0;
    double place = 0;
    for (SplitRows.Row row : rows) {
      double shownPitch = row.pitch().orElseThrow();
      double shownPlace = length.shown(row.footPressure().orElse(0));
      double steps = shownPlace * Math.pow(10, length.decimals());
      assertThat(steps).isCloseTo(Math.rint(steps), within(ROUNDING * 1e4));
      if (row.sum()) {
        assertThat(pitch).isCloseTo(shownPitch, within(ROUNDING));
        if (row.footPressure().isPresent()) {
          assertThat(place).isCloseTo(shownPlace, within(ROUNDING));
        }
      } else {
        pitch += shownPitch;
        place += shownPlace;
      }
    }
    assertThat(rows.stream().filter(SplitRows.Row::sum)).hasSize(3);
  }

  @Test
  void speedsAreNamedAsRead() {
    CaseFile caseFile = Samples.caseFile();
    CauseOutcome.Split split =
        Samples.split(caseFile, Samples.point(18, 4, 0.4), Samples.point(25, 1, 0.5));
    assertThat(SplitRows.of(split, Measures.METRIC))
        .extracting(SplitRows.Row::name)
        .containsExactly("You want", "Set part", "At 25 km/h", "Speed part", "At 18 km/h");
    assertThat(SplitRows.of(split, Measures.IMPERIAL))
        .extracting(SplitRows.Row::name)
        .containsExactly("You want", "Set part", "At 15.5 mph", "Speed part", "At 11.2 mph");
  }

  @Test
  void speedsThatReadTheSameAreOne() {
    CaseFile caseFile = Samples.caseFile();
    CauseOutcome.Split split =
        Samples.split(caseFile, Samples.point(24.98, 1.2, 0.5), Samples.point(25, 1, 0.5));
    assertThat(SplitRows.of(split, Measures.METRIC))
        .extracting(SplitRows.Row::name)
        .containsExactly("You want", "Set part", "At 25 km/h");
  }
}
