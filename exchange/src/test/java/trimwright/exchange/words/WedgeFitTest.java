package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.read.Mounting;
import trimwright.kernel.wedge.ShimWedge;
import trimwright.seed.RunSeed;

class WedgeFitTest {
  private static ShimWedge wedge(double angle) {
    return new ShimWedge(Math.abs(angle), 0.06, 0.0065, 0.0795, 0.0195, 8e-4);
  }

  /** The second way: puts the stabilizer on it and looks which way its leading edge went. */
  @Property(tries = 200, seed = RunSeed.VALUE)
  void theStabilizerOnItStandsAtTheAngle(
      @ForAll @DoubleRange(min = 0.01, max = 0.1) double size,
      @ForAll boolean up,
      @ForAll Mounting mounting) {
    double angle = up ? size : -size;
    WedgeFit fit = WedgeFit.of(angle, wedge(angle), mounting);
    // Away from the fuselage is up on top of it and down under it
    double outward = mounting == Mounting.ABOVE ? 1 : -1;
    double rise = outward * (fit.frontBolt() - fit.backBolt());
    assertThat(Math.atan2(rise, 0.06)).isCloseTo(angle, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"1.5, ABOVE, front", "1.5, BELOW, back", "-1.5, ABOVE, back", "-1.5, BELOW, front"})
  void wordsAgreeWithTheOtherWordsOnShims(double degrees, Mounting mounting, String end) {
    double angle = Math.toRadians(degrees);
    WedgeFit fit = WedgeFit.of(angle, wedge(angle), mounting);
    assertThat(fit.thickEndInFront()).isEqualTo(end.equals("front"));
    assertThat(fit.words(OptionalDouble.empty()))
        .hasSize(2)
        .startsWith(ShimWords.of(angle, mounting).fitting())
        .first()
        .asString()
        .contains("thick end goes to the " + end);
  }

  @Test
  void bothBoltsGrowByWhatTheyCross() {
    // 0.8 mm + 9.75 mm tan 1.5 degrees = 1.06 mm; 60 mm further on 1.57 mm more
    double angle = Math.toRadians(1.5);
    assertThat(WedgeFit.of(angle, wedge(angle), Mounting.ABOVE).words(OptionalDouble.of(0.02)))
        .contains(
            "The front bolt has to be 2.6 mm longer, the back bolt 1.1 mm, to hold with as many"
                + " turns as without a shim.",
            "Bolts of 20.0 mm become 22.6 mm in front and 21.1 mm behind.");
  }

  @Test
  void neverDeclaresAnythingSafe() {
    assertThat(PrintedShimWords.cautions())
        .last()
        .isEqualTo("None of this says that a setup is safe.");
    assertThat(String.join(" ", PrintedShimWords.making(wedge(0.02)))).doesNotContain("safe");
  }

  @Test
  void aWedgeWiderThanLongHasNoLongSideToStandOn() {
    ShimWedge wide = new ShimWedge(0.02, 0.02, 0.0055, 0.0365, 0.04, 8e-4);
    assertThat(PrintedShimWords.making(wedge(0.02)).get(0)).contains("standing on a long side");
    assertThat(PrintedShimWords.making(wide).get(0)).doesNotContain("long side").contains("Rub");
  }
}
