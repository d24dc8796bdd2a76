package trimwright.exchange.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.band.Spread;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * How sure the numbers are: what a band leaves open, where a number cannot be told from the one
 * wanted, and what to measure next.
 */
public final class SureWords {
  /** A measurement that takes less than this of the variance is not worth the trouble. Chosen. */
  private static final double WORTH_IT = 0.05;

  private final CaseFile caseFile;
  private final CauseOutcome.Split split;
  private final SplitBands bands;
  private final Amounts amounts;

  private SureWords(
      CaseFile caseFile, CauseOutcome.Split split, SplitBands bands, Measures measures) {
    this.caseFile = caseFile;
    this.split = split;
    this.bands = bands;
    amounts = Amounts.of(measures);
  }

  /**
   * How sure a split is.
   *
   * @param caseFile the case
   * @param split its split at one speed
   * @param bands the bands at the speed ridden and at the wished speed
   * @param measures that the reader reads
   * @return sentences; none where there are no bands
   */
  public static List<String> of(
      CaseFile caseFile, CauseOutcome.Split split, SplitBands bands, Measures measures) {
    return new SureWords(caseFile, split, bands, measures).sentences();
  }

  private List<String> sentences() {
    List<String> all = new ArrayList<>();
    bands.ridden().find(Quantity.PITCH).map(this::pitch).ifPresent(all::add);
    bands.ridden().find(Quantity.FOOT_SHARE).map(this::feet).ifPresent(all::add);
    bands
        .setPart(Quantity.PITCH, split.pitch().wanted())
        .flatMap(this::setPart)
        .ifPresent(all::add);
    bands.speedPart(Quantity.PITCH).flatMap(this::speedPart).ifPresent(all::add);
    bands.ridden().find(Quantity.PITCH).flatMap(this::measured).ifPresent(all::add);
    bands
        .ridden()
        .find(Quantity.FOOT_SHARE)
        .flatMap(s -> next(caseFile, s, "foot load", amounts.speed(split.ridden().speed())))
        .ifPresent(all::add);
    return all;
  }

  private String pitch(Spread spread) {
    BigDecimal shown = tenth(spread.value());
    BigDecimal wanted = tenth(split.pitch().wanted());
    boolean same = shown.compareTo(wanted) == 0;
    return "The pitch is sure to ±"
        + degrees(spread.reach())
        + (same || !spread.holds(split.pitch().wanted())
            ? "."
            : ": "
                + Shown.nose(shown.doubleValue())
                + " cannot be told from "
                + (wanted.signum() == 0 ? "the level" : "the " + Shown.nose(wanted.doubleValue()))
                + " that you want.");
  }

  private String feet(Spread spread) {
    double wish = split.footShare().wanted();
    String shown = percent(spread.value());
    String wanted = percent(wish);
    return "The front foot's load is sure to ±"
        + percentUp(spread.reach())
        + (shown.equals(wanted) || !spread.holds(wish)
            ? "."
            : ": " + shown + " cannot be told from the " + wanted + " that you want.");
  }

  private Optional<String> setPart(Spread.Difference part) {
    BigDecimal shown = tenth(part.value());
    if (part.distinct() || !SplitFigures.matters(shown)) {
      return Optional.empty();
    }
    return Optional.of(
        "The set's part of "
            + SplitOrders.turn(shown)
            + " lies inside its band of ±"
            + degrees(part.reach())
            + ": measure the parts before you change any.");
  }

  private Optional<String> speedPart(Spread.Difference part) {
    BigDecimal shown = tenth(part.value());
    if (shown.signum() == 0) {
      return Optional.empty();
    }
    return Optional.of(
        part.distinct()
            ? "What the speed makes of it is sure to ±" + degrees(part.reach()) + "."
            : "What the speed makes of it cannot be told from nothing.");
  }

  private Optional<String> measured(Spread spread) {
    if (split.pitch().measured().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        spread.holds(split.pitch().measured().getAsDouble())
            ? "Your measured pitch lies inside the band: the computation allows it."
            : "Your measured pitch lies outside the band: tolerances alone do not explain it.");
  }

  /**
   * What to measure next for the foot load at the speed nearest to the wished one.
   *
   * @param caseFile the case
   * @param bands its curve with the bands
   * @return a sentence; empty where nothing that a calliper tells would narrow the band much
   */
  public static Optional<String> next(CaseFile caseFile, Bands bands) {
    double wished = caseFile.rideCase().rider().wishedSpeed();
    return IntStream.range(0, bands.points().size())
        .boxed()
        .filter(i -> bands.find(i, Quantity.FOOT_SHARE).isPresent())
        .min(
            Comparator.comparingDouble(
                i -> Math.abs(bands.curve().outcomes().get(i).speed() - wished)))
        .flatMap(
            i -> {
              TrimPoint point = bands.curve().outcomes().get(i).findPoint().orElseThrow();
              String speed = Amounts.of(Measures.METRIC).speed(point.speed());
              return next(
                  caseFile, bands.find(i, Quantity.FOOT_SHARE).orElseThrow(), "foot load", speed);
            });
  }

  private static Optional<String> next(
      CaseFile caseFile, Spread spread, String what, String speed) {
    return spread.parts().stream()
        .filter(part -> gain(caseFile, part) >= WORTH_IT)
        .max(Comparator.comparingDouble(part -> gain(caseFile, part)))
        .map(
            part ->
                "To know the "
                    + what
                    + " better, measure "
                    + InputWords.of(part.input())
                    + " "
                    + InputWords.how(part.input())
                    + ": it makes "
                    + percent(part.share())
                    + " of the doubt at "
                    + speed
                    + ".");
  }

  private static double gain(CaseFile caseFile, Spread.Part part) {
    return part.share()
        * (1 - part.input().left(caseFile.rideCase(), caseFile.notes().knowledge()));
  }

  private static String percent(double share) {
    return Shown.decimals(share * 100, 0) + " %";
  }

  static String percentUp(double share) {
    return BigDecimal.valueOf(share * 100).setScale(0, RoundingMode.UP).toPlainString() + " %";
  }

  /** Rounded up: a band is never shown narrower than it is. */
  static String degrees(double angle) {
    return BigDecimal.valueOf(Shown.degrees(angle)).setScale(1, RoundingMode.UP).toPlainString()
        + "°";
  }

  private static BigDecimal tenth(double angle) {
    return Shown.rounded(Shown.degrees(angle), 1);
  }
}
