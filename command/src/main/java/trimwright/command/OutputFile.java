package trimwright.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.UUID;

/**
 * Writes a whole file or none: the content goes to a file beside the target, which then takes the
 * target's place in one step.
 */
final class OutputFile {
  private final String option;
  private final Path target;

  private OutputFile(String option, Path target) {
    this.option = option;
    this.target = target;
  }

  /**
   * Checks a target before any work is done.
   *
   * @param option the option that named it, for messages
   * @param name the file's path
   * @throws BadInput if nothing can be written there
   */
  static OutputFile at(String option, String name) {
    Path path;
    try {
      path = Path.of(name);
    } catch (InvalidPathException e) {
      throw new BadInput(option + ": This cannot be the name of a file.");
    }
    if (name.isBlank()) {
      throw new BadInput(option + ": The file's name is empty.");
    }
    if (Files.isDirectory(path)) {
      throw new BadInput(
          option + " " + name + ": This is a folder; give the name of a file in it.");
    }
    if (Files.exists(path) && !Files.isRegularFile(path)) {
      throw new BadInput(option + " " + name + ": This is no ordinary file.");
    }
    Path folder = path.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw new BadInput(option + " " + name + ": The folder for it does not exist.");
    }
    return new OutputFile(option, path);
  }

  /**
   * Keeps what was read from being written over, whatever names and links lead to it.
   *
   * @param inputs files that were read
   * @throws BadInput if the target is one of them, or cannot be told from one
   */
  void requireNoneOf(List<Path> inputs) {
    if (!Files.exists(target)) {
      return;
    }
    for (Path input : inputs) {
      try {
        if (Files.isSameFile(target, input)) {
          throw new BadInput(
              option
                  + " "
                  + target
                  + ": This is a file that is read ("
                  + input
                  + "); give the name of another one.");
        }
      } catch (IOException e) {
        throw new BadInput(
            option + " " + target + ": It cannot be told from " + input + " (" + reason(e) + ").");
      }
    }
  }

  /**
   * Writes the text, replacing what was there.
   *
   * @throws BadInput if that fails; the old content, if any, is then untouched
   */
  void write(String text) {
    write(text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes the bytes, replacing what was there.
   *
   * @throws BadInput if that fails; the old content, if any, is then untouched
   */
  void write(byte[] content) {
    try {
      replace(content);
    } catch (AccessDeniedException e) {
      throw new BadInput(option + " " + target + ": You are not allowed to write there.");
    } catch (IOException e) {
      throw new BadInput(
          option + " " + target + ": The file cannot be written (" + reason(e) + ").");
    }
  }

  /** The system's words for a failure, without the name of the file that nobody knows. */
  private static String reason(IOException e) {
    String words = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
    return words == null ? "the system says " + e.getClass().getSimpleName() : words;
  }

  private void replace(byte[] content) throws IOException {
    // A plain new file rather than a temporary one: it gets the permissions that any new file of
    // this user gets.
    Path whole =
        target
            .toAbsolutePath()
            .resolveSibling("." + target.getFileName() + "." + UUID.randomUUID());
    try {
      Files.write(whole, content, StandardOpenOption.CREATE_NEW);
      try {
        Files.move(whole, target, StandardCopyOption.ATOMIC_MOVE);
      } catch (AtomicMoveNotSupportedException e) {
        Files.move(whole, target, StandardCopyOption.REPLACE_EXISTING);
      }
    } finally {
      Files.deleteIfExists(whole);
    }
  }
}
