package trimwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What {@code ./run} does around the program: when it builds, what it prints, and what a killed or
 * doubled start leaves. Maven and Java are stand-ins here, so that the script alone is tested.
 */
class RunScriptTest {
  private static final long PATIENCE_SECONDS = 60;

  /** Builds what the script picks up, slowly or not at all when told so. */
  private static final String MAVEN =
      """
      #!/bin/sh
      echo called >>"$NOTES/maven"
      echo "chatter of maven"
      if [ -n "${BROKEN:-}" ]; then exit 1; fi
      sleep "${SLOW:-0}"
      for module in app command; do
        mkdir -p $module/target/run/lib
        for part in kernel command web; do echo jar >$module/target/run/lib/trimwright-$part-1.jar; done
      done
      echo jar >app/target/run/trimwright-app-1.jar
      echo ended >>"$NOTES/maven"
      """;

  /** Tells how it was called; as the program it waits for a file when told so. */
  private static final String JAVA =
      """
      #!/bin/sh
      case "$*" in *-Xshare:dump*) exit 0 ;; esac
      while [ "$1" != trimwright.app.Main ] && [ "$1" != trimwright.app.Rehearsal ]; do
        if [ "$1" = -cp ]; then jars=$2; fi
        shift
      done
      if [ "$1" = trimwright.app.Rehearsal ]; then echo rehearsed; exit 0; fi
      shift
      echo "$jars" >>"$NOTES/class-paths"
      printf '<%s>' "$PWD" "$@"
      if [ -n "${WAIT_FOR:-}" ]; then
        touch "$WAIT_FOR.started"
        while [ ! -e "$WAIT_FOR" ]; do sleep 0.05; done
      fi
      exit "${STATUS:-0}"
      """;

  private static final List<String> TOOLS =
      List.of(
          "bash",
          "sh",
          "find",
          "flock",
          "readlink",
          "mkdir",
          "rm",
          "cp",
          "mv",
          "mktemp",
          "chmod",
          "basename",
          "dirname",
          "grep",
          "tail",
          "touch",
          "sleep");

  @TempDir private Path folder;
  private Path tree;
  private Path tools;
  private Path notes;
  private Path elsewhere;

  @BeforeEach
  void layTree() throws IOException {
    tree = Files.createDirectories(folder.resolve("a tree with spaces"));
    notes = Files.createDirectories(folder.resolve("notes"));
    elsewhere = Files.createDirectories(folder.resolve("else where"));
    tools = Files.createDirectories(folder.resolve("tools"));
    Path jdk = Files.createDirectories(folder.resolve("jdk/bin"));
    script(tree.resolve("run"), Files.readString(Path.of("..", "run")));
    Files.writeString(tree.resolve("pom.xml"), "<project/>");
    Files.createDirectories(tree.resolve("app/src/main/java"));
    Files.createDirectories(tree.resolve("command/src/main/java"));
    Files.writeString(tree.resolve("app/pom.xml"), "<project/>");
    Files.writeString(source("One.java"), "class One {}");
    script(jdk.resolve("java"), JAVA);
    script(jdk.resolve("javac"), "#!/bin/sh\n");
    script(tools.resolve("mvn"), MAVEN);
    for (String tool : TOOLS) {
      script(tools.resolve(tool), "#!/bin/sh\nexec " + find(tool) + " \"$@\"\n");
    }
  }

  @Test
  void theFirstStartBuildsAndAnUnchangedTreeDoesNot() throws Exception {
    Ended first = run(Map.of(), "water");
    Ended second = run(Map.of(), "water");

    assertThat(first.status()).as(first.err()).isZero();
    assertThat(first.err()).contains("chatter of maven");
    assertThat(second.status()).isZero();
    assertThat(second.err()).isEmpty();
    assertThat(builds()).isEqualTo(1);
  }

  @Test
  void standardOutputIsTheProgramsAlone() throws Exception {
    assertThat(run(Map.of(), "water").out()).isEqualTo("<" + elsewhere + "><water>");
  }

