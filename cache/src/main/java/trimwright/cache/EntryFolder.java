package trimwright.cache;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The files of a cache: {@code KEY.entry} whole and checked, {@code KEY.tmp} while it is written,
 * {@code KEY.lock} while somebody has the turn at it. An entry's time of change is when it was last
 * wanted.
 */
final class EntryFolder {
  private static final String ENTRY = ".entry";
  private static final String UNFINISHED = ".tmp";

  private final Path folder;
  private final long mostBytes;
  private final EntryLocks locks;

  private EntryFolder(Path folder, long mostBytes) {
    this.folder = folder;
    this.mostBytes = mostBytes;
    this.locks = new EntryLocks(folder);
  }

  /**
   * A folder, made if it is missing.
   *
   * @throws IOException if there is none and none can be made
   */
  static EntryFolder open(Path folder, long mostBytes) throws IOException {
    Files.createDirectories(folder);
    return new EntryFolder(folder.toRealPath(), mostBytes);
  }

  /** An entry as it lies there. */
  private record Lying(Path path, long size, FileTime wanted) {}

  /**
   * The payload of an entry; empty where there is none.
   *
   * @throws DamagedEntryException if there is one that cannot be trusted
   * @throws IOException if it cannot be read
   */
  Optional<byte[]> read(CacheKey key) throws IOException, DamagedEntryException {
    Path path = entry(key);
    byte[] bytes;
    try {
      if (Files.size(path) > mostBytes) {
        throw new DamagedEntryException("the entry is larger than the whole cache may be");
      }
      bytes = Files.readAllBytes(path);
    } catch (NoSuchFileException e) {
      return Optional.empty();
    }
    byte[] payload = EntryFile.decode(key, bytes);
    try {
      touch(path);
    } catch (IOException e) {
      // A folder that may only be read gives its entries all the same.
    }
    return Optional.of(payload);
  }

  /**
   * The turn at an entry, if nobody has it.
   *
   * @throws IOException if the folder cannot be written
   */
  Optional<EntryLocks.Turn> tryTurn(CacheKey key) throws IOException {
    return locks.tryEntry(key.digits());
  }

  /** Whether the running thread has the turn at an entry. */
  boolean isMine(CacheKey key) {
    return locks.isMine(key.digits());
  }

  /** Takes an entry away; only for whoever has the turn at it. */
  void remove(CacheKey key) throws IOException {
    Files.deleteIfExists(entry(key));
  }

  /**
   * Writes an entry; only for whoever has the turn at it. It appears at once or not at all, and the
   * entries that were longest not wanted go for it.
   *
   * @throws IOException if it was not written
   */
  void keep(CacheKey key, byte[] payload) throws IOException {
    byte[] bytes = EntryFile.encode(key, payload);
    if (bytes.length > mostBytes) {
      throw new IOException("the entry is larger than the whole cache may be");
    }
    sweep();
    Path unfinished = folder.resolve(key.digits() + UNFINISHED);
    try {
      write(unfinished, bytes);
      touch(unfinished);
      EntryLocks.Turn whole = locks.whole();
      try (whole) {
        makeRoom(entry(key), bytes.length);
        Files.move(unfinished, entry(key), StandardCopyOption.ATOMIC_MOVE);
      }
    } catch (IOException e) {
      try {
        Files.deleteIfExists(unfinished);
      } catch (IOException stays) {
        e.addSuppressed(stays);
      }
      throw e;
    }
    forceFolder();
  }

  private static void write(Path path, byte[] bytes) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            path,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer rest = ByteBuffer.wrap(bytes);
      while (rest.hasRemaining()) {
        channel.write(rest);
      }
      channel.force(true);
    }
  }

  /** Removes what was longest not wanted until the new entry fits beside the others. */
  private void makeRoom(Path coming, long size) throws IOException {
    List<Lying> others = entries();
    others.removeIf(lying -> lying.path().equals(coming));
    others.sort(Comparator.comparing(Lying::wanted).thenComparing(Lying::path));
    long total = others.stream().mapToLong(Lying::size).sum() + size;
    for (Lying oldest : others) {
      if (total <= mostBytes) {
        return;
      }
      Files.deleteIfExists(oldest.path());
      total -= oldest.size();
    }
  }

  /**
   * Clears away what killed programs left: unfinished entries and locks that nobody holds.
   *
   * @throws IOException if the folder cannot be read or written
   */
  void sweep() throws IOException {
    for (String name : names(UNFINISHED, EntryLocks.ENDING)) {
      // While somebody has the turn, the file is in use and stays.
      Optional<EntryLocks.Turn> turn = locks.tryEntry(name);
      if (turn.isPresent()) {
        EntryLocks.Turn mine = turn.get();
        try (mine) {
          Files.deleteIfExists(folder.resolve(name + UNFINISHED));
        }
      }
    }
  }

  /** What all entries take [byte]. */
  long bytes() throws IOException {
    return entries().stream().mapToLong(Lying::size).sum();
  }

  /** Takes every entry away. */
  void clear() throws IOException {
    sweep();
    EntryLocks.Turn whole = locks.whole();
    try (whole) {
      for (Lying lying : entries()) {
        Files.deleteIfExists(lying.path());
      }
    }
  }

  private List<Lying> entries() throws IOException {
    List<Lying> all = new ArrayList<>();
    for (String name : names(ENTRY)) {
      Path path = folder.resolve(name + ENTRY);
      try {
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        all.add(new Lying(path, attributes.size(), attributes.lastModifiedTime()));
      } catch (NoSuchFileException e) {
        // Somebody took it away between the look at the folder and this one.
      }
    }
    return all;
  }

  /** Keys that files with one of these endings belong to; other files are not ours. */
  private Set<String> names(String... endings) throws IOException {
    Set<String> names = new LinkedHashSet<>();
    try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
      for (Path path : inside) {
        String file = path.getFileName().toString();
        for (String ending : endings) {
          String name = file.substring(0, Math.max(0, file.length() - ending.length()));
          if (file.endsWith(ending) && CacheKey.isKey(name)) {
            names.add(name);
          }
        }
      }
    } catch (DirectoryIteratorException e) {
      throw e.getCause();
    }
    return names;
  }

  private Path entry(CacheKey key) {
    return folder.resolve(key.digits() + ENTRY);
  }

  private static void touch(Path path) throws IOException {
    Files.setLastModifiedTime(path, FileTime.from(Instant.now()));
  }

  /** Puts the rename itself onto the disk. Not every system opens a folder. */
  private void forceFolder() {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOffered) {
      // At worst the entry is gone after a power cut, and is built again.
    }
  }
}
