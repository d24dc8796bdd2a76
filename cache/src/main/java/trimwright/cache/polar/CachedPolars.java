package trimwright.cache.polar;

import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.DoubleStream;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheKey;
import trimwright.cache.CacheStore;
import trimwright.cache.Codec;
import trimwright.cache.DamagedEntryException;
import trimwright.cache.NamedArrays;
import trimwright.cache.Obtained;
import trimwright.cache.ShippedEntries;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.SectionShape;

/**
 * The polar table of a section: one that comes with the program, else read from a store, else built
 * and kept there. A kept table is the built one bit for bit. May be shared between threads.
 */
public final class CachedPolars {
  private static final String KIND = "polar table";
  private static final String ANGLES = "angles";
  private static final String LOG_REYNOLDS = "log reynolds";
  private static final String VALUES = "values";
  private static final String KINDS = "kinds";

  /**
   * Steps to which an outline is told apart [chords]: far below what any number here shows, far
   * above what processors differ by in a cosine, so that a shipped table is found on all of them.
   */
  private static final double OUTLINE_STEP = 1e-9;

  static final Codec<PolarTable> CODEC =
      new Codec<>() {
        @Override
        public byte[] encode(PolarTable table) {
          PolarTable.Numbers numbers = table.numbers();
          return NamedArrays.CODEC.encode(
              NamedArrays.maker()
                  .doubles(ANGLES, numbers.angles())
                  .doubles(LOG_REYNOLDS, numbers.logReynolds())
                  .doubles(VALUES, numbers.values())
                  .ints(KINDS, numbers.kinds())
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
                  arrays.ints(KINDS)));
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
   * @throws ArithmeticException if no flow was found about the outline
   */
  public Obtained<PolarTable> of(
      SectionShape shape, PolarTable.Settings settings, BuildWatch watch) {
    CacheKey key = key(shape, settings);
    return ShippedEntries.find(key, CODEC)
        .map(table -> new Obtained<>(table, Obtained.Origin.SHIPPED, ""))
        .orElseGet(() -> store.obtain(key, CODEC, w -> build(shape, settings, w), watch));
  }

  /**
   * The table of an outline where it need not be built.
   *
   * @param shape the outline
   * @param settings what else it depends on
   * @return the table; empty where it has to be built
   */
  public Optional<PolarTable> find(SectionShape shape, PolarTable.Settings settings) {
    CacheKey key = key(shape, settings);
    return ShippedEntries.find(key, CODEC).or(() -> store.find(key, CODEC));
  }

  /**
   * The name under which a table is kept: equal for equal outlines and settings, another for
   * another version of the computation.
   *
   * @param shape the outline
   * @param settings what else it depends on
   */
  public static String name(SectionShape shape, PolarTable.Settings settings) {
    return key(shape, settings).digits();
  }

  /** All that a table is computed from: outline, settings and the version of the computation. */
  static CacheKey key(SectionShape shape, PolarTable.Settings settings) {
    return CacheKey.of(KIND, Integer.toString(PolarTable.VERSION))
        .whole("x", steps(shape.x()))
        .whole("y", steps(shape.y()))
        .numbers("turbulence", settings.disturbance().turbulence())
        .numbers("scuffed station", settings.scuffedStation())
        .key();
  }

  private static long[] steps(double[] lengths) {
    return DoubleStream.of(lengths).mapToLong(x -> Math.round(x / OUTLINE_STEP)).toArray();
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
