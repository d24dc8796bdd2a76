package trimwright.kernel.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.WingShape;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.TrimPoint;

/** Turns of the example case beside its straight rides, and what must hold of any turn. */
class TurnSolverPropertyTest {
  private static final RideCase CASE = ExampleCase.PLAIN.build();
  private static final CaseSolver STRAIGHT = CaseSolver.of(CASE);
  private static final TurnSolver TURNS = new TurnSolver(CASE);

  private static TrimPoint straight(double kmh) {
    return STRAIGHT.trim(kmh / 3.6).findPoint().orElseThrow();
  }

  private static TurnPoint turn(double kmh, double degrees) {
    double pitch = straight(kmh).pitch() - CASE.setup().mast().baseAngle();
    return TURNS.at(kmh / 3.6, Math.toRadians(degrees), pitch).orElseThrow();
  }

  @Test
  void withoutABankItIsTheStraightRide() {
    for (double kmh : new double[] {22, 28, 34}) {
      TrimPoint trim = straight(kmh);
      TurnPoint turn = turn(kmh, 0);
      // Half the strips, no waves, drag at the vortices
      assertThat(turn.pitch()).isCloseTo(trim.pitch(), within(Math.toRadians(0.1)));
      assertThat(turn.footPressureAheadOfMast())
          .isCloseTo(trim.footPressureAheadOfMast(), within(0.006));
      assertThat(turn.thrust()).isCloseTo(trim.thrust(), within(0.05 * trim.thrust()));
      assertThat(turn.slip()).isCloseTo(0, within(1e-9));
      assertThat(turn.mastSideForce()).isCloseTo(0, within(1e-6));
      assertThat(turn.footPressureInside()).isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void smallBanksChangeDragWithTheSquareOfTheBank() {
    double none = turn(26, 0).thrust();
    double five = turn(26, 5).thrust() - none;
    double ten = turn(26, 10).thrust() - none;
    assertThat(ten / five).isBetween(3.6, 4.4);
  }

  @Test
  void forcesBalanceAndTheWingsCarryTheLoad() {
    double weight = (CASE.rider().allMass() + new Craft(CASE).partsMass()) * Craft.GRAVITY;
    for (double bank : new double[] {10, 25, 35}) {
      TurnPoint turn = turn(30, bank);
      assertThat(turn.forceResidual()).isLessThan(1e-6 * weight);
      assertThat(turn.loadFactor()).isCloseTo(1 / Math.cos(turn.bank()), within(1e-12));
    }
  }

  @Test
  void tighterTurnsAskForTheBackFoot() {
    // The path's curve lifts the tail: pilots pull in turns, riders press the back foot (common
    // practice, no source).
    double before = 1;
    for (double bank = 0; bank <= 35; bank += 5) {
      double share = turn(28, bank).footShare();
      assertThat(share).isLessThan(before);
      before = share;
    }
  }

  @Test
  void tighterTurnsAskForMorePowerAndBringTheTipUp() {
    TurnPoint before = turn(28, 0);
    for (double bank = 5; bank <= 35; bank += 5) {
      TurnPoint now = turn(28, bank);
      assertThat(now.thrust()).isGreaterThan(before.thrust());
      assertThat(now.tipDepth()).isLessThan(before.tipDepth());
      assertThat(now.stripMargin()).isLessThan(before.stripMargin());
      assertThat(now.mastSideForce()).isGreaterThan(before.mastSideForce());
      before = now;
    }
  }

  /** Two ways to the same place: geometry alone, and the solved turn with its pitch and slip. */
  @Test
  void theTipComesOutAboutWhereGeometrySays() {
    double pitch = straight(24).pitch() - CASE.setup().mast().baseAngle();
    for (double degrees : new double[] {10, 20, 30}) {
      TurnPoint p = TURNS.at(24 / 3.6, Math.toRadians(degrees), pitch).orElseThrow();
      // The wing level fore and aft, its root at the case's immersion.
      WingShape shape = CASE.setup().frontWing().shape();
      double drop = -shape.stations().get(shape.stations().size() - 1).above();
      double rise = CASE.immersion() + drop * Math.cos(p.bank()) - p.tipDepth();
      double bank = Math.asin(rise / (0.5 * shape.span()));
      assertThat(Math.toDegrees(bank)).isCloseTo(degrees, within(2.5));
    }
  }

  @Test
  void uprightTheRailHangsAsHighAsTheBoardAndComesDownByItsHalfWidthOnItsSide() {
    double pitch = straight(24).pitch();
    double upright = TurnStudy.railHeight(CASE, 0, pitch);
    double up = TurnStudy.railHeight(CASE, Math.PI / 3, pitch);
    double across = 0.5 * CASE.setup().board().width() * Math.sqrt(0.75);
    double over = upright + CASE.immersion();
    assertThat(up).isCloseTo(0.5 * over - across - CASE.immersion(), within(1e-12));
  }

  @Test
  void theStudyStopsAtAStatedLimit() {
    double pitch = straight(24).pitch() - CASE.setup().mast().baseAngle();
    TurnStudy study = TurnStudy.of(CASE, 24 / 3.6, pitch);
    assertThat(study.points()).isNotEmpty();
    assertThat(study.limit()).isNotEqualTo(TurnLimit.NONE);
    study
        .points()
        .forEach(
            p ->
                assertThat(TurnStudy.broken(CASE, java.util.Optional.of(p)))
                    .isEqualTo(TurnLimit.NONE));
    double past = study.tightest().orElseThrow().bank() + Math.toRadians(1.3);
    assertThat(TurnStudy.broken(CASE, TURNS.at(24 / 3.6, past, pitch))).isEqualTo(study.limit());
  }
}
