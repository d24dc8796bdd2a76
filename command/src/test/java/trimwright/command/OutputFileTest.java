package trimwright.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputFileTest {
  @TempDir private Path folder;

  @Test
  void replacesTheWholeFileAndLeavesNothingBesideIt() throws Exception {
    Path target = Files.writeString(folder.resolve("a.svg"), "old and longer");
    OutputFile.at("--svg", target.toString()).write("new");
    assertThat(target).hasContent("new");
    assertThat(folder).isDirectoryContaining("glob:**a.svg");
    try (var inside = Files.list(folder)) {
      assertThat(inside).containsExactly(target);
    }
  }

  @Test
  void aFailedWriteLeavesTheOldContent() throws Exception {
    Path inner = Files.createDirectory(folder.resolve("inner"));
    OutputFile file = OutputFile.at("--svg", inner.resolve("a.svg").toString());
    Files.delete(inner);
    assertThatThrownBy(() -> file.write("new"))
        .isInstanceOf(BadInput.class)
        .hasMessageStartingWith("--svg")
        .hasMessageContaining("cannot be written");
    try (var inside = Files.list(folder)) {
      assertThat(inside).isEmpty();
    }
  }

  @Test
  void refusesFoldersMissingFoldersAndOddFiles() throws Exception {
    assertRefused(folder.toString(), "folder");
    assertRefused(folder.resolve("absent").resolve("a.svg").toString(), "does not exist");
    assertRefused("/dev/null", "no ordinary file");
    assertRefused("", "empty");
    assertRefused("a\0b", "cannot be the name");
  }

  private static void assertRefused(String name, String why) {
    assertThatThrownBy(() -> OutputFile.at("--svg", name))
        .isInstanceOf(BadInput.class)
        .hasMessageStartingWith("--svg")
        .hasMessageContaining(why);
  }
}
