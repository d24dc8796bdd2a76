package trimwright.command;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** The program's root: names the commands and says how to start. */
@Command(
    name = "./run",
    versionProvider = ProgramVersion.class,
    sortOptions = false,
    synopsisSubcommandLabel = "COMMAND",
    description = {
      "",
      "Computes how a hydrofoil board carries its rider: pitch, foot load, thrust and power over speed, and how much of"
          + " a nose-up or nose-down ride comes from the speed and how much from the setup.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    commandListHeading = "%nCommands (each has its own --help):%n",
    footer = {
      "",
      "A three-line start:",
      "  ./run demo light-carver > my.yaml      a made-up rider on a made-up setup, to change as you like",
      "  ./run curve my.yaml                    what the setup does at each speed",
      "  ./run cause my.yaml --speed-kmh 20     why it rides the way it does at 20 km/h",
      "",
      "Without a command the made-up shop opens for the browser, like ./run demo.",
      "Exit status: 0 good, 2 something handed in cannot be used (standard error says what), 1 anything else.",
      "",
      "The numbers describe a steady ride in a computed model. They are no promise that a setup suits a rider: first"
          + " flights belong with licensed instruction, and local rules and the maker's limits come first."
    })
final class Trimwright implements Callable<Integer> {
  private final Console console;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "Shows this help.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "Shows the program's version and the version of its model.")
  private boolean version;

  Trimwright(Console console) {
    this.console = console;
  }

  /**
   * Puts commands under the root, in the order in which the help lists them.
   *
   * <p>A command that is named at once comes alone: reading the options of all the others would
   * take longer than many a command does.
   *
   * @param words the words after the program's name
   */
  static void addCommands(CommandLine root, Console console, String... words) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("curve", () -> new CurveCommand(console));
    commands.put("cause", () -> new CauseCommand(console));
    commands.put("envelope", () -> new EnvelopeCommand(console));
    commands.put("motion", () -> new MotionCommand(console));
    commands.put("falls", () -> new FallsCommand(console));
    commands.put("change", () -> new ChangeCommand(console));
    commands.put("match", () -> new MatchCommand(console));
    commands.put("fleet", () -> new FleetCommand(console));
    commands.put("stock", () -> new StockCommand(console));
    commands.put("sheet", () -> new SheetCommand(console));
    commands.put("shim", () -> new ShimCommand(console));
    commands.put("wing", () -> new WingCommand(console));
    commands.put("section", () -> new SectionCommand(console));
    commands.put("limits", () -> new LimitsCommand(console));
    commands.put("water", () -> new WaterCommand(console));
    commands.put("checks", () -> new ChecksCommand(console));
    commands.put("demo", () -> new DemoCommand(console));
    commands.put("serve", () -> new ServeCommand(console));
    if (words.length > 0 && commands.containsKey(words[0])) {
      root.addSubcommand(words[0], commands.get(words[0]).get());
    } else {
      commands.forEach((name, command) -> root.addSubcommand(name, command.get()));
    }
  }

  @Override
  public Integer call() throws Exception {
    return Shop.openThrowAway(console, PortOption.DEFAULT);
  }
}
