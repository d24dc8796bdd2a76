package trimwright.fitting.change;

import java.util.List;
import java.util.Optional;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.Overlap;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.TrackedBoard;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;

/** Makes changes to a ride. */
public final class SetupChanger {
  /** Half the width of a foot that stands across the board [m]. Chosen. */
  private static final double HALF_FOOT = 0.05;

  /** Either end of the mast's places and of its wedge, as a case file takes them [m], [rad]. */
  private static final double TRACK_END = 0.4;

  private static final double BASE_END = Math.toRadians(10);

  private static final double ROUNDING = 1e-9;

  private final RideCase base;
  private final OwnParts parts;

  /**
   * A changer.
   *
   * @param base the ride as it is
   * @param parts where other parts come from
   */
  public SetupChanger(RideCase base, OwnParts parts) {
    this.base = base;
    this.parts = parts;
  }

  /**
   * The ride after changes.
   *
   * @param changes at most one of a kind
   * @return the ride; empty where a foot would leave the board, wings would meet, or mast or wedge
   *     would go beyond what a case may say. Whether it can be ridden is not looked at
   */
  Optional<RideCase> after(List<Change> changes) {
    Setup s = base.setup();
    Rider r = base.rider();
    // Parts first: a wedge goes under the mast that is there then.
    for (Change change : partsFirst(changes)) {
      s = changed(s, change);
      r = changed(r, change);
    }
    Optional<Change> shim = find(changes, ChangeKind.SHIM);
    if (shim.isEmpty()) {
      s =
          find(changes, ChangeKind.STABILIZER).filter(c -> !shimGoesAlong(c)).isPresent()
              ? bare(s)
              : s;
    }
    if (!fits(s) || !changes.isEmpty() && movesFeet(changes) && !standsOn(s.board(), r)) {
      return Optional.empty();
    }
    return Optional.of(
        new RideCase(
            base.water(),
            base.airDensity(),
            base.headWind(),
            base.chopHeight(),
            r,
            s,
            base.immersion(),
            base.pullAboveDeck(),
            base.limits()));
  }

  /**
   * The order in which changes are made: parts, then amounts.
   *
   * @param changes in any order
   */
  public static List<Change> partsFirst(List<Change> changes) {
    return changes.stream()
        .sorted((a, b) -> Boolean.compare(b.kind().isPart(), a.kind().isPart()))
        .toList();
  }

  private static Optional<Change> find(List<Change> changes, ChangeKind kind) {
    return changes.stream().filter(c -> c.kind() == kind).findFirst();
  }

  private static Setup bare(Setup s) {
    return new Setup(
        s.board(),
        s.battery(),
        s.mast(),
        s.drive(),
        s.fuselage(),
        s.frontWing(),
        s.stabilizer(),
        0);
  }

  private static boolean movesFeet(List<Change> changes) {
    return changes.stream()
        .anyMatch(c -> c.kind() == ChangeKind.STANCE || c.kind() == ChangeKind.BOARD);
  }

  private static boolean standsOn(Board board, Rider rider) {
    double half = 0.5 * board.length();
    return rider.frontFoot() + HALF_FOOT <= board.massCentreAhead() + half
        && rider.backFoot() - HALF_FOOT >= board.massCentreAhead() - half;
  }

  private boolean fits(Setup s) {
    return Overlap.none(s.fuselage(), s.frontWing(), s.stabilizer())
        && Math.abs(s.board().track()) <= TRACK_END + ROUNDING
        && Math.abs(s.mast().baseAngle()) <= BASE_END + ROUNDING;
  }

  private static Rider changed(Rider r, Change change) {
    double feet = change.kind() == ChangeKind.STANCE ? change.amount() : 0;
    double faster = change.kind() == ChangeKind.SPEED ? change.amount() : 0;
    return new Rider(
        r.mass(),
        r.kitMass(),
        r.height(),
        r.airDragArea(),
        r.frontFoot() + feet,
        r.backFoot() + feet,
        r.wishedSpeed() + faster,
        r.wishedFootShare(),
        r.wishedPitch());
  }

  private Setup changed(Setup s, Change change) {
    Board board = s.board();
    Mast mast = s.mast();
    FittedWing frontWing = s.frontWing();
    FittedWing stabilizer = s.stabilizer();
    double shim = s.shim();
    switch (change.kind()) {
      case SPEED, STANCE -> {
        return s;
      }
      case TRACK -> board = moved(board, board.track() + change.amount());
      case SHIM -> shim += change.amount();
      case WEDGE -> mast = wedged(mast, mast.baseAngle() + change.amount());
      case STABILIZER -> stabilizer = find(parts.stock().stabilizers(), change).piece();
      case FRONT_WING -> frontWing = find(parts.stock().frontWings(), change).piece();
      case MAST -> mast = find(parts.stock().masts(), change).piece();
      case BOARD -> board = moved(find(parts.stock().boards(), change).piece(), board.track());
    }
    return new Setup(
        board, s.battery(), mast, s.drive(), s.fuselage(), frontWing, stabilizer, shim);
  }

  /**
   * Whether the present shim fits another stabilizer as it fits the present one. No shim does; one
   * that the stock does not have is taken not to.
   *
   * @param change to another stabilizer
   */
  public boolean shimGoesAlong(Change change) {
    StockPart<FittedWing> to = find(parts.stock().stabilizers(), change);
    return base.setup().shim() == 0
        || parts
            .find(PartKind.SHIM)
            .filter(shim -> to.fits(shim, Joint.STABILIZER_SHIM))
            .isPresent();
  }

  /**
   * Where the mast stands on another board.
   *
   * @param change to another board
   * @return the place nearest to the present one, forward of the track's middle [m]
   */
  public double place(Change change) {
    return place(find(parts.stock().boards(), change).piece(), base.setup().board().track());
  }

  private static double place(TrackedBoard board, double now) {
    return board
        .track()
        .places()
        .boxed()
        .min((a, b) -> Double.compare(Math.abs(a - now), Math.abs(b - now)))
        .orElse(0.0);
  }

  private static Board moved(TrackedBoard board, double now) {
    return board.at(place(board, now));
  }

  private static <P> StockPart<P> find(List<StockPart<P>> parts, Change change) {
    String id = change.part().orElseThrow();
    return parts.stream()
        .filter(part -> part.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("the stock has no " + id));
  }

  private static Board moved(Board b, double track) {
    return new Board(
        b.mass(),
        b.length(),
        b.width(),
        b.thickness(),
        b.volume(),
        b.massCentreAhead(),
        b.massCentreBelowDeck(),
        track);
  }

  private static Mast wedged(Mast m, double baseAngle) {
    return new Mast(
        m.length(),
        m.chord(),
        m.thickness(),
        baseAngle,
        m.rake(),
        m.mass(),
        m.massAboveAxis(),
        m.volume(),
        m.finish());
  }
}
