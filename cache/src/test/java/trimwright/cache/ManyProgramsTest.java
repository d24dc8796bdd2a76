package trimwright.cache;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several programs on one folder, some of them killed. */
class ManyProgramsTest {
  private static final long ROOMY = 100_000_000;

  /** What an entry of the program takes [byte], rounded up. */
  private static final long EACH = 161_000;

  private static final int FEW_KILLS = 8;
  private static final int MANY_KILLS = 300;

  /** Exit value of a program that was ended by signal 9. */
  private static final int KILLED = 128 + 9;

  /** From the program's first line to its end [ms]. */
  private static final int LATEST_KILL = 500;

  /** A folder whose owner died is free again at once; this is for a busy machine. */
  private static final Duration SOON = Duration.ofSeconds(20);

  @TempDir Path folder;
  @TempDir Path marks;

  private Process start(String... args) throws IOException {
    return new ProcessBuilder(command(args)).redirectErrorStream(true).start();
  }

  private static List<String> command(String... args) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-Xshare:auto", "-XX:TieredStopAtLevel=1", "-Xmx128m", "-cp"));
    command.add(classPath());
    command.add(CacheProgram.class.getName());
    command.addAll(Arrays.asList(args));
    return command;
  }

  /** Where these classes lie: tests may run on the module path, which says nothing of it. */
  private static String classPath() {
    return Stream.of(CacheStore.class, CacheProgram.class)
        .map(type -> type.getProtectionDomain().getCodeSource().getLocation())
        .map(location -> new File(location.getPath()).getPath())
        .distinct()
        .reduce((a, b) -> a + File.pathSeparator + b)
        .orElseThrow();
  }

  private static List<String> lines(Process process) throws IOException {
    try (BufferedReader reader = process.inputReader()) {
      return reader.lines().toList();
    }
  }

  @Test
  void programsShareOneBuilderForEachKey() throws Exception {
    List<Process> all = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      all.add(
          start(
              folder.toString(),
              Long.toString(ROOMY),
              "6",
              "40",
              Integer.toString(i),
              "60",
              marks.toString()));
    }
    List<String> built = new ArrayList<>();
    for (Process process : all) {
      List<String> lines = lines(process);
      assertThat(process.waitFor()).as("%s", lines).isZero();
      assertThat(lines).last().isEqualTo("done");
      lines.stream().filter(line -> line.startsWith("BUILT")).forEach(built::add);
      assertThat(lines).noneMatch(line -> line.startsWith("NOT_KEPT"));
    }
    assertThat(built).hasSize(6).doesNotHaveDuplicates();
    assertThat(files()).hasSize(7).filteredOn(name -> name.endsWith(".entry")).hasSize(6);
  }

  @Test
  void theLimitHoldsForAllProgramsTogether() throws Exception {
    List<Process> all = new ArrayList<>();
    for (int i = 0; i < 2; i++) {
      all.add(
          start(
              folder.toString(),
              Long.toString(3 * EACH),
              "12",
              "60",
              Integer.toString(i),
              "1",
              marks.toString()));
    }
    for (Process process : all) {
      List<String> lines = lines(process);
      assertThat(process.waitFor()).as("%s", lines).isZero();
    }
    assertThat(CacheStore.in(folder, 3 * EACH).bytes()).isBetween(2 * EACH, 3 * EACH);
  }

  @Test
  void afterAFewKillsEverythingIsWhole() throws Exception {
    killAndLook(FEW_KILLS);
  }

  @Test
  @Tag("long")
  void afterManyKillsEverythingIsWhole() throws Exception {
    killAndLook(MANY_KILLS);
  }

  private void killAndLook(int kills) throws Exception {
    SplittableRandom random = new SplittableRandom(kills);
    CacheStore store = CacheStore.in(folder, 5 * EACH);
    int killedAtWork = 0;
    int leftUnfinished = 0;
    for (int kill = 0; kill < kills; kill++) {
      // Killing closes the pipe between the programs; a file keeps what was said until then.
      Path said = marks.resolve("said-" + kill);
      Process process =
          new ProcessBuilder(
                  command(
                      folder.toString(),
                      Long.toString(5 * EACH),
                      "8",
                      "1000000",
                      Integer.toString(kill),
                      "0",
                      "-"))
              .redirectErrorStream(true)
              .redirectOutput(said.toFile())
              .start();
      while (Files.size(said) == 0 && process.isAlive()) {
        Thread.sleep(1);
      }
      Thread.sleep(random.nextInt(LATEST_KILL));
      process.destroyForcibly();
      assertThat(process.waitFor(10, TimeUnit.SECONDS)).isTrue();
      List<String> lines = Files.readAllLines(said);
      assertThat(process.exitValue()).as("%s", lines).isEqualTo(KILLED);
      killedAtWork += lines.stream().anyMatch(line -> line.startsWith("BUILT")) ? 1 : 0;
      leftUnfinished += files().stream().anyMatch(name -> name.endsWith(".tmp")) ? 1 : 0;
      requireWhole(store, random.nextInt(8));
    }
    // Otherwise nothing would have been shown.
    assertThat(killedAtWork).isPositive();
    System.out.printf(
        "%d kills, %d at work, %d left an unfinished file%n", kills, killedAtWork, leftUnfinished);
  }

  /** No damaged entry, no lock that stays, nothing above the limit, nothing unfinished for long. */
  private void requireWhole(CacheStore store, int number) throws Exception {
    for (String name : files()) {
      if (name.endsWith(".entry")) {
        CacheKey key = new CacheKey(name.substring(0, name.length() - ".entry".length()));
        assertThat(EntryFile.decode(key, Files.readAllBytes(folder.resolve(name)))).isNotEmpty();
      }
    }
    long start = System.nanoTime();
    Obtained<NamedArrays> obtained =
        store.obtain(
            CacheProgram.key(100 + number),
            NamedArrays.CODEC,
            watch -> CacheProgram.value(100 + number),
            BuildWatch.NONE);
    assertThat(Duration.ofNanos(System.nanoTime() - start)).isLessThan(SOON);
    assertThat(CacheProgram.isRight(100 + number, obtained.value())).isTrue();
    assertThat(obtained.origin()).isNotEqualTo(Obtained.Origin.NOT_KEPT);
    assertThat(store.bytes()).isLessThanOrEqualTo(5 * EACH);
    if (obtained.origin() == Obtained.Origin.BUILT) {
      assertThat(files()).noneMatch(name -> name.endsWith(".tmp"));
      assertThat(files()).filteredOn(name -> name.endsWith(".lock")).containsExactly("folder.lock");
    }
  }

  private List<String> files() throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).toList();
    }
  }

  /** The system's limit on a file's size stands for a full disk: both fail half way in a write. */
  @Test
  void aFullDiskCostsTheCacheAndNothingElse() throws Exception {
    List<String> command =
        command(folder.toString(), Long.toString(ROOMY), "3", "6", "1", "0", "-");
    List<String> limited = new ArrayList<>(List.of("bash", "-c", "ulimit -f 64; exec \"$@\"", "-"));
    limited.addAll(command);
    Process process = new ProcessBuilder(limited).redirectErrorStream(true).start();
    List<String> lines = lines(process);
    assertThat(process.waitFor()).as("%s", lines).isZero();
    assertThat(lines).last().isEqualTo("done");
    assertThat(lines).filteredOn(line -> line.startsWith("NOT_KEPT")).hasSize(6);
    assertThat(files()).containsExactly("folder.lock");
  }

  /**
   * Another user, who may read the folder and not write it. Where the tests run as an ordinary user
   * the folder alone is closed to writing.
   */
  @Test
  void aFolderThatMayOnlyBeReadGivesWhatItHas() throws Exception {
    CacheStore store = CacheStore.in(folder, ROOMY);
    store.obtain(
        CacheProgram.key(0), NamedArrays.CODEC, watch -> CacheProgram.value(0), BuildWatch.NONE);
    Path classes = copiedClasses();
    List<String> command = new ArrayList<>();
    if (Files.getOwner(folder).getName().equals("root")) {
      command.addAll(List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups", "--"));
    }
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("r-xr-xr-x"));
    command.addAll(command(folder.toString(), Long.toString(ROOMY), "2", "12", "1", "0", "-"));
    command.set(command.indexOf("-cp") + 1, classes.toString());
    Process process = new ProcessBuilder(command).redirectErrorStream(true).start();
    List<String> lines = lines(process);
    Files.setPosixFilePermissions(folder, PosixFilePermissions.fromString("rwxr-xr-x"));
    assertThat(process.waitFor()).as("%s", lines).isZero();
    assertThat(lines).last().isEqualTo("done");
    // What is there is read; what is not is computed each time and said to be not kept.
    assertThat(lines).noneMatch(line -> line.contains(" 0 ")).noneMatch(l -> l.startsWith("BUILT"));
    assertThat(lines)
        .filteredOn(line -> line.startsWith("NOT_KEPT 1 "))
        .isNotEmpty()
        .allMatch(line -> line.contains("may not be written"));
  }

  /** The other user may not look into this one's build. */
  private Path copiedClasses() throws IOException {
    Path copy = marks.resolve("classes");
    for (String place : classPath().split(File.pathSeparator)) {
      Path from = Path.of(place);
      try (Stream<Path> all = Files.walk(from)) {
        for (Path path : all.sorted().toList()) {
          Path to = copy.resolve(from.relativize(path).toString());
          if (Files.isDirectory(path)) {
            Files.createDirectories(to);
          } else if (!path.endsWith("module-info.class")) {
            Files.copy(path, to);
          }
        }
      }
    }
    Files.setPosixFilePermissions(marks, PosixFilePermissions.fromString("rwxr-xr-x"));
    return copy;
  }
}
