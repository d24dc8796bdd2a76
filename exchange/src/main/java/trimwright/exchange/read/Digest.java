package trimwright.exchange.read;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Fingerprints of canonical texts. */
public final class Digest {
  private Digest() {}

  /**
   * SHA-256 (FIPS 180-4) of a text's UTF-8 bytes.
   *
   * @param canonicalText the text, already in canonical form
   * @return 64 lower-case hexadecimal digits
   * @throws IllegalStateException if the Java runtime lacks SHA-256, which its specification
   *     forbids
   */
  public static String of(String canonicalText) {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      return HexFormat.of().formatHex(sha.digest(canonicalText.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
