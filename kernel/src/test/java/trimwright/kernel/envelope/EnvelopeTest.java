package trimwright.kernel.envelope;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.envelope.Envelope.Ratings;
import trimwright.kernel.envelope.SlowFlight.BankedStall;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

class EnvelopeTest {
  private static final RideCase CASE = ExampleCase.PLAIN.build();
  private static final CaseSolver SOLVER = CaseSolver.of(CASE);
  private static final Envelope ENVELOPE =
      Envelope.of(SOLVER, Ratings.NONE, Optional.empty(), Posture.STANDING);

  @Test
  void belowTheStallSpeedNothingFliesAndAboveItDoes() {
    double stall = ENVELOPE.slowFlight().orElseThrow().stallSpeed();
    assertThat(SOLVER.findReason(stall * 0.995).filter(EnvelopeTest::isTooSlow)).isPresent();
    // Feet or drive may still not hold it; the wings do.
    for (double faster : new double[] {0.002, 0.05, 0.5}) {
      assertThat(SOLVER.findReason(stall + faster).filter(EnvelopeTest::isTooSlow)).isEmpty();
    }
  }

  private static boolean isTooSlow(NoTrimReason reason) {
    return reason == NoTrimReason.TOO_SLOW || reason == NoTrimReason.STALLED;
  }

  @Test
  void aBankRaisesTheStallSpeedAboutWithTheRootOfTheLoad() {
    SlowFlight slow = ENVELOPE.slowFlight().orElseThrow();
    for (BankedStall banked : slow.banked()) {
      assertThat(banked.speed()).isGreaterThanOrEqualTo(slow.stallSpeed());
      if (!banked.circle()) {
        // The textbook's root of the load factor; the curved path and the tips' depth add to it
        double textbook = slow.stallSpeed() / Math.sqrt(Math.cos(banked.bank()));
        assertThat(banked.speed()).isBetween(0.98 * textbook, 1.15 * textbook);
      }
    }
  }

  @Test
  void slowerIsNoseUp() {
    assertThat(ENVELOPE.slowFlight().orElseThrow().warning().orElseThrow().pitchRise())
        .isPositive();
  }

  @Test
  void theMastsForeAndAftBendingIsThatOfTheWeightsOnTheDeck() {
    // A second way: what stands on the board presses at its place, the foil carries it from below.
    TrimPoint trim = SOLVER.trim(ENVELOPE.speed()).findPoint().orElseThrow();
    Craft craft = new Craft(CASE);
    double rider = CASE.rider().allMass() * Craft.GRAVITY;
    double deck = craft.massOnDeck() * Craft.GRAVITY;
    var board = CASE.setup().board();
    var battery = CASE.setup().battery().orElseThrow();
    double ahead =
        (board.mass() * board.massCentreAhead() + battery.mass() * battery.massCentreAhead())
            / craft.massOnDeck();
    double pitch = trim.pitch();
    double expected =
        rider * trim.footPressureAheadOfMast() * Math.cos(pitch)
            + deck * ahead * Math.cos(pitch)
            - craft.airDrag(ENVELOPE.speed()) * board.thickness();
    assertThat(ENVELOPE.straight().orElseThrow().loads().mastForeAft())
        .isCloseTo(expected, within(0.06 * expected));
  }

  @Test
  void aHalfWingsRootCarriesHalfTheLiftNearItsMiddle() {
    TrimPoint trim = SOLVER.trim(ENVELOPE.speed()).findPoint().orElseThrow();
    double half = 0.5 * CASE.setup().frontWing().shape().span();
    // An elliptical half loading acts at 4 / (3 pi) of the half span
    double elliptical = 0.5 * trim.frontWingLift() * half * 4 / (3 * Math.PI);
    assertThat(ENVELOPE.straight().orElseThrow().loads().frontWingRoot())
        .isBetween(0.85 * elliptical, 1.15 * elliptical);
  }

