package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Starts the shop in the browser. */
@Command(
    name = "serve",
    sortOptions = false,
    description = {
      "Starts the shop in the browser, on this machine only, and prints its address. Stop it with Ctrl-C.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Example:", "  ./run serve --port 8090"})
final class ServeCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private PortOption port;

  ServeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    return Shop.open(console, port.value(), false);
  }
}
