package trimwright.sheet;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import trimwright.desk.CaseStudy;
import trimwright.desk.EnvelopeStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.picture.DeckPicture;
import trimwright.exchange.picture.Palette;
import trimwright.exchange.picture.PictureStyle;
import trimwright.exchange.picture.ShimPicture;
import trimwright.exchange.picture.SideView;
import trimwright.exchange.picture.SpeedRuler;
import trimwright.exchange.read.CaseCode;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.FeelWords;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.write.ModelVersion;
import trimwright.exchange.write.SectionCode;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.sheet.SheetPage.Row;

/** Has a case computed and puts together what its sheet says. */
final class SheetAuthor {
  /** Ends of the curve [km/h]: the speeds at which foil boards are ridden. */
  private static final double FROM_KMH = 10;

  private static final double TO_KMH = 40;

  /** Water denser than this is salt to a person at a counter [kg/m³]. Chosen. */
  private static final double SALT = 1010;

  /** Letters of the digest that tell cases apart to a person. */
  private static final int DIGEST_LETTERS = 12;

  /** Side of the largest code that leaves room for the rest [mm]. */
  private static final double LARGEST_CODE = 46.6;

  /** How fine pictures are drawn [px/mm], and the height of their letters [px]. */
  private static final double PIXELS = 4;

  /** What a part's line takes in a column, as if it were a sentence [letters]. */
  private static final int PART_LETTERS = 50;

  private static final double LETTERS = 11;
  private static final double LARGE_LETTERS = 13;

  private final CaseFile caseFile;
  private final SheetChoice choice;
  private final SheetNumbers numbers;
  private final double speed;
  private final Bands bands;
  private final Curve curve;
  private final Optional<PointBand> band;
  private final TrimOutcome outcome;
  private final CauseWords cause;
  private final Envelope envelope;
  private final CaseCode carried;
  private final Optional<CodePicture> code;

  SheetAuthor(CaseFile caseFile, double speed, SheetChoice choice) {
    this.caseFile = caseFile;
    this.choice = choice;
    this.speed = speed;
    this.numbers = new SheetNumbers(choice.measures());
    CaseStudy study = CaseStudy.of(caseFile);
    this.bands = study.bands(range(), speed);
    this.curve = bands.curve();
    this.outcome = study.trim(speed);
    this.band =
        bands
            .points()
            .get(curve.outcomes().stream().map(TrimOutcome::speed).toList().indexOf(speed));
    this.envelope = EnvelopeStudy.of(caseFile);
    this.cause = CauseWords.of(caseFile, study.cause(speed), choice.measures());
    this.carried = CaseCode.of(caseFile);
    this.code =
        carried
            .text()
            .flatMap(
                text ->
                    CodePicture.find(
                        text,
                        "QR code with this sheet's case, without its name and without the rider's",
                        LARGEST_CODE));
  }

  /** The speeds that the sheet looks at, wide enough for the one it is about. */
  private SpeedRange range() {
    double ridden = Shown.kmh(speed);
    double wished = Shown.kmh(caseFile.rideCase().rider().wishedSpeed());
    return SpeedRange.kmh(
        Math.max(SpeedRange.LOWEST_KMH, Math.min(FROM_KMH, Math.floor(Math.min(ridden, wished)))),
        Math.min(SpeedRange.HIGHEST_KMH, Math.max(TO_KMH, Math.ceil(Math.max(ridden, wished)))),
        1);
  }

