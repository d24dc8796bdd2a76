package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.stock.Holding;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.Mounts;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.PartState;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockBattery;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.Track;
import trimwright.fitting.stock.TrackedBoard;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.quick.PairContent;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.WingSheet;
import trimwright.kernel.water.WaterModel;

/** A small stock that flies, and riders for it; all made up. */
public final class ExampleStock {
  /** Water of 18 °C [K]. */
  public static final double TEMPERATURE = 291.15;

  /** Tables that the tests share: each is made once. */
  public static final PairTables TABLES = new Kept();

  private static final double KMH = 1 / 3.6;

  private ExampleStock() {}

  private static final class Kept implements PairTables {
    private final Map<List<Double>, PairTable> tables = new HashMap<>();

    @Override
    public synchronized PairTable of(trimwright.kernel.rig.Craft craft) {
      List<Double> content = new ArrayList<>();
      for (double value : PairContent.of(craft)) {
        content.add(value);
      }
      return tables.computeIfAbsent(content, key -> PairTable.of(craft));
    }
  }

  /** Two boards, two masts, one fuselage, three front wings, two stabilizers, two shims. */
  public static Stock stock() {
    return new Stock(
        List.of(
            part(
                PartKind.BOARD,
                "board-long",
                new TrackedBoard(
                    new Board(14, 1.65, 0.66, 0.12, 0.095, 0.06, 0.05, 0),
                    new Track(-0.02, 0.02, 0.02))),
            part(
                PartKind.BOARD,
                "board-short",
                new TrackedBoard(
                    new Board(9, 1.4, 0.56, 0.105, 0.06, 0.05, 0.05, 0), Track.MIDDLE))),
        List.of(
            part(
                PartKind.BATTERY,
                "battery",
                new StockBattery(
                    new Battery(11, 7.2e6, 0.85, 0.25, 0.05), OptionalDouble.empty()))),
        List.of(
            part(
                PartKind.MAST,
                "mast-750",
                new Mast(0.75, 0.12, 0.016, Math.toRadians(-2.5), 0, 3, 0.1, 0, Finish.CLEAN)),
            part(
                PartKind.MAST,
                "mast-500",
                new Mast(0.5, 0.12, 0.016, Math.toRadians(-1.5), 0, 2.4, 0.1, 0, Finish.CLEAN))),
        List.of(
            part(
                PartKind.DRIVE,
                "drive",
                new Drive(0.18, 0, 0, 0.08, 0.26, 0.15, 5000, 0, 3.5, 0.1, 0))),
        List.of(
            part(
                PartKind.FUSELAGE, "fuselage", new Fuselage(0.85, 0.032, 0.15, 0.56, 1.2, 0.1, 0))),
        List.of(
            part(PartKind.FRONT_WING, "wing-1500", wing(0.15, 0.9, 0.215, 0.06, "2412", 1.6, 0)),
            part(PartKind.FRONT_WING, "wing-1000", wing(0.1, 0.78, 0.165, 0.05, "2410", 1.2, 0)),
            part(PartKind.FRONT_WING, "wing-450", wing(0.045, 0.56, 0.105, 0.035, "2410", 0.7, 0))),
        List.of(
            part(
                PartKind.STABILIZER,
                "stabilizer-350",
                wing(0.035, 0.42, 0.105, 0.045, "0009", 0.3, Math.toRadians(-2))),
            part(
                PartKind.STABILIZER,
                "stabilizer-220",
                wing(0.022, 0.36, 0.078, 0.032, "0009", 0.2, Math.toRadians(-1.5)))),
        List.of(
            part(PartKind.SHIM, "shim-up-10", new Shim(Math.toRadians(1))),
            part(PartKind.SHIM, "shim-down-10", new Shim(Math.toRadians(-1)))));
  }

  private static FittedWing wing(
      double area,
      double span,
      double root,
      double tip,
      String section,
      double mass,
      double setting) {
    WingSheet sheet = new WingSheet(area, span, root, tip, 0.02, 0.01, 0);
    return new FittedWing(
        sheet.shape(Sections.naca(section)), setting, 0, mass, 0.1, 0, Finish.CLEAN);
  }

  private static <P> StockPart<P> part(PartKind kind, String id, P piece) {
    Map<Joint, Set<String>> mounts = new HashMap<>();
    Joint.of(kind).forEach(joint -> mounts.put(joint, Set.of("one")));
    return new StockPart<>(
        id,
        piece,
        new Mounts(mounts),
        new Holding(1, PartState.DEMO, OptionalDouble.empty(), KnownBy.SHEET));
  }

  /** All of a stock's driven setups. */
  public static SetupSpace space(Stock stock) {
    return SetupSpace.of(stock, Propulsion.DRIVEN);
  }

  /** A rider of 82 kg at 25 km/h. */
  public static Rider rider() {
    return rider(82, 25);
  }

  /** A rider of a mass [kg] and a wished speed [km/h]. */
  public static Rider rider(double mass, double speed) {
    return new Rider(mass, 6, 1.78, 0.5, 0.52, 0.04, speed * KMH, 0.55, 0);
  }

  /** A rider on any of the setups, in fresh water. */
  public static RideAsked asked(Rider rider, RidingKind kind) {
    SetupSpace space = space(stock());
    RideCase base =
        new RideCase(
            WaterModel.at(TEMPERATURE, 0.2e-3),
            1.225,
            0,
            0.1,
            rider,
            space.setups().findFirst().orElseThrow().setup(TEMPERATURE),
            0.45,
            OptionalDouble.empty());
    return new RideAsked(
        base,
        RideSpan.about(rider.wishedSpeed()),
        Wishes.of(kind),
        RideAsked.USUAL_REACH,
        Posture.STANDING,
        Optional.empty());
  }
}
