package trimwright.cache;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Turns at the entries of one folder: within this program by a set of names, between programs by
 * locks on files, which the system gives back when a program dies.
 *
 * <p>A turn at an entry is a lock on a file of its own, which goes away with the turn. Opening,
 * locking and deleting such files happens only inside a turn at the whole folder, so that nobody
 * can hold a lock on a file that is no longer there. Turns at the whole folder last for a few file
 * operations and their file stays.
 *
 * <p>On POSIX systems closing any channel of a file gives back all locks this program has on it;
 * the set of names sees to it that there is only one channel for each.
 */
final class EntryLocks {
  static final String ENDING = ".lock";
  private static final String WHOLE = "folder" + ENDING;

  /** How long somebody may hold the whole folder before it counts as out of order [ns]. */
  private static final long LONGEST_WHOLE = 10_000_000_000L;

  private static final long WHOLE_PAUSE_MILLIS = 2;

  /** What threads of this program hold, over all folders; guards itself. */
  private static final Map<Path, Thread> HELD = new HashMap<>();

  private final Path folder;

  /**
   * Locks of a folder.
   *
   * @param folder by its real path, so that one folder has one name
   */
  EntryLocks(Path folder) {
    this.folder = folder;
  }

  /** A turn; ends when it is closed. */
  interface Turn extends AutoCloseable {
    @Override
    void close();
  }

  /**
   * A turn at an entry, if nobody has it.
   *
   * @throws IOException if the folder does not take locks
   */
  Optional<Turn> tryEntry(String name) throws IOException {
    Path path = folder.resolve(name + ENDING);
    if (!enter(path)) {
      return Optional.empty();
    }
    FileChannel channel = null;
    boolean mine = false;
    try {
      Turn whole = whole();
      try (whole) {
        channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        mine = locks(channel);
      }
    } finally {
      if (!mine) {
        closeQuietly(channel);
        leave(path);
      }
    }
    FileChannel held = channel;
    return mine ? Optional.of(() -> endEntry(path, held)) : Optional.empty();
  }

  private void endEntry(Path path, FileChannel channel) {
    try {
      Turn whole = whole();
      try (whole) {
        Files.deleteIfExists(path);
        channel.close();
      }
    } catch (IOException e) {
      // The file stays; whoever comes next takes it over.
      closeQuietly(channel);
    } finally {
      leave(path);
    }
  }

  /**
   * A turn at the whole folder.
   *
   * @throws IOException if the folder does not take locks, or somebody does not give it back
   */
  Turn whole() throws IOException {
    Path path = folder.resolve(WHOLE);
    long start = System.nanoTime();
    while (!enter(path)) {
      pause(start);
    }
    FileChannel channel = null;
    boolean mine = false;
    try {
      channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      while (!locks(channel)) {
        pause(start);
      }
      mine = true;
    } finally {
      if (!mine) {
        closeQuietly(channel);
        leave(path);
      }
    }
    FileChannel held = channel;
    return () -> {
      closeQuietly(held);
      leave(path);
    };
  }

  private static void pause(long start) throws IOException {
    if (System.nanoTime() - start > LONGEST_WHOLE) {
      throw new IOException("another program holds the folder");
    }
    try {
      Thread.sleep(WHOLE_PAUSE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("interrupted while waiting for the folder", e);
    }
  }

  /** Whether the running thread has the turn at an entry. */
  boolean isMine(String name) {
    synchronized (HELD) {
      return HELD.get(folder.resolve(name + ENDING)) == Thread.currentThread();
    }
  }

  /** Locks a file unless it is locked; by this program only if these classes are in it twice. */
  private static boolean locks(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  private static boolean enter(Path path) {
    synchronized (HELD) {
      return HELD.putIfAbsent(path, Thread.currentThread()) == null;
    }
  }

  private static void leave(Path path) {
    synchronized (HELD) {
      HELD.remove(path);
    }
  }

  private static void closeQuietly(FileChannel channel) {
    if (channel != null) {
      try {
        channel.close();
      } catch (IOException e) {
        // The lock is gone with the channel all the same.
      }
    }
  }
}
