package trimwright.desk;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheStore;
import trimwright.cache.Obtained;
import trimwright.cache.polar.CachedPolars;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.SectionShape;
import trimwright.kernel.section.ViscousSection;

/**
 * Sections on polars by boundary layers. Looked for in memory, among those that come with the
 * program, in the cache folder; else built and kept there. May be shared between threads.
 */
public final class SectionPolars {
  /** Sections held in memory, some 60 kB each. */
  private static final int MOST = 64;

  private static final PolarTable.Settings SETTINGS = PolarTable.Settings.USUAL;

  /** Points of a table that must have been computed, or the outline is no section to it [1]. */
  private static final double LEAST_COMPUTED = 0.5;

  private final CachedPolars polars;

  private final Map<String, Section> held =
      new LinkedHashMap<>(2 * MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Section> eldest) {
          return size() > MOST;
        }
      };

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
   * A section, and what its reader should know.
   *
   * @param section the section on its polars; empty where layers could not follow its outline
   * @param remark why it could not be made, why it was not kept, or that a damaged table was built
   *     anew; empty where all went well
   */
  public record Found(Optional<Section> section, String remark) {
    /** Checks that nothing is missing. */
    public Found {
      Objects.requireNonNull(section, "section");
      Objects.requireNonNull(remark, "remark");
    }
  }

  /** What tells an outline from another here, whatever it is called. */
  public static String name(SectionShape shape) {
    return CachedPolars.name(shape, SETTINGS);
  }

  /**
   * The section where its polars need not be built.
   *
   * @param section the section by any other way
   * @return it on its polars; empty where they have to be built
   */
  public Optional<Section> find(Section section) {
    String name = name(section.shape()) + section.name();
    synchronized (held) {
      Section known = held.get(name);
      if (known != null) {
        return Optional.of(known);
      }
    }
    return polars
        .find(section.shape(), SETTINGS)
        .filter(SectionPolars::follows)
        .map(table -> hold(name, new ViscousSection(section, table)));
  }

  /**
   * The section on its polars, which are built where there are none.
   *
   * @param section the section by any other way
   * @param progress told how far a build is, 0 to 1 [1]; not asked where the table is read
   * @return it on its polars, or why not
   * @throws CancellationException if the running thread was interrupted
   */
  public Found of(Section section, DoubleConsumer progress) {
    Optional<Section> ready = find(section);
    if (ready.isPresent()) {
      return new Found(ready, "");
    }
    try {
      Obtained<PolarTable> obtained = polars.of(section.shape(), SETTINGS, watch(progress));
      if (!follows(obtained.value())) {
        return new Found(Optional.empty(), "the layers agree with the flow at too few angles");
      }
      String name = name(section.shape()) + section.name();
      Section made = hold(name, new ViscousSection(section, obtained.value()));
      return new Found(Optional.of(made), obtained.reason());
    } catch (IllegalArgumentException | ArithmeticException e) {
      return new Found(Optional.empty(), e.getMessage());
    }
  }

  private static boolean follows(PolarTable table) {
    var counts = table.counts();
    int all = counts.computed() + counts.bridged() + counts.extended();
    return counts.computed() >= LEAST_COMPUTED * all;
  }

  private Section hold(String name, Section section) {
    synchronized (held) {
      held.put(name, section);
    }
    return section;
  }

  private static BuildWatch watch(DoubleConsumer progress) {
    return new BuildWatch() {
      @Override
      public void advanced(double share) {
        progress.accept(share);
      }

      @Override
      public boolean isStopped() {
        return Thread.currentThread().isInterrupted();
      }
    };
  }
}
