package trimwright.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import trimwright.desk.CaseStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.picture.CurvePicture;
import trimwright.exchange.picture.PictureStyle;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.CurveWriter;
import trimwright.kernel.band.Bands;

/** Prints what a setup does under its rider at each speed. */
@Command(
    name = "curve",
    sortOptions = false,
    description = {
      "What a setup does under its rider at each speed: pitch, foot load, thrust, power.",
      ""
    },
    optionListHeading = "%nOptions:%n",
    footer = {
      "",
      "Examples:",
      "  ./run curve my.yaml",
      "  ./run curve my.yaml --from-kmh 15 --to-kmh 30 --step-kmh 0.5 --csv > my.csv",
      "  ./run curve my.yaml --svg my.svg",
      "",
      "What the numbers mean:",
      "  pitch         the deck's angle to the horizontal; above 0 the nose points up",
      "  foot share    part of the load on the front foot: 0 all behind, 1 all in front, 0.5 even feet;"
          + " outside 0 to 1 nobody can hold it",
      "  foot pressure where that load acts, along the deck ahead of the mast's axis; below 0 behind it",
      "  reserve       how far it can still go forward before the back foot carries nothing",
      "  thrust        along the thrust line; without a drive the level force needed",
      "  even feet     every speed at which both feet carry the same; level: where the pitch is 0",
      "  rideable      the speeds inside every limit of the model, which is no promise of safety",
      "  band, ±       how far off 95 of 100 such setups would be at most, as their parts are known"
          + " (known_by: sheet, tape, calliper or scan)",
      "A speed without a steady ride says why: too slow to carry, stalled, more thrust than the drive"
          + " has, or beyond the feet's reach."
    })
final class CurveCommand implements Callable<Integer> {
  /** Fits a sheet of paper upright with room for words beside it [px]. */
  private static final double PICTURE_WIDTH = 900;

  private static final double PICTURE_HEIGHT = 1000;

  private static final String PICTURE = "--svg";

  private final Console console;

  @Parameters(paramLabel = "CASE", description = "Case file in YAML, or - for standard input.")
  private String file;

  @Mixin private SpeedOptions speeds;

  @Mixin private SectionsOption sections;

  @Mixin private LimitsOption limits;

  @Mixin private FormOptions form;

  @Option(
      names = PICTURE,
      paramLabel = "FILE",
      description = "Also writes the curves as a picture to this file, whole or not at all.")
  private String svg;

  CurveCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws Exception {
    SpeedRange range = speeds.range();
    OutputFile picture = svg == null ? null : OutputFile.at(PICTURE, svg);
    FileInput.CaseSource source = FileInput.readCaseSource(file, console);
    if (picture != null) {
      picture.requireNoneOf(source.files());
    }
    CaseFile caseFile = limits.of(sections.of(source.value(), console), console);
    Bands bands = CaseStudy.of(caseFile).bands(range);
    if (picture != null) {
      double marked = caseFile.rideCase().rider().wishedSpeed();
      picture.write(
          CurvePicture.sheet(
              caseFile,
              bands,
              marked,
              Measures.METRIC,
              PictureStyle.light(PICTURE_WIDTH, PICTURE_HEIGHT)));
    }
    console.print(
        form.text(
            () -> CurveWriter.table(caseFile, bands),
            () -> CurveWriter.json(caseFile, bands),
            () -> CurveWriter.csv(bands)));
    return CommandLineEntry.GOOD;
  }
}
