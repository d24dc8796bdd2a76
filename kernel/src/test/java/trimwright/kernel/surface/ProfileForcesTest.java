package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

class ProfileForcesTest {
  /** Rounding of a solved system of some dozen unknowns. */
  private static final double ROUNDING = 1e-9;

  private static final Water WATER = WaterModel.at(273.15 + 15, 0);

  private static WingShape straight(Section root, Section tip) {
    return new WingShape(
        0.8, List.of(new Station(0, 0.12, 0, 0, 0, root), new Station(1, 0.12, 0, 0, 0, tip)));
  }

  /** An uncambered wing past its stall downwards is the same wing past its stall upwards. */
  @Test
  void aWingUpsideDownLosesTheSameLiftPastItsStall() {
    Section section = Sections.naca("0012");
    WingAlone wing =
        WingAlone.of(
            straight(section, section),
            Finish.CLEAN,
            OptionalDouble.empty(),
            LatticeSize.STABILIZER,
            false);
    WingCoefficients up = wing.at(Math.toRadians(25), 6, WATER);
    WingCoefficients down = wing.at(Math.toRadians(-25), 6, WATER);
    assertThat(up.stalled()).isTrue();
    assertThat(down.stalled()).isTrue();
    assertThat(down.lift()).isCloseTo(-up.lift(), within(ROUNDING));
  }

  /** The last strip of a wing whose section changes towards the tip is nearly the tip's section. */
  @Test
  void theLowestPressureKnowsBothSectionsOfAStrip() {
    Section thin = Sections.naca("0006");
    Section thick = Sections.naca("0018");
    PlacedWing placed = new PlacedWing(straight(thin, thick), 0, 0, 0, LatticeSize.STABILIZER);
    double pressure = new ProfileForces(placed, Finish.CLEAN).minimumPressure(new double[8]);
    double atThin = thin.minimumPressure(0);
    double atThick = thick.minimumPressure(0);
    assertThat(pressure).isBetween(atThick, atThick + 0.1 * (atThin - atThick));
  }
}
