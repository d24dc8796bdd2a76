package trimwright.command;

import java.util.List;

/**
 * What a person handed in cannot be used; the lines say why, one problem each. Ends a command with
 * exit status 2.
 */
final class BadInput extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final transient List<String> lines;

  BadInput(String line) {
    this(List.of(line));
  }

  BadInput(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  /** The problems, one line each. */
  List<String> lines() {
    return lines;
  }
}
