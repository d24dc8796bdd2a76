package trimwright.bench;

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
import trimwright.kernel.hull.Posture;
import trimwright.kernel.hull.TakeOff;
import trimwright.kernel.hull.TakeOffSolver;
import trimwright.kernel.rig.RideCase;

/** One take-off. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
public class TakeOffBenchmark {
  private RideCase rideCase;
  private TakeOffSolver solver;

  /** Reads the case. */
  @Setup
  public void build() {
    rideCase = BenchCase.rideCase();
    solver = TakeOffSolver.of(rideCase, Posture.STANDING);
  }

  /** From the case to the run: table of the wings with the board on the water, and all speeds. */
  @Benchmark
  public TakeOff takeOff() {
    return TakeOffSolver.of(rideCase, Posture.STANDING).solve();
  }

  /** The same once the wings' table stands. */
  @Benchmark
  public TakeOff takeOffFromTable() {
    return solver.solve();
  }
}
