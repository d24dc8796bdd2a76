package trimwright.fitting.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static trimwright.fitting.change.SampleRide.DEGREE;
import static trimwright.fitting.change.SampleRide.LEVEL;
import static trimwright.fitting.change.SampleRide.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.PartState;
import trimwright.fitting.stock.Shim;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.Track;
import trimwright.fitting.stock.TrackedBoard;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.Setup;

/** Which changes there are, and what they make of a setup. */
class ChangeSpaceTest {
  private static final FittedWing SMALL = SampleRide.wing(0.38, 0.09, 0.04, "naca0009", -0.03, 0.2);

  private static final Setup SETUP = LEVEL.ride().setup();

  /** The sample's own parts, and others that fit, do not fit, are out, or are none left. */
  private static OwnParts parts(Track track) {
    Stock stock =
        new Stock(
            List.of(
                part("own-board", PartKind.BOARD, new TrackedBoard(SampleRide.board(1.65), track)),
                part("board", PartKind.BOARD, new TrackedBoard(SampleRide.board(1.5), track))),
            List.of(),
            List.of(part("own-mast", PartKind.MAST, SETUP.mast())),
            List.of(part("own-drive", PartKind.DRIVE, SETUP.drive().orElseThrow())),
            List.of(part("own-fuselage", PartKind.FUSELAGE, SETUP.fuselage())),
            List.of(part("own-wing", PartKind.FRONT_WING, SETUP.frontWing())),
            List.of(
                part("own-stabilizer", PartKind.STABILIZER, SETUP.stabilizer()),
                part("small", PartKind.STABILIZER, SMALL),
                part("odd", PartKind.STABILIZER, SMALL, "two", 1, PartState.DEMO),
                part("out", PartKind.STABILIZER, SMALL, "one", 1, PartState.OUT),
                part("none", PartKind.STABILIZER, SMALL, "one", 0, PartState.NEW)),
            List.of(
                part("up", PartKind.SHIM, new Shim(DEGREE)),
                part("odd-shim", PartKind.SHIM, new Shim(0.7 * DEGREE), "two", 1, PartState.NEW)));
    return new OwnParts(
        stock,
        Map.of(
            PartKind.BOARD, "own-board",
            PartKind.MAST, "own-mast",
            PartKind.DRIVE, "own-drive",
            PartKind.FUSELAGE, "own-fuselage",
            PartKind.FRONT_WING, "own-wing",
            PartKind.STABILIZER, "own-stabilizer"));
  }

  @Test
  void theLeastEffortComesFirst() {
    assertThat(ChangeKind.values())
        .containsExactly(
            ChangeKind.SPEED,
            ChangeKind.STANCE,
            ChangeKind.TRACK,
            ChangeKind.SHIM,
            ChangeKind.WEDGE,
            ChangeKind.STABILIZER,
            ChangeKind.FRONT_WING,
            ChangeKind.MAST,
            ChangeKind.BOARD);
  }

  @Test
  void amountsAreTheTradesSteps() {
    ChangeSpace space = new ChangeSpace(LEVEL.asked(), OwnParts.NONE);
    assertThat(space.list(ChangeKind.STANCE)).hasSize(40);
    whole(space.list(ChangeKind.STANCE), 0.005);
    whole(space.list(ChangeKind.TRACK), 0.005);
    whole(space.list(ChangeKind.WEDGE), 0.5 * DEGREE);
    whole(space.list(ChangeKind.SPEED), SampleRide.KMH);
    for (Change speed : space.list(ChangeKind.SPEED)) {
      assertThat(LEVEL.wishedSpeed() + speed.amount())
          .isBetween(LEVEL.asked().span().from() - 1e-6, LEVEL.asked().span().to() + 1e-6);
    }
    for (ChangeKind kind : ChangeKind.values()) {
      if (kind.isPart()) {
        assertThat(space.list(kind)).isEmpty();
      }
    }
  }

