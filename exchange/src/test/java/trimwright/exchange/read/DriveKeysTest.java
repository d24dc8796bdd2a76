package trimwright.exchange.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.propel.Blades;
import trimwright.kernel.propel.Cells;
import trimwright.kernel.propel.OpenWaterRow;
import trimwright.kernel.propel.PowerBasis;
import trimwright.kernel.propel.Powerplant;
import trimwright.kernel.range.WayHome;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Propulsion;

/** Propeller, motor, cells and the way home in a case file. */
class DriveKeysTest {
  private static final double ROUNDING = 1e-12;

  private static final String TABLE =
      "open_water: [{advance_ratio: 0, thrust_coefficient: 0.45, torque_coefficient: 0.07},"
          + " {advance_ratio: 0.6, thrust_coefficient: 0.2, torque_coefficient: 0.035},"
          + " {advance_ratio: 1.0, thrust_coefficient: 0, torque_coefficient: 0.012}]";

  private static String drive(String more) {
    return Texts.with("max_power_w: 5000", "max_power_w: 5000, " + more);
  }

  private static String battery(String more) {
    return Texts.with("energy_wh: 2000", "energy_wh: 2000, " + more);
  }

  private static String home(String more) {
    return Texts.with("ion_mm: 450", "ion_mm: 450, home: {" + more + "}");
  }

  private static Drive driveOf(String text) {
    return Texts.accepted(text).rideCase().setup().drive().orElseThrow();
  }

  @Test
  void leftOutNothingIsKnown() {
    CaseFile file = Texts.accepted(Texts.EXAMPLE);
    assertThat(file.rideCase().setup().drive().orElseThrow().powerplant())
        .isEqualTo(Powerplant.UNKNOWN);
    Battery battery = file.rideCase().setup().battery().orElseThrow();
    // As cold as the water.
    assertThat(battery.cells()).isEqualTo(Cells.at(291.15));
    assertThat(file.notes().home()).isEmpty();
    assertThat(Propulsion.find(file.rideCase()).orElseThrow().basis())
        .isEqualTo(PowerBasis.ESTIMATED);
  }

  @Test
  void readsAPropellerAndItsMotor() {
    String text =
        drive(
            "motor_efficiency: 0.85, max_thrust_n: 400, max_rpm: 3000, propeller: {blades: 3,"
                + " pitch_mm: 165}");
    Powerplant plant = driveOf(text).powerplant();
    assertThat(plant.blades()).contains(new Blades(3, 0.165, 0.5));
    assertThat(plant.motorEfficiency()).hasValue(0.85);
    assertThat(plant.greatestThrust()).hasValue(400);
    assertThat(plant.highestRevolutions()).hasValue(50);
    assertThat(Propulsion.find(Texts.accepted(text).rideCase()).orElseThrow().basis())
        .isEqualTo(PowerBasis.SERIES);
  }

  @Test
  void readsAMeasuredTableInAnyPitch() {
    String text = drive(TABLE + ", propeller: {blades: 2, pitch_mm: 300, area_ratio: 0.35}");
    Powerplant plant = driveOf(text).powerplant();
    assertThat(plant.openWater())
        .containsExactly(
            new OpenWaterRow(0, 0.45, 0.07),
            new OpenWaterRow(0.6, 0.2, 0.035),
            new OpenWaterRow(1, 0, 0.012));
    assertThat(plant.blades()).contains(new Blades(2, 0.3, 0.35));
    assertThat(Propulsion.find(Texts.accepted(text).rideCase()).orElseThrow().basis())
        .isEqualTo(PowerBasis.OPEN_WATER);
  }

  @Test
  void readsCellsAndTheWayHome() {
    String text =
        battery("temperature_c: 4, voltage_v: 48, max_current_a: 90, resistance_mohm: 40");
    Cells cells = Texts.accepted(text).rideCase().setup().battery().orElseThrow().cells();
    assertThat(cells.temperature()).isCloseTo(277.15, within(ROUNDING * 300));
    assertThat(cells.voltage()).hasValue(48);
    assertThat(cells.maximumCurrent()).hasValue(90);
    assertThat(cells.resistance()).hasValue(0.04);
    Optional<WayHome> home =
        Texts.accepted(home("distance_km: 4, current_kmh: 3.6, wind_kmh: 18")).notes().home();
    assertThat(home).contains(new WayHome(4000, 1, 5));
    assertThat(Texts.accepted(home("distance_km: 4")).notes().home())
        .contains(new WayHome(4000, 0, 0));
  }

