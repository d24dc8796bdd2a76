package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import trimwright.exchange.read.CaseFile;

/** What was said to be saved is there, whole, at whatever moment the process is killed. */
class CaseShelfKilledTest {
  private static final int KILLS = 4;

  /** Saves before the kill; each time another number, so that it falls at another moment. */
  private static final int FEWEST_SAVES = 7;

  @TempDir private Path shop;

  @Test
  @Timeout(value = 180, unit = TimeUnit.SECONDS)
  void nothingThatWasSaidToBeSavedIsLost() throws Exception {
    Map<String, Integer> said = new HashMap<>();
    for (int kill = 0; kill < KILLS; kill++) {
      Process process =
          new ProcessBuilder(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-cp",
                  classPath(),
                  SavingProcess.class.getName(),
                  shop.toString())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      try (BufferedReader lines = process.inputReader()) {
        for (int i = 0; i < FEWEST_SAVES + 3 * kill; i++) {
          note(said, Objects.requireNonNull(lines.readLine(), "the process ended by itself"));
        }
        // By its handle: the process itself would close the stream that is still to be read.
        process.toHandle().destroyForcibly();
        // What it still said before it died counts too.
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
          note(said, line);
        }
      }
      process.waitFor();
      assertShelfHolds(said);
    }
  }

  private static void note(Map<String, Integer> said, String line) {
    String[] words = line.split(" ");
    if (words.length == 2) {
      said.put(words[0], Integer.valueOf(words[1]));
    }
  }

  private void assertShelfHolds(Map<String, Integer> said) {
    CaseShelf shelf = new CaseShelf(shop);
    assertThat(shelf.list()).allMatch(listed -> listed.name().problems().isEmpty());
    said.forEach(
        (id, mass) -> {
          CaseFile caseFile = shelf.find(id).orElseThrow().findValue().orElseThrow();
          // The save that was under way when it was killed may have come through as well.
          assertThat(caseFile.text()).containsAnyOf("mass_kg: " + mass, "mass_kg: " + next(mass));
        });
  }

  /** The mass with which the same case is saved next: five cases in turn. */
  private static int next(int mass) {
    return mass + 5;
  }

  /** On the module path or the class path, whichever way this test was started. */
  private static String classPath() throws URISyntaxException {
    Path own = Path.of(CaseShelf.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    return Stream.of(
            own.toString(),
            own.resolveSibling("test-classes").toString(),
            System.getProperty("java.class.path"),
            System.getProperty("jdk.module.path"))
        .filter(Objects::nonNull)
        .filter(path -> !path.isEmpty())
        .collect(Collectors.joining(File.pathSeparator));
  }
}