  private static void whole(List<Change> changes, double step) {
    assertThat(changes).isNotEmpty();
    for (Change change : changes) {
      double steps = change.amount() / step;
      assertThat(steps).isCloseTo(Math.rint(steps), within(1e-9)).isNotZero();
    }
  }

  @Test
  void shimsStandOnHalfDegreesWhateverIsThereNow() {
    SampleRide odd = LEVEL.withShim(0.3 * DEGREE);
    for (Change shim : new ChangeSpace(odd.asked(), OwnParts.NONE).list(ChangeKind.SHIM)) {
      double halves = (odd.shim() + shim.amount()) / (0.5 * DEGREE);
      assertThat(halves).isCloseTo(Math.rint(halves), within(1e-9));
    }
  }

  @Test
  void theStocksShimGoesBeforeOneThatHasToBeMade() {
    List<Change> shims = new ChangeSpace(LEVEL.asked(), parts(Track.MIDDLE)).list(ChangeKind.SHIM);
    assertThat(shims)
        .filteredOn(c -> Math.abs(c.amount() - 0.5 * DEGREE) < 1e-9)
        .singleElement()
        .extracting(Change::part)
        .isEqualTo(Optional.of("up"));
    assertThat(shims).noneMatch(c -> c.part().equals(Optional.of("odd-shim")));
  }

  @Test
  void onlyPartsThatAreThereAndFitAreOffered() {
    ChangeSpace space = new ChangeSpace(LEVEL.asked(), parts(Track.MIDDLE));
    assertThat(space.list(ChangeKind.STABILIZER))
        .containsExactly(Change.to(ChangeKind.STABILIZER, "small"));
    // The battery is not one of the stock's: nobody knows whether it fits another board.
    assertThat(space.list(ChangeKind.BOARD)).isEmpty();
    assertThat(space.list(ChangeKind.MAST)).isEmpty();
  }

  @Test
  void aKnownBoardsMastStandsInItsPlacesAlone() {
    assertThat(new ChangeSpace(LEVEL.asked(), parts(Track.MIDDLE)).list(ChangeKind.TRACK))
        .isEmpty();
    assertThat(
            new ChangeSpace(LEVEL.asked(), parts(new Track(-0.04, 0.02, 0.02)))
                .list(ChangeKind.TRACK))
        .extracting(Change::amount)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactlyInAnyOrder(-0.04, -0.02, 0.02);
  }

  @Test
  void aShimThatIsNotKnownToFitStaysOut() {
    SetupChanger changer = new SetupChanger(LEVEL.ride(), parts(Track.MIDDLE));
    Change other = Change.to(ChangeKind.STABILIZER, "small");
    assertThat(changer.after(List.of(other)).orElseThrow().setup().shim()).isZero();
    Change shim = Change.by(ChangeKind.SHIM, DEGREE);
    assertThat(changer.after(List.of(shim, other)).orElseThrow().setup().shim())
        .isCloseTo(LEVEL.shim() + DEGREE, within(1e-12));
  }

  @Test
  void noFootLeavesTheBoard() {
    SetupChanger changer = new SetupChanger(LEVEL.ride(), OwnParts.NONE);
    assertThat(changer.after(List.of(Change.by(ChangeKind.STANCE, 0.3)))).isPresent();
    assertThat(changer.after(List.of(Change.by(ChangeKind.STANCE, 0.41)))).isEmpty();
  }

  @Test
  void aWedgeGoesUnderTheMastThatIsThereThen() {
    StockPart<Mast> other = part("other", PartKind.MAST, SampleRide.mast(0.8, -2 * DEGREE));
    Stock stock =
        new Stock(
            List.of(),
            List.of(),
            List.of(other),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    SetupChanger changer = new SetupChanger(LEVEL.ride(), new OwnParts(stock, Map.of()));
    List<Change> both =
        List.of(Change.by(ChangeKind.WEDGE, DEGREE), Change.to(ChangeKind.MAST, "other"));
    assertThat(changer.after(both).orElseThrow().setup().mast().baseAngle())
        .isCloseTo(-DEGREE, within(1e-12));
  }
}