  /**
   * The page, laid out in a certain way.
   *
   * @param layout sizes of columns and pictures
   * @param drawn whether the pictures are drawn, or only have their room
   * @return what the template prints
   */
  SheetPage page(SheetLayout layout, boolean drawn) {
    SheetSettings settings = new SheetSettings(caseFile, numbers);
    ShimWords shim =
        ShimWords.of(caseFile.rideCase().setup().shim(), caseFile.notes().stabilizerMounting());
    List<String> feel = FeelWords.of(caseFile, curve, outcome, choice.measures());
    SheetPage.Cause why =
        new SheetPage.Cause(
            cause.headline(),
            explanation(layout.sentencesCut()),
            cause.ruleOutFirst().stream().map(RuleOut::what).toList());
    return new SheetPage(
        head(),
        settings.large(),
        picture(
            drawn,
            style -> ShimPicture.svg(caseFile, style),
            layout.shimWidth(),
            layout.shimHeight(),
            LETTERS),
        List.of(shim.fitting(), shim.warning()),
        ShimPicture.scaleWords(caseFile),
        picture(
            drawn,
            style -> DeckPicture.svg(caseFile, choice.measures(), style),
            layout.deckWidth(),
            layout.deckHeight(),
            LARGE_LETTERS),
        "To scale, to the middle of each foot. The case does not say where the board ends; its outline"
            + " is drawn plainly.",
        picture(
            drawn,
            style -> SpeedRuler.svg(caseFile, curve, speed, choice.measures(), style),
            layout.width(),
            layout.rulerHeight(),
            LETTERS),
        picture(drawn, this::side, layout.sideWidth(), layout.sideHeight(), LETTERS),
        speeds(),
        feel,
        why,
        settings.parts(),
        CautionWords.listFor(caseFile),
        cautionsLeft(why, feel, settings.parts().size()),
        code,
        code.isPresent()
            ? "The case for the program, without names."
            : carried.whyNot().orElse("This case is too long for a code on paper."),
        foot(),
        drawn);
  }

  /** The layout of a density, with room for the code that this case needs. */
  SheetLayout layout(Paper paper, int step) {
    return new SheetLayout(paper, step, code.map(CodePicture::size).orElse(0.0));
  }

