package trimwright.bench;

import java.util.List;
import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.SurfaceFlow;

/**
 * Front wing and stabilizer together with their image: one system built and solved, and its forces.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class LatticeBenchmark {
  /** Strips over both spans of both wings; two thirds on the front wing. */
  @Param({"48", "96", "192", "384"})
  public int strips;

  private Lattice lattice;
  private OptionalDouble depth;
  private double pitch;

  /** Builds the workspace. */
  @Setup
  public void build() {
    RideCase rideCase = BenchCase.rideCase();
    Craft craft =
        new Craft(rideCase, new LatticeSize(strips / 3, 1), new LatticeSize(strips / 6, 1));
    lattice = new Lattice(craft.wings(), false);
    depth = OptionalDouble.of(rideCase.immersion());
    pitch = Math.toRadians(3);
  }

  /** One assembled and solved system. */
  @Benchmark
  public Lattice solve() {
    lattice.solve(pitch, depth);
    return lattice;
  }

  /** The same with forces, moments and both induced drags. */
  @Benchmark
  public List<SurfaceFlow> solveWithForces() {
    lattice.solve(pitch, depth);
    return lattice.flows();
  }
}
