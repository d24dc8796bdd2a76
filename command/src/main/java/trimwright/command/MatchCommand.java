package trimwright.command;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.KeptPairs;
import trimwright.desk.MatchQuestion;
import trimwright.desk.MatchStudy;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.MatchAnswer;
import trimwright.exchange.write.MatchWriter;
import trimwright.fitting.match.MatchSearch;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.water.WaterModel;

/** Prints which setups of a stock suit a rider. */
@Command(
    name = "match",
    sortOptions = false,
    description = {
      "Which setups of a stock suit a rider: every combination that mounts together is looked through by tables, the"
          + " best are solved in full.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run match my.yaml --stock stock.yaml",
      "  ./run match my.yaml --stock stock.yaml --keep board-1650 --keep mast-750 --weigh range=4 --json",
      "",
      "./run demo stock prints a stock to start from. Rider, water and ride are the case's; its setup counts for nothing. One row for each front wing with a stabilizer:"
          + " the best of their setups. docs/wishes.md says what is good, what is poor and why.",
      "",
      "What the numbers mean:",
      "  rank      one more than the rows that are better beyond the bands; = cannot be told from another",
      "  short by  mean of what all wishes fall short by: 0 all good, 1 all poor; with two standard deviations",
      "  worst     the same when rider or water is other, at the far end of the band",
      "  level     deck from the wished pitch at the wished speed",
      "  feet      front foot's part of the load from the wished one, mean over the ride",
      "  growth    change of that part per km/h",
      "  flies     slowest speed that flies",
      "  stall     least nose-up change of pitch left to the stall",
      "  pitchy    largest pitch rate within half a second of 1 cm of foot pressure",
      "  lean      bank at which the upper tip comes too near to the surface",
      "  range     at the wished speed, on what may be used of the battery",
      "  gear      mass of board, battery and foil",
      "  moved     how far both feet stand from where the rider likes them",
      "Tables of wings are kept, so that the next match over the same stock takes seconds.",
      "First flights go with licensed instruction; local rules and makers' limits come first. Nothing here says that a"
          + " setup is safe."
    })
final class MatchCommand implements Callable<Integer> {
  private static final String SPREAD = "--weight-spread-kg";
  private static final String ROWS = "--rows";
  private static final String TRADE = "--trade";
  private static final String WATER = "--other-water";
  private static final int MOST_ROWS = 24;
  private static final double MOST_SPREAD = 30;

  /** Setups solved in full for each row that is shown, at most. */
  private static final int LOOKS_PER_ROW = 4;

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Mixin private StockOptions stock;

  @Mixin private RideOptions ride;

  @Option(
      names = SPREAD,
      paramLabel = "MASS",
      converter = Numbers.Decimal.class,
      defaultValue = "5",
      description =
          "By how much the rider may be heavier or lighter, 0 to 30 kg (default:"
              + " ${DEFAULT-VALUE}).")
  private double spread;

  @Option(
      names = WATER,
      paramLabel = "DEGREES,GRAMS",
      description =
          "Another water of the rider: degrees Celsius and grams of salt in a kilogram, such as 6,35."
              + " May be given several times.")
  private List<String> waters = new ArrayList<>();

  @Option(
      names = TRADE,
      paramLabel = "WISH,WISH",
      defaultValue = "take_off,range",
      description =
          "Two wishes, not manners, between which the trade-off is listed in the document (default:"
              + " ${DEFAULT-VALUE}).")
  private String trade;

  @Option(
      names = ROWS,
      paramLabel = "NUMBER",
      converter = Numbers.Whole.class,
      defaultValue = "8",
      description = "How many setups are shown at most, 1 to 24 (default: ${DEFAULT-VALUE}).")
  private int rows;

  @Mixin private SectionsOption sections;

  @Mixin private LimitsOption limits;

  @Mixin private JsonOption form;

  MatchCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    new OptionChecks(spec)
        .check(ride::feetReach)
        .check(ride::weights)
        .check(this::checkNumbers)
        .check(this::otherWaters)
        .check(this::trades)
        .finish();
    CaseFile caseFile = limits.of(FileInput.readCase(file, console), console);
    StockFile stockFile = stock.read(console);
    double wished = caseFile.rideCase().rider().wishedSpeed();
    List<Wish> traded = trades();
    MatchQuestion question =
        new MatchQuestion(
            ride.span(wished),
            ride.feetReach(),
            ride.weights(),
            traded.get(0),
            traded.get(1),
            otherWaters(),
            spread,
            new MatchSearch.Size(rows, LOOKS_PER_ROW * rows));
    Stock parts = stock.parts(stockFile, sections, console);
    MatchAnswer answer =
        MatchStudy.find(
            StockCases.of(caseFile, stockFile),
            parts,
            question,
            new KeptPairs(sections.folder()),
            Workers.all(),
            new MatchProgress(console));
    console.print(form.json() ? MatchWriter.json(answer) : MatchWriter.table(answer));
    return CommandLineEntry.GOOD;
  }

  private void checkNumbers() {
    if (!(spread >= 0 && spread <= MOST_SPREAD)) {
      throw usage(SPREAD + " must be from 0 to 30 kg, was " + Numbers.text(spread) + ".");
    }
    if (rows < 1 || rows > MOST_ROWS) {
      throw usage(ROWS + " must be from 1 to 24, was " + rows + ".");
    }
  }

  private List<Wish> trades() {
    String[] words = trade.split(",", -1);
    if (words.length != 2) {
      throw usage(TRADE + " must name two wishes, such as take_off,range, was " + trade + ".");
    }
    Wish one = ride.wish(TRADE, words[0]);
    Wish other = ride.wish(TRADE, words[1]);
    if (one == other || one == Wish.MANNERS || other == Wish.MANNERS) {
      throw usage(
          TRADE
              + " must name two different wishes that tables know, all but manners, was "
              + trade
              + ".");
    }
    return List.of(one, other);
  }

  private List<MatchQuestion.OtherWater> otherWaters() {
    List<MatchQuestion.OtherWater> all = new ArrayList<>();
    for (String word : waters) {
      String[] halves = word.split(",", -1);
      try {
        if (halves.length != 2) {
          throw new NumberFormatException();
        }
        double celsius = Double.parseDouble(halves[0].strip());
        double grams = Double.parseDouble(halves[1].strip());
        double temperature = Unit.CELSIUS.toSi(celsius);
        all.add(
            new MatchQuestion.OtherWater(
                Numbers.text(celsius) + " °C, " + Numbers.text(grams) + " g/kg salt",
                WaterModel.at(temperature, Unit.GRAM_PER_KILOGRAM.toSi(grams)),
                temperature));
      } catch (IllegalArgumentException e) {
        throw usage(
            WATER
                + " must be degrees Celsius from -2 to 40 and grams of salt from 0 to 42, such as 6,35,"
                + " was "
                + word
                + ".");
      }
    }
    return all;
  }

  private ParameterException usage(String words) {
    return new ParameterException(spec.commandLine(), words);
  }
}
