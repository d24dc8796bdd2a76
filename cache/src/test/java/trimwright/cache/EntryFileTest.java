package trimwright.cache;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class EntryFileTest {
  private static final CacheKey KEY = CacheKey.of("test", "1").key();
  private static final byte[] PAYLOAD = {1, 2, 3, 4, 5};
  private static final byte[] ENTRY = EntryFile.encode(KEY, PAYLOAD);

  @Test
  void givesBackWhatWentIn() throws DamagedEntryException {
    assertThat(EntryFile.decode(KEY, ENTRY)).isEqualTo(PAYLOAD);
    assertThat(EntryFile.decode(KEY, EntryFile.encode(KEY, new byte[0]))).isEmpty();
    assertThat(ENTRY).hasSize(EntryFile.OVERHEAD + PAYLOAD.length);
  }

  @Test
  void noByteCanChangeUnseen() {
    for (int i = 0; i < ENTRY.length; i++) {
      for (int value = 0; value < 256; value++) {
        byte[] altered = ENTRY.clone();
        altered[i] = (byte) value;
        if (value != Byte.toUnsignedInt(ENTRY[i])) {
          refused(altered);
        }
      }
    }
  }

  @Test
  void noCutAndNoAdditionGoesUnseen() {
    for (int length = 0; length < ENTRY.length; length++) {
      refused(Arrays.copyOf(ENTRY, length));
    }
    refused(Arrays.copyOf(ENTRY, ENTRY.length + 1));
    refused(new byte[ENTRY.length]);
  }

  @Test
  void anEntryUnderAnotherNameIsRefused() {
    CacheKey other = CacheKey.of("test", "2").key();
    assertThatThrownBy(() -> EntryFile.decode(other, ENTRY)).hasMessageContaining("another key");
  }

  private static void refused(byte[] entry) {
    assertThatThrownBy(() -> EntryFile.decode(KEY, entry))
        .isInstanceOf(DamagedEntryException.class);
  }
}
