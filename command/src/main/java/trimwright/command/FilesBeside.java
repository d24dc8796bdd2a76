package trimwright.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import trimwright.exchange.read.SectionFiles;

/**
 * The coordinates files that lie beside a case file, or in folders below it. A name that leads out
 * of that folder, also by a link, names nothing: a case file that came from somebody else must not
 * read other files of this machine.
 */
final class FilesBeside implements SectionFiles {
  private final Path folder;

  private FilesBeside(Path folder) {
    this.folder = folder;
  }

  /** The files beside a text; none for standard input. */
  static SectionFiles of(TextInput input) {
    return input.folder().<SectionFiles>map(FilesBeside::new).orElse(SectionFiles.NONE);
  }

  @Override
  public Optional<String> find(String name) {
    try {
      Path wanted = folder.resolve(name);
      if (!Files.isRegularFile(wanted)) {
        return Optional.empty();
      }
      Path real = wanted.toRealPath();
      if (!real.startsWith(folder.toRealPath())) {
        return Optional.empty();
      }
      return Optional.of(TextInput.readFile(name, real));
    } catch (InvalidPathException e) {
      return Optional.empty();
    } catch (IOException e) {
      throw new UncheckedIOException("the coordinates file " + name + " cannot be read", e);
    }
  }
}
