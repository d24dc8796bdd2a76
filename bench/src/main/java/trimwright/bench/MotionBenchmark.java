package trimwright.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
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
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallSolver;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode.Mainly;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.WaterMotion;
import trimwright.kernel.play.PlaySolver;
import trimwright.kernel.trim.CaseSolver;

/** How a case moves: modes and manners of a curve, motions over time, falls. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class MotionBenchmark {
  private CaseSolver solver;
  private MotionModel small;
  private MotionModel large;
  private MotionTrim trim;
  private PlaySolver plays;
  private List<Double> speeds;

  /** Reads the case and makes its tables. */
  @Setup
  public void build() {
    solver = CaseSolver.of(BenchCase.rideCase());
    speeds = BenchCase.thirtySpeeds();
    small = MotionModel.small(solver);
    large = MotionModel.large(solver);
    trim = large.findTrim(24 / 3.6).orElseThrow();
    plays = new PlaySolver(large);
  }

  /** Modes at 30 speeds, the tables of depth and turn included. */
  @Benchmark
  public List<Mainly> modesOfCurve() {
    return modes(MotionModel.small(solver));
  }

  /** The same once those tables stand. */
  @Benchmark
  public List<Mainly> modesFromTables() {
    return modes(small);
  }

  private List<Mainly> modes(MotionModel model) {
    List<Mainly> all = new ArrayList<>();
    for (double speed : speeds) {
      model.listModes(speed).forEach(mode -> all.add(mode.mainly()));
    }
    return all;
  }

  /** Everything that is said of how a case behaves about its trims, at 30 speeds. */
  @Benchmark
  public List<Manners> mannersFromTables() {
    List<Manners> all = new ArrayList<>();
    for (double speed : speeds) {
      small.findManners(speed).ifPresent(all::add);
    }
    return all;
  }

  /** The tables of large motions. */
  @Benchmark
  public MotionModel tablesOfLargeMotions() {
    return MotionModel.large(solver);
  }

  /** One second of a steady ride, followed in time with a body that sways. */
  @Benchmark
  public MotionTrace secondOfRest() {
    return large.follow(
        trim, large.held(trim), WaterMotion.STILL, MotionModel.Body.FREE, 1, 0.02, Set.of());
  }

  /** One second in chop of twelve waves. */
  @Benchmark
  public MotionTrace secondOfChop() {
    return large.follow(
        trim, large.held(trim), plays.chop(), MotionModel.Body.FOLLOWS, 1, 0.02, Set.of());
  }

  /** Falls of three postures over the rideable speeds, with the search for caps. */
  @Benchmark
  public FallStudy falls() {
    return FallStudy.find(
            new FallSolver(large),
            new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty()),
            () -> false)
        .orElseThrow();
  }
}
