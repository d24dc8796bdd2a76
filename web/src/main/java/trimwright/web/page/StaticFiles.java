package trimwright.web.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Addresses of static files. Each carries a digest of the content, so that a browser may keep a
 * file for a year and still asks for the new one after an update.
 */
public final class StaticFiles {
  private static final int DIGITS_SHOWN = 12;
  private static final Map<String, String> ADDRESSES = new ConcurrentHashMap<>();

  private StaticFiles() {}

  /**
   * Where a browser finds a static file.
   *
   * @param name file name below {@code static}
   * @return its address with the digest of its content
   * @throws IllegalArgumentException if there is no such file
   */
  public static String address(String name) {
    return ADDRESSES.computeIfAbsent(name, StaticFiles::addressOf);
  }

  private static String addressOf(String name) {
    try (InputStream in = StaticFiles.class.getResourceAsStream("/static/" + name)) {
      if (in == null) {
        throw new IllegalArgumentException("no static file " + name);
      }
      byte[] digest = MessageDigest.getInstance("SHA-256").digest(in.readAllBytes());
      return "/" + name + "?v=" + HexFormat.of().formatHex(digest).substring(0, DIGITS_SHOWN);
    } catch (IOException e) {
      throw new UncheckedIOException("static file " + name + " cannot be read", e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
