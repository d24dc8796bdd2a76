package trimwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What {@code ./check} makes of the tests' reports and of a machine that lacks something. Maven and
 * the package manager are stand-ins here.
 */
class CheckScriptTest {
  private static final long PATIENCE_SECONDS = 60;

  /** Leaves the report it is told to and ends as told. */
  private static final String MAVEN =
      """
      #!/bin/sh
      echo "maven $*"
      if [ -n "$REPORT" ]; then
        mkdir -p kernel/target/surefire-reports
        printf '%s' "$REPORT" >kernel/target/surefire-reports/TEST-trimwright.SomeTest.xml
      fi
      exit "$STATUS"
      """;

  private static final List<String> TOOLS =
      List.of("mkdir", "readlink", "dirname", "find", "rm", "xargs", "grep", "awk", "sed", "sleep");

  @TempDir private Path folder;
  private Path tree;
  private Path tools;

  @BeforeEach
  void layTree() throws IOException {
    tree = Files.createDirectories(folder.resolve("a tree"));
    tools = Files.createDirectories(folder.resolve("tools"));
    script(tree.resolve("check"), Files.readString(Path.of("..", "check")));
    script(tools.resolve("mvn"), MAVEN);
    for (String tool : TOOLS) {
      script(tools.resolve(tool), "#!/bin/sh\nexec " + find(tool) + " \"$@\"\n");
    }
    for (String present : List.of("flock", "chromium", "chromedriver")) {
      script(tools.resolve(present), "#!/bin/sh\n");
    }
    script(tools.resolve("javac"), "#!/bin/sh\necho javac 21.0.1\n");
    script(tools.resolve("apt-get"), "#!/bin/sh\necho \"apt-get $*\"\n");
    // A font, whatever this machine has.
    script(
        tools.resolve("find"),
        "#!/bin/sh\ncase $1 in /usr/*) echo font ;; *) exec " + find("find") + " \"$@\" ;; esac\n");
  }

  @Test
  void theLastLineCounts() throws Exception {
    Ended ended = check(suite(12, 0, 0, 0), 0);

    assertThat(ended.status()).isZero();
    assertThat(ended.lastLine()).isEqualTo("12 passed, 0 failed");
  }

  @Test
  void failuresAndErrorsAreCountedAndFail() throws Exception {
    Ended ended = check(suite(12, 2, 1, 0), 1);

    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.lastLine()).isEqualTo("9 passed, 3 failed");
  }

  @Test
  void aSkippedTestFails() throws Exception {
    Ended ended = check(suite(12, 0, 0, 1), 0);

    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out()).contains("skipped").contains("trimwright.SomeTest");
    assertThat(ended.lastLine()).isEqualTo("11 passed, 1 failed");
  }

  @Test
  void noTestAtAllFails() throws Exception {
    Ended ended = check("", 0);

    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.lastLine()).isEqualTo("0 passed, 0 failed");
  }

  @Test
  void aBuildThatFailsOutsideTheTestsFails() throws Exception {
    Ended ended = check(suite(12, 0, 0, 0), 1);

    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.out()).contains("outside the tests");
  }

  @Test
  void reportsOfAnEarlierRunDoNotCount() throws Exception {
    check(suite(12, 0, 0, 0), 0);

    assertThat(check("", 0).status()).isEqualTo(1);
  }

  @Test
  void whatIsMissingIsNamed() throws Exception {
    Files.delete(tools.resolve("chromedriver"));

    Ended ended = check(suite(12, 0, 0, 0), 0);
    assertThat(ended.status()).isEqualTo(1);
    assertThat(ended.err()).contains("chromium-driver").doesNotContain("maven");
    assertThat(ended.out()).doesNotContain("maven -B");
  }

  @Test
  void longTestsAreAskedFor() throws Exception {
    assertThat(check(suite(12, 0, 0, 0), 0).out()).contains("-Preport verify");
    assertThat(check(suite(12, 0, 0, 0), 0, "--long").out()).contains("-Preport,long verify");
    assertThat(check(suite(12, 0, 0, 0), 0, "--else").status()).isEqualTo(2);
  }

  @Test
  void warningsOfTheOldestCompilerFail() throws Exception {
    script(tools.resolve("javac"), "#!/bin/sh\necho javac 17.0.15\n");

    assertThat(check(suite(12, 0, 0, 0), 0).out()).contains("-Preport,strict verify");
  }

  private static String suite(int tests, int failures, int errors, int skipped) {
    String skippedCase = skipped > 0 ? "<testcase><skipped/></testcase>" : "";
    return """
        <?xml version="1.0"?>
        <testsuite name="trimwright.SomeTest" time="1.5" tests="%d" errors="%d" skipped="%d" failures="%d" flakes="0">
        %s</testsuite>
        """
        .formatted(tests, errors, skipped, failures, skippedCase);
  }

  private record Ended(int status, String out, String err) {
    String lastLine() {
      List<String> lines = out.lines().toList();
      return lines.get(lines.size() - 1);
    }
  }

  private Ended check(String report, int status, String... args) throws Exception {
    Path out = folder.resolve("out");
    Path err = folder.resolve("err");
    ProcessBuilder builder =
        new ProcessBuilder(
            Stream.concat(Stream.of(tree.resolve("check").toString()), Stream.of(args)).toList());
    builder.directory(folder.toFile());
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    builder.environment().clear();
    builder.environment().put("PATH", tools.toString());
    builder.environment().put("REPORT", report);
    builder.environment().put("STATUS", Integer.toString(status));
    Process process = builder.start();
    try {
      assertThat(process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)).isTrue();
    } finally {
      process.destroyForcibly();
    }
    return new Ended(process.exitValue(), Files.readString(out), Files.readString(err));
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
