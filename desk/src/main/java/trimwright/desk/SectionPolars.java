package trimwright.desk;

import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheStore;
import trimwright.cache.Obtained;
import trimwright.cache.polar.CachedPolars;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.SectionShape;

/**
 * Polars by boundary layers, read from the cache or built and kept there. May be shared between
 * threads.
 */
public final class SectionPolars {
  private final CachedPolars polars;

  /**
   * Polars of a cache.
   *
   * @param folder where tables are kept; empty for the usual place
   */
  public SectionPolars(Optional<Path> folder) {
    Path place = folder.orElseGet(CacheFolder::standard);
    this.polars = new CachedPolars(CacheStore.in(place, CacheFolder.MOST_BYTES));
  }

  /**
   * A table, and what its reader should know.
   *
   * @param table the table
   * @param remark why it was not kept, or that a damaged one was built anew; empty where all went
   *     well
   */
  public record Found(PolarTable table, String remark) {
    /** Checks that nothing is missing. */
    public Found {
      Objects.requireNonNull(table, "table");
      Objects.requireNonNull(remark, "remark");
    }
  }

  /**
   * The table of an outline.
   *
   * @param shape the outline
   * @param progress told how far a build is, 0 to 1 [1]; not asked where the table is read
   * @return the table
   * @throws CancellationException if the running thread was interrupted
   */
  public Found of(SectionShape shape, DoubleConsumer progress) {
    BuildWatch watch =
        new BuildWatch() {
          @Override
          public void advanced(double share) {
            progress.accept(share);
          }

          @Override
          public boolean isStopped() {
            return Thread.currentThread().isInterrupted();
          }
        };
    Obtained<PolarTable> obtained = polars.of(shape, PolarTable.Settings.USUAL, watch);
    return new Found(obtained.value(), obtained.reason());
  }
}
