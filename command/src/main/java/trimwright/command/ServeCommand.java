package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Starts the shop in the browser. */
@Command(
    name = "serve",
    sortOptions = false,
    description = {
      "Starts the shop in the browser, on this machine only, and prints its address. Saved cases are files in"
          + " its folder. Stop it with Ctrl-C.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {"", "Example:", "  ./run serve --port 8090 --folder season"})
final class ServeCommand implements Callable<Integer> {
  private final Console console;

  @Mixin private PortOption port;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description =
          "Folder for the shop's files; made when something is first saved (default: trimwright in your home"
              + " folder).")
  private String folder;

  ServeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    return Shop.open(console, port.value(), folder, false);
  }
}
