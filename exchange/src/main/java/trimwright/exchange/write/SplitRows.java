package trimwright.exchange.write;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
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

  static List<Row> of(CauseOutcome.Split split) {
    Rounded pitch = new Rounded(split.pitch(), Shown::degrees, 1);
    Rounded share = new Rounded(split.footShare(), value -> value, 2);
    Rounded place = new Rounded(split.footPressure(), Shown::mm, 0);
    List<Rounded> all = List.of(pitch, share, place);
    List<Row> rows = new ArrayList<>();
    rows.add(row("You want", all.stream().map(Rounded::wanted).toList(), false));
    rows.add(
        row("Set part", all.stream().map(q -> q.wished().subtract(q.wanted())).toList(), false));
    rows.add(row(at(split.wished().speed()), all.stream().map(Rounded::wished).toList(), true));
    rows.add(
        row("Speed part", all.stream().map(q -> q.ridden().subtract(q.wished())).toList(), false));
    rows.add(row(at(split.ridden().speed()), all.stream().map(Rounded::ridden).toList(), true));
    pitch
        .findMeasured()
        .ifPresent(
            measured -> {
              rows.add(
                  new Row(
                      "Unexplained",
                      some(measured.subtract(pitch.ridden())),
                      none(),
                      none(),
                      false));
              rows.add(new Row("Measured", some(measured), none(), none(), true));
            });
    return rows;
  }

  private static Row row(String name, List<BigDecimal> values, boolean sum) {
    return new Row(name, some(values.get(0)), some(values.get(1)), some(values.get(2)), sum);
  }

  private static String at(double speed) {
    return "At "
        + Shown.rounded(Shown.kmh(speed), 1).stripTrailingZeros().toPlainString()
        + " km/h";
  }

  private static OptionalDouble some(BigDecimal value) {
    return OptionalDouble.of(value.doubleValue());
  }

  private static OptionalDouble none() {
    return OptionalDouble.empty();
  }

  private record Rounded(CauseParts parts, DoubleUnaryOperator unit, int decimals) {
    BigDecimal wanted() {
      return of(parts.wanted());
    }

    BigDecimal wished() {
      return of(parts.atWishedSpeed());
    }

    BigDecimal ridden() {
      return of(parts.ridden());
    }

    Optional<BigDecimal> findMeasured() {
      return parts.measured().isPresent()
          ? Optional.of(of(parts.measured().getAsDouble()))
          : Optional.empty();
    }

    private BigDecimal of(double value) {
      return Shown.rounded(unit.applyAsDouble(value), decimals);
    }
  }
}
