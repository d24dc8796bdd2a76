package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;

class CacheFolderTest {
  private static final Path HOME = Path.of("/home/someone");

  @Test
  void liesWhereItIsTold() {
    assertThat(CacheFolder.of(Map.of("TRIMWRIGHT_CACHE", "/a", "XDG_CACHE_HOME", "/b"), HOME))
        .isEqualTo(Path.of("/a"));
    assertThat(CacheFolder.of(Map.of("TRIMWRIGHT_CACHE", " ", "XDG_CACHE_HOME", "/b"), HOME))
        .isEqualTo(Path.of("/b/trimwright"));
    assertThat(CacheFolder.of(Map.of("XDG_CACHE_HOME", "relative"), HOME))
        .isEqualTo(HOME.resolve(".cache/trimwright"));
    assertThat(CacheFolder.of(Map.of(), HOME)).isEqualTo(HOME.resolve(".cache/trimwright"));
  }
}
