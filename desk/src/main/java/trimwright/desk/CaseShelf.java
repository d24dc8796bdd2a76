package trimwright.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.CaseWriter;
import trimwright.exchange.read.Problem;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;

/**
 * The cases that the shop has saved: one case file each in the folder {@code cases} below the
 * shop's own, so that they can be copied, sent and kept like any file.
 *
 * <p>A save is whole or not at all: the text is written beside, forced onto the disk and renamed.
 * Saves wait for each other, those of another program on the same folder too. Names come from files
 * found in the folder and never lead a path, so that none reaches outside.
 */
public final class CaseShelf {
  /** Largest case file [byte]; an ordinary one has about 2 kB. */
  public static final int LARGEST_BYTES = 256 * 1024;

  private static final String CASES = "cases";
  private static final String ENDING = ".yaml";
  private static final String LOCK = ".lock";
  private static final String UNFINISHED = ".unfinished-";

  /** Files whose names are kept; a shop with more reads the others anew each time. */
  private static final int MOST_KEPT = 1000;

  private final Path folder;
  private final Map<Path, Kept> kept = new ConcurrentHashMap<>();

  /** One at a time within this program; the lock on the file is for other programs. */
  private final Object oneAtATime = new Object();

  /**
   * A shelf.
   *
   * @param shopFolder where the shop keeps its files; made when something is first saved
   */
  public CaseShelf(Path shopFolder) {
    this.folder = Objects.requireNonNull(shopFolder, "shopFolder").resolve(CASES);
  }

  /**
   * A case as the shelf lists it.
   *
   * @param id name of the file without its ending
   * @param name of the case; refused where the file is none
   * @param savedAt when it was last written [ms since 1970]
   */
  public record Listed(String id, Reading<String> name, long savedAt) {}

  /** What a file was called when it had this time and size. */
  private record Kept(FileTime time, long size, Listed listed) {}

  /** What became of a save. */
  public sealed interface Outcome {
    /**
     * The case is on the disk.
     *
     * @param id its name on the shelf
     */
    record Saved(String id) implements Outcome {}

    /**
     * Nothing was written: a case of that name is there already.
     *
     * @param id its name on the shelf
     */
    record Taken(String id) implements Outcome {}

    /** Nothing was written: the name has neither letter nor digit. */
    record Unnameable() implements Outcome {}
  }

  /** Where the cases lie. */
  public Path folder() {
    return folder;
  }

  /**
   * Everything on the shelf, the newest first; empty where nothing was ever saved. A file that
   * cannot be read is among them; whether a readable one is a good case shows when it is opened.
   *
   * @throws ShelfException if the folder cannot be read
   */
  public List<Listed> list() {
    List<Listed> all = new ArrayList<>();
    for (Path file : files()) {
      listed(file).ifPresent(all::add);
    }
    all.sort(Comparator.comparingLong(Listed::savedAt).reversed().thenComparing(Listed::id));
    return all;
  }

  /**
   * One case of the shelf.
   *
   * @param id as {@link #list} gives it
   * @return the case, or everything that is wrong with its file; empty where there is no such file
   * @throws ShelfException if the folder cannot be read
   */
  public Optional<Reading<CaseFile>> find(String id) {
    return files().stream()
        .filter(file -> idOf(file).equals(id))
        .findFirst()
        .filter(file -> Files.exists(file, LinkOption.NOFOLLOW_LINKS))
        .map(file -> read(file, text -> CaseReader.read(text, SectionFiles.NONE)));
  }

  /**
   * Puts a case onto the shelf under its own name.
   *
   * @param caseFile the case
   * @param replace whether a case of the same name is to be replaced
   * @return what became of it
   * @throws ShelfException if the folder cannot be written
   */
  public Outcome save(CaseFile caseFile, boolean replace) {
    Optional<String> id = ShelfName.of(caseFile.name());
    if (id.isEmpty()) {
      return new Outcome.Unnameable();
    }
    Path target = folder.resolve(id.get() + ENDING);
    synchronized (oneAtATime) {
      try {
        Files.createDirectories(folder);
        // Closing the channel gives the lock back too.
        try (FileChannel channel =
            FileChannel.open(
                folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
          channel.lock();
          return write(CaseWriter.yaml(caseFile), id.get(), target, replace);
        }
      } catch (IOException e) {
        throw new ShelfException("The case was not saved: " + folder + " cannot be written.", e);
      }
    }
  }

  private Outcome write(String text, String id, Path target, boolean replace) throws IOException {
    removeUnfinished();
    if (!replace && Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
      return new Outcome.Taken(id);
    }
    Path unfinished = Files.createTempFile(folder, UNFINISHED, ".tmp");
    try (FileChannel channel = FileChannel.open(unfinished, StandardOpenOption.WRITE)) {
      ByteBuffer bytes = StandardCharsets.UTF_8.encode(text);
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      channel.force(true);
    }
    Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
    kept.remove(target);
    forceFolder();
    return new Outcome.Saved(id);
  }

  /** What a program left that was killed while it saved; whoever holds the lock may clear it. */
  private void removeUnfinished() throws IOException {
    try (DirectoryStream<Path> left = Files.newDirectoryStream(folder, UNFINISHED + "*")) {
      for (Path file : left) {
        Files.deleteIfExists(file);
      }
    }
  }

  /**
   * Puts the rename itself onto the disk. Not every system opens a folder; those keep it anyway.
   */
  private void forceFolder() {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOffered) {
      // The file itself is whole on the disk; there is nothing more that could be done.
    }
  }

  private List<Path> files() {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder, "*" + ENDING)) {
      for (Path file : inside) {
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
          files.add(file);
        }
      }
    } catch (IOException e) {
      throw new ShelfException("The shelf cannot be read: " + folder + " does not open.", e);
    }
    return files;
  }

  private Optional<Listed> listed(Path file) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      FileTime time = attributes.lastModifiedTime();
      Kept known = kept.get(file);
      if (known != null && known.time().equals(time) && known.size() == attributes.size()) {
        return Optional.of(known.listed());
      }
      Listed listed = new Listed(idOf(file), read(file, CaseReader::readName), time.toMillis());
      if (kept.size() < MOST_KEPT || known != null) {
        kept.put(file, new Kept(time, attributes.size(), listed));
      }
      return Optional.of(listed);
    } catch (IOException gone) {
      // Somebody took it away between the look at the folder and this one.
      return Optional.empty();
    }
  }

  private static <T> Reading<T> read(Path file, Function<String, Reading<T>> reader) {
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        return refused("The file is too large for a case.");
      }
      ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
      return reader.apply(StandardCharsets.UTF_8.newDecoder().decode(bytes).toString());
    } catch (CharacterCodingException e) {
      return refused("The file is not plain text in UTF-8.");
    } catch (IOException e) {
      return refused("The file does not open.");
    }
  }

  private static <T> Reading<T> refused(String why) {
    return new Reading.Refused<>(List.of(new Problem("", OptionalInt.empty(), why)));
  }

  private static String idOf(Path file) {
    String name = file.getFileName().toString();
    return name.substring(0, name.length() - ENDING.length());
  }
}
