package trimwright.exchange.write;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.Amounts;
import trimwright.exchange.words.Shown;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;

/**
 * How the parts of a cause split add up, row by row. Wholes are rounded first and parts are their
 * differences, so that what a person adds up on paper comes out.
 */
final class SplitRows {
  private SplitRows() {}

  /**
   * One row; a quantity without a value in it is empty.
   *
   * @param name what the row is
   * @param pitch [degrees]
   * @param footShare [1]
   * @param footPressure ahead of the mast [mm]
   * @param sum whether it is a sum of the rows above it
   */
  record Row(
      String name,
      OptionalDouble pitch,
      OptionalDouble footShare,
      OptionalDouble footPressure,
      boolean sum) {}

  /**
   * The rows in reading order.
   *
   * @param split the split
   * @param measures in which they are read: a length is rounded there and handed on in millimetres
   */
  static List<Row> of(CauseOutcome.Split split, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    String ridden = "At " + amounts.speed(split.ridden().speed());
    String wished = "At " + amounts.speed(split.wished().speed());
    // Speeds that read the same are one speed to the reader: the ridden one's values stand for it.
    boolean same = ridden.equals(wished);
    Rounded pitch = Rounded.of(split.pitch(), same, value -> tenth(Shown.degrees(value)));
    Rounded share = Rounded.of(split.footShare(), same, value -> Shown.rounded(value, 2));
    Rounded place = Rounded.of(split.footPressure(), same, amounts::roundedMillimetres);
    List<Rounded> all = List.of(pitch, share, place);
    List<Row> rows = new ArrayList<>();
    rows.add(row("You want", all.stream().map(Rounded::wanted).toList(), false));
    rows.add(
        row("Set part", all.stream().map(q -> q.wished().subtract(q.wanted())).toList(), false));
    rows.add(row(wished, all.stream().map(Rounded::wished).toList(), true));
    if (!same) {
      rows.add(
          row(
              "Speed part",
              all.stream().map(q -> q.ridden().subtract(q.wished())).toList(),
              false));
      rows.add(row(ridden, all.stream().map(Rounded::ridden).toList(), true));
    }
    if (split.pitch().measured().isPresent()) {
      BigDecimal measured = tenth(Shown.degrees(split.pitch().measured().getAsDouble()));
      BigDecimal unexplained = measured.subtract(pitch.ridden());
      rows.add(new Row("Unexplained", some(unexplained), none(), none(), false));
      rows.add(new Row("Measured", some(measured), none(), none(), true));
    }
    return rows;
  }

  private static BigDecimal tenth(double value) {
    return Shown.rounded(value, 1);
  }

  private static Row row(String name, List<BigDecimal> values, boolean sum) {
    return new Row(name, some(values.get(0)), some(values.get(1)), some(values.get(2)), sum);
  }

  private static OptionalDouble some(BigDecimal value) {
    return OptionalDouble.of(value.doubleValue());
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  private record Rounded(BigDecimal wanted, BigDecimal wished, BigDecimal ridden) {
    static Rounded of(CauseParts parts, boolean same, DoubleFunction<BigDecimal> shown) {
      return new Rounded(
          shown.apply(parts.wanted()),
          shown.apply(same ? parts.ridden() : parts.atWishedSpeed()),
          shown.apply(parts.ridden()));
    }
  }
}
