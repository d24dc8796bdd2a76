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
import trimwright.kernel.quick.PairLoads;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.quick.QuickCase;
import trimwright.kernel.quick.QuickSpeed;
import trimwright.kernel.quick.QuickTrim;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.TrimOutcome;

/**
 * Trims from a pair's table, each at another speed and shim than the one before, beside those from
 * the table of one case and beside the full solution.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class PairBenchmark {
  /** As many speeds and shims in turn. */
  private static final int KINDS = 64;

  private final double[] speeds = new double[KINDS];
  private final double[] shims = new double[KINDS];
  private final PairLoads[] loads = new PairLoads[KINDS];
  private final QuickSpeed[] at = new QuickSpeed[KINDS];
  private Craft craft;
  private PairTable table;
  private QuickCase quick;
  private CaseSolver full;
  private CaseSolver tabulated;
  private int next;

  /** Builds the table and what is asked of it. */
  @Setup
  public void build() {
    RideCase rideCase = BenchCase.rideCase();
    craft = new Craft(rideCase);
    table = PairTable.of(craft);
    quick = new QuickCase(craft);
    full = CaseSolver.of(craft, Responses.unfrozen(craft));
    tabulated = CaseSolver.of(rideCase);
    for (int i = 0; i < KINDS; i++) {
      speeds[i] = 4.5 + 5.0 * i / KINDS;
      shims[i] = Math.toRadians(-2 + 4.0 * (i * 37 % KINDS) / KINDS);
      loads[i] = table.at(speeds[i], shims[i]);
      at[i] = quick.at(speeds[i]);
    }
  }

  private int turn() {
    next = (next + 1) % KINDS;
    return next;
  }

  /** A pair's whole table. */
  @Benchmark
  public PairTable table() {
    return PairTable.of(craft);
  }

  /** The table at one speed and shim. */
  @Benchmark
  public PairLoads loads() {
    int i = turn();
    return table.at(speeds[i], shims[i]);
  }

  /** Pitch, thrust, power, feet and margin from loads that are there. */
  @Benchmark
  public QuickTrim trim() {
    int i = turn();
    return at[i].trim(loads[i]);
  }

  /** All of a trim at a new speed with a new shim. */
  @Benchmark
  public QuickTrim speedLoadsAndTrim() {
    int i = turn();
    return quick.at(speeds[i]).trim(table.at(speeds[i], shims[i]));
  }

  /** The same, and all that is said about a trim, from the table of one case. */
  @Benchmark
  public TrimOutcome caseTrim() {
    return tabulated.trim(speeds[turn()]);
  }

  /** The same with lattice and sections brought together anew at every pitch asked for. */
  @Benchmark
  public TrimOutcome fullTrim() {
    return full.trim(speeds[turn()]);
  }
}
