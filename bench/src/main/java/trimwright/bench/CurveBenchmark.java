package trimwright.bench;

import java.util.List;
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
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.Responses;

/** One case from nothing to its curve of 30 speeds. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class CurveBenchmark {
  private RideCase rideCase;
  private List<Double> speeds;
  private CaseSolver solver;

  /** Reads the case. */
  @Setup
  public void build() {
    rideCase = BenchCase.rideCase();
    speeds = BenchCase.thirtySpeeds();
    solver = CaseSolver.of(rideCase);
  }

  /** Lattice, table, 30 trim points, even-feet and level speeds, rideable window. */
  @Benchmark
  public Curve curve() {
    return CaseSolver.of(rideCase).curve(speeds);
  }

  /** The same once the table over pitch stands: another stance, track, battery or wish. */
  @Benchmark
  public Curve curveFromTable() {
    return solver.curve(speeds);
  }

  /**
   * The same with the lattice solved anew at every pitch that the search asks for: what the table
   * saves.
   */
  @Benchmark
  public Curve curveUnfrozen() {
    Craft craft = new Craft(rideCase);
    return CaseSolver.of(craft, Responses.unfrozen(craft)).curve(speeds);
  }
}
