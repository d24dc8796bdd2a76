package trimwright.cache;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CacheKeyTest {

  @Test
  void equalInputGivesEqualKeys() {
    assertThat(example().key()).isEqualTo(example().key());
  }

  @Test
  void aKeyStaysTheSameFromReleaseToRelease() {
    // Otherwise every kept table would be lost without need. Computed apart from this program, by
    // the description in CacheKey.Maker.
    assertThat(example().key().digits())
        .isEqualTo("78b06117197d6f8897a9008bdfbdb6b45ab4c19484cb4a26492c51f6f6047970");
  }

  private static CacheKey.Maker example() {
    return CacheKey.of("polar", "1")
        .numbers("x", 1, 0.5)
        .whole("panels", 80)
        .text("finish", "clean");
  }

  @Test
  void everyDifferenceGivesAnotherKey() {
    List<CacheKey> keys = new ArrayList<>();
    keys.add(example().key());
    keys.add(CacheKey.of("polar", "2").numbers("x", 1, 0.5).key());
    keys.add(CacheKey.of("polar", "1").numbers("x", 1, 0.5).key());
    keys.add(CacheKey.of("table", "1").numbers("x", 1, 0.5).key());
    keys.add(CacheKey.of("polar", "1").numbers("x", 1, Math.nextUp(0.5)).key());
    keys.add(CacheKey.of("polar", "1").numbers("x", 1).numbers("x", 0.5).key());
    keys.add(CacheKey.of("polar", "1").numbers("y", 1, 0.5).key());
    keys.add(CacheKey.of("polar", "1").numbers("x", 0.0).key());
    keys.add(CacheKey.of("polar", "1").numbers("x", -0.0).key());
    keys.add(CacheKey.of("polar", "1").whole("x", 0).key());
    keys.add(CacheKey.of("polar", "1").text("a", "bc").key());
    keys.add(CacheKey.of("polar", "1").text("ab", "c").key());
    keys.add(CacheKey.of("polar", "1").key());
    assertThat(keys).doesNotHaveDuplicates();
  }

  @Test
  void refusesWhatIsNoNumberOrNoKey() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CacheKey.of("polar", "1").numbers("x", Double.NaN))
        .withMessageContaining("x in a key must be finite");
    assertThatIllegalArgumentException().isThrownBy(() -> new CacheKey("../../etc"));
  }
}