  @Test
  void eachKeyCountsInTheDigestAndIsWrittenBack() {
    String before = Texts.accepted(Texts.EXAMPLE).digest();
    for (String text :
        new String[] {
          drive("max_rpm: 3000"),
          drive("max_thrust_n: 300"),
          drive("motor_efficiency: 0.9"),
          drive("propeller: {blades: 3, pitch_mm: 165}"),
          drive(TABLE),
          battery("temperature_c: 18"),
          battery("voltage_v: 48"),
          home("distance_km: 2")
        }) {
      CaseFile file = Texts.accepted(text);
      assertThat(file.digest()).isNotEqualTo(before);
      assertThat(Texts.accepted(CaseWriter.yaml(file)).digest()).isEqualTo(file.digest());
      assertThat(CaseCode.of(file).text()).isPresent();
      CaseDraft draft = CaseDraft.of(CaseDraft.fields(file));
      assertThat(draft.read(Measures.IMPERIAL, SectionFiles.NONE).caseFile().orElseThrow().digest())
          .isEqualTo(file.digest());
    }
    assertThat(Texts.accepted(drive("propeller: {blades: 3, pitch_mm: 165, area_ratio: 0.5}")))
        .extracting(CaseFile::digest)
        .isEqualTo(Texts.accepted(drive("propeller: {blades: 3, pitch_mm: 165}")).digest());
  }

  @Test
  void refusesWhatCannotBe() {
    refused(
        drive("propeller: {blades: 3, pitch_mm: 300}"),
        "setup.drive.propeller.pitch_mm is 300, permitted is 75 to 210 mm");
    refused(
        drive("propeller: {blades: 2.5, pitch_mm: 150}"),
        "setup.drive.propeller.blades is 2.5, permitted is a whole number from 2 to 7");
    refused(drive("propeller: {blades: 3}"), "setup.drive.propeller.pitch_mm is missing");
    refused(
        drive("propeller: {blades: 9, pitch_mm: 150}"),
        "setup.drive.propeller.blades is 9, permitted is a number from 2 to 7");
    refused(
        drive("efficiency: 0.5, propeller: {blades: 3, pitch_mm: 150}"),
        "setup.drive.efficiency and setup.drive.propeller stand together");
    refused(
        drive("efficiency: 0.5, motor_efficiency: 0.8"),
        "setup.drive.efficiency and setup.drive.motor_efficiency stand together");
    refused(
        drive(TABLE.replace("advance_ratio: 1.0", "advance_ratio: 0.6")),
        "setup.drive.open_water[2].advance_ratio is 0.6, permitted is above 0.6");
    refused(
        drive(TABLE.replace("0.2, torque_coefficient: 0.035", "0.5, torque_coefficient: 0.06")),
        "setup.drive.open_water[1].thrust_coefficient is 0.5, permitted is below 0.45");
    refused(
        drive(TABLE.replace("0.035", "0.01")),
        "setup.drive.open_water[1].torque_coefficient is 0.01, permitted is above 0.0191 at this");
    refused(battery("max_current_a: 90"), "setup.battery.voltage_v is missing");
    refused(
        home("distance_km: 0"),
        "ride.home.distance_km is 0, permitted is a number from 0.05 to 100");
    refused(home("wind_kmh: 5"), "ride.home.distance_km is missing");
  }

  private static void refused(String text, String message) {
    assertThat(CaseReader.read(text, SectionFiles.NONE).problems())
        .singleElement()
        .satisfies(p -> assertThat(p.text()).contains(message));
  }

  @Test
  void formKnowsThemAsKeysThatMayBeLeftOut() {
    CaseField pitch = CaseFields.find("setup.drive.propeller.pitch_mm").orElseThrow();
    assertThat(pitch.group()).isEqualTo("setup.drive");
    assertThat(pitch.optional()).isTrue();
    assertThat(CaseFields.find("ride.home.distance_km").orElseThrow().optional()).isTrue();
    assertThat(CaseFields.find("setup.drive.open_water.2.thrust_coefficient").orElseThrow())
        .extracting(CaseField::repeated)
        .isEqualTo(true);
    Map<String, String> fields = CaseDraft.fields(Texts.accepted(Texts.EXAMPLE));
    fields.put("setup.drive.propeller.pitch_mm", "15 in");
    fields.put("setup.drive.propeller.blades", "3");
    assertThat(CaseDraft.of(fields).read(Measures.METRIC, SectionFiles.NONE).problems())
        .singleElement()
        .satisfies(
            p ->
                assertThat(p.message())
                    .contains("Propeller's pitch is 381 mm, permitted is 75 to 210 mm"));
  }
}
