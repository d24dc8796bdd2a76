package trimwright.cache;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Objects;

/**
 * What a value was computed from, as a fingerprint: SHA-256 over everything that was named, in the
 * order in which it was named. Numbers count bit for bit. Immutable.
 *
 * @param digits 64 lower-case hexadecimal digits
 */
public record CacheKey(String digits) {
  private static final int DIGITS = 64;

  /**
   * A key from its digits.
   *
   * @throws IllegalArgumentException if these are not 64 lower-case hexadecimal digits
   */
  public CacheKey {
    Objects.requireNonNull(digits, "digits");
    if (!isKey(digits)) {
      throw new IllegalArgumentException(
          "a key must be 64 lower-case hexadecimal digits, was \"" + digits + "\"");
    }
  }

  static boolean isKey(String text) {
    return text.length() == DIGITS
        && text.chars().allMatch(c -> c >= '0' && c <= '9' || c >= 'a' && c <= 'f');
  }

  byte[] bytes() {
    return HexFormat.of().parseHex(digits);
  }

  /**
   * Starts a key.
   *
   * @param kind what sort of value it is for, so that two sorts with equal input stay apart
   * @param modelVersion version of the computation: another one means other keys throughout
   */
  public static Maker of(String kind, String modelVersion) {
    return new Maker().text("kind", kind).text("model version", modelVersion);
  }

  /**
   * Takes in what goes into a computation. Each value goes in with its sort (1 byte: 1 text, 2
   * numbers, 3 whole), the length of its name, its own length (4 bytes each; of UTF-8, or in
   * numbers), its name and itself (8 bytes a number, the lowest first), so that nothing runs into
   * its neighbour. For one thread.
   */
  public static final class Maker {
    private static final byte TEXT = 1;
    private static final byte NUMBERS = 2;
    private static final byte WHOLE = 3;

    private final MessageDigest sha;

    private Maker() {
      try {
        sha = MessageDigest.getInstance("SHA-256");
      } catch (NoSuchAlgorithmException e) {
        throw new IllegalStateException("every Java runtime has SHA-256", e);
      }
    }

    /** A word or a text. */
    public Maker text(String name, String value) {
      byte[] bytes = value.getBytes(StandardCharsets.UTF_8);
      heading(TEXT, name, bytes.length);
      sha.update(bytes);
      return this;
    }

    /**
     * Numbers, one or many. Zero and minus zero are two numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public Maker numbers(String name, double... values) {
      heading(NUMBERS, name, values.length);
      ByteBuffer bytes = little(Long.BYTES * values.length);
      for (double value : values) {
        if (!Double.isFinite(value)) {
          throw new IllegalArgumentException(name + " in a key must be finite, was " + value);
        }
        bytes.putLong(Double.doubleToLongBits(value));
      }
      sha.update(bytes.array());
      return this;
    }

    /** Whole numbers, one or many. */
    public Maker whole(String name, long... values) {
      heading(WHOLE, name, values.length);
      ByteBuffer bytes = little(Long.BYTES * values.length);
      for (long value : values) {
        bytes.putLong(value);
      }
      sha.update(bytes.array());
      return this;
    }

    /** The key of all that was named so far. The maker is then used up. */
    public CacheKey key() {
      return new CacheKey(HexFormat.of().formatHex(sha.digest()));
    }

    private void heading(byte sort, String name, int length) {
      byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
      sha.update(sort);
      sha.update(little(2 * Integer.BYTES).putInt(bytes.length).putInt(length).array());
      sha.update(bytes);
    }

    private static ByteBuffer little(int bytes) {
      return ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
    }
  }
}
