package trimwright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** House rules that only the sources show. */
class SourceTreeTest {
  /** A class is read in one sitting. */
  private static final int LONGEST_FILE = 450;

  private static final Pattern LEFTOVER =
      Pattern.compile("\\b(TODO|FIXME|XXX)\\b|@Disabled|\\.printStackTrace\\(\\)");

  private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

  @Test
  void sourcesAreFound() {
    assertThat(sources()).hasSizeGreaterThan(50);
  }

  @Test
  void everyPackageSaysWhatItIsFor() {
    List<Path> silent =
        sources().stream()
            .filter(file -> file.toString().contains("/src/main/java/trimwright/"))
            .map(Path::getParent)
            .distinct()
            .filter(folder -> !Files.exists(folder.resolve("package-info.java")))
            .map(ROOT::relativize)
            .toList();
    assertThat(silent).isEmpty();
  }

  @Test
  void noFileIsTooLongToRead() {
    assertThat(
            sources().stream()
                .filter(file -> lines(file).size() > LONGEST_FILE)
                .map(ROOT::relativize))
        .isEmpty();
  }

  @Test
  void nothingIsLeftForLater() {
    List<String> leftovers =
        sources().stream()
            .filter(file -> !file.endsWith("SourceTreeTest.java"))
            .flatMap(
                file ->
                    lines(file).stream()
                        .filter(line -> LEFTOVER.matcher(line).find())
                        .map(line -> ROOT.relativize(file) + ": " + line.strip()))
            .toList();
    assertThat(leftovers).isEmpty();
  }

  private static List<Path> sources() {
    try (Stream<Path> modules = Files.list(ROOT)) {
      return modules
          .filter(module -> Files.exists(module.resolve("pom.xml")))
          .map(module -> module.resolve("src"))
          .filter(Files::isDirectory)
          .flatMap(SourceTreeTest::javaFiles)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Stream<Path> javaFiles(Path folder) {
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(file -> file.toString().endsWith(".java")).toList().stream();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
