package trimwright.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import trimwright.kernel.numeric.GaussLegendre;
import trimwright.seed.RunSeed;

class EllipticPlatePropertyTest {
  private static final double DISC = 4 / Math.PI;

  /** Of the quadrature here, whose integrand is steep near the end of a long plate. */
  private static final double QUADRATURE = 1e-10;

  @Property(seed = RunSeed.VALUE)
  void theEllipticIntegralIsItsDefinition(
      @ForAll @DoubleRange(min = 0.02, max = 1) double axisRatio) {
    GaussLegendre rule = GaussLegendre.of(40);
    double sum = 0;
    // Finer towards the end, where the root falls to the ratio of the axes.
    double from = 0;
    for (int part = 1; part <= 12; part++) {
      double to = part == 12 ? 0.5 * Math.PI : 0.5 * Math.PI * (1 - Math.pow(0.5, part));
      for (int i = 0; i < rule.size(); i++) {
        double sine = Math.sin(rule.node(i, from, to));
        sum += rule.weight(i, from, to) * Math.sqrt(1 - (1 - axisRatio * axisRatio) * sine * sine);
      }
      from = to;
    }
    assertThat(EllipticPlate.completeElliptic(axisRatio)).isCloseTo(sum, within(QUADRATURE));
  }

  @Property(seed = RunSeed.VALUE)
  void aLongerPlateKeepsMoreOfItsStrips(
      @ForAll @DoubleRange(min = 1.28, max = 40) double aspectRatio,
      @ForAll @DoubleRange(min = 1.01, max = 3) double longer) {
    double share = EllipticPlate.shareOfStrips(aspectRatio);
    assertThat(share).isBetween(2 / Math.PI, 1.0);
    assertThat(EllipticPlate.shareOfStrips(longer * aspectRatio)).isGreaterThan(share);
  }

  @Test
  void aDiscHasTwoOverPiOfItsStrips() {
    assertThat(EllipticPlate.shareOfStrips(DISC)).isCloseTo(2 / Math.PI, within(1e-15));
    // Shorter than a disc is a disc the other way round, which strips do not know.
    assertThat(EllipticPlate.shareOfStrips(0.5)).isEqualTo(EllipticPlate.shareOfStrips(DISC));
  }

  @Test
  void aVeryLongPlateHasAllOfThem() {
    assertThat(EllipticPlate.shareOfStrips(1e4)).isCloseTo(1, within(1e-6));
  }
}
