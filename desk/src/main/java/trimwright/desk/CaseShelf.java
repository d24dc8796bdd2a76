package trimwright.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
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
import java.util.concurrent.ConcurrentHashMap;
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

  /** Files whose reading is kept; a shop with more reads the others anew each time. */
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
   * What stands on the shelf.
   *
   * @param id name of the file without its ending
   * @param caseFile the case; empty where the file is none
   * @param problems why the file is no case; empty where it is one
   * @param savedAt when it was last written [ms since 1970]
   */
  public record Entry(String id, Optional<CaseFile> caseFile, List<String> problems, long savedAt) {
    /** Copies the list. */
    public Entry {
      problems = List.copyOf(problems);
    }
  }

  /** What a file said when it had this time and size. */
  private record Kept(FileTime time, long size, Entry entry) {}

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
   * Everything on the shelf, the newest first; empty where nothing was ever saved. A file that is
   * no case is among them.
   *
   * @throws ShelfException if the folder cannot be read
   */
  public List<Entry> list() {
    List<Entry> entries = new ArrayList<>();
    for (Path file : files()) {
      read(file).ifPresent(entries::add);
    }
    entries.sort(Comparator.comparingLong(Entry::savedAt).reversed().thenComparing(Entry::id));
    return entries;
  }

  /**
   * One case of the shelf.
   *
   * @param id as {@link #list} gives it
   * @return the entry; empty where there is no such file
   * @throws ShelfException if the folder cannot be read
   */
  public Optional<Entry> find(String id) {
    return files().stream().filter(file -> idOf(file).equals(id)).findFirst().flatMap(this::read);
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
        try (FileChannel channel =
                FileChannel.open(
                    folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            FileLock lock = channel.lock()) {
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

  private Optional<Entry> read(Path file) {
    try {
      BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
      FileTime time = attributes.lastModifiedTime();
      Kept known = kept.get(file);
      if (known != null && known.time().equals(time) && known.size() == attributes.size()) {
        return Optional.of(known.entry());
      }
      Entry entry = read(file, attributes);
      if (kept.size() < MOST_KEPT || known != null) {
        kept.put(file, new Kept(time, attributes.size(), entry));
      }
      return Optional.of(entry);
    } catch (IOException e) {
      return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
          ? Optional.of(damaged(file, "The file does not open.", 0))
          : Optional.empty();
    }
  }

  private static Entry read(Path file, BasicFileAttributes attributes) throws IOException {
    long savedAt = attributes.lastModifiedTime().toMillis();
    if (attributes.size() > LARGEST_BYTES) {
      return damaged(file, "The file is too large for a case.", savedAt);
    }
    try {
      ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(file));
      String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
      Reading<CaseFile> reading = CaseReader.read(text, SectionFiles.NONE);
      List<String> problems = reading.problems().stream().map(Problem::text).toList();
      return new Entry(idOf(file), reading.findValue(), problems, savedAt);
    } catch (CharacterCodingException e) {
      return damaged(file, "The file is not plain text in UTF-8.", savedAt);
    }
  }

  private static Entry damaged(Path file, String why, long savedAt) {
    return new Entry(idOf(file), Optional.empty(), List.of(why), savedAt);
  }

  private static String idOf(Path file) {
    String name = file.getFileName().toString();
    return name.substring(0, name.length() - ENDING.length());
  }
}
