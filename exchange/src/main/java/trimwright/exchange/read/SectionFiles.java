package trimwright.exchange.read;

import java.util.Optional;

/** Finds the text of the coordinates files that a case file names. */
@FunctionalInterface
public interface SectionFiles {
  /**
   * Knows no file: every name is refused. For texts that come from elsewhere, such as a browser.
   */
  SectionFiles NONE = name -> Optional.empty();

  /**
   * The text of a coordinates file.
   *
   * @param name the file's name as the case file gives it
   * @return its text, or nothing where there is no such file that may be read
   */
  Optional<String> find(String name);
}
