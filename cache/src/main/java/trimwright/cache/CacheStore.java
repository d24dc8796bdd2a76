package trimwright.cache;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import trimwright.cache.Obtained.Origin;

/**
 * Values in a folder, each under the key of what it was computed from. What is missing or damaged
 * is built, by one builder at a time for each key over all programs that share the folder; the
 * others wait and take what it kept. When the folder cannot be written, everything is still
 * computed, and each answer says that it was not kept.
 *
 * <p>May be shared between threads. A build may obtain other keys, but not its own.
 */
public final class CacheStore {
  /** How long to wait before asking again whether it is one's turn [ms]. */
  private static final long PAUSE_MILLIS = 20;

  private final Path folder;
  private final long mostBytes;

  private CacheStore(Path folder, long mostBytes) {
    this.folder = folder;
    this.mostBytes = mostBytes;
  }

  /**
   * A store; nothing is read or written before the first value is asked for.
   *
   * @param folder where entries lie, made when first needed; may be shared with other programs
   * @param mostBytes what all entries together may take [byte]; above it those go that were longest
   *     not wanted
   * @throws IllegalArgumentException if the limit is not above 0
   */
  public static CacheStore in(Path folder, long mostBytes) {
    if (mostBytes <= 0) {
      throw new IllegalArgumentException(
          "a cache must be allowed more than 0 bytes, was " + mostBytes);
    }
    return new CacheStore(Objects.requireNonNull(folder, "folder"), mostBytes);
  }

  /** Where the entries lie. */
  public Path folder() {
    return folder;
  }

  /**
   * The value of a key, kept or built.
   *
   * @param key all that goes into the value
   * @param codec how it is written
   * @param build the long way to it
   * @param watch sees how far a build is, and may stop it or the wait for another's
   * @return the value and where it came from
   * @throws CancellationException if the watch stopped it
   * @throws IllegalStateException if a build asks for its own key
   */
  public <T> Obtained<T> obtain(CacheKey key, Codec<T> codec, Build<T> build, BuildWatch watch) {
    EntryFolder entries;
    Optional<EntryLocks.Turn> turn;
    try {
      entries = EntryFolder.open(folder, mostBytes);
      Optional<T> kept = findWhole(entries, key, codec);
      if (kept.isPresent()) {
        return new Obtained<>(kept.get(), Origin.KEPT, "");
      }
      turn = entries.tryTurn(key);
      while (turn.isEmpty()) {
        if (entries.isMine(key)) {
          throw new IllegalStateException("a build must not ask for its own key");
        }
        pause(watch);
        kept = findWhole(entries, key, codec);
        if (kept.isPresent()) {
          return new Obtained<>(kept.get(), Origin.KEPT, "");
        }
        turn = entries.tryTurn(key);
      }
    } catch (IOException e) {
      return new Obtained<>(built(build, watch), Origin.NOT_KEPT, words(e));
    }
    EntryLocks.Turn mine = turn.get();
    try (mine) {
      return inTurn(entries, key, codec, build, watch);
    }
  }

  /**
   * The value of a key, if it is kept.
   *
   * @param key all that goes into the value
   * @param codec how it is written
   * @return the value; empty where it is not kept, damaged, or cannot be read
   */
  public <T> Optional<T> find(CacheKey key, Codec<T> codec) {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try {
      return findWhole(EntryFolder.open(folder, mostBytes), key, codec);
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** With the turn at the entry: it may have come in the meantime, and is built if not. */
  private <T> Obtained<T> inTurn(
      EntryFolder entries, CacheKey key, Codec<T> codec, Build<T> build, BuildWatch watch) {
    String damage = "";
    try {
      Optional<byte[]> payload = entries.read(key);
      if (payload.isPresent()) {
        return new Obtained<>(decoded(codec, payload.get()), Origin.KEPT, "");
      }
    } catch (DamagedEntryException e) {
      damage = "an entry was built anew: " + e.getMessage();
      removeQuietly(entries, key);
    } catch (IOException e) {
      damage = "an entry was built anew: it could not be read";
    }
    T value = built(build, watch);
    try {
      entries.keep(key, codec.encode(value));
    } catch (IOException e) {
      return new Obtained<>(value, Origin.NOT_KEPT, words(e));
    }
    return new Obtained<>(value, damage.isEmpty() ? Origin.BUILT : Origin.REBUILT, damage);
  }

  /** A whole entry; a damaged one counts as none until one has the turn at it. */
  private static <T> Optional<T> findWhole(EntryFolder entries, CacheKey key, Codec<T> codec) {
    try {
      Optional<byte[]> payload = entries.read(key);
      return payload.isPresent() ? Optional.of(decoded(codec, payload.get())) : Optional.empty();
    } catch (IOException | DamagedEntryException e) {
      return Optional.empty();
    }
  }

  private static <T> T decoded(Codec<T> codec, byte[] payload) throws DamagedEntryException {
    try {
      return codec.decode(payload);
    } catch (IllegalArgumentException e) {
      // What a value's own constructor refuses was never encoded from one.
      throw new DamagedEntryException("the entry holds no such value: " + e.getMessage());
    }
  }

  /** Its room may be needed for the new one. */
  private static void removeQuietly(EntryFolder entries, CacheKey key) {
    try {
      entries.remove(key);
    } catch (IOException e) {
      // The new entry takes its place, or fails for the same reason and says so.
    }
  }

  private static <T> T built(Build<T> build, BuildWatch watch) {
    if (watch.isStopped()) {
      throw stopped();
    }
    return build.build(watch);
  }

  private static void pause(BuildWatch watch) {
    if (watch.isStopped()) {
      throw stopped();
    }
    try {
      Thread.sleep(PAUSE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw stopped();
    }
  }

  private static CancellationException stopped() {
    return new CancellationException("stopped before the table was there");
  }

  private String words(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "not kept: " + folder + " may not be written";
    }
    if (e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException) {
      return "not kept: " + folder + " is no folder";
    }
    return "not kept in " + folder + ": " + e.getMessage();
  }

  /**
   * What all entries take [byte].
   *
   * @throws IOException if the folder cannot be read
   */
  public long bytes() throws IOException {
    return EntryFolder.open(folder, mostBytes).bytes();
  }

  /**
   * Takes every entry away, and what killed programs left.
   *
   * @throws IOException if the folder cannot be written
   */
  public void clear() throws IOException {
    EntryFolder.open(folder, mostBytes).clear();
  }
}
