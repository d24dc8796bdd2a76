package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import trimwright.kernel.section.Finish;
import trimwright.seed.RunSeed;

/**
 * Every planform of the spec-sheet family, blunt or pointed, gives a smooth answer on every
 * lattice.
 */
class EveryPlanformPropertyTest {
  /** What the standard lattice leaves against the fine one on the bluntest wings. */
  private static final double STANDARD_LATTICE = 0.01;

  /**
   * No planform of the family is far from an ellipse's induced drag; broken lattices are off
   * manifold.
   */
  private static final double WORST_FACTOR = 1.25;

  @Property(tries = 25, seed = RunSeed.VALUE)
  void bluntAndPointedTipsConverge(
      @ForAll @DoubleRange(min = 0, max = 1) double fullness,
      @ForAll @DoubleRange(min = 0.002, max = 0.9) @Scale(4) double tipShare,
      @ForAll @DoubleRange(min = 3, max = 14) double slenderness,
      @ForAll @DoubleRange(min = 0, max = 0.25) double sweepShare,
      @ForAll @DoubleRange(min = -0.05, max = 0.1) double dropShare) {
    double root = 0.2;
    double tip = tipShare * root;
    double span = slenderness * 0.5 * (root + tip);
    double straight = 0.5 * (root + tip) * span;
    // From straight taper to the fullest tip of the family.
    double fullest = (tip + (root - tip) * 0.975) * span;
    double area = straight + fullness * (fullest - straight);
    WingShape shape =
        new WingSheet(area, span, root, tip, sweepShare * span / 2, dropShare * span / 2, 0)
            .shape(FlatSection.THIN);
    WingAlone standard = wing(shape, LatticeSize.FRONT_WING);
    WingAlone fine = wing(shape, LatticeSize.FINE);
    assertThat(standard.liftSlope())
        .isCloseTo(fine.liftSlope(), within(STANDARD_LATTICE * fine.liftSlope()));
    for (WingAlone wing : new WingAlone[] {standard, fine, wing(shape, new LatticeSize(48, 5))}) {
      assertThat(wing.inducedDragFactor()).isBetween(0.9, WORST_FACTOR);
      SurfaceFlow flow = wing.flow(Math.toRadians(6));
      for (double lift : flow.stripLift()) {
        assertThat(lift).isBetween(0.0, 1.5);
      }
    }
  }

  private static WingAlone wing(WingShape shape, LatticeSize size) {
    return WingAlone.of(shape, Finish.CLEAN, OptionalDouble.empty(), size, true);
  }
}
