package trimwright.desk;

import java.util.LinkedHashMap;
import java.util.Map;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.ResponseKey;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.SurfaceTables;

/**
 * Keeps the last few tables of lifting surfaces by their content: a change that leaves the wings as
 * they stand costs no lattice, and one that is taken back neither.
 *
 * <p>May be shared between threads. Two that ask for the same new table at once both make it, and
 * both make the same.
 */
public final class KeptTables implements SurfaceTables {
  /**
   * Tables kept. A table is some 10 kB; this many hold all notches of a shim slider and what was
   * pinned for several cases at once.
   */
  private static final int MOST = 128;

  private final Map<ResponseKey, SurfaceResponse> tables =
      new LinkedHashMap<>(2 * MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<ResponseKey, SurfaceResponse> eldest) {
          return size() > MOST;
        }
      };

  /** Keeps none yet. */
  public KeptTables() {}

  @Override
  public SurfaceResponse of(Craft craft) {
    ResponseKey key = Responses.key(craft);
    synchronized (tables) {
      SurfaceResponse kept = tables.get(key);
      if (kept != null) {
        return kept;
      }
    }
    // Outside the lock, so that nobody waits for another's lattice.
    SurfaceResponse made = Responses.tabulated(craft);
    synchronized (tables) {
      tables.put(key, made);
    }
    return made;
  }

  /** Number of tables kept now, never above a fixed bound. */
  int size() {
    synchronized (tables) {
      return tables.size();
    }
  }
}
