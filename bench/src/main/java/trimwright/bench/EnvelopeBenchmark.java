package trimwright.bench;

import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.turn.TurnSolver;

/** The envelope of one case, and one turn of it. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class EnvelopeBenchmark {
  private static final double BANK = Math.toRadians(25);

  private RideCase rideCase;
  private CaseSolver solver;
  private TurnSolver turns;
  private double pitch;

  /** Solves the straight ride. */
  @Setup
  public void build() {
    rideCase = BenchCase.rideCase();
    solver = CaseSolver.of(rideCase);
    turns = new TurnSolver(rideCase);
    double wished = rideCase.rider().wishedSpeed();
    pitch =
        solver.trim(wished).findPoint().orElseThrow().pitch() - rideCase.setup().mast().baseAngle();
  }

  /** Everything, from a solver that is there. */
  @Benchmark
  public Envelope envelope() {
    return Envelope.of(solver, Envelope.Ratings.NONE, Optional.empty(), Posture.STANDING);
  }

  /** One turn at the wished speed. */
  @Benchmark
  public Optional<TurnPoint> turn() {
    return turns.at(rideCase.rider().wishedSpeed(), BANK, pitch);
  }
}
