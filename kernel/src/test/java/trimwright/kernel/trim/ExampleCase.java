package trimwright.kernel.trim;

import java.util.Optional;
import java.util.OptionalDouble;
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
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.WingSheet;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

/** The example of the case file's documentation, with what the tests turn on it. */
public record ExampleCase(
    double stabilizerDegrees,
    double frontSettingDegrees,
    double frontAhead,
    double immersion,
    double windKmh,
    double baseDegrees,
    double track,
    boolean drive,
    OptionalDouble pull) {

  /** As documented. */
  public static final ExampleCase PLAIN =
      new ExampleCase(-1.5, 0, 0.150, 0.450, 0, -2.5, 0, true, OptionalDouble.empty());

  /** The same with one number changed. */
  public ExampleCase withStabilizer(double degrees) {
    return new ExampleCase(
        degrees,
        frontSettingDegrees,
        frontAhead,
        immersion,
        windKmh,
        baseDegrees,
        track,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withFrontSetting(double degrees) {
    return new ExampleCase(
        stabilizerDegrees,
        degrees,
        frontAhead,
        immersion,
        windKmh,
        baseDegrees,
        track,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withFrontAhead(double metres) {
    return new ExampleCase(
        stabilizerDegrees,
        frontSettingDegrees,
        metres,
        immersion,
        windKmh,
        baseDegrees,
        track,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withImmersion(double metres) {
    return new ExampleCase(
        stabilizerDegrees,
        frontSettingDegrees,
        frontAhead,
        metres,
        windKmh,
        baseDegrees,
        track,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withWind(double kmh) {
    return new ExampleCase(
        stabilizerDegrees,
        frontSettingDegrees,
        frontAhead,
        immersion,
        kmh,
        baseDegrees,
        track,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withBase(double degrees) {
    return new ExampleCase(
        stabilizerDegrees,
        frontSettingDegrees,
        frontAhead,
        immersion,
        windKmh,
        degrees,
        track,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withTrack(double metres) {
    return new ExampleCase(
        stabilizerDegrees,
        frontSettingDegrees,
        frontAhead,
        immersion,
        windKmh,
        baseDegrees,
        metres,
        drive,
        pull);
  }

  /** The same with one number changed. */
  public ExampleCase withoutDrive(OptionalDouble pullAboveDeck) {
    return new ExampleCase(
        stabilizerDegrees,
        frontSettingDegrees,
        frontAhead,
        immersion,
        windKmh,
        baseDegrees,
        track,
        false,
        pullAboveDeck);
  }

  /** The case. */
  public RideCase build() {
    Water water = WaterModel.at(273.15 + 18, 0.2e-3);
    Rider rider = new Rider(82, 6, 1.78, 0.5, 0.520, 0.040, 25 / 3.6, 0.55, 0);
    Board board = new Board(14, 1.650, 0.660, 0.120, 0.095, 0.060, 0.050, track);
    Battery battery = new Battery(11, 2000 * 3600.0, 1, 0.250, 0.050);
    Mast mast =
        new Mast(0.750, 0.120, 0.016, Math.toRadians(baseDegrees), 0, 3.0, 0.100, 0, Finish.CLEAN);
    Optional<Drive> pod =
        drive
            ? Optional.of(new Drive(0.180, 0, 0, 0.080, 0.260, 0.150, 5000, 0, 3.5, 0.100, 0))
            : Optional.empty();
    Fuselage fuselage = new Fuselage(0.850, 0.032, frontAhead, 0.560, 1.2, 0.100, 0);
    FittedWing front =
        new FittedWing(
            new WingSheet(0.1500, 0.900, 0.215, 0.060, 0.040, 0.025, Math.toRadians(-1))
                .shape(Sections.naca("2412")),
            Math.toRadians(frontSettingDegrees),
            0,
            1.6,
            0.100,
            0,
            Finish.CLEAN);
    FittedWing stabilizer =
        new FittedWing(
            new WingSheet(0.0350, 0.420, 0.105, 0.045, 0.020, 0, 0).shape(Sections.naca("0009")),
            Math.toRadians(stabilizerDegrees),
            0,
            0.3,
            0.100,
            0,
            Finish.CLEAN);
    return new RideCase(
        water,
        1.225,
        windKmh / 3.6,
        0.10,
        rider,
        new Setup(board, Optional.of(battery), mast, pod, fuselage, front, stabilizer, 0),
        immersion,
        pull);
  }
}
