package trimwright.fitting.stock;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Fuselage;
import trimwright.kernel.rig.Mast;

/**
 * Every setup that mounts together from the parts of a stock that are there, with every shim (none
 * included) and every place of the track. Nothing is listed before it is asked for; the order is
 * the stock's own: upper halves first, then foils, then track from behind.
 *
 * <p>Wings that would overlap on their fuselage do not mount. What a ride asks of a setup (depth,
 * drive under water, loads) is not looked at. One part is on one setup only: setups are choices for
 * one rider, so that how many there are of a part does not matter beyond one.
 */
public final class SetupSpace {
  private final Stock there;
  private final Propulsion propulsion;

  private SetupSpace(Stock there, Propulsion propulsion) {
    this.there = there;
    this.propulsion = propulsion;
  }

  /**
   * The setups of a stock.
   *
   * @param stock the stock; what is out of it takes no part
   * @param propulsion with or without battery and drive
   */
  public static SetupSpace of(Stock stock, Propulsion propulsion) {
    Objects.requireNonNull(propulsion, "propulsion");
    Stock there =
        new Stock(
            there(stock.boards()),
            there(stock.batteries()),
            there(stock.masts()),
            there(stock.drives()),
            there(stock.fuselages()),
            there(stock.frontWings()),
            there(stock.stabilizers()),
            there(stock.shims()));
    return new SetupSpace(there, propulsion);
  }

  private static <P> List<StockPart<P>> there(List<StockPart<P>> parts) {
    return parts.stream().filter(part -> part.holding().isThere()).toList();
  }

  /** With or without battery and drive. */
  public Propulsion propulsion() {
    return propulsion;
  }

  /** The parts that take part. */
  public Stock stock() {
    return there;
  }

  /** Every upper half, lazily. */
  public Stream<BoardSet> boardSets() {
    return there.boards().stream()
        .flatMap(
            board ->
                there.masts().stream()
                    .filter(mast -> board.fits(mast, Joint.BOARD_MAST))
                    .flatMap(mast -> boardSets(board, mast)));
  }

  private Stream<BoardSet> boardSets(StockPart<TrackedBoard> board, StockPart<Mast> mast) {
    if (propulsion == Propulsion.TOWED) {
      return Stream.of(new BoardSet(board, Optional.empty(), mast, Optional.empty()));
    }
    return there.batteries().stream()
        .filter(battery -> board.fits(battery, Joint.BOARD_BATTERY))
        .flatMap(
            battery ->
                drives(mast)
                    .map(
                        drive ->
                            new BoardSet(board, Optional.of(battery), mast, Optional.of(drive))));
  }

  private Stream<StockPart<Drive>> drives(StockPart<Mast> mast) {
    return there.drives().stream().filter(drive -> mast.fits(drive, Joint.MAST_DRIVE));
  }

  /** Every foil, lazily; also those of fuselages that fit no mast. */
  public Stream<FoilSet> foilSets() {
    return there.fuselages().stream().flatMap(this::foilSets);
  }

  /**
   * Every foil of a mast, lazily.
   *
   * @param mast a mast of the stock
   */
  public Stream<FoilSet> foilSetsOn(StockPart<Mast> mast) {
    return there.fuselages().stream()
        .filter(fuselage -> mast.fits(fuselage, Joint.MAST_FUSELAGE))
        .flatMap(this::foilSets);
  }

  private Stream<FoilSet> foilSets(StockPart<Fuselage> fuselage) {
    return there.frontWings().stream()
        .filter(wing -> fuselage.fits(wing, Joint.FUSELAGE_FRONT_WING))
        .flatMap(
            wing ->
                stabilizers(fuselage)
                    .filter(stabilizer -> Overlap.none(fuselage, wing, stabilizer))
                    .flatMap(
                        stabilizer ->
                            shims(stabilizer)
                                .map(shim -> new FoilSet(fuselage, wing, stabilizer, shim))));
  }

  private Stream<StockPart<FittedWing>> stabilizers(StockPart<Fuselage> fuselage) {
    return there.stabilizers().stream()
        .filter(stabilizer -> fuselage.fits(stabilizer, Joint.FUSELAGE_STABILIZER));
  }

  private Stream<Optional<StockPart<Shim>>> shims(StockPart<FittedWing> stabilizer) {
    return Stream.concat(
        Stream.of(Optional.empty()),
        there.shims().stream()
            .filter(shim -> stabilizer.fits(shim, Joint.STABILIZER_SHIM))
            .map(Optional::of));
  }

  /** Every setup, lazily, the same order each time. */
  public Stream<StockSetup> setups() {
    return boardSets()
        .flatMap(
            upper ->
                foilSetsOn(upper.mast())
                    .flatMap(
                        foil ->
                            upper
                                .board()
                                .piece()
                                .track()
                                .places()
                                .mapToObj(place -> new StockSetup(upper, foil, place))));
  }

  /**
   * How many setups there are, by sums and products over the joints: none is listed.
   *
   * @throws ArithmeticException if they are more than a long holds
   */
  public long count() {
    long all = 0;
    for (StockPart<Mast> mast : there.masts()) {
      long foils = countFoilSetsOn(mast);
      long drives = propulsion == Propulsion.TOWED ? 1 : drives(mast).count();
      long below = Math.multiplyExact(drives, foils);
      for (StockPart<TrackedBoard> board : there.boards()) {
        if (board.fits(mast, Joint.BOARD_MAST)) {
          long above = Math.multiplyExact(batteries(board), (long) board.piece().track().count());
          all = Math.addExact(all, Math.multiplyExact(above, below));
        }
      }
    }
    return all;
  }

  private long batteries(StockPart<TrackedBoard> board) {
    return propulsion == Propulsion.TOWED
        ? 1
        : there.batteries().stream()
            .filter(battery -> board.fits(battery, Joint.BOARD_BATTERY))
            .count();
  }

  /**
   * How many foils a mast takes; none is listed.
   *
   * @param mast a mast of the stock
   */
  public long countFoilSetsOn(StockPart<Mast> mast) {
    return there.fuselages().stream()
        .filter(fuselage -> mast.fits(fuselage, Joint.MAST_FUSELAGE))
        .mapToLong(this::countFoilSets)
        .sum();
  }

  private long countFoilSets(StockPart<Fuselage> fuselage) {
    return stabilizers(fuselage)
        .mapToLong(
            stabilizer ->
                Math.multiplyExact(
                    shims(stabilizer).count(),
                    there.frontWings().stream()
                        .filter(wing -> fuselage.fits(wing, Joint.FUSELAGE_FRONT_WING))
                        .filter(wing -> Overlap.none(fuselage, wing, stabilizer))
                        .count()))
        .sum();
  }
}
