package trimwright.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/**
 * A text that a person handed in, from a file or from standard input.
 *
 * @param name what to call it in messages
 * @param folder where files named inside it are looked for; empty for standard input
 * @param text the content
 */
record TextInput(String name, Optional<Path> folder, String text) {
  /** A case is a few kilobytes and a measured outline some tens; more is a mistaken file. */
  static final int LARGEST_BYTES = 1 << 20;

  private static final String STANDARD_INPUT = "-";

  /**
   * Reads a file, or standard input when the name is {@code -}.
   *
   * @throws BadInput if there is no such readable text
   */
  static TextInput read(String name, Console console) {
    if (name.equals(STANDARD_INPUT)) {
      return new TextInput("standard input", Optional.empty(), readStandardInput(console.in()));
    }
    try {
      Path path = path(name);
      Path folder = path.toAbsolutePath().getParent();
      return new TextInput(name, Optional.ofNullable(folder), readFile(name, path));
    } catch (IOException e) {
      throw new BadInput(name + ": The file cannot be read (" + reason(e) + ").");
    }
  }

  /** The file that this name opens, where it opens one that can be told. */
  static Optional<Path> findPath(String name) {
    // Standard input may be a file too, handed over by the shell; some systems tell which
    return Optional.of(name.equals(STANDARD_INPUT) ? Path.of("/dev/stdin") : Path.of(name))
        .filter(Files::exists);
  }

  private static String readStandardInput(InputStream in) {
    try {
      return decode("standard input", in);
    } catch (IOException e) {
      throw new BadInput("Standard input is closed, or cannot be read (" + reason(e) + ").");
    }
  }

  /**
   * Reads one file.
   *
   * @throws BadInput if it does not exist, is a folder, may not be read, is too long or is no text
   * @throws IOException if reading fails in another way
   */
  static String readFile(String name, Path path) throws IOException {
    if (Files.isDirectory(path)) {
      throw new BadInput(name + ": This is a folder; a file is needed.");
    }
    try (InputStream in = Files.newInputStream(path)) {
      return decode(name, in);
    } catch (NoSuchFileException e) {
      throw new BadInput(name + ": There is no such file.");
    } catch (AccessDeniedException e) {
      throw new BadInput(name + ": You are not allowed to read this file.");
    }
  }

  private static Path path(String name) {
    if (name.isBlank()) {
      throw new BadInput(
          "The file's name is empty; give the path of a file, or - for standard input.");
    }
    try {
      return Path.of(name);
    } catch (InvalidPathException e) {
      throw new BadInput(name.replace('\0', '?') + ": This cannot be the name of a file.");
    }
  }

  private static String decode(String name, InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(LARGEST_BYTES + 1);
    if (bytes.length > LARGEST_BYTES) {
      throw new BadInput(
          name
              + ": The file is longer than "
              + LARGEST_BYTES / 1024
              + " kB; this is no case, wing or outline.");
    }
    String text;
    try {
      text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new BadInput(name + ": This is not a text file in UTF-8.");
    }
    if (text.indexOf('\0') >= 0) {
      throw new BadInput(name + ": This is not a text file in UTF-8.");
    }
    // Some editors put a mark at the start of a text; it belongs to the encoding and not to the
    // content.
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static String reason(IOException e) {
    return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
  }
}