  @Test
  void withoutARatingThereIsNoVerdict() {
    PartLoads mast = ENVELOPE.mast().orElseThrow();
    assertThat(mast.exceeds(RideLimits.CHOSEN)).isEmpty();
    Ratings weak =
        new Ratings(OptionalDouble.of(1), OptionalDouble.of(1e6), OptionalDouble.empty());
    Envelope rated = Envelope.of(SOLVER, weak, Optional.empty(), Posture.STANDING);
    assertThat(rated.mast().orElseThrow().exceeds(RideLimits.CHOSEN)).contains(true);
    assertThat(rated.frontWing().orElseThrow().exceeds(RideLimits.CHOSEN)).contains(false);
    RideLimits half = RideLimits.tightened(Map.of(RideLimit.RATING_SHARE, 0.5));
    double most = mast.most();
    PartLoads at =
        new PartLoads(
            most, OptionalDouble.empty(), 0, OptionalDouble.empty(), OptionalDouble.of(1.5 * most));
    assertThat(at.exceeds(RideLimits.CHOSEN)).contains(false);
    assertThat(at.exceeds(half)).contains(true);
  }

  @Test
  void glidingWithAConstantDragIsTheTextbooksDeceleration() {
    // D constant: t = m dV / D, s = m (V1² - V0²) / (2 D)
    List<TrimOutcome> outcomes = new ArrayList<>();
    for (double v = 4; v < 10; v += 0.1) {
      outcomes.add(new TrimOutcome.Trimmed(withDrag(v, 100)));
    }
    Glide glide = Glide.of(outcomes, 110, 8, 4).orElseThrow();
    assertThat(glide.secondsToStall()).isCloseTo(110 * 4 / 100.0, within(1e-9));
    assertThat(glide.metresToStall()).isCloseTo(110 * (64 - 16) / 200.0, within(1e-9));
    assertThat(glide.bestRatio()).isCloseTo(110 * Craft.GRAVITY / 100, within(1e-9));
  }

  private static TrimPoint withDrag(double speed, double drag) {
    TrimPoint p = SOLVER.trim(CASE.rider().wishedSpeed()).findPoint().orElseThrow();
    return new TrimPoint(
        speed,
        p.pitch(),
        p.frontWingAngleOfAttack(),
        p.footShare(),
        p.footPressureAheadOfMast(),
        p.massCentreAheadOfMast(),
        p.frontLeg(),
        p.backLeg(),
        p.forwardReserve(),
        p.thrust(),
        drag,
        p.electricPower(),
        p.frontWingLift(),
        p.stabilizerLift(),
        p.frontWingLiftCoefficient(),
        p.frontWingReynolds(),
        p.stallMargin(),
        p.staticMargin(),
        p.deckLeverShare(),
        p.footShareGrowth(),
        p.pitchPerShift(),
        p.forceResidual(),
        p.momentResidual(),
        p.sectionResidual(),
        p.momentTerms(),
        p.brokenLimits());
  }

  @Test
  void theBestGlideRatioIsWeightOverTheLeastDrag() {
    Glide glide = ENVELOPE.glide().orElseThrow();
    double weight = (CASE.rider().allMass() + new Craft(CASE).partsMass()) * Craft.GRAVITY;
    for (double v = 4; v < 12; v += 0.37) {
      SOLVER
          .trim(v)
          .findPoint()
          .ifPresent(
              p -> {
                assertThat(weight / p.drag()).isLessThan(1.002 * glide.bestRatio());
                assertThat(p.drag() * p.speed()).isGreaterThan(0.998 * glide.leastPower());
              });
    }
  }

  @Test
  void cavitationIsFarAwayAtTeachingSpeeds() {
    // sigma = (p - p_v) / q is 2 at 37 km/h; a wing in level flight has lowest pressures near -1
    // (common practice, no source: foil boards do not cavitate at teaching speeds).
    assertThat(ENVELOPE.straight().orElseThrow().cavitationSpeedRatio()).isBetween(1.5, 4.0);
  }
}
