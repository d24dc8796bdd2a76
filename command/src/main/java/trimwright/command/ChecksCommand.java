package trimwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import trimwright.reference.CheckRunner;
import trimwright.reference.Ledger;

/** Computes every published value again and shows both. */
@Command(
    name = "checks",
    sortOptions = false,
    description = {
      "Holds the computation against published values: source, expected, computed, error, tolerance,"
          + " verdict.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Example:",
      "  ./run checks",
      "",
      "What the columns mean:",
      "  provenance  read: seen in the source or a text that quotes it; memory: recalled, counted"
          + " apart; evaluated: worked out from a published formula by other means than the checked"
          + " code",
      "  error       computed less expected, in the check's unit",
      "  verdict     met: the error is within the tolerance; known miss: it is not, and the ledger says"
          + " why",
      "",
      "Ends with exit status 1 when a check misses that is not in the ledger, or when one in it no"
          + " longer does what the ledger says."
    })
final class ChecksCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private JsonOption form;

  ChecksCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    ChecksReport report = ChecksReport.of(CheckRunner.runAll(), Ledger.shipped());
    console.print(form.json() ? report.json() : report.table());
    List<String> faults = report.faults();
    faults.forEach(fault -> console.err().println(CommandLineEntry.oneLine(fault)));
    return faults.isEmpty() ? CommandLineEntry.GOOD : CommandLineEntry.FAULT;
  }
}
