package trimwright.command;

import java.time.LocalDate;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import trimwright.desk.RangeProblem;
import trimwright.desk.SpeedRange;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.SheetWriter;
import trimwright.sheet.Paper;
import trimwright.sheet.SetupSheet;
import trimwright.sheet.SheetChoice;

/** Prints the sheet that a rider takes home. */
@Command(
    name = "sheet",
    sortOptions = false,
    description = {
      "One page to take home: settings, pictures, speeds, what to feel for, what to do, cautions.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run sheet my.yaml --pdf my.pdf",
      "  ./run sheet my.yaml --pdf my.pdf --speed-kmh 22 --paper letter --units imperial"
          + " --rider \"Ana Example\"",
      "",
      "The square code on the page carries the case, without its name and without the rider's."
    })
final class SheetCommand implements Callable<Integer> {
  private static final String PDF = "--pdf";

  private final Console console;

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Option(
      names = PDF,
      paramLabel = "FILE",
      required = true,
      description = "Writes the page to this file, whole or not at all. Needed.")
  private String pdf;

  @Option(
      names = "--speed-kmh",
      paramLabel = "SPEED",
      converter = Numbers.Decimal.class,
      description =
          "The speed the sheet is for, 1 to 100 km/h through the water (default: the rider's wish).")
  private Double speed;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      converter = SheetConverters.OfPaper.class,
      defaultValue = "a4",
      description = "Size of the paper, a4 or letter (default: ${DEFAULT-VALUE}).")
  private Paper paper;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      converter = SheetConverters.OfMeasures.class,
      defaultValue = "metric",
      description = "Units on the page, metric or imperial (default: ${DEFAULT-VALUE}).")
  private Measures measures;

  @Option(
      names = "--rider",
      paramLabel = "NAME",
      defaultValue = "",
      description = "Whose sheet it is (default: a line to write the name on).")
  private String rider;

  @Option(
      names = "--date",
      paramLabel = "DATE",
      converter = SheetConverters.OfDate.class,
      description = "The day printed on it, as YYYY-MM-DD (default: today).")
  private LocalDate date;

  @Mixin private SectionsOption sections;

  @Mixin private JsonOption form;

  SheetCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() {
    OptionalDouble chosen = chosen();
    OutputFile target = OutputFile.at(PDF, pdf);
    FileInput.CaseSource source = FileInput.readCaseSource(file, console);
    target.requireNoneOf(source.files());
    CaseFile caseFile = sections.of(source.value(), console);
    double ridden = chosen.orElse(caseFile.rideCase().rider().wishedSpeed());
    LocalDate day = date == null ? LocalDate.now() : date;
    target.write(SetupSheet.pdf(caseFile, ridden, new SheetChoice(paper, measures, rider, day)));
    console.print(
        form.json()
            ? SheetWriter.json(caseFile, ridden, pdf)
            : SheetWriter.line(caseFile, ridden, pdf, measures));
    return CommandLineEntry.GOOD;
  }

  private OptionalDouble chosen() {
    if (speed == null) {
      return OptionalDouble.empty();
    }
    try {
      return OptionalDouble.of(SpeedRange.oneKmh(speed));
    } catch (RangeProblem problem) {
      throw RangeOptions.usageOf(spec, problem, "--speed-kmh");
    }
  }
}
