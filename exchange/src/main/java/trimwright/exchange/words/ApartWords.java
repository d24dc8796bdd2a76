package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Reference;
import trimwright.kernel.band.Spread;

/** Whether a case can be told from the reference that was pinned. */
public final class ApartWords {
  private static final String PINNED = " than in the pinned reference";

  private ApartWords() {}

  private record Line(String less, String more, String reach, boolean distinct) {}

  /**
   * The words at one speed.
   *
   * @param bands the curve with its bands
   * @param index of the speed
   * @param reference what it is held against
   * @return sentences; none where one of both has no trim
   */
  public static List<String> of(Bands bands, int index, Reference reference) {
    List<Line> lines = new ArrayList<>();
    find(bands, index, reference, Quantity.PITCH).map(ApartWords::pitch).ifPresent(lines::add);
    find(bands, index, reference, Quantity.FOOT_SHARE).map(ApartWords::feet).ifPresent(lines::add);
    find(bands, index, reference, Quantity.ELECTRIC_POWER)
        .map(ApartWords::power)
        .ifPresent(lines::add);
    if (lines.isEmpty()) {
      return List.of();
    }
    if (lines.stream().noneMatch(Line::distinct)) {
      return List.of(
          "At this speed it cannot be told apart from the pinned reference: "
              + String.join(", ", lines.stream().map(Line::less).toList())
              + ".");
    }
    return lines.stream()
        .map(
            line ->
                line.distinct()
                    ? line.more() + PINNED + ", sure to " + line.reach() + "."
                    : Sentence.upperFirst(line.less()) + " cannot be told apart.")
        .toList();
  }

  /**
   * Whether a number cannot be told from the reference's at one speed.
   *
   * @param bands the curve with its bands
   * @param index of the speed
   * @param reference what it is held against
   * @param quantity the number
   * @return whether both have one and their difference lies inside its band
   */
  public static boolean isAlike(Bands bands, int index, Reference reference, Quantity quantity) {
    return find(bands, index, reference, quantity).filter(d -> !d.distinct()).isPresent();
  }

  private static Optional<Spread.Difference> find(
      Bands bands, int index, Reference reference, Quantity quantity) {
    return bands.find(index, quantity).flatMap(s -> reference.from(s, index, quantity));
  }

  private static Line pitch(Spread.Difference d) {
    double degrees = Shown.degrees(d.value());
    String reach = "±" + SureWords.degrees(d.reach());
    String size = Shown.decimals(Math.abs(degrees), 1) + "°";
    return new Line(
        "pitch (" + signed(degrees, 1) + "° " + reach + ")",
        "The deck rides " + size + " more " + Shown.noseWord(degrees),
        reach,
        d.distinct());
  }

  private static Line feet(Spread.Difference d) {
    double percent = 100 * d.value();
    String reach = "±" + SureWords.percentUp(d.reach());
    String size = Shown.decimals(Math.abs(percent), 0) + " %";
    return new Line(
        "front foot (" + signed(percent, 0) + " " + reach + ")",
        "The front foot carries " + size + " of the load " + moreOrLess(percent),
        reach,
        d.distinct());
  }

  private static Line power(Spread.Difference d) {
    String reach = "±" + Shown.decimals(Math.ceil(d.reach()), 0) + " W";
    String size = Shown.decimals(Math.abs(d.value()), 0) + " W";
    return new Line(
        "power (" + signed(d.value(), 0) + " " + reach + ")",
        "The drive takes " + size + " " + moreOrLess(d.value()),
        reach,
        d.distinct());
  }

  private static String moreOrLess(double value) {
    return value < 0 ? "less" : "more";
  }

  private static String signed(double value, int decimals) {
    BigDecimal shown = Shown.rounded(value, decimals);
    String size = shown.abs().toPlainString();
    return shown.signum() == 0 ? size : (shown.signum() < 0 ? "\u2212" : "+") + size;
  }
}
