package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.propel.Cells;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.section.Finish;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.water.WaterModel;

/** The contract's example, value by value, and the defaults. */
class CaseReaderTest {
  /** The reader multiplies once; what differs is rounding. */
  private static final double ROUNDING = 1e-12;

  private static final RideCase EXAMPLE = Texts.accepted(Texts.EXAMPLE).rideCase();

  @Test
  void mapsWaterAndRide() {
    assertThat(EXAMPLE.water()).isEqualTo(WaterModel.at(18 + 273.15, 0.2 / 1000));
    assertThat(EXAMPLE.airDensity()).isEqualTo(1.225);
    assertThat(EXAMPLE.headWind()).isZero();
    assertThat(EXAMPLE.chopHeight()).isEqualTo(0.10);
    assertThat(EXAMPLE.immersion()).isEqualTo(0.45);
    assertThat(EXAMPLE.pullAboveDeck()).isEmpty();
  }

  @Test
  void mapsRider() {
    assertThat(EXAMPLE.rider())
        .isEqualTo(new Rider(82, 6, 1.78, 0.5, 0.52, 0.04, 25 * 1000 / 3600.0, 0.55, 0));
  }

  @Test
  void mapsPartsOfTheBoat() {
    assertThat(EXAMPLE.setup().board())
        .isEqualTo(new Board(14, 1.65, 0.66, 0.12, 0.095, 0.06, 0.05, 0));
    assertThat(EXAMPLE.setup().battery())
        .isEqualTo(Optional.of(new Battery(11, 7.2e6, 0.85, 0.25, 0.05, Cells.at(291.15))));
    Mast mast = EXAMPLE.setup().mast();
    assertThat(mast)
        .isEqualTo(new Mast(0.75, 0.12, 0.016, mast.baseAngle(), 0, 3.0, 0.1, 0, Finish.CLEAN));
    assertThat(mast.baseAngle()).isCloseTo(Math.toRadians(-2.5), within(ROUNDING));
    assertThat(EXAMPLE.setup().drive())
        .isEqualTo(Optional.of(new Drive(0.18, 0, 0, 0.08, 0.26, 0.15, 5000, 0, 3.5, 0.1, 0)));
    assertThat(EXAMPLE.setup().fuselage())
        .isEqualTo(new Fuselage(0.85, 0.032, 0.15, 0.56, 1.2, 0.1, 0));
    assertThat(EXAMPLE.setup().shim()).isCloseTo(Math.toRadians(0.5), within(ROUNDING));
  }

  @Test
  void mapsWings() {
    FittedWing front = EXAMPLE.setup().frontWing();
    assertThat(front.setting()).isZero();
    assertThat(front.height()).isZero();
    assertThat(front.mass()).isEqualTo(1.6);
    assertThat(front.massAboveAxis()).isEqualTo(0.1);
    assertThat(front.volume()).isZero();
    WingShape shape = front.shape();
    assertThat(shape.span()).isEqualTo(0.9);
    // The planform's exponent is found to 1e-12 or better
    assertThat(shape.area()).isCloseTo(0.15, within(1e-9));
    Station root = shape.stations().get(0);
    Station tip = shape.stations().get(shape.stations().size() - 1);
    assertThat(root.chord()).isEqualTo(0.215);
    assertThat(tip.chord()).isCloseTo(0.06, within(ROUNDING));
    assertThat(tip.ahead()).isCloseTo(-0.04, within(ROUNDING));
    assertThat(tip.above()).isCloseTo(-0.025, within(ROUNDING));
    assertThat(tip.twist()).isCloseTo(Math.toRadians(-1), within(ROUNDING));
    assertThat(tip.section().name()).isEqualTo("naca2412");
    FittedWing back = EXAMPLE.setup().stabilizer();
    assertThat(back.setting()).isCloseTo(Math.toRadians(-2), within(ROUNDING));
    assertThat(back.mass()).isEqualTo(0.3);
    assertThat(back.shape().span()).isEqualTo(0.42);
    assertThat(back.shape().area()).isCloseTo(0.035, within(1e-9));
    assertThat(back.shape().stations().get(0).section().name()).isEqualTo("naca0009");
  }

  @Test
  void readsNotes() {
    CaseFile file = Texts.accepted(Texts.EXAMPLE);
    assertThat(file.name()).isEqualTo("unnamed case");
    assertThat(file.text()).isEqualTo(Texts.EXAMPLE);
    assertThat(file.notes().skill()).isEqualTo(Skill.LINKING);
    assertThat(file.notes().posture()).isEqualTo(Posture.STANDING);
    assertThat(file.notes().stabilizerMounting()).isEqualTo(Mounting.ABOVE);
    assertThat(file.notes().measuredPitch()).isEmpty();
    assertThat(file.notes().throttleRamp()).isEmpty();
    assertThat(file.notes().findPart(Part.MAST))
        .contains(new PartNotes(Optional.empty(), Finish.CLEAN, OptionalDouble.empty()));
  }
}
