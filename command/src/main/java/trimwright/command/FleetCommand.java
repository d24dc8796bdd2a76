package trimwright.command;

import java.time.Duration;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trimwright.desk.FleetStudy;
import trimwright.desk.KeptPairs;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.FleetAnswer;
import trimwright.exchange.write.FleetWriter;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Stock;

/** Prints which hardware riders should share. */
@Command(
    name = "fleet",
    sortOptions = false,
    description = {
      "One hardware set for a household, or a small fleet for a school, out of a stock, with a card for each rider: shim,"
          + " track, feet and speed.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run fleet household.yaml --stock stock.yaml --keep board-1650 --keep mast-750",
      "  ./run fleet school.yaml --stock stock.yaml --sets 3 --json",
      "",
      "./run demo stock, ./run demo household and ./run demo school print made-up files to start from.",
      "One set: it serves most persons, then its worst rider falls short least, then the mean. Several: they serve most"
          + " persons, then the mean is least; no part is used more often than there are of it. docs/riders.md says how a"
          + " riders file is written.",
      "",
      "What the numbers mean:",
      "  short by  mean of what all wishes fall short by: 0 all good, 1 all poor; ? by tables alone",
      "  alone     the same on the set that the rider would have alone",
      "The stock is looked through for every rider, which takes its time for each; --keep makes it quick.",
      "First flights go with licensed instruction; local rules and makers' limits come first. Nothing here says that a"
          + " setup does no harm."
    })
final class FleetCommand implements Callable<Integer> {
  private static final String SETS = "--sets";
  private static final int MOST_SETS = 12;

  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private RidersOptions riders;

  @Mixin private StockOptions stock;

  @Option(
      names = SETS,
      paramLabel = "NUMBER",
      converter = Numbers.Whole.class,
      defaultValue = "1",
      description =
          "How many sets at most, 1 to 12; 1 is one that all share (default: ${DEFAULT-VALUE}).")
  private int sets;

  @Mixin private SectionsOption sections;

  @Mixin private JsonOption form;

  FleetCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec).check(this::checkSets).check(riders::time).finish();
    Duration time = riders.time();
    RidersFile file = riders.read(console);
    StockFile stockFile = stock.read(console);
    Stock parts = stock.parts(stockFile, sections, console);
    FleetAnswer answer;
    try {
      answer =
          FleetStudy.find(
              file,
              stockFile,
              parts,
              sets,
              time,
              new KeptPairs(sections.folder()),
              Workers.all(),
              new RidersProgress(console));
    } catch (IllegalArgumentException e) {
      throw new BadInput(e.getMessage());
    }
    console.print(form.json() ? FleetWriter.json(answer) : FleetWriter.table(answer));
    return CommandLineEntry.GOOD;
  }

  private void checkSets() {
    if (sets < 1 || sets > MOST_SETS) {
      throw new ParameterException(
          spec.commandLine(), SETS + " must be from 1 to 12, was " + sets + ".");
    }
  }
}
