package trimwright.cache;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import trimwright.seed.RunSeed;

class NamedArraysPropertyTest {

  @Property(tries = 1000, seed = RunSeed.VALUE)
  void everyBitComesBack(
      @ForAll double[] doubles,
      @ForAll int[] ints,
      @ForAll @AlphaChars @StringLength(max = 40) String text)
      throws DamagedEntryException {
    NamedArrays given =
        NamedArrays.maker()
            .doubles("Reynolds number", doubles)
            .ints("größe", ints)
            .text("finish", text)
            .arrays();

    NamedArrays back = NamedArrays.CODEC.decode(NamedArrays.CODEC.encode(given));

    assertThat(bits(back.doubles("Reynolds number"))).isEqualTo(bits(doubles));
    assertThat(back.ints("größe")).isEqualTo(ints);
    assertThat(back.text("finish")).isEqualTo(text);
    assertThat(back.names()).containsExactly("Reynolds number", "größe", "finish");
    assertThat(NamedArrays.CODEC.encode(back)).isEqualTo(NamedArrays.CODEC.encode(given));
  }

  /** Any bytes at all are refused in words or are arrays; nothing else may happen. */
  @Property(tries = 1000, seed = RunSeed.VALUE)
  void bytesOfAnyKindAreReadOrRefused(@ForAll byte[] bytes) {
    readOrRefused(bytes);
  }

  @Test
  void whatIsCutOffOrAlteredIsReadOrRefused() {
    byte[] whole =
        NamedArrays.CODEC.encode(
            NamedArrays.maker().doubles("a", 1, 2).ints("b", 3).text("c", "d").arrays());
    for (int length = 0; length < whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      assertThatThrownBy(() -> NamedArrays.CODEC.decode(cut))
          .isInstanceOf(DamagedEntryException.class);
    }
    for (int i = 0; i < whole.length; i++) {
      for (int value = 0; value < 256; value++) {
        byte[] altered = whole.clone();
        altered[i] = (byte) value;
        readOrRefused(altered);
      }
    }
    byte[] longer = Arrays.copyOf(whole, whole.length + 1);
    assertThatThrownBy(() -> NamedArrays.CODEC.decode(longer))
        .isInstanceOf(DamagedEntryException.class);
  }

  private static void readOrRefused(byte[] bytes) {
    try {
      assertThat(NamedArrays.CODEC.decode(bytes).names()).isNotNull();
    } catch (DamagedEntryException e) {
      assertThat(e).hasMessageContaining("arra");
    }
  }

  @Test
  void aNameThatIsNotThereIsSaid() {
    NamedArrays none = NamedArrays.maker().ints("a", 1).arrays();
    assertThatThrownBy(() -> none.doubles("a")).hasMessage("the entry has no a");
    assertThatThrownBy(() -> NamedArrays.maker().ints("a", 1).doubles("a", 1))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static long[] bits(double[] values) {
    return Arrays.stream(values).mapToLong(Double::doubleToRawLongBits).toArray();
  }
}
