package trimwright.kernel.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.LatticeSize;

class TrimPropertyTest {
  /** Rounding of moments of some hundred newton metres. */
  private static final double ROUNDING = 1e-9;

  private static final double KMH = 1 / 3.6;

  private static final ExampleCase PLAIN = ExampleCase.PLAIN;

  private static TrimPoint at(ExampleCase example, double kmh) {
    return CaseSolver.of(example.build()).trim(kmh * KMH).findPoint().orElseThrow();
  }

  private static double feet(ExampleCase example, double kmh) {
    return 1000 * at(example, kmh).footPressureAheadOfMast();
  }

  @Test
  void forcesAndMomentVanishInEveryTrim() {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    for (double kmh = 14; kmh <= 40; kmh++) {
      TrimPoint p = solver.trim(kmh * KMH).findPoint().orElseThrow();
      assertThat(p.forceResidual()).isLessThan(1e-5);
      assertThat(p.momentTerms().sum()).isCloseTo(0, within(ROUNDING));
    }
  }

  /**
   * Taken about the front foot instead of the datum: the same forces must balance about any point.
   */
  @Test
  void theBalanceHoldsAboutEveryPoint() {
    Craft craft = new Craft(PLAIN.build());
    BalanceModel model = new BalanceModel(craft, Responses.tabulated(craft));
    Balance b = new TrimSolver(model, RideLimits.CHOSEN).find(22 * KMH).balance().orElseThrow();
    double s = b.footPressure();
    double deckPitch = b.pitch() + craft.deck().baseAngle();
    double ahead = craft.deck().footingAhead(b.pitch()) + s * Math.cos(deckPitch);
    double above = craft.deck().footingAbove(b.pitch()) + s * Math.sin(deckPitch);
    PlaneForce feet = PlaneForce.at(-b.air(), -b.riderWeight(), ahead, above);
    PlaneForce all = b.withoutFeet().plus(feet);
    for (double x : new double[] {-1, 0, 0.52, 3}) {
      for (double z : new double[] {-0.5, 0, 0.87}) {
        assertThat(all.about(x, z).noseUp()).isCloseTo(0, within(1e-5));
      }
    }
  }

  @Test
  void theTableOverPitchIsTheSolutionWithin002DegreesAnd1Millimetre() {
    for (ExampleCase example :
        List.of(PLAIN, PLAIN.withStabilizer(0.5), PLAIN.withImmersion(0.2))) {
      RideCase rideCase = example.build();
      CaseSolver table = CaseSolver.of(rideCase);
      Craft craft = new Craft(rideCase);
      CaseSolver unfrozen = CaseSolver.of(craft, Responses.unfrozen(craft));
      for (double kmh = 13; kmh <= 46; kmh += 1.5) {
        if (table.trim(kmh * KMH).findPoint().isEmpty()) {
          continue;
        }
        TrimPoint a = table.trim(kmh * KMH).findPoint().orElseThrow();
        TrimPoint b = unfrozen.trim(kmh * KMH).findPoint().orElseThrow();
        assertThat(Math.toDegrees(a.pitch())).isCloseTo(Math.toDegrees(b.pitch()), within(0.02));
        assertThat(1000 * a.footPressureAheadOfMast())
            .isCloseTo(1000 * b.footPressureAheadOfMast(), within(1.0));
      }
    }
  }

  /** From about 15 to -2 degrees of pitch. */
  @Test
  void refiningTheLatticeMovesThrustUnder2PercentAndFeetUnder3Millimetres() {
    RideCase rideCase = PLAIN.build();
    CaseSolver standard = CaseSolver.of(rideCase);
    Craft fine = new Craft(rideCase, new LatticeSize(32, 4), new LatticeSize(16, 4));
    CaseSolver finer = CaseSolver.of(fine, Responses.tabulated(fine));
    double highest = -90;
    double lowest = 90;
    for (double kmh = 12; kmh <= 44; kmh += 2) {
      var a = standard.trim(kmh * KMH).findPoint();
      var b = finer.trim(kmh * KMH).findPoint();
      if (a.isEmpty() || b.isEmpty()) {
        continue;
      }
      TrimPoint coarse = a.orElseThrow();
      TrimPoint exact = b.orElseThrow();
      highest = Math.max(highest, Math.toDegrees(coarse.frontWingAngleOfAttack()));
      lowest = Math.min(lowest, Math.toDegrees(coarse.pitch()));
      assertThat(coarse.thrust()).isCloseTo(exact.thrust(), within(0.02 * exact.thrust()));
      assertThat(coarse.frontWingLift()).isCloseTo(exact.frontWingLift(), within(0.01 * 1200));
      assertThat(Math.toDegrees(coarse.pitch()))
          .isCloseTo(Math.toDegrees(exact.pitch()), within(0.1));
      assertThat(1000 * coarse.footPressureAheadOfMast())
          .isCloseTo(1000 * exact.footPressureAheadOfMast(), within(3.0));
    }
    assertThat(highest).isGreaterThan(12);
    assertThat(lowest).isLessThan(-1.8);
  }

