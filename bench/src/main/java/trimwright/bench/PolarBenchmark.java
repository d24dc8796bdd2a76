package trimwright.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheStore;
import trimwright.cache.polar.CachedPolars;
import trimwright.kernel.layer.Disturbance;
import trimwright.kernel.section.PolarRow;
import trimwright.kernel.section.PolarSweep;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.SectionShape;
import trimwright.kernel.section.Sections;
import trimwright.kernel.section.ViscousSurface;

/**
 * Polars of one section: one Reynolds number, the whole table, and the table read from the disk.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
public class PolarBenchmark {
  private static final int LOWEST_DEGREES = -12;
  private static final int HIGHEST_DEGREES = 20;
  private static final long ROOMY = 1_000_000;

  /** A stabilizer's section and a front wing's. */
  @Param({"naca0009", "naca2412"})
  public String section;

  private SectionShape shape;
  private ViscousSurface surface;
  private double[] angles;
  private Path folder;
  private CachedPolars polars;

  /** Prepares the outline, and keeps one table. */
  @Setup(Level.Trial)
  public void build() throws IOException {
    shape = Sections.naca(section).shape();
    surface = ViscousSurface.of(shape);
    angles = new double[HIGHEST_DEGREES - LOWEST_DEGREES + 1];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = Math.toRadians(LOWEST_DEGREES + i);
    }
    folder = Files.createTempDirectory("polars");
    polars = new CachedPolars(CacheStore.in(folder, ROOMY));
    polars.of(shape, PolarTable.Settings.USUAL, BuildWatch.NONE);
  }

  /** Leaves nothing behind. */
  @TearDown(Level.Trial)
  public void clear() throws IOException {
    CacheStore.in(folder, ROOMY).clear();
    Files.delete(folder.resolve("folder.lock"));
    Files.delete(folder);
  }

  /** Thirty-three angles at one Reynolds number, clean. */
  @Benchmark
  public PolarRow polar() {
    return PolarSweep.run(surface, angles, 6e5, Disturbance.WATERS, 1);
  }

  /** All angles, Reynolds numbers and both finishes. */
  @Benchmark
  @BenchmarkMode(Mode.SingleShotTime)
  @Warmup(iterations = 1)
  @Measurement(iterations = 3)
  public PolarTable table() {
    return PolarTable.build(shape, PolarTable.Settings.USUAL, share -> true).orElseThrow();
  }

  /** The same table read from the disk. */
  @Benchmark
  public PolarTable kept() {
    return polars.of(shape, PolarTable.Settings.USUAL, BuildWatch.NONE).value();
  }
}
