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
import trimwright.desk.BenchStudy;
import trimwright.desk.KeptTables;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchWriter;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.SurfaceTables;

/**
 * One move of a slider of the Bench, from the accepted case to the answer's text: 31 speeds with
 * trim points, words, cause split, forces and outlines. Reading the case is not in it.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class BenchReplyBenchmark {
  private static final int STEPS = 13;

  private final CaseFile[] shims = new CaseFile[STEPS];
  private final CaseFile[] tracks = new CaseFile[STEPS];
  private KeptTables kept;
  private BenchStudy study;
  private int turn;

  /** Reads the cases: shims of -3 to 3 degrees, tracks of -60 to 60 mm. */
  @Setup
  public void build() {
    for (int i = 0; i < STEPS; i++) {
      shims[i] = BenchCase.caseFile(-3 + 0.5 * i, 0);
      tracks[i] = BenchCase.caseFile(0, -60 + 10 * i);
    }
    kept = new KeptTables();
    study = BenchStudy.of(tracks[0], Measures.METRIC, kept);
  }

  private CaseFile next(CaseFile[] cases) {
    turn = (turn + 1) % STEPS;
    return cases[turn];
  }

  private static String write(BenchStudy study) {
    return BenchWriter.accepted(
        1, study.measures(), study.caseFile(), study.curve(), study.causes());
  }

  /** The costliest slider: every shim needs another table of the lifting surfaces. */
  @Benchmark
  public String shim() {
    return write(BenchStudy.of(next(shims), Measures.METRIC, SurfaceTables.ANEW));
  }

  /** A slider that leaves the lifting surfaces alone. */
  @Benchmark
  public String track() {
    return write(BenchStudy.of(next(tracks), Measures.METRIC, kept));
  }

  /** The part that only a shim needs: the table over pitch. */
  @Benchmark
  public SurfaceResponse table() {
    return Responses.tabulated(new Craft(next(shims).rideCase()));
  }

  /** The part that every slider needs: trim points, searches and splits from the table. */
  @Benchmark
  public BenchStudy studyFromTable() {
    return BenchStudy.of(next(tracks), Measures.METRIC, kept);
  }

  /** The rest: words, geometry and JSON. */
  @Benchmark
  public String writing() {
    return write(study);
  }
}
