package trimwright.desk;

import java.nio.file.Path;
import java.util.Optional;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheStore;
import trimwright.cache.pair.CachedPairs;
import trimwright.exchange.write.ModelVersion;
import trimwright.fitting.judge.PairTables;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Craft;

/** Tables of pairs of wings from the cache folder, built and kept there where they are missing. */
public final class KeptPairs implements PairTables {
  /** What the tables may take, some 30,000 of them [byte]: a stock in two dozen waters. */
  private static final long MOST_BYTES = 512L * 1024 * 1024;

  private static final String FOLDER = "pairs";

  private final CachedPairs pairs;

  /**
   * Tables of a cache.
   *
   * @param folder where tables are kept; empty for the usual place
   */
  public KeptPairs(Optional<Path> folder) {
    Path place = folder.orElseGet(CacheFolder::standard).resolve(FOLDER);
    pairs = new CachedPairs(CacheStore.in(place, MOST_BYTES), ModelVersion.TEXT);
  }

  @Override
  public PairTable of(Craft craft) {
    return pairs.of(craft, WATCH).value();
  }

  private static final BuildWatch WATCH =
      new BuildWatch() {
        @Override
        public void advanced(double share) {
          // A table takes a tenth of a second: nobody looks.
        }

        @Override
        public boolean isStopped() {
          return Thread.currentThread().isInterrupted();
        }
      };
}
