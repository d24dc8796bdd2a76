package trimwright.command;

import java.util.function.Supplier;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Option;

/** How the numbers come out: a table for people unless a form for programs is chosen. */
final class FormOptions {
  @ArgGroup private Form form = new Form();

  private static final class Form {
    @Option(names = "--json", description = "Prints one JSON document and nothing else.")
    private boolean json;

    @Option(names = "--csv", description = "Prints comma-separated values and nothing else.")
    private boolean csv;
  }

  /** The text in the chosen form; only that one is written. */
  String text(Supplier<String> table, Supplier<String> json, Supplier<String> csv) {
    if (form.json) {
      return json.get();
    }
    return form.csv ? csv.get() : table.get();
  }
}
