package trimwright.kernel.range;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.kernel.propel.Blades;
import trimwright.kernel.propel.Cells;
import trimwright.kernel.propel.PowerBasis;
import trimwright.kernel.propel.Powerplant;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.TrimOutcome;

/** Minutes, kilometres and the way home. */
class RideRangePropertyTest {
  private static final double KMH = 1 / 3.6;

  /** Best speeds are found to 0.02 m/s, where power hardly changes. */
  private static final double FLAT = 1e-3;

  private static final CaseSolver SOLVER = CaseSolver.of(ExampleCase.PLAIN.build());

  private static List<Double> speeds() {
    List<Double> speeds = new ArrayList<>();
    for (double kmh = 12; kmh <= 40; kmh += 2) {
      speeds.add(kmh * KMH);
    }
    return speeds;
  }

  private static RideRange range(CaseSolver solver, Optional<WayHome> home) {
    List<TrimOutcome> outcomes = speeds().stream().map(solver::trim).toList();
    return RangeSolver.find(solver, outcomes, home).orElseThrow();
  }

  private static CaseSolver with(UnaryOperator<Drive> drive, UnaryOperator<Battery> battery) {
    RideCase c = ExampleCase.PLAIN.build();
    Setup s = c.setup();
    return CaseSolver.of(
        new RideCase(
            c.water(),
            c.airDensity(),
            c.headWind(),
            c.chopHeight(),
            c.rider(),
            new Setup(
                s.board(),
                s.battery().map(battery),
                s.mast(),
                s.drive().map(drive),
                s.fuselage(),
                s.frontWing(),
                s.stabilizer(),
                s.shim()),
            c.immersion(),
            c.pullAboveDeck()));
  }

  private static Drive withPlant(Drive d, Powerplant plant) {
    return new Drive(
        d.heightAboveFuselage(),
        d.behindMast(),
        d.thrustAngle(),
        d.diameter(),
        d.length(),
        d.propellerDiameter(),
        d.maximumPower(),
        d.efficiency(),
        d.mass(),
        d.massAboveAxis(),
        d.volume(),
        plant);
  }

