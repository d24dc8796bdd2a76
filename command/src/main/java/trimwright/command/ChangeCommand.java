package trimwright.command;

import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.ChangeQuestion;
import trimwright.desk.ChangeStudy;
import trimwright.desk.LayeredStock;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.ChangeAnswer;
import trimwright.exchange.words.ChangeOrders;
import trimwright.exchange.write.ChangeWriter;
import trimwright.fitting.change.ChangeStep;
import trimwright.fitting.stock.Stock;

/** Prints the smallest change that makes a ride meet its wishes. */
@Command(
    name = "change",
    sortOptions = false,
    description = {
      "What to change next: each single change from the setup as it is, the least effort first, the best amount of each,"
          + " and what it does to everything else.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run change my.yaml",
      "  ./run change my.yaml --stock stock.yaml",
      "  ./run change my.yaml --from-kmh 18 --to-kmh 28 --weigh range=4 --json",
      "",
      "Rule out the listed things first: they cost nothing. A change that breaks a hard limit is never advised. Faster or"
          + " slower moves the speed that is ridden, and all the ride's speeds with it, not what is wished of the ride."
          + " Stabilizers, front wings, masts and boards come from the stock, and only those that fit what they are bolted"
          + " to; docs/changes.md has the rules, docs/wishes.md what is good and poor.",
      "",
      "What the numbers mean:",
      "  short by  mean of what all wishes fall short by: 0 all good, 1 all poor",
      "  level     deck from the wished pitch at the wished speed",
      "  feet      front foot's part of the load from the wished one, mean over the ride",
      "  growth    change of that part per km/h",
      "  flies     slowest speed that flies",
      "  stall     least nose-up change of pitch left to the stall",
      "  pitchy    largest pitch rate within half a second of 1 cm of foot pressure",
      "  lean      bank at which the upper tip comes too near to the surface",
      "  range     at the wished speed, on what may be used of the battery",
      "  moved     how far both feet stand from where they are now",
      "First flights go with licensed instruction; local rules and makers' limits come first. Nothing here says that a"
          + " setup is safe."
    })
final class ChangeCommand implements Callable<Integer> {
  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Option(
      names = "--stock",
      paramLabel = "STOCK",
      description =
          "Stock file in YAML from which other parts come (default: none, and no other parts).")
  private String stock;

  @Mixin private RideOptions ride;

  @Mixin private SectionsOption sections;

  @Mixin private LimitsOption limits;

  @Mixin private JsonOption form;

  ChangeCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec).check(ride::feetReach).check(ride::weights).finish();
    FileInput.NamedCase named = FileInput.readNamedCase(file, console);
    CaseFile caseFile = limits.of(sections.of(named.value(), console), console);
    ChangeQuestion question =
        new ChangeQuestion(
            ride.span(caseFile.rideCase().rider().wishedSpeed()), ride.feetReach(), ride.weights());
    ChangeAnswer answer =
        ChangeStudy.find(
            caseFile,
            named.outlines(),
            Optional.ofNullable(stock).map(this::parts),
            question,
            changed -> sections.of(changed, console),
            stock == null ? step -> {} : say(),
            Thread.currentThread()::isInterrupted);
    console.print(form.json() ? ChangeWriter.json(answer) : ChangeWriter.table(answer));
    return CommandLineEntry.GOOD;
  }

  private ChangeStudy.Parts parts(String name) {
    StockFile read = FileInput.readStock(name, console);
    PolarProgress progress = new PolarProgress(console);
    Stock pieces =
        sections.fitted()
            ? read.stock()
            : LayeredStock.of(read.stock(), sections.polars(), progress::say, progress::remark);
    return new ChangeStudy.Parts(read, pieces);
  }

  /** Says on standard error how far a search in a stock is: it takes some seconds. */
  private Consumer<ChangeStep> say() {
    return step -> {
      console
          .err()
          .println(
              "Looked at changes, "
                  + step.kind().map(ChangeOrders::title).orElse("pairs").toLowerCase(Locale.ROOT)
                  + ": "
                  + step.done()
                  + " of "
                  + step.of());
      console.err().flush();
    };
  }
}
