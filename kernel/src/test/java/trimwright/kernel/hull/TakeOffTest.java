package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.TrimPoint;

class TakeOffTest {
  @Test
  void theExampleLiftsOff() {
    TakeOff takeOff = TakeOffSolver.of(TakeOffCases.example(), Posture.STANDING).solve();
    assertThat(takeOff.verdict()).isEqualTo(TakeOffVerdict.LIFTS);
    assertThat(takeOff.lifts()).isTrue();
    assertThat(takeOff.shortage()).isEmpty();
    WaterState end = takeOff.liftOff().orElseThrow();
    assertThat(end.hull().lift()).isZero();
    assertThat(takeOff.length().orElseThrow()).isBetween(2.0, 30.0);
    assertThat(takeOff.time().orElseThrow()).isBetween(1.0, 15.0);
    assertThat(takeOff.shortest().orElseThrow())
        .isLessThanOrEqualTo(takeOff.length().getAsDouble());
    assertThat(takeOff.run().get(0).state().speed()).isZero();
    // The board comes up as the wings take over.
    WaterState hump = takeOff.run().get(12).state();
    assertThat(hump.hull().lift()).isGreaterThan(0.2 * 1200);
  }

  @Test
  void aWeakDriveIsShortAndSaysWhereAndByHowMuch() {
    RideCase weak = TakeOffCases.withPower(TakeOffCases.example(), 350);
    TakeOff takeOff = TakeOffSolver.of(weak, Posture.STANDING).solve();
    assertThat(takeOff.verdict()).isEqualTo(TakeOffVerdict.THRUST_SHORT);
    TakeOff.Point at = takeOff.shortage().orElseThrow();
    assertThat(at.shortBy()).isPositive();
    assertThat(at.drag()).isLessThanOrEqualTo(takeOff.mostNeeded());
    assertThat(takeOff.length()).isEmpty();
    // With the missing thrust on top it lifts.
    Powertrain has = Propulsion.find(weak).orElseThrow();
    TakeOff helped =
        TakeOffSolver.of(
                weak,
                Posture.STANDING,
                TakeOffLimits.CHOSEN,
                v -> has.greatestThrust(v).thrust() + 1.1 * at.shortBy())
            .solve();
    assertThat(helped.lifts()).isTrue();
  }

  @Test
  void aHeavyRiderIsShortWhereALightOneLifts() {
    RideCase c = TakeOffCases.withPower(TakeOffCases.example(), 1300);
    TakeOff light = TakeOffSolver.of(TakeOffCases.withRider(c, 60), Posture.PRONE).solve();
    TakeOff heavy = TakeOffSolver.of(TakeOffCases.withRider(c, 200), Posture.PRONE).solve();
    assertThat(light.verdict()).isEqualTo(TakeOffVerdict.LIFTS);
    assertThat(heavy.verdict()).isEqualTo(TakeOffVerdict.THRUST_SHORT);
    assertThat(heavy.mostNeeded()).isGreaterThan(2 * light.mostNeeded());
  }

  @Test
  void withoutWingsTheBoardPlanesAndNeverFlies() {
    RideCase bare = TakeOffCases.withoutWings(TakeOffCases.example());
    TakeOffSolver solver = TakeOffSolver.of(bare, Posture.STANDING);
    assertThat(solver.solve().verdict()).isEqualTo(TakeOffVerdict.NEVER_CARRIED);
    WaterState planing = solver.at(6, Math.toRadians(5));
    double beam = solver.hull().beam();
    double pressure = 0.5 * bare.water().density() * 36 * beam * beam;
    double cv = Planing.speedCoefficient(6, beam, Craft.GRAVITY);
    double wetted =
        Planing.wettedLength(planing.hull().lift() / pressure, Math.toRadians(5), cv) * beam;
    assertThat(planing.hull().wettedLength()).isCloseTo(wetted, within(1e-6));
    assertThat(planing.hull().lift() + planing.thrustForce().up() + planing.wings().up())
        .isCloseTo(
            -planing.parts().up() + 88 * Craft.GRAVITY - planing.buoyancy().up(), within(1e-2));
  }

  @Test
  void aBoardOfLeadSinks() {
    RideCase lead = TakeOffCases.withBoard(TakeOffCases.example(), 200, 0.095);
    assertThat(TakeOffSolver.of(lead, Posture.STANDING).solve().verdict())
        .isEqualTo(TakeOffVerdict.SINKS);
  }

  /** Where the board leaves the water the trim's own solution stands, at that depth. */
  @Test
  void atLiftOffTheTrimGoesOn() {
    RideCase c = ExampleCase.PLAIN.withoutDrive(OptionalDouble.empty()).build();
    TakeOff takeOff = TakeOffSolver.of(c, Posture.STANDING).solve();
    assertThat(takeOff.verdict()).isEqualTo(TakeOffVerdict.LIFTS_WHEN_PULLED);
    WaterState end = takeOff.liftOff().orElseThrow();
    Craft craft = new Craft(c);
    double pitch = end.trim() - craft.deck().baseAngle();
    double immersion =
        end.datumDepth()
            - craft.wings().get(0).ahead() * Math.sin(pitch)
            - craft.wings().get(0).above() * Math.cos(pitch);
    TrimPoint flying =
        CaseSolver.of(TakeOffCases.withImmersion(c, immersion))
            .trim(end.speed())
            .findPoint()
            .orElseThrow();
    assertThat(end.trim()).isCloseTo(flying.pitch(), within(Math.toRadians(0.05)));
    assertThat(end.drag()).isCloseTo(flying.drag(), within(0.01 * flying.drag()));
    assertThat(end.footPressure()).isCloseTo(flying.footPressureAheadOfMast(), within(2e-3));
    assertThat(end.thrust()).isEqualTo(end.drag());
  }

  @Test
  void morePullIsNeededOnTheWayThanInTheAir() {
    RideCase c = ExampleCase.PLAIN.withoutDrive(OptionalDouble.of(1.2)).build();
    TakeOff takeOff = TakeOffSolver.of(c, Posture.STANDING).solve();
    assertThat(takeOff.lifts()).isTrue();
    assertThat(takeOff.length()).isEmpty();
    double atEnd = takeOff.liftOff().orElseThrow().drag();
    assertThat(takeOff.mostNeeded()).isGreaterThan(atEnd);
    takeOff.run().forEach(p -> assertThat(p.greatestThrust()).isEqualTo(p.state().drag()));
    assertThat(takeOff.hump()).isPresent();
  }

  @Test
  void aDriveTakenOutIsNoDriveAtAll() {
    RideCase c = TakeOffCases.withDrive(TakeOffCases.example(), Optional.empty());
    assertThat(TakeOffSolver.of(c, Posture.KNEELING).solve().verdict())
        .isEqualTo(TakeOffVerdict.LIFTS_WHEN_PULLED);
  }

  @Test
  void bodiesGoUnderByTheirPosture() {
    for (Posture p : Posture.values()) {
      assertThat(p.submerged(-0.1, 1.8)).isZero();
      assertThat(p.submerged(3, 1.8)).isEqualTo(1);
      double before = 0;
      for (double h = 0; h < 2; h += 0.05) {
        assertThat(p.submerged(h, 1.8)).isGreaterThanOrEqualTo(before);
        before = p.submerged(h, 1.8);
      }
    }
    assertThat(Posture.PRONE.submerged(0.1, 1.8))
        .isGreaterThan(Posture.KNEELING.submerged(0.1, 1.8));
  }
}