  private static Powerplant blades(OptionalDouble revolutions) {
    return new Powerplant(
        Optional.of(new Blades(3, 0.165, 0.5)),
        List.of(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        revolutions);
  }

  @Test
  void bestSpeedsAreBest() {
    RideRange range = range(SOLVER, Optional.empty());
    RangePoint longest = range.longest().orElseThrow();
    RangePoint farthest = range.farthest().orElseThrow();
    assertThat(farthest.speed()).isGreaterThan(longest.speed());
    assertThat(range.points()).hasSize(speeds().size());
    for (Optional<RangePoint> point : range.points()) {
      if (point.isPresent()) {
        assertThat(point.get().duration()).isLessThan(longest.duration() * (1 + FLAT));
        assertThat(point.get().distance()).isLessThan(farthest.distance() * (1 + FLAT));
        assertThat(point.get().drain()).isGreaterThan(point.get().power());
        assertThat(point.get().duration() * point.get().drain())
            .isCloseTo(range.usableEnergy(), within(1e-6 * range.usableEnergy()));
      }
    }
    // Moving water under a constant power: the line from no speed touches the curve of power there.
    double step = 0.1;
    double slope =
        (SOLVER.findPower(farthest.speed() + step).orElseThrow()
                - SOLVER.findPower(farthest.speed() - step).orElseThrow())
            / (2 * step);
    assertThat(slope).isCloseTo(farthest.power() / farthest.speed(), within(0.1 * slope));
    assertThat(range.basis()).isEqualTo(PowerBasis.ESTIMATED);
  }

  @Test
  void windAndCurrentCostTheWayHome() {
    WayHome calm = new WayHome(3000, 0, 0);
    HomeRide still = range(SOLVER, Optional.of(calm)).home().orElseThrow();
    HomeRide wind = range(SOLVER, Optional.of(new WayHome(3000, 0, 6))).home().orElseThrow();
    HomeRide current = range(SOLVER, Optional.of(new WayHome(3000, 1, 0))).home().orElseThrow();
    HomeRide far = range(SOLVER, Optional.of(new WayHome(60_000, 0, 0))).home().orElseThrow();
    assertThat(wind.energy()).isGreaterThan(1.05 * still.energy());
    assertThat(current.energy()).isGreaterThan(1.1 * still.energy());
    // Against a current it pays to ride faster through the water.
    assertThat(current.speed()).isGreaterThan(still.speed());
    assertThat(current.overGround()).isCloseTo(current.speed() - 1, within(1e-12));
    assertThat(still.enough()).isTrue();
    assertThat(far.enough()).isFalse();
    assertThat(far.energy()).isCloseTo(20 * still.energy(), within(1e-6 * far.energy()));
    // Out and home in still water, each at its speed, with a fifth left.
    double out = outward();
    assertThat(still.farthest().orElseThrow())
        .isCloseTo(
            0.8 * usable() / (out + still.energy() / 3000),
            within(1e-6 * still.farthest().orElseThrow()));
    // Wind costs more against than it gives from behind.
    assertThat(wind.farthest().orElseThrow()).isLessThan(still.farthest().orElseThrow());
    assertThat(range(SOLVER, Optional.of(new WayHome(3000, 20, 0))).home()).isEmpty();
  }

  private static double usable() {
    return SOLVER.rideCase().setup().battery().orElseThrow().pack().usableEnergy();
  }

  /** Energy per metre at the wished speed in still water. */
  private static double outward() {
    double wished = SOLVER.rideCase().rider().wishedSpeed();
    double power = SOLVER.findPower(wished).orElseThrow();
    return SOLVER.rideCase().setup().battery().orElseThrow().pack().drain(power) / wished;
  }

  @Test
  void windMovesNothingButTheAir() {
    CaseSolver windy = SOLVER.withHeadWind(8);
    CaseSolver anew = CaseSolver.of(SOLVER.rideCase().withHeadWind(8));
    for (double v : new double[] {5, 7, 9}) {
      assertThat(windy.findPower(v)).isEqualTo(anew.findPower(v));
      assertThat(windy.findPower(v).orElseThrow()).isGreaterThan(SOLVER.findPower(v).orElseThrow());
      assertThat(SOLVER.findPower(v))
          .isEqualTo(SOLVER.trim(v).findPoint().orElseThrow().electricPower());
    }
  }

  @Test
  void coldShortensTheRide() {
    CaseSolver cold =
        with(
            d -> d,
            b ->
                new Battery(
                    b.mass(),
                    b.energy(),
                    b.usableShare(),
                    b.massCentreAhead(),
                    b.massCentreBelowDeck(),
                    Cells.at(275.15)));
    RideRange warm = range(SOLVER, Optional.empty());
    RideRange icy = range(cold, Optional.empty());
    assertThat(icy.capacityShare()).isCloseTo(0.875 / 0.95, within(1e-12));
    assertThat(icy.farthest().orElseThrow().distance())
        .isLessThan(icy.capacityShare() * warm.farthest().orElseThrow().distance());
  }

  @Test
  void aKnownPropellerTakesItsPlaceInTheTrim() {
    CaseSolver screw = with(d -> withPlant(d, blades(OptionalDouble.empty())), b -> b);
    double v = 25 * KMH;
    var estimated = SOLVER.trim(v).findPoint().orElseThrow();
    var known = screw.trim(v).findPoint().orElseThrow();
    assertThat(known.pitch()).isEqualTo(estimated.pitch());
    assertThat(known.thrust()).isEqualTo(estimated.thrust());
    assertThat(known.footShare()).isEqualTo(estimated.footShare());
    assertThat(known.electricPower().orElseThrow())
        .isCloseTo(
            screw.findPowertrain().orElseThrow().electricPower(known.thrust(), v), within(1e-9));
    // Two ways to the same watts: within what the estimate claims, two deviations either way.
    assertThat(known.electricPower().orElseThrow())
        .isCloseTo(
            estimated.electricPower().orElseThrow(),
            within(2 * PowerBasis.ESTIMATED.deviation() * estimated.electricPower().orElseThrow()));
    assertThat(range(screw, Optional.empty()).basis()).isEqualTo(PowerBasis.SERIES);

    // Revolutions end the speeds that it reaches.
    double turns =
        screw
            .findPowertrain()
            .orElseThrow()
            .findState(known.thrust(), v)
            .orElseThrow()
            .revolutions();
    CaseSolver slow = with(d -> withPlant(d, blades(OptionalDouble.of(turns))), b -> b);
    assertThat(slow.trim(0.98 * v)).isInstanceOf(TrimOutcome.Trimmed.class);
    assertThat(slow.trim(1.02 * v)).isInstanceOf(TrimOutcome.NoTrim.class);
    assertThat(slow.findPower(1.02 * v)).isEmpty();
  }

  @Test
  void theDriveAtEachTrimPoint() {
    CaseSolver screw = with(d -> withPlant(d, blades(OptionalDouble.empty())), b -> b);
    List<TrimOutcome> outcomes = speeds().stream().map(screw::trim).toList();
    List<DrivePoint> points = DrivePoint.list(screw, outcomes);
    assertThat(points).hasSizeGreaterThan(5);
    for (DrivePoint point : points) {
      assertThat(point.most().thrust()).isGreaterThan(point.thrust());
      assertThat(point.state()).isPresent();
      // 450 mm of immersion less 180 mm, less half of the chop, give or take the pitch.
      assertThat(point.depth().shaft()).isBetween(0.18, 0.28);
      assertThat(point.cavitates()).isFalse();
    }
    assertThat(DrivePoint.list(SOLVER, outcomes))
        .allSatisfy(point -> assertThat(point.cavitationThrust()).isEmpty());
  }

  @Test
  void withoutDriveThereIsNoRange() {
    CaseSolver none = CaseSolver.of(ExampleCase.PLAIN.withoutDrive(OptionalDouble.empty()).build());
    assertThat(RangeSolver.find(none, List.of(none.trim(7)), Optional.empty())).isEmpty();
    RideRange nothing =
        RangeSolver.find(SOLVER, List.of(SOLVER.trim(1)), Optional.of(new WayHome(1, 0, 0)))
            .orElseThrow();
    assertThat(nothing.longest()).isEmpty();
    assertThat(nothing.home()).isEmpty();
  }
}
