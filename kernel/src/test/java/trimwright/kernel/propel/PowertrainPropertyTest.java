package trimwright.kernel.propel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

/** Power and thrust of any drive. */
class PowertrainPropertyTest {
  private static final Water WATER = WaterModel.at(291.15, 0.0002);
  private static final double DIAMETER = 0.15;
  private static final OptionalDouble NONE = OptionalDouble.empty();
  private static final DriveLimits FREE = new DriveLimits(5000, NONE, NONE, NONE);

  /** Thrust and revolutions are found to 1e-8 of themselves; power grows with their cube. */
  private static final double SOLVED = 1e-5;

  static Powertrain screw(DriveLimits limits) {
    return ScrewPowertrain.of(
        new Screw(new SeriesPropeller(3, 1.1, 0.5), DIAMETER, WATER), 0.8, limits);
  }

  static List<Powertrain> all() {
    return List.of(
        screw(FREE),
        DiscPowertrain.estimated(0.8, DIAMETER, WATER.density(), FREE),
        DiscPowertrain.given(0.4, DIAMETER, WATER.density(), FREE));
  }

  @ParameterizedTest
  @MethodSource("all")
  void powerGrowsWithThrustAndIsNeverLessThanTheIdealDiscs(Powertrain drive) {
    double area = ActuatorDisc.area(DIAMETER);
    for (double speed = 2; speed < 14; speed += 1) {
      double before = 0;
      for (double thrust = 5; thrust < 300; thrust += 20) {
        double power = drive.electricPower(thrust, speed);
        assertThat(power).isGreaterThan(before);
        if (drive.basis() != PowerBasis.GIVEN_EFFICIENCY) {
          // An efficiency that somebody gives may promise what no disc can do.
          assertThat(power)
              .isGreaterThan(ActuatorDisc.idealPower(thrust, speed, area, WATER.density()));
        }
        before = power;
      }
      assertThat(drive.electricPower(-10, speed)).isZero();
      assertThat(drive.gives(-10, speed)).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void theGreatestThrustTakesAllThePower(Powertrain drive) {
    double before = Double.POSITIVE_INFINITY;
    for (double speed = 0; speed < 12; speed += 0.5) {
      GreatestThrust most = drive.greatestThrust(speed);
      assertThat(most.thrust()).isBetween(0.0, before * (1 + SOLVED));
      assertThat(most.limit()).isEqualTo(ThrustLimit.POWER);
      if (speed >= 4) {
        assertThat(drive.electricPower(most.thrust(), speed))
            .isCloseTo(5000, within(5000 * SOLVED));
        assertThat(drive.gives(0.999 * most.thrust(), speed)).isTrue();
        assertThat(drive.gives(1.001 * most.thrust(), speed)).isFalse();
        assertThat(drive.slack(most.thrust(), speed)).isCloseTo(0, within(SOLVED));
      }
      before = most.thrust();
    }
  }

  @Test
  void everyLimitLimits() {
    DriveLimits revolutions = new DriveLimits(5000, NONE, NONE, OptionalDouble.of(40));
    GreatestThrust byRevolutions = screw(revolutions).greatestThrust(3);
    assertThat(byRevolutions.limit()).isEqualTo(ThrustLimit.REVOLUTIONS);
    assertThat(byRevolutions.electricPower()).isLessThan(5000);
    assertThat(screw(revolutions).findState(byRevolutions.thrust(), 3).orElseThrow().revolutions())
        .isCloseTo(40, within(1e-4));
    // Faster than the propeller screws itself through the water nothing is pushed.
    assertThat(screw(revolutions).greatestThrust(9).thrust()).isZero();
    assertThat(screw(revolutions).gives(20, 9)).isFalse();

    DriveLimits maker = new DriveLimits(5000, NONE, OptionalDouble.of(150), NONE);
    for (Powertrain drive :
        List.of(
            screw(maker),
            DiscPowertrain.estimated(0.8, DIAMETER, WATER.density(), maker),
            DiscPowertrain.given(0.4, DIAMETER, WATER.density(), maker))) {
      GreatestThrust most = drive.greatestThrust(2);
      assertThat(most.limit()).isEqualTo(ThrustLimit.MAKER);
      assertThat(most.thrust()).isEqualTo(150);
      assertThat(most.electricPower()).isBetween(100.0, 5000.0);
      assertThat(drive.gives(151, 2)).isFalse();
      assertThat(drive.slack(151, 2)).isNegative();
    }

    DriveLimits battery = new DriveLimits(5000, OptionalDouble.of(2000), NONE, NONE);
    GreatestThrust byBattery = screw(battery).greatestThrust(6);
    assertThat(byBattery.limit()).isEqualTo(ThrustLimit.BATTERY);
    assertThat(byBattery.electricPower()).isCloseTo(2000, within(2000 * SOLVED));
  }

  @Test
  void stateAddsUp() {
    ScrewState state = screw(FREE).findState(120, 6.5).orElseThrow();
    assertThat(state.propellerEfficiency() * state.motorEfficiency() * state.electricPower())
        .isCloseTo(120 * 6.5, within(1e-6));
    assertThat(state.electricPower()).isCloseTo(screw(FREE).electricPower(120, 6.5), within(1e-6));
    assertThat(state.covered()).isTrue();
    assertThat(screw(FREE).findState(0, 6.5)).isEmpty();
  }

  @Test
  void motorKeepsItsEfficiencyOverMostOfTheLoad() {
    Electrics motor = new Electrics(0.8, 10, 60);
    double rated = 2 * Math.PI * 600;
    assertThat(motor.electricPower(10, 60) * 0.8).isCloseTo(rated, within(1e-9));
    for (double turn = 0.1; turn <= 1; turn += 0.1) {
      // Along a propeller's own law: torque with revolutions squared.
      double torque = 10 * turn * turn;
      double shaft = 2 * Math.PI * torque * 60 * turn;
      double efficiency = shaft / motor.electricPower(torque, 60 * turn);
      if (turn * turn * turn > 1 / 3.0) {
        assertThat(efficiency).isBetween(0.76, 0.82);
      }
      assertThat(efficiency).isBetween(0.0, 0.82);
    }
  }

  /** At rest an ideal disc makes (2 rho A P^2)^(1/3). */
  @Test
  void discAtRest() {
    double area = ActuatorDisc.area(DIAMETER);
    double thrust = ActuatorDisc.greatestThrust(3000, 0, area, 1000);
    assertThat(thrust).isCloseTo(Math.cbrt(2 * 1000 * area * 9e6), within(1e-6));
    assertThat(ActuatorDisc.idealPower(thrust, 0, area, 1000)).isCloseTo(3000, within(1e-5));
    assertThat(ActuatorDisc.greatestThrust(0, 3, area, 1000)).isZero();
  }
}
