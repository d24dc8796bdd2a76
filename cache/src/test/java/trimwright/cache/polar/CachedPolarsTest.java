package trimwright.cache.polar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cache.BuildWatch;
import trimwright.cache.CacheStore;
import trimwright.cache.Obtained;
import trimwright.cache.Obtained.Origin;
import trimwright.kernel.layer.Disturbance;
import trimwright.kernel.section.PolarTable;
import trimwright.kernel.section.SectionShape;
import trimwright.kernel.section.Sections;

class CachedPolarsTest {
  /** None that comes with the program. */
  private static final SectionShape SHAPE = Sections.naca("2411").shape();

  private static final PolarTable.Settings USUAL = PolarTable.Settings.USUAL;

  @TempDir Path folder;

  /** Notes how far a build is, and stops it after so many steps. */
  private static final class Steps implements BuildWatch {
    private final List<Double> shares = new ArrayList<>();
    private final int most;

    Steps(int most) {
      this.most = most;
    }

    @Override
    public void advanced(double share) {
      shares.add(share);
    }

    @Override
    public boolean isStopped() {
      return shares.size() >= most;
    }
  }

  private CachedPolars polars() {
    return new CachedPolars(CacheStore.in(folder, 1_000_000));
  }

  @Test
  void aKeptTableIsTheBuiltOneBitForBit() {
    Steps steps = new Steps(Integer.MAX_VALUE);
    Obtained<PolarTable> built = polars().of(SHAPE, USUAL, steps);
    Obtained<PolarTable> kept = polars().of(SHAPE, USUAL, BuildWatch.NONE);
    assertThat(built.origin()).isEqualTo(Origin.BUILT);
    assertThat(kept.origin()).isEqualTo(Origin.KEPT);
    PolarTable.Numbers one = built.value().numbers();
    PolarTable.Numbers other = kept.value().numbers();
    assertThat(other.angles()).isEqualTo(one.angles());
    assertThat(other.logReynolds()).isEqualTo(one.logReynolds());
    assertThat(other.values()).isEqualTo(one.values());
    assertThat(other.kinds()).isEqualTo(one.kinds());
    assertThat(steps.shares).isSorted().last().isEqualTo(1.0);
  }

  @Test
  void aStoppedBuildKeepsNothing() throws Exception {
    assertThatThrownBy(() -> polars().of(SHAPE, USUAL, new Steps(1)))
        .isInstanceOf(CancellationException.class);
    try (Stream<Path> inside = Files.list(folder)) {
      assertThat(inside.filter(path -> path.toString().endsWith(".entry"))).isEmpty();
    }
  }

  @Test
  void whateverATableDependsOnGivesAnotherKey() {
    assertThat(
            List.of(
                CachedPolars.key(SHAPE, USUAL),
                CachedPolars.key(Sections.naca("2413").shape(), USUAL),
                CachedPolars.key(SHAPE, new PolarTable.Settings(Disturbance.TUNNEL, 0.05)),
                CachedPolars.key(SHAPE, new PolarTable.Settings(Disturbance.TUNNEL, 0.06))))
        .doesNotHaveDuplicates();
    assertThat(CachedPolars.key(Sections.naca("2411").shape(), USUAL))
        .isEqualTo(CachedPolars.key(SHAPE, USUAL));
  }
}
