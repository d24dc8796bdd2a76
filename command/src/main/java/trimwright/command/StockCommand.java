package trimwright.command;

import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import trimwright.desk.BudgetStudy;
import trimwright.desk.KeptPairs;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.BudgetAnswer;
import trimwright.exchange.write.BudgetWriter;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Stock;

/** Prints which parts to own for many riders within a budget. */
@Command(
    name = "stock",
    sortOptions = false,
    description = {
      "Which demo parts to own within a budget, so that most of some riders get a fit; and how many are served for how"
          + " much money.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run stock school.yaml --stock stock.yaml --budget 9000",
      "  ./run stock school.yaml --stock stock.yaml --budget 2500 --own board-1650 --own mast-750 --json",
      "",
      "./run demo stock, ./run demo household and ./run demo school print made-up files to start from.",
      "Prices are the stock file's; a part without one cannot be bought. One of each part is enough: one rider at a time."
          + " The choice serves most persons, then the mean falls short least. docs/riders.md says how a riders file is"
          + " written.",
      "",
      "What the numbers mean:",
      "  short by  mean of what all wishes fall short by: 0 all good, 1 all poor; ? by tables alone",
      "  at least  where a least sum of money was not settled in the time given: what it cannot be below",
      "The stock is looked through for every rider, which takes its time for each; --keep makes it quick.",
      "First flights go with licensed instruction; local rules and makers' limits come first. Nothing here says that a"
          + " setup does no harm."
    })
final class StockCommand implements Callable<Integer> {
  private static final String BUDGET = "--budget";
  private static final double MOST_BUDGET = 1e7;

  private final Console console;

  @Spec private CommandSpec spec;

  @Mixin private RidersOptions riders;

  @Mixin private StockOptions stock;

  @Option(
      names = BUDGET,
      paramLabel = "AMOUNT",
      required = true,
      converter = Numbers.Decimal.class,
      description = "Money there is, 0 to 10000000, in the currency of the stock's prices.")
  private double budget;

  @Option(
      names = "--own",
      paramLabel = "PART",
      description =
          "A part owned already, by its id: it costs nothing. May be given several times.")
  private List<String> owned = new ArrayList<>();

  @Mixin private SectionsOption sections;

  @Mixin private JsonOption form;

  StockCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec).check(this::checkBudget).check(riders::time).finish();
    Duration time = riders.time();
    RidersFile file = riders.read(console);
    StockFile stockFile = stock.read(console);
    Stock parts = stock.parts(stockFile, sections, console);
    BudgetAnswer answer;
    try {
      answer =
          BudgetStudy.find(
              file,
              stockFile,
              parts,
              budget,
              new LinkedHashSet<>(owned),
              time,
              new KeptPairs(sections.folder()),
              Workers.all(),
              new RidersProgress(console));
    } catch (IllegalArgumentException e) {
      throw new BadInput(e.getMessage());
    }
    console.print(form.json() ? BudgetWriter.json(answer) : BudgetWriter.table(answer));
    return CommandLineEntry.GOOD;
  }

  private void checkBudget() {
    if (!(budget >= 0 && budget <= MOST_BUDGET)) {
      throw new ParameterException(
          spec.commandLine(),
          BUDGET + " must be from 0 to 10000000, was " + Numbers.text(budget) + ".");
    }
  }
}
