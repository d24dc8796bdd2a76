package trimwright.cache;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/**
 * Entries that come with the program, each a file in the form of {@link EntryFile} named by its
 * key: what was computed by another version has another key and is not found. Stateless.
 */
public final class ShippedEntries {
  private static final String FOLDER = "shipped/";

  private ShippedEntries() {}

  /**
   * The value of a key, if it comes with the program.
   *
   * @param key all that goes into the value
   * @param codec how it is written
   * @return the value; empty where none came with the program
   * @throws IllegalStateException if the program's own file is damaged
   */
  public static <T> Optional<T> find(CacheKey key, Codec<T> codec) {
    try (InputStream in = ShippedEntries.class.getResourceAsStream(FOLDER + key.digits())) {
      return in == null
          ? Optional.empty()
          : Optional.of(codec.decode(EntryFile.decode(key, in.readAllBytes())));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (DamagedEntryException e) {
      throw new IllegalStateException("the program's own table is damaged: " + e.getMessage(), e);
    }
  }

  /**
   * The bytes of a value to ship, to be written into a file named by the key.
   *
   * @param key all that goes into the value
   * @param codec how it is written
   * @param value the value
   */
  public static <T> byte[] file(CacheKey key, Codec<T> codec, T value) {
    return EntryFile.encode(key, codec.encode(value));
  }
}
