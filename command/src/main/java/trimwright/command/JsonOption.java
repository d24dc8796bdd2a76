package trimwright.command;

import picocli.CommandLine.Option;

/** A table for people, or a document for programs. */
final class JsonOption {
  @Option(names = "--json", description = "Prints one JSON document and nothing else.")
  private boolean json;

  /** Whether a document is wanted. */
  boolean json() {
    return json;
  }
}
