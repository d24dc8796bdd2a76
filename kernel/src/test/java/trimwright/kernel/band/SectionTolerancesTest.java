package trimwright.kernel.band;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.ViscousSection;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.trim.ExampleCase;

class SectionTolerancesTest {
  private static final RideCase CASE = ExampleCase.PLAIN.build();

  private static FittedWing wing(FittedWing w, Section section, Finish finish) {
    WingShape shape =
        new WingShape(
            w.shape().span(),
            w.shape().stations().stream()
                .map(
                    s ->
                        new Station(
                            s.fraction(), s.chord(), s.ahead(), s.above(), s.twist(), section))
                .toList());
    return new FittedWing(
        shape, w.setting(), w.height(), w.mass(), w.massAboveAxis(), w.volume(), finish);
  }

  private static Setup with(FittedWing front) {
    Setup s = CASE.setup();
    return new Setup(
        s.board(), s.battery(), s.mast(), s.drive(), s.fuselage(), front, s.stabilizer(), s.shim());
  }

  @Test
  void whatSectionsStandOnSaysHowSureTheyAre() {
    FittedWing fitted = CASE.setup().frontWing();
    assertThat(SectionTolerances.liftSlope(fitted)).isEqualTo(Tolerance.LIFT_SLOPE);
    assertThat(SectionTolerances.liftLimit(CASE.setup())).isEqualTo(Tolerance.LIFT_LIMIT);
    Section section = fitted.shape().stations().get(0).section();
    PolarTable table =
        PolarTable.build(section.shape(), PolarTable.Settings.USUAL, share -> true).orElseThrow();
    Section layered = new ViscousSection(section, table);
    FittedWing clean = wing(fitted, layered, Finish.CLEAN);
    assertThat(SectionTolerances.liftSlope(clean)).isEqualTo(Tolerance.LIFT_SLOPE_LAYERS);
    assertThat(SectionTolerances.zeroLift(clean)).isEqualTo(SectionTolerances.zeroLift(fitted));
    assertThat(SectionTolerances.liftLimit(with(clean))).isEqualTo(Tolerance.LIFT_LIMIT_LAYERS);
    assertThat(SectionTolerances.liftLimit(with(wing(fitted, layered, Finish.SCUFFED))))
        .isEqualTo(Tolerance.LIFT_LIMIT_SCUFFED_LAYERS);
  }
}