  /**
   * Common practice, no source: slower is more nose-up; useful angles of attack lie between about 0
   * and 10 degrees.
   */
  @Test
  void slowerIsMoreNoseUpAndCruiseLiesInTheUsefulAngles() {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    double before = 90;
    for (double kmh = 13; kmh <= 40; kmh++) {
      TrimPoint p = solver.trim(kmh * KMH).findPoint().orElseThrow();
      assertThat(p.pitch()).isLessThan(before);
      before = p.pitch();
      if (kmh >= 16 && kmh <= 35) {
        assertThat(Math.toDegrees(p.frontWingAngleOfAttack())).isBetween(0.0, 10.0);
      }
    }
  }

  /**
   * Common practice, no source: twice the speed, four times the lift. At 4 m/s the wings stand in
   * their own waves, which is 1 % of the front wing's lift; from 10 m/s on it is a few thousandths.
   */
  @Test
  void doublingTheSpeedAtTheSamePitchGivesFourTimesTheLift() {
    Craft craft = new Craft(PLAIN.build());
    BalanceModel model = new BalanceModel(craft, Responses.tabulated(craft));
    for (double[] speedAndShare : new double[][] {{4, 0.015}, {10, 0.004}}) {
      Balance slow = model.at(Math.toRadians(3), speedAndShare[0]);
      Balance fast = model.at(Math.toRadians(3), 2 * speedAndShare[0]);
      double lift = 4 * slow.frontWing().up();
      assertThat(fast.frontWing().up()).isCloseTo(lift, within(speedAndShare[1] * lift));
    }
  }

  /** A wedge under the mast's base turns the deck and leaves the load on the feet almost alone. */
  @Test
  void aMastBaseWedgeTurnsTheDeckAndLeavesTheFeetAlone() {
    TrimPoint plain = at(PLAIN, 25);
    TrimPoint wedged = at(PLAIN.withBase(-1.5), 25);
    assertThat(Math.toDegrees(wedged.pitch() - plain.pitch())).isCloseTo(1, within(0.01));
    // Feet, board and battery swing by the deck's turn about the mast's axis: a few tenths of a
    // millimetre.
    assertThat(feet(PLAIN.withBase(-1.5), 25)).isCloseTo(feet(PLAIN, 25), within(1.0));
  }

  /** Feet stay where they are on the deck: what moves is their distance from the mast. */
  @Test
  void movingTheMastForwardLeavesTheFootPressureAlmostWhereItIsOnTheMast() {
    TrimPoint plain = at(PLAIN, 25);
    TrimPoint moved = at(PLAIN.withTrack(0.03), 25);
    assertThat(moved.pitch()).isCloseTo(plain.pitch(), within(1e-9));
    // Board and battery (25 kg) come to lie 30 mm further back, the feet (88 kg) must press so much
    // further forward.
    double expected = plain.footPressureAheadOfMast() + 25.0 / 88 * 0.03;
    assertThat(moved.footPressureAheadOfMast()).isCloseTo(expected, within(2e-4));
    assertThat(moved.footShare()).isCloseTo((expected - (0.04 - 0.03)) / 0.48, within(1e-3));
  }

  /**
   * What a change moves, from statics alone: the head wind's extra drag times the height between
   * deck and thrust line; the front wing's lift times its shift; both over the rider's weight.
   */
  @Test
  void windAndWingPlaceMoveTheFeetAsStaticsSays() {
    for (double kmh : new double[] {20, 28}) {
      TrimPoint plain = at(PLAIN, kmh);
      double weight = 88 * Craft.GRAVITY;
      double v = kmh * KMH;
      double more = 0.5 * 1.225 * 0.5 * (Math.pow(v + 20 * KMH, 2) - v * v);
      double wind = 1000 * more * (0.87 - 0.18) / weight;
      assertThat(feet(PLAIN.withWind(20), kmh) - feet(PLAIN, kmh)).isCloseTo(wind, within(0.6));
      double shift = 5 * plain.frontWingLift() / weight;
      assertThat(feet(PLAIN.withFrontAhead(0.155), kmh) - feet(PLAIN, kmh))
          .isCloseTo(shift, within(0.5));
    }
  }

  @Test
  void footShareGrowthAndStaticMarginAreTheSlopesTheyClaimToBe() {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    double v = 26 * KMH;
    TrimPoint p = solver.trim(v).findPoint().orElseThrow();
    double step = 0.05;
    double growth =
        (solver.trim(v + step).findPoint().orElseThrow().footShare()
                - solver.trim(v - step).findPoint().orElseThrow().footShare())
            / (2 * step);
    assertThat(p.footShareGrowth()).isCloseTo(growth, within(1e-4));
    assertThat(p.staticMargin()).isGreaterThan(0);
    assertThat(p.deckLeverShare()).isLessThan(0);
    // Stable: weight forward, nose down.
    assertThat(p.pitchPerShift().orElseThrow()).isLessThan(0);
  }

