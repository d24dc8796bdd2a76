package trimwright.exchange.read;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * Coordinates files in a folder, usually the case file's. Only files in the folder or below it are
 * read: a case file that somebody sent reaches nothing else.
 */
public final class SectionFolder implements SectionFiles {
  private static final long LARGEST_FILE = 1_000_000;

  private final Path folder;

  /**
   * The files of a folder.
   *
   * @param folder where the case file lies
   */
  public SectionFolder(Path folder) {
    this.folder = folder;
  }

  /** The folder that a case file lies in. */
  public static SectionFolder beside(Path caseFile) {
    Path parent = caseFile.toAbsolutePath().getParent();
    return new SectionFolder(parent == null ? caseFile.toAbsolutePath() : parent);
  }

  @Override
  public Optional<String> find(String name) {
    try {
      Path home = folder.toRealPath();
      Path file = home.resolve(name).toRealPath();
      if (!file.startsWith(home) || !Files.isRegularFile(file) || Files.size(file) > LARGEST_FILE) {
        return Optional.empty();
      }
      byte[] bytes = Files.readAllBytes(file);
      return Optional.of(decoded(bytes));
    } catch (IOException | InvalidPathException e) {
      // To the reader of a case a file that cannot be read is one that is not there; it says so
      return Optional.empty();
    }
  }

  /** UTF-8, or Latin-1 where an old title line is not UTF-8; the numbers are the same in both. */
  private static String decoded(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      return new String(bytes, StandardCharsets.ISO_8859_1);
    }
  }
}
