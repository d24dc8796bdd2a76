package trimwright.cache;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trimwright.cache.Obtained.Origin;

class CacheStoreTest {
  private static final long ROOMY = 1_000_000;

  @TempDir Path folder;

  private final AtomicInteger builds = new AtomicInteger();

  private static CacheKey key(int number) {
    return CacheKey.of("test", "1").whole("number", number).key();
  }

  private static NamedArrays value(int number) {
    return NamedArrays.maker().doubles("x", number, 1 / (1.0 + number)).arrays();
  }

  private Obtained<NamedArrays> obtain(CacheStore store, int number) {
    return store.obtain(
        key(number),
        NamedArrays.CODEC,
        watch -> {
          builds.incrementAndGet();
          return value(number);
        },
        BuildWatch.NONE);
  }

  private Path entry(int number) {
    return folder.resolve(key(number).digits() + ".entry");
  }

  private List<String> files() throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void buildsOnceAndKeepsForTheNextProgram() throws Exception {
    Obtained<NamedArrays> first = obtain(CacheStore.in(folder, ROOMY), 1);
    Obtained<NamedArrays> second = obtain(CacheStore.in(folder, ROOMY), 1);

    assertThat(first.origin()).isEqualTo(Origin.BUILT);
    assertThat(second.origin()).isEqualTo(Origin.KEPT);
    assertThat(second.value().doubles("x")).isEqualTo(value(1).doubles("x"));
    assertThat(builds).hasValue(1);
    assertThat(files()).containsExactly(entry(1).getFileName().toString(), "folder.lock");
  }

  @Test
  void makesTheFolderWhenItIsFirstNeeded() {
    Path deeper = folder.resolve("a").resolve("b");
    CacheStore store = CacheStore.in(deeper, ROOMY);
    assertThat(deeper).doesNotExist();
    assertThat(obtain(store, 1).origin()).isEqualTo(Origin.BUILT);
    assertThat(deeper).isDirectory();
  }

  @Test
  void aDamagedEntryIsBuiltAnewAndSaid() throws Exception {
    CacheStore store = CacheStore.in(folder, ROOMY);
    obtain(store, 1);
    byte[] good = Files.readAllBytes(entry(1));
    for (int i = 0; i < good.length; i++) {
      byte[] bad = good.clone();
      bad[i] ^= 0x40;
      Files.write(entry(1), bad);

      Obtained<NamedArrays> again = obtain(store, 1);

      assertThat(again.origin()).as("byte %d", i).isEqualTo(Origin.REBUILT);
      assertThat(again.reason()).contains("built anew");
      assertThat(Files.readAllBytes(entry(1))).isEqualTo(good);
    }
    for (int length = 0; length < good.length; length += 7) {
      Files.write(entry(1), java.util.Arrays.copyOf(good, length));
      assertThat(obtain(store, 1).origin()).isEqualTo(Origin.REBUILT);
    }
  }

  @Test
  void anEntryThatItsOwnCodecRefusesIsBuiltAnew() {
    CacheStore store = CacheStore.in(folder, ROOMY);
    obtain(store, 1);
    Codec<Integer> positive =
        new Codec<>() {
          @Override
          public byte[] encode(Integer value) {
            return new byte[] {value.byteValue()};
          }

          @Override
          public Integer decode(byte[] payload) {
            if (payload.length != 1) {
              throw new IllegalArgumentException("one byte");
            }
            return (int) payload[0];
          }
        };
    Obtained<Integer> other = store.obtain(key(1), positive, watch -> 7, BuildWatch.NONE);
    assertThat(other.origin()).isEqualTo(Origin.REBUILT);
    assertThat(other.reason()).contains("one byte");
    assertThat(store.obtain(key(1), positive, watch -> 8, BuildWatch.NONE).value()).isEqualTo(7);
  }

  @Test
  void whatWasLongestNotWantedGoes() throws Exception {
    obtain(CacheStore.in(folder, ROOMY), 1);
    long each = Files.size(entry(1));
    CacheStore store = CacheStore.in(folder, 3 * each);
    obtain(store, 2);
    obtain(store, 3);
    for (int number = 1; number <= 3; number++) {
      Instant wanted = Instant.now().minusSeconds(100 - number);
      Files.setLastModifiedTime(entry(number), FileTime.from(wanted));
    }
    assertThat(obtain(store, 1).origin()).isEqualTo(Origin.KEPT);

    obtain(store, 4);

    assertThat(entry(2)).doesNotExist();
    assertThat(entry(1)).exists();
    assertThat(entry(3)).exists();
    assertThat(entry(4)).exists();
    assertThat(store.bytes()).isEqualTo(3 * each);
  }

  @Test
  void whatIsLargerThanTheWholeCacheIsComputedAndNotKept() throws Exception {
    CacheStore store = CacheStore.in(folder, 20);
    Obtained<NamedArrays> obtained = obtain(store, 1);
    assertThat(obtained.origin()).isEqualTo(Origin.NOT_KEPT);
    assertThat(obtained.reason()).contains("larger than the whole cache");
    assertThat(obtained.value().doubles("x")).isEqualTo(value(1).doubles("x"));
    assertThat(files()).containsExactly("folder.lock");
  }

