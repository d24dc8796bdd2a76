package trimwright.kernel.turn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.ExampleCase;
import trimwright.seed.RunSeed;

/** What keeping vortices and wakes of a flow close by costs, against flows solved anew. */
class QuickTurnPropertyTest {
  private static final RideCase CASE = ExampleCase.PLAIN.build();
  private static final TurnSolver TURNS = new TurnSolver(CASE);
  private static final double BASE = CASE.setup().mast().baseAngle();

  /** Pitch and slip [rad]: a hundredth of what the lattice itself is worth. */
  private static final double ANGLE = Math.toRadians(0.005);

  /** Share of thrust, side force and bending. */
  private static final double SHARE = 1e-3;

  /** Solves flows anew at the answer until nothing moves. */
  private static TurnPoint settled(TurnPoint first) {
    TurnPoint point = first;
    for (int i = 0; i < 3; i++) {
      point =
          TURNS.at(point.speed(), point.bank(), point.pitch() - BASE, point.slip()).orElseThrow();
    }
    return point;
  }

  @Property(tries = 25, seed = RunSeed.VALUE)
  void aTurnIsThatOfFlowsSolvedAnew(
      @ForAll @DoubleRange(min = 4.5, max = 10) double speed,
      @ForAll @DoubleRange(min = 0, max = 0.6) double bank,
      @ForAll @DoubleRange(min = -0.05, max = 0.12) double start) {
    Optional<TurnPoint> found = TURNS.at(speed, bank, start);
    if (found.isEmpty()) {
      return;
    }
    TurnPoint quick = found.get();
    TurnPoint full = settled(quick);
    assertThat(quick.pitch()).isCloseTo(full.pitch(), within(ANGLE));
    assertThat(quick.slip()).isCloseTo(full.slip(), within(ANGLE));
    assertThat(quick.thrust()).isCloseTo(full.thrust(), within(SHARE * full.thrust()));
    assertThat(quick.stripMargin()).isCloseTo(full.stripMargin(), within(ANGLE));
    assertThat(quick.footPressureAheadOfMast())
        .isCloseTo(full.footPressureAheadOfMast(), within(5e-4));
    assertThat(quick.loads().frontWingRoot())
        .isCloseTo(full.loads().frontWingRoot(), within(SHARE * full.loads().frontWingRoot()));
  }

  @Property(tries = 12, seed = RunSeed.VALUE)
  void theSlowestTurnIsWhereTheFirstStripStallsOrTheLastCircleEnds(
      @ForAll @DoubleRange(min = 0, max = 0.7) double bank,
      @ForAll @DoubleRange(min = 3, max = 4.5) double from,
      @ForAll @DoubleRange(min = 0.05, max = 0.2) double pitch) {
    TurnSolver.Slowest slowest = TURNS.slowest(bank, from, pitch).orElseThrow();
    // A flow solved anew a quarter of a percent to either side.
    Optional<TurnPoint> faster = TURNS.at(1.0025 * slowest.speed(), bank, pitch);
    assertThat(faster.orElseThrow().stripMargin()).isPositive();
    if (slowest.circle()) {
      double below = slowest.speed() / (TurnSolver.NEAR_CIRCLE + 1e-4);
      assertThat(TURNS.hasCircle(below, bank)).isFalse();
    } else {
      Optional<TurnPoint> slower = TURNS.at(0.9975 * slowest.speed(), bank, pitch);
      slower.ifPresent(p -> assertThat(p.stripMargin()).isNegative());
    }
  }

  @Property(tries = 100, seed = RunSeed.VALUE)
  void theLastCircleIsTheSlowestAndTheSteepest(
      @ForAll @DoubleRange(min = 0.05, max = 1.2) double bank,
      @ForAll @DoubleRange(min = 0.5, max = 2.5) double height) {
    double speed = TurnPath.slowest(bank, height);
    assertThat(TurnPath.of(speed, bank, height)).isPresent();
    assertThat(TurnPath.of(0.999 * speed, bank, height)).isEmpty();
    assertThat(TurnPath.steepest(speed, height)).isCloseTo(bank, within(1e-7));
    assertThat(TurnPath.of(speed, TurnPath.steepest(speed, height), height)).isPresent();
  }
}
