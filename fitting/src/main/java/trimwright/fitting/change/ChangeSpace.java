package trimwright.fitting.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.stock.Joint;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.Track;
import trimwright.kernel.rig.Setup;

/**
 * Every single change that can be made to a ride. A part is offered where it is there, fits all
 * that it is bolted to, and those are known to the stock.
 */
final class ChangeSpace {
  /** Step of speed: what a rider can keep to [m/s]; 1 km/h. */
  static final double SPEED_STEP = 1 / 3.6;

  /** The trade's step of angles [rad]: half a degree. */
  static final double ANGLE_STEP = Math.toRadians(0.5);

  /**
   * Shims are looked at up to this many half degrees either way. Chosen: a stabilizer's own range.
   */
  private static final int MOST_SHIM = 6;

  /** Wedges up to this many half degrees either way. Chosen: more a wedge is not good for. */
  private static final int MOST_WEDGE = 10;

  /** Two angles or places that nobody tells apart [rad or m]. */
  private static final double SAME = 1e-6;

  private final RideAsked asked;
  private final OwnParts parts;

  ChangeSpace(RideAsked asked, OwnParts parts) {
    this.asked = asked;
    this.parts = parts;
  }

  /** The changes of a kind, those of less first. Not all of them need be possible on the board. */
  List<Change> list(ChangeKind kind) {
    return list(kind, parts.find(PartKind.STABILIZER));
  }

  /** The same beside another part: shims are those that fit it. */
  List<Change> listBeside(Change part, ChangeKind kind) {
    return list(
        kind,
        part.kind() == ChangeKind.STABILIZER
            ? parts.stock().stabilizers().stream()
                .filter(s -> part.part().filter(s.id()::equals).isPresent())
                .<StockPart<?>>map(s -> s)
                .findFirst()
            : parts.find(PartKind.STABILIZER));
  }

  private List<Change> list(ChangeKind kind, Optional<StockPart<?>> stabilizer) {
    return switch (kind) {
      case SPEED -> speeds();
      case STANCE -> steps(kind, asked.notches(), RideAsked.NOTCH);
      case TRACK -> tracks();
      case SHIM -> shims(stabilizer);
      case WEDGE -> steps(kind, MOST_WEDGE, ANGLE_STEP);
      case STABILIZER -> others(kind, PartKind.STABILIZER);
      case FRONT_WING -> others(kind, PartKind.FRONT_WING);
      case MAST -> others(kind, PartKind.MAST);
      case BOARD -> others(kind, PartKind.BOARD);
    };
  }

  private static List<Change> steps(ChangeKind kind, int count, double step) {
    List<Change> all = new ArrayList<>();
    for (int i = 1; i <= count; i++) {
      all.add(Change.by(kind, i * step));
      all.add(Change.by(kind, -i * step));
    }
    return all;
  }

  /** The rider keeps inside the speeds ridden now. */
  private List<Change> speeds() {
    double wished = asked.base().rider().wishedSpeed();
    int most =
        (int)
            Math.ceil(
                Math.max(asked.span().to() - wished, wished - asked.span().from()) / SPEED_STEP);
    return steps(ChangeKind.SPEED, Math.max(0, most), SPEED_STEP).stream()
        .filter(
            c ->
                wished + c.amount() >= asked.span().from() - SAME
                    && wished + c.amount() <= asked.span().to() + SAME)
        .toList();
  }

  /** The places that the stock knows of the board, else steps as of the feet. */
  private List<Change> tracks() {
    Optional<Track> track = parts.findBoard().map(board -> board.piece().track());
    if (track.isEmpty()) {
      return steps(ChangeKind.TRACK, asked.notches(), RideAsked.NOTCH);
    }
    double now = asked.base().setup().board().track();
    return track
        .get()
        .places()
        .map(place -> place - now)
        .filter(move -> Math.abs(move) > SAME)
        .boxed()
        .sorted((a, b) -> Double.compare(Math.abs(a), Math.abs(b)))
        .map(move -> Change.by(ChangeKind.TRACK, move))
        .toList();
  }

  /**
   * Half degrees from no shim on, and the stock's shims that fit: those first, for nobody has to
   * make them.
   */
  private List<Change> shims(Optional<StockPart<?>> stabilizer) {
    double now = asked.base().setup().shim();
    List<Change> all = new ArrayList<>();
    for (StockPart<Shim> shim : parts.stock().shims()) {
      double turn = shim.piece().angle() - now;
      if (shim.holding().isThere()
          && stabilizer.filter(s -> s.fits(shim, Joint.STABILIZER_SHIM)).isPresent()
          && Math.abs(turn) > SAME
          && all.stream().noneMatch(c -> Math.abs(c.amount() - turn) < SAME)) {
        all.add(new Change(ChangeKind.SHIM, turn, Optional.of(shim.id())));
      }
    }
    for (int i = -MOST_SHIM; i <= MOST_SHIM; i++) {
      double turn = i * ANGLE_STEP - now;
      if (Math.abs(turn) > SAME
          && all.stream().noneMatch(c -> Math.abs(c.amount() - turn) < SAME)) {
        all.add(Change.by(ChangeKind.SHIM, turn));
      }
    }
    all.sort((a, b) -> Double.compare(Math.abs(a.amount()), Math.abs(b.amount())));
    return all;
  }

  private List<Change> others(ChangeKind change, PartKind kind) {
    return parts.stock().list(kind).stream()
        .filter(part -> part.holding().isThere())
        .filter(part -> !part.id().equals(parts.own().get(kind)))
        .filter(part -> joints(kind).allMatch(joint -> fits(part, joint, kind)))
        .map(part -> Change.to(change, part.id()))
        .toList();
  }

  /** The joints at which a part meets others of the present setup. */
  private Stream<Joint> joints(PartKind kind) {
    return Joint.of(kind).filter(joint -> isThere(joint.across(kind)));
  }

  private boolean isThere(PartKind kind) {
    Setup setup = asked.base().setup();
    return switch (kind) {
      case BATTERY -> setup.battery().isPresent();
      case DRIVE -> setup.drive().isPresent();
      // A shim that does not fit the new stabilizer is left out, not the stabilizer.
      case SHIM -> false;
      default -> true;
    };
  }

  private boolean fits(StockPart<?> part, Joint joint, PartKind kind) {
    return parts.find(joint.across(kind)).filter(other -> part.fits(other, joint)).isPresent();
  }

  /** Kinds of present parts that would have to be known for parts of a kind to be offered. */
  List<PartKind> unknown(PartKind kind) {
    return joints(kind)
        .map(joint -> joint.across(kind))
        .filter(other -> parts.find(other).isEmpty())
        .toList();
  }
}