  @Test
  void aFolderThatIsNoneCostsTheCacheAndNothingElse() throws Exception {
    Path file = Files.writeString(folder.resolve("file"), "text");
    for (Path none : List.of(file, file.resolve("below"))) {
      Obtained<NamedArrays> obtained = obtain(CacheStore.in(none, ROOMY), 1);
      assertThat(obtained.origin()).isEqualTo(Origin.NOT_KEPT);
      assertThat(obtained.reason()).startsWith("not kept").contains(none.toString());
      assertThat(obtained.value().doubles("x")).isEqualTo(value(1).doubles("x"));
    }
  }

  @Test
  void whatKilledProgramsLeftIsSweptUp() throws Exception {
    CacheStore store = CacheStore.in(folder, ROOMY);
    Files.createDirectories(folder);
    Files.write(folder.resolve(key(7).digits() + ".tmp"), new byte[1000]);
    Files.write(folder.resolve(key(8).digits() + ".lock"), new byte[0]);
    Files.writeString(folder.resolve("somebody.tmp"), "not ours");

    obtain(store, 1);

    assertThat(files())
        .containsExactlyInAnyOrder(
            entry(1).getFileName().toString(), "folder.lock", "somebody.tmp");
  }

  @Test
  void aStoppedBuildKeepsNothingAndBlocksNobody() throws Exception {
    CacheStore store = CacheStore.in(folder, ROOMY);
    Build<NamedArrays> stopping =
        watch -> {
          throw new CancellationException("stopped half way");
        };
    assertThatThrownBy(() -> store.obtain(key(1), NamedArrays.CODEC, stopping, BuildWatch.NONE))
        .isInstanceOf(CancellationException.class);
    assertThat(files()).containsExactly("folder.lock");
    assertThat(obtain(store, 1).origin()).isEqualTo(Origin.BUILT);
  }

  @Test
  void theWatchReachesTheBuildAndStopsBeforeIt() {
    CacheStore store = CacheStore.in(folder, ROOMY);
    List<Double> seen = new ArrayList<>();
    BuildWatch watching =
        new BuildWatch() {
          @Override
          public void advanced(double share) {
            seen.add(share);
          }

          @Override
          public boolean isStopped() {
            return !seen.isEmpty();
          }
        };
    Build<NamedArrays> build =
        watch -> {
          watch.advanced(0.5);
          return value(1);
        };
    assertThat(store.obtain(key(1), NamedArrays.CODEC, build, watching).origin())
        .isEqualTo(Origin.BUILT);
    assertThat(seen).containsExactly(0.5);
    assertThatThrownBy(() -> store.obtain(key(2), NamedArrays.CODEC, build, watching))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void aBuildMayObtainOthersButNotItself() {
    CacheStore store = CacheStore.in(folder, ROOMY);
    Build<NamedArrays> nested = watch -> obtain(store, 2).value();
    assertThat(store.obtain(key(1), NamedArrays.CODEC, nested, BuildWatch.NONE).origin())
        .isEqualTo(Origin.BUILT);
    assertThatIllegalStateException()
        .isThrownBy(
            () ->
                store.obtain(
                    key(3), NamedArrays.CODEC, watch -> obtain(store, 3).value(), BuildWatch.NONE));
  }

  @Test
  void threadsWaitForOneBuilder() throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(8);
    try {
      List<Future<Obtained<NamedArrays>>> all = new ArrayList<>();
      for (int i = 0; i < 64; i++) {
        int number = i % 4;
        // A store for each: they are one when their folder is one.
        CacheStore store = CacheStore.in(folder, ROOMY);
        all.add(
            threads.submit(
                () ->
                    store.obtain(
                        key(number),
                        NamedArrays.CODEC,
                        watch -> {
                          builds.incrementAndGet();
                          sleep();
                          return value(number);
                        },
                        BuildWatch.NONE)));
      }
      for (int i = 0; i < all.size(); i++) {
        assertThat(all.get(i).get(30, TimeUnit.SECONDS).value().doubles("x"))
            .isEqualTo(value(i % 4).doubles("x"));
      }
    } finally {
      threads.shutdownNow();
    }
    assertThat(builds).hasValue(4);
  }

  private static void sleep() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Test
  void clearTakesEverythingAway() throws Exception {
    CacheStore store = CacheStore.in(folder, ROOMY);
    obtain(store, 1);
    obtain(store, 2);
    assertThat(store.bytes()).isPositive();
    store.clear();
    assertThat(store.bytes()).isZero();
    assertThat(obtain(store, 1).origin()).isEqualTo(Origin.BUILT);
  }

  @Test
  void aLimitOfNothingIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> CacheStore.in(folder, 0));
  }
}
