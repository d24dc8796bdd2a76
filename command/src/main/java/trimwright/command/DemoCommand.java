package trimwright.command;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.exchange.demo.DemoCase;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.demo.DemoRiders;
import trimwright.exchange.demo.DemoStock;

/** Opens the made-up shop, or hands out its cases. */
@Command(
    name = "demo",
    sortOptions = false,
    description = {
      "Opens the made-up shop in the browser, on this machine only, in a throw-away folder unless one is named; or hands out"
          + " one of its cases, its stock or its riders, as a file to start from.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run demo                            opens the made-up shop and prints its address",
      "  ./run demo --list                     names the made-up cases",
      "  ./run demo light-carver > my.yaml     one of them as a file",
      "  ./run demo stock > stock.yaml         what hangs on the made-up shop's wall",
      "  ./run demo household > riders.yaml    two people who share a board",
      "  ./run demo school > riders.yaml       a school's students",
      "",
      "Riders, gear and waters in it are invented."
    })
final class DemoCommand implements Callable<Integer> {
  private static final String STOCK = "stock";
  private static final String HOUSEHOLD = "household";
  private static final String SCHOOL = "school";

  private final Console console;

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      description =
          "A made-up case, or stock, household or school, to print as YAML; left out, the shop opens.")
  private String name;

  @Option(names = "--list", description = "Lists the made-up cases.")
  private boolean list;

  @Mixin private PortOption port;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description =
          "Folder for what is saved; made when something is first saved. Left out, it is a throw-away one that"
              + " goes when the shop is stopped.")
  private String folder;

  DemoCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    if (list) {
      console.print(table(DemoCases.list()));
    } else if (name != null) {
      console.print(text());
    } else {
      return folder == null
          ? Shop.openThrowAway(console, port.value())
          : Shop.open(console, port.value(), folder, true);
    }
    return CommandLineEntry.GOOD;
  }

  private String text() {
    return switch (name) {
      case STOCK -> DemoStock.text();
      case HOUSEHOLD -> DemoRiders.household();
      case SCHOOL -> DemoRiders.school();
      default -> find().text();
    };
  }

  private DemoCase find() {
    return DemoCases.find(name)
        .orElseThrow(
            () ->
                new BadInput(
                    "There is no made-up case \""
                        + name
                        + "\"; there are "
                        + DemoCases.list().stream()
                            .map(DemoCase::id)
                            .collect(Collectors.joining(", "))
                        + ", and "
                        + STOCK
                        + ", "
                        + HOUSEHOLD
                        + ", "
                        + SCHOOL
                        + "."));
  }

  private static String table(List<DemoCase> cases) {
    int width = cases.stream().mapToInt(demo -> demo.id().length()).max().orElse(0);
    return cases.stream()
        .map(demo -> demo.id() + " ".repeat(width + 2 - demo.id().length()) + demo.title() + "\n")
        .collect(Collectors.joining());
  }
}
