package trimwright.cache.pair;

import java.util.Objects;
import java.util.concurrent.CancellationException;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheKey;
import trimwright.cache.CacheStore;
import trimwright.cache.Codec;
import trimwright.cache.DamagedEntryException;
import trimwright.cache.NamedArrays;
import trimwright.cache.Obtained;
import trimwright.kernel.quick.PairContent;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.rig.Craft;

/**
 * The table of a front wing with a stabilizer: read from a store, or built and kept there. A kept
 * table is the built one bit for bit. May be shared between threads.
 */
public final class CachedPairs {
  private static final String KIND = "pair table";
  private static final String PITCHES = "pitches";
  private static final String VALUES = "values";

  private static final Codec<PairTable> CODEC =
      new Codec<>() {
        @Override
        public byte[] encode(PairTable table) {
          float[] values = table.values();
          int[] bits = new int[values.length];
          for (int i = 0; i < bits.length; i++) {
            bits[i] = Float.floatToRawIntBits(values[i]);
          }
          return NamedArrays.CODEC.encode(
              NamedArrays.maker().doubles(PITCHES, table.pitches()).ints(VALUES, bits).arrays());
        }

        @Override
        public PairTable decode(byte[] payload) throws DamagedEntryException {
          NamedArrays arrays = NamedArrays.CODEC.decode(payload);
          int[] bits = arrays.ints(VALUES);
          float[] values = new float[bits.length];
          for (int i = 0; i < bits.length; i++) {
            values[i] = Float.intBitsToFloat(bits[i]);
          }
          return new PairTable(arrays.doubles(PITCHES), values);
        }
      };

  private final CacheStore store;
  private final String modelVersion;

  /**
   * Tables of a store.
   *
   * @param store where they are kept
   * @param modelVersion of the whole computation: another one means other tables
   */
  public CachedPairs(CacheStore store, String modelVersion) {
    this.store = Objects.requireNonNull(store, "store");
    this.modelVersion = Objects.requireNonNull(modelVersion, "modelVersion");
  }

  /**
   * The table of a craft's wings.
   *
   * @param craft the craft; shim, rider, board, mast and drive do not count
   * @param watch may stop the build before it begins, or the wait for another's
   * @return the table and where it came from
   * @throws CancellationException if the watch stopped it
   */
  public Obtained<PairTable> of(Craft craft, BuildWatch watch) {
    return store.obtain(key(craft), CODEC, w -> PairTable.of(craft), watch);
  }

  /** All that a table is computed from: the wings as they stand, version and nodes. */
  CacheKey key(Craft craft) {
    return CacheKey.of(KIND, modelVersion)
        .whole("table version", PairTable.version())
        .numbers("content", PairContent.of(craft))
        .key();
  }
}
