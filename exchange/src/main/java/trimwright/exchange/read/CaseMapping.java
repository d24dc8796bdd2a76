package trimwright.exchange.read;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trimwright.exchange.read.internal.Values;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.propel.Blades;
import trimwright.kernel.propel.Cells;
import trimwright.kernel.propel.OpenWaterRow;
import trimwright.kernel.propel.Powerplant;
import trimwright.kernel.range.WayHome;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.water.WaterModel;

/** Carries the values of an accepted, filled document over into the kernel's types. */
final class CaseMapping {
  private CaseMapping() {}

  static RideCase rideCase(Values root, WingShape frontWing, WingShape stabilizer) {
    Values water = root.getGroup("water");
    return new RideCase(
        WaterModel.at(water.get("temperature_c"), water.get("salinity_g_kg")),
        water.get("air_density_kg_m3"),
        water.get("wind_kmh"),
        water.get("chop_height_m"),
        rider(root.getGroup("rider")),
        setup(root.getGroup("setup"), water.get("temperature_c"), frontWing, stabilizer),
        root.getGroup("ride").get("mast_immersion_mm"),
        root.findGroup("pull")
            .map(pull -> pull.find("height_above_deck_mm"))
            .orElse(OptionalDouble.empty()));
  }

  static CaseNotes notes(Values root) {
    Values rider = root.getGroup("rider");
    Values setup = root.getGroup("setup");
    Map<Part, PartNotes> parts = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      setup.findGroup(part.key()).ifPresent(values -> parts.put(part, partNotes(values)));
    }
    return new CaseNotes(
        coded(Skill.values(), Skill::code, rider.findText("skill")),
        coded(Posture.values(), Posture::code, rider.findText("posture")),
        root.getGroup("ride").find("measured_pitch_deg"),
        coded(Mounting.values(), Mounting::code, setup.getGroup("stabilizer").findText("mounted")),
        setup
            .findGroup("drive")
            .map(drive -> drive.find("throttle_ramp_s"))
            .orElse(OptionalDouble.empty()),
        parts,
        root.getGroup("ride")
            .findGroup("home")
            .map(
                home ->
                    new WayHome(
                        home.get("distance_km"), home.get("current_kmh"), home.get("wind_kmh"))));
  }

  static Finish finish(Values part) {
    return coded(
        Finish.values(), f -> f == Finish.CLEAN ? "clean" : "scuffed", part.findText("finish"));
  }

  /** The word in a case file. */
  private static String code(KnownBy by) {
    return by.name().toLowerCase(Locale.ROOT);
  }

  static Optional<KnownBy> knownBy(Values part) {
    return part.findText("known_by")
        .map(word -> coded(KnownBy.values(), CaseMapping::code, Optional.of(word)));
  }

  private static PartNotes partNotes(Values part) {
    return new PartNotes(knownBy(part), finish(part), part.find("rating_nm"));
  }

  static <T> T coded(T[] all, java.util.function.Function<T, String> code, Optional<String> word) {
    return Stream.of(all)
        .filter(value -> word.filter(code.apply(value)::equals).isPresent())
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("the schema accepted the unknown word " + word));
  }

  private static Rider rider(Values rider) {
    return new Rider(
        rider.get("mass_kg"),
        rider.get("kit_mass_kg"),
        rider.get("height_m"),
        rider.get("air_drag_area_m2"),
        rider.get("front_foot_mm"),
        rider.get("back_foot_mm"),
        rider.get("wished_speed_kmh"),
        rider.get("wished_foot_share"),
        rider.get("wished_pitch_deg"));
  }

  private static Setup setup(
      Values setup, double waterTemperature, WingShape frontWing, WingShape stabilizer) {
    return new Setup(
        board(setup.getGroup("board")),
        setup.findGroup("battery").map(b -> battery(b, waterTemperature)),
        mast(setup.getGroup("mast")),
        setup.findGroup("drive").map(CaseMapping::drive),
        fuselage(setup.getGroup("fuselage")),
        wing(setup.getGroup("front_wing"), frontWing),
        wing(setup.getGroup("stabilizer"), stabilizer),
        setup.getGroup("shim").get("angle_deg"));
  }

  private static Board board(Values board) {
    return board(board, board.get("track_mm"));
  }

  static Board board(Values board, double track) {
    return new Board(
        board.get("mass_kg"),
        board.get("length_mm"),
        board.get("width_mm"),
        board.get("thickness_mm"),
        board.get("volume_l"),
        board.get("mass_centre_mm"),
        board.get("mass_below_deck_mm"),
        track);
  }

  static Battery battery(Values battery, double waterTemperature) {
    return new Battery(
        battery.get("mass_kg"),
        battery.get("energy_wh"),
        battery.get("usable_share"),
        battery.get("mass_centre_mm"),
        battery.get("mass_below_deck_mm"),
        new Cells(
            battery.find("temperature_c").orElse(waterTemperature),
            battery.find("voltage_v"),
            battery.find("resistance_mohm"),
            battery.find("max_current_a")));
  }

  static Mast mast(Values mast) {
    return new Mast(
        mast.get("length_mm"),
        mast.get("chord_mm"),
        mast.get("thickness_mm"),
        mast.get("base_angle_deg"),
        mast.get("rake_deg"),
        mast.get("mass_kg"),
        mast.get("mass_above_axis_mm"),
        mast.get("volume_l"),
        finish(mast));
  }

  static Drive drive(Values drive) {
    return new Drive(
        drive.get("height_above_fuselage_mm"),
        drive.get("behind_mast_mm"),
        drive.get("thrust_angle_deg"),
        drive.get("diameter_mm"),
        drive.get("length_mm"),
        drive.get("propeller_diameter_mm"),
        drive.get("max_power_w"),
        drive.find("efficiency").orElse(0),
        drive.get("mass_kg"),
        drive.get("mass_above_axis_mm"),
        drive.get("volume_l"),
        powerplant(drive));
  }

  private static Powerplant powerplant(Values drive) {
    return new Powerplant(
        drive
            .findGroup("propeller")
            .map(p -> new Blades((int) p.get("blades"), p.get("pitch_mm"), p.get("area_ratio"))),
        drive.listGroups("open_water").stream()
            .map(
                row ->
                    new OpenWaterRow(
                        row.get("advance_ratio"),
                        row.get("thrust_coefficient"),
                        row.get("torque_coefficient")))
            .toList(),
        drive.find("motor_efficiency"),
        drive.find("max_thrust_n"),
        drive.find("max_rpm"));
  }

  static Fuselage fuselage(Values fuselage) {
    return new Fuselage(
        fuselage.get("length_mm"),
        fuselage.get("diameter_mm"),
        fuselage.get("front_wing_ahead_of_mast_mm"),
        fuselage.get("stabilizer_behind_mast_mm"),
        fuselage.get("mass_kg"),
        fuselage.get("mass_above_axis_mm"),
        fuselage.get("volume_l"));
  }

  static FittedWing wing(Values wing, WingShape shape) {
    return new FittedWing(
        shape,
        wing.get("setting_deg"),
        wing.get("height_mm"),
        wing.get("mass_kg"),
        wing.get("mass_above_axis_mm"),
        wing.get("volume_l"),
        finish(wing));
  }
}
