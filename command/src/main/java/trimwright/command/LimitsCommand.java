package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import trimwright.exchange.read.LimitsFile;
import trimwright.exchange.write.LimitsWriter;

/** Prints the limits that rides are held against. */
@Command(
    name = "limits",
    sortOptions = false,
    description = {"The limits that rides are held against, with where each comes from.", ""},
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run limits",
      "  ./run limits --limits shop.yaml",
      "",
      "A limits file is YAML with one key per limit, such as least_stall_margin_deg: 3. Keys left out stay as"
          + " chosen. A limit can be tightened, not loosened.",
      "That a ride lies inside them is no promise of safety."
    })
final class LimitsCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private LimitsOption limits;

  @Mixin private FormOptions form;

  LimitsCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    LimitsFile file = limits.read(console);
    console.print(
        form.text(
            () -> LimitsWriter.table(file),
            () -> LimitsWriter.json(file),
            () -> LimitsWriter.csv(file)));
    return CommandLineEntry.GOOD;
  }
}