  private SheetPage.Head head() {
    RideCase ride = caseFile.rideCase();
    List<String> facts = new ArrayList<>();
    facts.add(numbers.mass(ride.rider().allMass()) + " with kit");
    facts.add(ride.water().density() > SALT ? "salt water" : "fresh water");
    if (ride.chopHeight() > 0) {
      facts.add("chop " + numbers.length(ride.chopHeight()));
    }
    if (ride.headWind() != 0) {
      facts.add(
          (ride.headWind() > 0 ? "head wind " : "tail wind ")
              + numbers.speed(Math.abs(ride.headWind())));
    }
    facts.add("front wing " + numbers.length(ride.immersion()) + " deep");
    return new SheetPage.Head(
        SheetFont.printable(caseFile.name()).text(),
        SheetFont.printable(choice.riderName()).text(),
        choice.date().format(DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH)),
        numbers.speed(speed),
        String.join(" · ", facts));
  }

  /** Why it rides so, cut where even the smallest letters leave no room for all of it. */
  private List<String> explanation(int cut) {
    List<String> all = cause.sentences();
    if (cut == 0) {
      return all;
    }
    List<String> some = new ArrayList<>(all.subList(0, Math.max(0, all.size() - cut)));
    some.add("There is more to it: the program has the rest.");
    return some;
  }

  /** Whether the right column of words is so much the longer that the cautions go to the left. */
  private boolean cautionsLeft(SheetPage.Cause why, List<String> feel, int parts) {
    int right = why.sentences().stream().mapToInt(String::length).sum() + why.headline().length();
    int left = feel.stream().mapToInt(String::length).sum() + parts * PART_LETTERS;
    int cautions = CautionWords.listFor(caseFile).stream().mapToInt(String::length).sum();
    return Math.max(left + cautions, right) < Math.max(left, right + cautions);
  }

  private String side(PictureStyle style) {
    return outcome
        .findPoint()
        .map(point -> SideView.svg(caseFile, point, choice.measures(), style))
        .orElseGet(() -> SideView.withoutTrim(caseFile, choice.measures(), style));
  }

  private List<Row> speeds() {
    List<Row> rows = new ArrayList<>();
    double wished = caseFile.rideCase().rider().wishedSpeed();
    rows.add(new Row("You wish for", numbers.speed(wished), true));
    if (Math.abs(speed - wished) > CaseStudy.SAME_SPEED) {
      rows.add(new Row("This sheet is for", numbers.speed(speed), true));
    }
    List<String> even =
        IntStream.range(0, curve.evenFeetSpeeds().size())
            .mapToObj(
                i ->
                    numbers.speed(
                        curve.evenFeetSpeeds().get(i).speed(), bands.evenFeetSpeeds().get(i)))
            .toList();
    rows.add(row("Even feet", even.isEmpty() ? "at no speed" : String.join(" and ", even)));
    rows.add(
        row(
            "Deck level",
            curve.levelSpeed().isPresent()
                ? numbers.speed(curve.levelSpeed().getAsDouble(), bands.levelSpeed())
                : "at no speed"));
    rows.add(
        row(
            "Slowest inside the limits",
            curve
                .rideableWindow()
                .map(w -> numbers.speed(w.from(), bands.rideableFrom()))
                .orElse("none")));
    rows.add(
        row(
            "Fastest inside the limits",
            curve
                .rideableWindow()
                .map(w -> numbers.speed(w.to(), bands.rideableTo()))
                .orElse("none")));
    outcome.findPoint().ifPresent(point -> rows.addAll(state(point)));
    rows.addAll(
        new SheetLimits(caseFile, envelope, numbers)
            .rows(outcome, band.flatMap(b -> b.find(Quantity.ELECTRIC_POWER))));
    return rows;
  }

  private List<Row> state(TrimPoint point) {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("At " + numbers.speed(point.speed()), "", true));
    rows.add(
        row(
            "Deck",
            Shown.nose(Shown.degrees(point.pitch()))
                + reach(Quantity.PITCH, Shown.degrees(1), 1).map(r -> " " + r + "°").orElse("")));
    rows.add(
        row(
            "Front foot",
            numbers.mass(point.frontLeg())
                + ", "
                + Shown.decimals(100 * point.footShare(), 0)
                + reach(Quantity.FOOT_SHARE, 100, 0).map(r -> " " + r).orElse("")
                + "\u00a0%"));
    rows.add(row("Back foot", numbers.mass(point.backLeg())));
    point
        .electricPower()
        .ifPresent(
            power ->
                rows.add(
                    row(
                        "Power",
                        numbers.watts(power, band.flatMap(b -> b.find(Quantity.ELECTRIC_POWER))))));
    rows.add(row("To the stall", Shown.decimals(Shown.degrees(point.stallMargin()), 1) + "°"));
    return rows;
  }

  /** How far off a number may be, rounded up, in units of so many per SI unit. */
  private Optional<String> reach(Quantity quantity, double unit, int decimals) {
    return band.flatMap(b -> b.find(quantity))
        .map(spread -> SheetNumbers.reach(unit * spread.reach(), decimals));
  }

  private static Row row(String name, String value) {
    return new Row(name, value, false);
  }

  private String foot() {
    boolean replaced =
        SheetFont.printable(caseFile.name()).replaced()
            || SheetFont.printable(choice.riderName()).replaced();
    return "Trimwright, model "
        + ModelVersion.TEXT
        + ", case "
        + caseFile.digest().substring(0, DIGEST_LETTERS)
        + ", wing sections "
        + (SectionCode.of(caseFile).equals(SectionCode.LAYERS) ? "computed" : "fitted")
        + ". Computed for a steady ride with the parts as listed; ± is what their tolerances leave open; no promise that the setup suits you."
        + (replaced
            ? " "
                + SheetFont.REPLACEMENT
                + " stands for a character that this print has no letter for."
            : "");
  }

  private static PrintedPicture picture(
      boolean drawn,
      Function<PictureStyle, String> draw,
      double width,
      double height,
      double letters) {
    if (!drawn) {
      return PrintedPicture.room(width, height);
    }
    PictureStyle style =
        new PictureStyle(Palette.LIGHT, width * PIXELS, height * PIXELS, "2", letters, "");
    return PrintedPicture.of(draw.apply(style), width);
  }
}
