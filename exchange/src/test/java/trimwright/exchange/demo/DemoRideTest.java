package trimwright.exchange.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimPoint;

/**
 * The demo cases ride as such cases do. The figures are common practice of the trade, without a
 * published source: take-off at 14 to 20 km/h, cruise at 20 to 35 km/h with 1 to 3 kW.
 */
class DemoRideTest {
  /** The slowest flight may lie a little below the speed at which people take off. */
  private static final double SLOWEST_FLIGHT_KMH = 13;

  private static final double LATEST_TAKE_OFF_KMH = 20;

  /** A foot share off by this is 25 mm of stance: felt, and still called right. */
  private static final double RIGHT_FEET = 0.05;

  /** A deck within these degrees of the wish is not called nose-up or nose-down. */
  private static final double LEVEL_DEGREES = 3;

  static List<DemoCase> demos() {
    return DemoCases.list();
  }

  private static RideCase ride(DemoCase demo) {
    return CaseReader.read(demo.text(), SectionFiles.NONE).findValue().orElseThrow().rideCase();
  }

  @ParameterizedTest
  @MethodSource("demos")
  void ridesAtItsWishedSpeed(DemoCase demo) {
    RideCase ride = ride(demo);
    double wished = ride.rider().wishedSpeed();
    TrimPoint point = CaseSolver.of(ride).trim(wished).findPoint().orElseThrow();
    assertThat(Unit.KILOMETRE_PER_HOUR.fromSi(wished)).isBetween(20.0, 35.0);
    assertThat(point.brokenLimits()).isEmpty();
    assertThat(point.electricPower().orElseThrow()).isBetween(1000.0, 3000.0);
    assertThat(point.footShare()).isCloseTo(ride.rider().wishedFootShare(), within(RIGHT_FEET));
    double tilt = Unit.DEGREE.fromSi(point.pitch() - ride.rider().wishedPitch());
    if (demo.id().equals("nose-up-mismatch")) {
      assertThat(tilt).isBetween(LEVEL_DEGREES, 8.0);
    } else {
      assertThat(tilt).isCloseTo(0, within(LEVEL_DEGREES));
    }
  }

  @ParameterizedTest
  @MethodSource("demos")
  void fliesOverASaneRange(DemoCase demo) {
    List<Double> speeds = new ArrayList<>();
    for (int kmh = 10; kmh <= 40; kmh++) {
      speeds.add(Unit.KILOMETRE_PER_HOUR.toSi(kmh));
    }
    Curve curve = CaseSolver.of(ride(demo)).curve(speeds);
    SpeedInterval window = curve.rideableWindow().orElseThrow();
    assertThat(Unit.KILOMETRE_PER_HOUR.fromSi(window.from()))
        .isBetween(SLOWEST_FLIGHT_KMH, LATEST_TAKE_OFF_KMH);
    assertThat(Unit.KILOMETRE_PER_HOUR.fromSi(window.to())).isGreaterThan(32);
    assertThat(curve.levelSpeed().isPresent()).isEqualTo(!demo.id().equals("nose-up-mismatch"));
  }
}
