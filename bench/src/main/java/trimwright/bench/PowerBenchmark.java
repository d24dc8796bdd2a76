package trimwright.bench;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import trimwright.kernel.propel.DriveLimits;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.propel.Screw;
import trimwright.kernel.propel.ScrewPowertrain;
import trimwright.kernel.propel.SeriesPropeller;
import trimwright.kernel.range.RangeSolver;
import trimwright.kernel.range.RideRange;
import trimwright.kernel.range.WayHome;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;

/** A drive with a known propeller over the 30 speeds of one curve, and the range from a curve. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
public class PowerBenchmark {
  private static final double THRUST = 130;

  private List<Double> speeds;
  private Powertrain drive;
  private CaseSolver solver;
  private List<TrimOutcome> outcomes;

  /** Builds the drive and solves the curve. */
  @Setup
  public void build() {
    RideCase rideCase = BenchCase.rideCase();
    speeds = BenchCase.thirtySpeeds();
    DriveLimits limits =
        new DriveLimits(
            5000, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    Screw screw = new Screw(new SeriesPropeller(3, 1.1, 0.5), 0.15, rideCase.water());
    drive = ScrewPowertrain.of(screw, 0.8, limits);
    solver = CaseSolver.of(rideCase);
    outcomes = solver.curve(speeds).outcomes();
  }

  /** Electric power and the drive's slack at each speed. */
  @Benchmark
  public double powerOfCurve() {
    double sum = 0;
    for (double v : speeds) {
      sum += drive.electricPower(THRUST, v) + drive.slack(THRUST, v);
    }
    return sum;
  }

  /** The greatest thrust at each speed. */
  @Benchmark
  public double greatestThrustOfCurve() {
    double sum = 0;
    for (double v : speeds) {
      sum += drive.greatestThrust(v).thrust();
    }
    return sum;
  }

  /** Best speeds and points of a solved curve. */
  @Benchmark
  public Optional<RideRange> range() {
    return RangeSolver.find(solver, outcomes, Optional.empty());
  }

  /** The same with a way home against wind and current. */
  @Benchmark
  public Optional<RideRange> rangeWithWayHome() {
    return RangeSolver.find(solver, outcomes, Optional.of(new WayHome(3000, 0.5, 5)));
  }
}
