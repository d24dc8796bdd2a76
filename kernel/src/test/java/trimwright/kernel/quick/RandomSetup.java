package trimwright.kernel.quick;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
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
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.surface.WingSheet;
import trimwright.kernel.water.WaterModel;

/** Riders on parts as a shop may have them, drawn from a seed. */
public final class RandomSetup {
  private static final String[] FRONT_SECTIONS = {"2410", "2412", "3412", "4412", "4410"};
  private static final String[] TAIL_SECTIONS = {"0009", "0010", "0012", "1410"};

  private final SplittableRandom random;

  private RandomSetup(long seed) {
    random = new SplittableRandom(seed);
  }

  private double between(double from, double to) {
    return from + (to - from) * random.nextDouble();
  }

  private double degrees(double from, double to) {
    return Math.toRadians(between(from, to));
  }

  private boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** The case of a seed. */
  public static RideCase of(long seed) {
    return new RandomSetup(seed).draw();
  }

  private RideCase draw() {
    double back = between(-0.05, 0.15);
    Rider rider =
        new Rider(
            between(45, 115),
            between(2, 8),
            between(1.5, 1.95),
            between(0.35, 0.65),
            back + between(0.35, 0.6),
            back,
            between(4, 10),
            0.55,
            0);
    Board board =
        new Board(
            between(5, 16),
            between(1.2, 2.0),
            0.6,
            between(0.08, 0.13),
            0.08,
            between(-0.1, 0.2),
            0.05,
            between(-0.04, 0.04));
    Mast mast =
        new Mast(
            between(0.6, 0.9),
            between(0.1, 0.13),
            between(0.013, 0.019),
            degrees(-3, 2),
            chance(0.3) ? degrees(-4, 4) : 0,
            between(1.5, 3.5),
            0.1,
            0,
            Finish.CLEAN);
    Optional<Drive> drive =
        chance(0.7)
            ? Optional.of(
                new Drive(
                    between(0, 0.22),
                    between(-0.05, 0.15),
                    degrees(-2, 2),
                    between(0.06, 0.1),
                    between(0.2, 0.35),
                    between(0.12, 0.18),
                    between(2500, 6000),
                    0,
                    3.5,
                    0.1,
                    0))
            : Optional.empty();
    Optional<Battery> battery =
        drive.map(d -> new Battery(between(6, 14), 7.2e6, 1, between(-0.1, 0.4), 0.05));
    OptionalDouble pull =
        drive.isEmpty() && chance(0.5)
            ? OptionalDouble.of(between(0.9, 1.4))
            : OptionalDouble.empty();
    Fuselage fuselage =
        new Fuselage(
            0.8, between(0.025, 0.035), between(0.05, 0.25), between(0.4, 0.75), 1, 0.1, 0);
    return new RideCase(
        WaterModel.at(273.15 + between(8, 28), chance(0.5) ? 0.2e-3 : 35e-3),
        1.225,
        between(-3, 6),
        0.1,
        rider,
        new Setup(
            board,
            battery,
            mast,
            drive,
            fuselage,
            frontWing(),
            stabilizer(),
            chance(0.2) ? 0 : degrees(-3, 3)),
        between(0.2, 0.6),
        pull);
  }

  private FittedWing frontWing() {
    double area = between(0.07, 0.24);
    return new FittedWing(
        sheet(area, between(4, 10), -0.02, degrees(-2, 0))
            .shape(Sections.naca(FRONT_SECTIONS[random.nextInt(FRONT_SECTIONS.length)])),
        chance(0.5) ? 0 : degrees(-1, 2),
        0,
        1.5,
        0.1,
        0,
        chance(0.8) ? Finish.CLEAN : Finish.SCUFFED);
  }

  private FittedWing stabilizer() {
    double area = between(0.016, 0.05);
    WingShape shape =
        sheet(area, between(4, 8), -0.02, 0)
            .shape(Sections.naca(TAIL_SECTIONS[random.nextInt(TAIL_SECTIONS.length)]));
    return new FittedWing(
        shape,
        degrees(-3, 0.5),
        chance(0.5) ? 0 : between(-0.03, 0.03),
        0.3,
        0.1,
        0,
        chance(0.8) ? Finish.CLEAN : Finish.SCUFFED);
  }

  /** Root and tip chords that an exponent of about 2.2 would have. */
  private WingSheet sheet(double area, double aspectRatio, double leastDrop, double twist) {
    double span = Math.sqrt(area * aspectRatio);
    double taper = between(0.25, 0.6);
    double root = area / span / (taper + (1 - taper) * between(0.72, 0.85));
    return new WingSheet(
        area,
        span,
        root,
        taper * root,
        between(0, 0.35) * root,
        between(leastDrop, 0.06) * span,
        twist);
  }
}
