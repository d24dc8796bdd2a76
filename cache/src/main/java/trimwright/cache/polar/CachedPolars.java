package trimwright.cache.polar;

import java.util.Objects;
import java.util.concurrent.CancellationException;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheKey;
import trimwright.cache.CacheStore;
import trimwright.cache.Codec;
import trimwright.cache.DamagedEntryException;
import trimwright.cache.NamedArrays;
import trimwright.cache.Obtained;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.SectionShape;

/**
 * The polar table of a section: read from a store, or built and kept there. A kept table is the
 * built one bit for bit. May be shared between threads.
 */
public final class CachedPolars {
  private static final String KIND = "polar table";
  private static final String ANGLES = "angles";
  private static final String LOG_REYNOLDS = "log reynolds";
  private static final String VALUES = "values";
  private static final String COUNTS = "counts";

  private static final Codec<PolarTable> CODEC =
      new Codec<>() {
        @Override
        public byte[] encode(PolarTable table) {
          PolarTable.Numbers numbers = table.numbers();
          return NamedArrays.CODEC.encode(
              NamedArrays.maker()
                  .doubles(ANGLES, numbers.angles())
                  .doubles(LOG_REYNOLDS, numbers.logReynolds())
                  .doubles(VALUES, numbers.values())
                  .ints(COUNTS, numbers.counts())
                  .arrays());
        }

        @Override
        public PolarTable decode(byte[] payload) throws DamagedEntryException {
          NamedArrays arrays = NamedArrays.CODEC.decode(payload);
          return PolarTable.of(
              new PolarTable.Numbers(
                  arrays.doubles(ANGLES),
                  arrays.doubles(LOG_REYNOLDS),
                  arrays.doubles(VALUES),
                  arrays.ints(COUNTS)));
        }
      };

  private final CacheStore store;

  /**
   * Polars of a store.
   *
   * @param store where they are kept
   */
  public CachedPolars(CacheStore store) {
    this.store = Objects.requireNonNull(store, "store");
  }

  /**
   * The table of an outline.
   *
   * @param shape the outline
   * @param settings what else it depends on
   * @param watch sees how far a build is and may stop it
   * @return the table and where it came from
   * @throws CancellationException if the watch stopped it
   */
  public Obtained<PolarTable> of(
      SectionShape shape, PolarTable.Settings settings, BuildWatch watch) {
    return store.obtain(key(shape, settings), CODEC, w -> build(shape, settings, w), watch);
  }

  /** All that a table is computed from: outline, settings and the version of the computation. */
  static CacheKey key(SectionShape shape, PolarTable.Settings settings) {
    return CacheKey.of(KIND, Integer.toString(PolarTable.VERSION))
        .numbers("x", shape.x())
        .numbers("y", shape.y())
        .numbers("turbulence", settings.disturbance().turbulence())
        .numbers("scuffed station", settings.scuffedStation())
        .key();
  }

  private static PolarTable build(
      SectionShape shape, PolarTable.Settings settings, BuildWatch watch) {
    return PolarTable.build(
            shape,
            settings,
            share -> {
              watch.advanced(share);
              return !watch.isStopped();
            })
        .orElseThrow(() -> new CancellationException("stopped before the polars were there"));
  }
}