  @Test
  void everyEvenFeetSpeedIsFound() {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    Curve curve = solver.curve(List.of(20 * KMH));
    List<Double> brute = new ArrayList<>();
    double before = Double.NaN;
    for (double v = 3; v < 12.5; v += 0.01) {
      double share = solver.trim(v).findPoint().map(TrimPoint::footShare).orElse(Double.NaN) - 0.5;
      if (before > 0 != share > 0 && Double.isFinite(before) && Double.isFinite(share)) {
        brute.add(v - 0.005);
      }
      before = share;
    }
    assertThat(curve.evenFeetSpeeds()).hasSameSizeAs(brute).hasSize(2);
    for (int i = 0; i < brute.size(); i++) {
      EvenFeetSpeed even = curve.evenFeetSpeeds().get(i);
      assertThat(even.speed()).isCloseTo(brute.get(i), within(0.01));
      assertThat(even.rising()).isEqualTo(i == 1);
    }
    double level = curve.levelSpeed().orElseThrow();
    assertThat(solver.trim(level).findPoint().orElseThrow().pitch()).isCloseTo(0, within(1e-6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.36, 0.357, 0.3567})
  void aFootShareNearItsLeastValueIsFoundTwiceOrNotAtAll(double share) {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    List<Double> speeds = solver.speedsWithFootShare(share);
    double least = 1;
    for (double v = 5; v < 8; v += 0.001) {
      least = Math.min(least, solver.trim(v).findPoint().orElseThrow().footShare());
    }
    assertThat(speeds).hasSize(least < share ? 2 : 0);
    for (double v : speeds) {
      assertThat(solver.trim(v).findPoint().orElseThrow().footShare())
          .isCloseTo(share, within(1e-6));
    }
  }

  @Test
  void whatDoesNotExistIsAResultWithAReason() {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    assertThat(solver.trim(8 * KMH))
        .isInstanceOfSatisfying(
            TrimOutcome.NoTrim.class, n -> assertThat(n.reason()).isEqualTo(NoTrimReason.TOO_SLOW));
    assertThat(solver.trim(60 * KMH))
        .isInstanceOfSatisfying(
            TrimOutcome.NoTrim.class,
            n -> {
              assertThat(n.reason()).isEqualTo(NoTrimReason.THRUST_SHORT);
              assertThat(n.wouldNeed()).isPresent();
            });
    assertThat(CaseSolver.of(PLAIN.withStabilizer(4).build()).trim(30 * KMH))
        .isInstanceOfSatisfying(
            TrimOutcome.NoTrim.class,
            n -> {
              assertThat(n.reason()).isEqualTo(NoTrimReason.FEET_CANNOT_REACH);
              assertThat(n.wouldNeed().orElseThrow().footShare()).isNegative();
            });
  }

  @Test
  void withoutADriveTheForceNeededIsReportedAndAPullMovesTheRiderNotTheWing() {
    TrimPoint level = at(PLAIN.withoutDrive(OptionalDouble.empty()), 22);
    TrimPoint pulled = at(PLAIN.withoutDrive(OptionalDouble.of(1.2)), 22);
    assertThat(level.electricPower()).isEmpty();
    assertThat(level.thrust()).isCloseTo(level.drag(), within(1e-6));
    assertThat(pulled.pitch()).isCloseTo(level.pitch(), within(1e-9));
    // The pull reaches the board as friction at the deck: it presses the nose down, so the feet
    // press further aft.
    assertThat(pulled.footPressureAheadOfMast()).isLessThan(level.footPressureAheadOfMast());
    assertThat(pulled.massCentreAheadOfMast()).isLessThan(pulled.footPressureAheadOfMast());
  }

  @Test
  void theCauseAddsUpInDegreesShareAndMillimetres() {
    CaseSolver solver = CaseSolver.of(PLAIN.build());
    CauseOutcome outcome = CauseSplit.of(solver, 17 * KMH, OptionalDouble.of(Math.toRadians(6.5)));
    assertThat(outcome).isInstanceOf(CauseOutcome.Split.class);
    CauseOutcome.Split split = (CauseOutcome.Split) outcome;
    for (CauseParts parts : List.of(split.pitch(), split.footShare(), split.footPressure())) {
      assertThat(parts.speedPart() + parts.setPart())
          .isCloseTo(parts.ridden() - parts.wanted(), within(1e-12));
    }
    CauseParts pitch = split.pitch();
    assertThat(pitch.speedPart() + pitch.setPart() + pitch.unexplainedPart().orElseThrow())
        .isCloseTo(Math.toRadians(6.5), within(1e-12));
    assertThat(split.footPressure().speedPart())
        .isCloseTo(split.footShare().speedPart() * 0.48, within(1e-12));
    assertThat(CauseSplit.of(solver, 7 * KMH, OptionalDouble.empty()))
        .isInstanceOfSatisfying(
            CauseOutcome.NoSplit.class,
            n -> {
              assertThat(n.wishedSpeed()).isFalse();
              assertThat(n.ridden()).isPresent();
              double from = n.fliesFrom().orElseThrow();
              assertThat(solver.trim(from).findPoint()).isPresent();
              assertThat(solver.trim(0.99 * from).findPoint()).isEmpty();
            });
  }
}
