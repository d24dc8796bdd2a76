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
import trimwright.desk.BenchBands;
import trimwright.desk.KeptTables;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchBandsWriter;
import trimwright.kernel.trim.SurfaceTables;

/** The bands of the Bench's curve, asked for when a slider rests: 31 speeds, some 55 inputs. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
public class BandsBenchmark {
  private CaseFile caseFile;
  private KeptTables kept;
  private BenchBands found;

  /** Reads the case and keeps its tables. */
  @Setup
  public void build() {
    caseFile = BenchCase.caseFile(0, 0);
    kept = new KeptTables();
    found = bandsFromTables();
  }

  private BenchBands bands(SurfaceTables tables) {
    return BenchBands.find(caseFile, Optional.empty(), Measures.METRIC, tables, tables, () -> false)
        .orElseThrow();
  }

  /** After a slider that turned a wing: every table anew. */
  @Benchmark
  public BenchBands bandsAnew() {
    return bands(SurfaceTables.ANEW);
  }

  /** After a slider that left the wings alone. */
  @Benchmark
  public BenchBands bandsFromTables() {
    return bands(kept);
  }

  /** Words and JSON. */
  @Benchmark
  public String writing() {
    return BenchBandsWriter.accepted(
        1,
        Measures.METRIC,
        caseFile,
        found.bands(),
        found.study().causes(),
        found.splits(),
        found.reference());
  }
}
