package trimwright.bench;

import java.util.List;
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
import org.openjdk.jmh.infra.Blackhole;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseSplit;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;

/**
 * Verdict and cause in words for every speed of the Bench's metric grid, as each move of a slider
 * asks for them; the computation itself is done before.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class WordsBenchmark {
  /** What the words speak in. */
  @Param public Measures measures;

  private CaseFile caseFile;
  private Curve curve;
  private List<CauseOutcome> causes;

  /** Computes the curve and the cause at each of its speeds. */
  @Setup
  public void build() {
    caseFile = BenchCase.caseFile(0.5, 0);
    CaseSolver solver = CaseSolver.of(caseFile.rideCase());
    curve = solver.curve(BenchCase.gridSpeeds());
    causes =
        curve.outcomes().stream()
            .map(at -> CauseSplit.of(solver, at.speed(), caseFile.notes().measuredPitch()))
            .toList();
  }

  /** The words for 31 speeds from 10 to 40 km/h. */
  @Benchmark
  public void words(Blackhole blackhole) {
    for (int i = 0; i < causes.size(); i++) {
      CauseWords cause = CauseWords.of(caseFile, causes.get(i), measures);
      blackhole.consume(cause);
      blackhole.consume(VerdictWords.of(caseFile, curve, curve.outcomes().get(i), cause, measures));
    }
  }
}
