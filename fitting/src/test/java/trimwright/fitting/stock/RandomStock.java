package trimwright.fitting.stock;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.propel.Powerplant;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/** Small stocks of made-up parts with mounts and states drawn by chance. */
final class RandomStock {
  private static final Section SECTION = Sections.naca("naca2412");
  private static final List<String> STANDARDS = List.of("one", "two", "three");
  private static final int MOST_ALIKE = 4;

  private final SplittableRandom chance;

  RandomStock(long seed) {
    chance = new SplittableRandom(seed);
  }

  Stock stock() {
    return new Stock(
        parts(PartKind.BOARD, i -> board()),
        parts(PartKind.BATTERY, i -> battery()),
        parts(PartKind.MAST, i -> mast()),
        parts(PartKind.DRIVE, i -> drive()),
        parts(PartKind.FUSELAGE, i -> fuselage()),
        parts(PartKind.FRONT_WING, i -> wing(0.05 + 0.3 * chance.nextDouble())),
        parts(PartKind.STABILIZER, i -> wing(0.03 + 0.1 * chance.nextDouble())),
        parts(PartKind.SHIM, i -> new Shim(0.01 * (i + 1))));
  }

  /** The stock with one more part of some kind. */
  Stock grown(Stock stock) {
    PartKind kind = PartKind.values()[chance.nextInt(PartKind.values().length)];
    return new Stock(
        more(kind, PartKind.BOARD, stock.boards(), board()),
        more(kind, PartKind.BATTERY, stock.batteries(), battery()),
        more(kind, PartKind.MAST, stock.masts(), mast()),
        more(kind, PartKind.DRIVE, stock.drives(), drive()),
        more(kind, PartKind.FUSELAGE, stock.fuselages(), fuselage()),
        more(kind, PartKind.FRONT_WING, stock.frontWings(), wing(0.2)),
        more(kind, PartKind.STABILIZER, stock.stabilizers(), wing(0.1)),
        more(kind, PartKind.SHIM, stock.shims(), new Shim(0.005)));
  }

  private <P> List<StockPart<P>> more(
      PartKind wanted, PartKind kind, List<StockPart<P>> parts, P piece) {
    List<StockPart<P>> all = new ArrayList<>(parts);
    if (wanted == kind) {
      all.add(chance.nextInt(all.size() + 1), part("new", kind, piece));
    }
    return all;
  }

  private <P> List<StockPart<P>> parts(PartKind kind, IntFunction<P> piece) {
    int count = chance.nextInt(24) == 0 ? 0 : 1 + chance.nextInt(MOST_ALIKE);
    return IntStream.range(0, count)
        .mapToObj(i -> part(kind + "-" + i, kind, piece.apply(i)))
        .toList();
  }

  private <P> StockPart<P> part(String id, PartKind kind, P piece) {
    Map<Joint, Set<String>> mounts = new EnumMap<>(Joint.class);
    Joint.of(kind).forEach(joint -> mounts.put(joint, standards()));
    PartState[] states = {
      PartState.DEMO, PartState.NEW, PartState.DEMO, PartState.NEW, PartState.DEMO, PartState.OUT
    };
    Holding holding =
        new Holding(
            chance.nextInt(16) == 0 ? 0 : 1 + chance.nextInt(3),
            states[chance.nextInt(states.length)],
            OptionalDouble.empty(),
            KnownBy.SHEET);
    return new StockPart<>(id, piece, new Mounts(mounts), holding);
  }

  private Set<String> standards() {
    Set<String> some = new HashSet<>();
    for (String standard : STANDARDS) {
      if (chance.nextInt(3) > 0) {
        some.add(standard);
      }
    }
    return some;
  }

  private TrackedBoard board() {
    Track track =
        chance.nextBoolean()
            ? Track.MIDDLE
            : new Track(-0.02 * chance.nextInt(3), 0.02 * chance.nextInt(3), 0.02);
    return new TrackedBoard(new Board(14, 1.6, 0.65, 0.12, 0.09, 0.06, 0.05, 0), track);
  }

  private static StockBattery battery() {
    return new StockBattery(new Battery(11, 7e6, 0.85, 0.25, 0.05), OptionalDouble.empty());
  }

  private static Mast mast() {
    return new Mast(0.75, 0.12, 0.016, -0.04, 0, 3, 0.1, 0, Finish.CLEAN);
  }

  private static Drive drive() {
    return new Drive(0.18, 0, 0, 0.08, 0.26, 0.15, 5000, 0.5, 3.5, 0.1, 0, Powerplant.UNKNOWN);
  }

  private Fuselage fuselage() {
    double behind = 0.1 + 0.5 * chance.nextDouble();
    return new Fuselage(0.8, 0.03, 0.1, behind, 1, 0.1, 0);
  }

  private static FittedWing wing(double rootChord) {
    WingShape shape =
        new WingShape(
            0.9,
            List.of(
                new Station(0, rootChord, 0, 0, 0, SECTION),
                new Station(1, 0.3 * rootChord, 0, 0, 0, SECTION)));
    return new FittedWing(shape, 0, 0, 1.5, 0.1, 0, Finish.CLEAN);
  }
}