  @Test
  void argumentsAndTheCallersFolderArriveAsTheyAre() throws Exception {
    Ended ended = run(Map.of(), "curve", "my case.yaml", "", "*");

    assertThat(ended.out()).isEqualTo("<" + elsewhere + "><curve><my case.yaml><><*>");
  }

  @Test
  void withoutAWordItOpensTheMadeUpShop() throws Exception {
    assertThat(run(Map.of()).out()).isEqualTo("<" + elsewhere + "><demo>");
  }

  @Test
  void commandsStartWithoutTheJarsOfTheWeb() throws Exception {
    Files.writeString(
        tools.resolve("mvn"), MAVEN + "rm command/target/run/lib/trimwright-web-1.jar\n");
    run(Map.of(), "water");
    run(Map.of(), "serve");

    List<String> classPaths = Files.readAllLines(notes.resolve("class-paths"));
    assertThat(classPaths).hasSize(2);
    assertThat(classPaths.get(0)).contains("trimwright-kernel").doesNotContain("trimwright-web");
    assertThat(classPaths.get(1)).contains("trimwright-kernel").contains("trimwright-web");
    assertThat(Stream.of(classPaths.get(0).split(":")).map(Path::of)).allMatch(Files::exists);
  }

  @Test
  void theProgramsExitStatusPassesThrough() throws Exception {
    assertThat(run(Map.of("STATUS", "2"), "curve").status()).isEqualTo(2);
    assertThat(run(Map.of("STATUS", "1"), "curve").status()).isEqualTo(1);
  }

  @Test
  void changedAddedAndDeletedSourcesAreBuilt() throws Exception {
    run(Map.of(), "water");
    Files.writeString(source("One.java"), "class One { int changed; }");
    run(Map.of(), "water");
    assertThat(builds()).isEqualTo(2);
    Files.writeString(source("Two words.java"), "class Two {}");
    run(Map.of(), "water");
    assertThat(builds()).isEqualTo(3);
    Files.delete(source("Two words.java"));
    run(Map.of(), "water");
    assertThat(builds()).isEqualTo(4);
    Files.writeString(tree.resolve("app/pom.xml"), "<project></project>");
    run(Map.of(), "water");
    assertThat(builds()).isEqualTo(5);
    assertThat(finishedBuilds()).hasSize(1);
  }

  @Test
  void twoFirstStartsAtOnceBuildOnce() throws Exception {
    Process one = start(Map.of("SLOW", "1"), "one", "water");
    Process two = start(Map.of("SLOW", "1"), "two", "water");

    assertThat(await(one, "one").out()).endsWith("<water>");
    assertThat(await(two, "two").out()).endsWith("<water>");
    assertThat(builds()).isEqualTo(1);
  }

  @Test
  void aBrokenBuildStartsNothingAndIsTriedAgain() throws Exception {
    Ended broken = run(Map.of("BROKEN", "yes"), "water");
    assertThat(broken.status()).isEqualTo(1);
    assertThat(broken.out()).isEmpty();

    assertThat(run(Map.of(), "water").status()).isZero();
    assertThat(builds()).isEqualTo(2);
  }

  @Test
  void aBrokenBuildAfterAChangeDoesNotStartTheOldProgram() throws Exception {
    run(Map.of(), "water");
    Files.writeString(source("Two.java"), "class Two {}");

    Ended broken = run(Map.of("BROKEN", "yes"), "water");
    assertThat(broken.status()).isEqualTo(1);
    assertThat(broken.out()).isEmpty();
  }

  @Test
  void aBuildKilledHalfWayIsMadeAnew() throws Exception {
    Process killed = start(Map.of("SLOW", "30"), "killed", "water");
    awaitFile(notes.resolve("maven"));
    List<ProcessHandle> family = killed.descendants().toList();
    killed.destroyForcibly();
    family.forEach(ProcessHandle::destroyForcibly);
    await(killed, "killed");

    Ended next = run(Map.of(), "water");
    assertThat(next.status()).as(next.err()).isZero();
    assertThat(next.out()).endsWith("<water>");
    assertThat(builds()).isEqualTo(2);
  }

