package trimwright.exchange.read;

import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import trimwright.exchange.read.internal.Values;
import trimwright.fitting.stock.Holding;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.Mounts;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.PartState;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockBattery;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.Track;
import trimwright.fitting.stock.TrackedBoard;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.propel.Cells;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.surface.WingShape;

/** Carries the values of an accepted, filled stock file over into the types of fitting. */
final class StockMapping {
  private final Values root;
  private final Map<String, WingShape> shapes;

  private StockMapping(Values root, Map<String, WingShape> shapes) {
    this.root = root;
    this.shapes = shapes;
  }

  /**
   * The stock.
   *
   * @param root the document
   * @param shapes the wings' geometry by path
   */
  static Stock stock(Values root, Map<String, WingShape> shapes) {
    StockMapping mapping = new StockMapping(root, shapes);
    return new Stock(
        mapping.parts(StockList.BOARDS, StockMapping::board),
        mapping.parts(StockList.BATTERIES, StockMapping::battery),
        mapping.parts(StockList.MASTS, CaseMapping::mast),
        mapping.parts(StockList.DRIVES, CaseMapping::drive),
        mapping.parts(StockList.FUSELAGES, CaseMapping::fuselage),
        mapping.parts(StockList.FRONT_WINGS, mapping::wing),
        mapping.parts(StockList.STABILIZERS, mapping::wing),
        mapping.parts(StockList.SHIMS, shim -> new Shim(shim.get("angle_deg"))));
  }

  private <P> List<StockPart<P>> parts(StockList list, Function<Values, P> piece) {
    return root.listGroups(list.key()).stream()
        .map(
            part ->
                new StockPart<>(
                    part.findText("id").orElseThrow(),
                    piece.apply(part),
                    mounts(list.kind(), part),
                    holding(part)))
        .toList();
  }

  private static Mounts mounts(PartKind kind, Values part) {
    Map<Joint, Set<String>> standards = new EnumMap<>(Joint.class);
    Joint.of(kind)
        .forEach(
            joint ->
                standards.put(
                    joint,
                    new HashSet<>(StockChecks.texts(part, StockList.key(joint.across(kind))))));
    return new Mounts(standards);
  }

  private static Holding holding(Values part) {
    return new Holding(
        (int) part.get("count"),
        CaseMapping.coded(
            PartState.values(),
            state -> state.name().toLowerCase(Locale.ROOT),
            part.findText("state")),
        part.find("price"),
        CaseMapping.knownBy(part).orElse(KnownBy.SHEET));
  }

  private static TrackedBoard board(Values board) {
    return new TrackedBoard(
        CaseMapping.board(board, 0),
        board
            .findGroup("track")
            .map(track -> track(track.get("from_mm"), track.get("to_mm"), track.get("step_mm")))
            .orElse(Track.MIDDLE));
  }

  private static Track track(double from, double to, double step) {
    return from == to ? new Track(from, to, 0) : new Track(from, to, step);
  }

  private static StockBattery battery(Values battery) {
    return new StockBattery(
        CaseMapping.battery(battery, Cells.RATED_TEMPERATURE), battery.find("temperature_c"));
  }

  private FittedWing wing(Values wing) {
    return CaseMapping.wing(wing, shapes.get(wing.path()));
  }
}