  @Test
  void whileMavenOfAKilledStartStillRunsNobodyElseBuilds() throws Exception {
    Process killed = start(Map.of("SLOW", "2"), "killed", "water");
    awaitFile(notes.resolve("maven"));
    killed.destroyForcibly();
    await(killed, "killed");

    Ended next = run(Map.of(), "water");
    assertThat(Files.readAllLines(notes.resolve("maven")))
        .containsExactly("called", "ended", "called", "ended");
    assertThat(next.out()).endsWith("<water>");
  }

  @Test
  void aRunningProgramKeepsItsJars() throws Exception {
    Path end = notes.resolve("end");
    Process shop = start(Map.of("WAIT_FOR", end.toString()), "shop", "serve");
    awaitFile(Path.of(end + ".started"));
    Path itsBuild = finishedBuilds().get(0);

    Files.writeString(source("Two.java"), "class Two {}");
    run(Map.of(), "water");
    assertThat(finishedBuilds()).hasSize(2).contains(itsBuild);

    Files.createFile(end);
    await(shop, "shop");
    Files.writeString(source("Three.java"), "class Three {}");
    run(Map.of(), "water");
    assertThat(finishedBuilds()).hasSize(1).doesNotContain(itsBuild);
  }

  @Test
  void saysWhenMavenIsMissing() throws Exception {
    Files.delete(tools.resolve("mvn"));

    Ended ended = run(Map.of(), "water");
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("Maven is missing");
  }

  @Test
  void anUnchangedTreeNeedsNoMaven() throws Exception {
    run(Map.of(), "water");
    Files.delete(tools.resolve("mvn"));

    assertThat(run(Map.of(), "water").status()).isZero();
  }

  private record Ended(int status, String out, String err) {}

  private Ended run(Map<String, String> environment, String... args) throws Exception {
    return await(start(environment, "run", args), "run");
  }

  private Process start(Map<String, String> environment, String name, String... args)
      throws IOException {
    List<String> command = new ArrayList<>(List.of(tree.resolve("run").toString()));
    command.addAll(List.of(args));
    ProcessBuilder builder = new ProcessBuilder(command).directory(elsewhere.toFile());
    builder.redirectOutput(notes.resolve(name + ".out").toFile());
    builder.redirectError(notes.resolve(name + ".err").toFile());
    builder.environment().clear();
    builder.environment().put("PATH", tools.toString());
    builder.environment().put("JAVA_HOME", folder.resolve("jdk").toString());
    builder.environment().put("NOTES", notes.toString());
    builder.environment().putAll(new TreeMap<>(environment));
    return builder.start();
  }

  private Ended await(Process process, String name) throws Exception {
    try {
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    } finally {
      process.destroyForcibly();
    }
    return new Ended(
        process.exitValue(),
        Files.readString(notes.resolve(name + ".out")),
        Files.readString(notes.resolve(name + ".err")));
  }

  private static void awaitFile(Path file) throws InterruptedException {
    Instant deadline = Instant.now().plus(Duration.ofSeconds(PATIENCE_SECONDS));
    while (!Files.exists(file)) {
      assertThat(Instant.now()).isBefore(deadline);
      TimeUnit.MILLISECONDS.sleep(20);
    }
  }

  private int builds() throws IOException {
    return Collections.frequency(Files.readAllLines(notes.resolve("maven")), "called");
  }

  private List<Path> finishedBuilds() throws IOException {
    try (Stream<Path> inside = Files.list(tree.resolve(".run"))) {
      return inside.filter(path -> path.getFileName().toString().startsWith("build.")).toList();
    }
  }

  private Path source(String name) {
    return tree.resolve("app/src/main/java").resolve(name);
  }

  private static void script(Path file, String text) throws IOException {
    Files.writeString(file, text);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
  }

  private static Path find(String tool) {
    return Stream.of("/usr/bin", "/bin")
        .map(place -> Path.of(place, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new AssertionError("this machine has no " + tool));
  }
}
