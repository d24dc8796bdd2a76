package trimwright.web.trim;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.MomentTerms;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.web.trim.Table.Column;
import trimwright.web.trim.Table.Emphasis;
import trimwright.web.trim.Table.Row;

/** The numbers of an answer as tables. */
final class AnswerTables {
  private static final int PERCENT = 100;

  /** Two speeds nearer than this are the same one on the page [m/s]: a hundredth of a km/h. */
  private static final double SAME_SPEED = 0.01 / 3.6;

  private AnswerTables() {}

  /**
   * How the parts add up. Wholes are rounded first and parts are their differences, so that what a
   * person adds up on paper comes out.
   */
  static Table split(CauseOutcome.Split split) {
    Quantity pitch = new Quantity(split.pitch(), Shown::degrees, 1);
    Quantity share = new Quantity(split.footShare(), value -> PERCENT * value, 0);
    Quantity place = new Quantity(split.footPressure(), Shown::mm, 0);
    List<Quantity> all = List.of(pitch, share, place);
    String ridden = speed(split.ridden());
    String wished = speed(split.wished());
    List<Row> rows = new ArrayList<>();
    rows.add(row("You want", all, Quantity::wanted, Emphasis.NONE));
    rows.add(row("Set part", all, Quantity::setPart, Emphasis.NONE));
    rows.add(row("At " + wished, all, Quantity::atWishedSpeed, Emphasis.SUM));
    rows.add(row("Speed part", all, Quantity::speedPart, Emphasis.NONE));
    rows.add(row("At " + ridden, all, Quantity::ridden, Emphasis.SUM));
    if (split.pitch().measured().isPresent()) {
      rows.add(row("Unexplained", all, Quantity::unexplainedPart, Emphasis.NONE));
      rows.add(row("Measured", all, Quantity::measured, Emphasis.SUM));
    }
    return new Table(
        "Deck's angle, foot share and foot-pressure centre ahead of the mast",
        List.of(
            new Column("Part", ""),
            new Column("Deck", "°"),
            new Column("Foot share", "%"),
            new Column("Centre", "mm")),
        rows);
  }

  private static Row row(
      String name, List<Quantity> all, Function<Quantity, String> cell, Emphasis emphasis) {
    return new Row(name, all.stream().map(cell).toList(), emphasis);
  }

  /** The moment terms at the speed ridden and at the wished one. */
  static Table moments(CauseOutcome.Split split) {
    MomentTerms ridden = split.ridden().momentTerms();
    MomentTerms wished = split.wished().momentTerms();
    List<Row> rows = new ArrayList<>();
    for (Term term : Term.LIST) {
      rows.add(momentRow(term.name(), term.value(), ridden, wished, Emphasis.NONE));
    }
    rows.add(momentRow("Sum", MomentTerms::sum, ridden, wished, Emphasis.SUM));
    return new Table(
        "Moment terms at both speeds",
        List.of(
            new Column("Part", ""),
            new Column(speed(split.ridden()), "N·m"),
            new Column(speed(split.wished()), "N·m"),
            new Column("Change", "N·m")),
        rows);
  }

  private static Row momentRow(
      String name,
      ToDoubleFunction<MomentTerms> value,
      MomentTerms ridden,
      MomentTerms wished,
      Emphasis emphasis) {
    BigDecimal atRidden = Shown.rounded(value.applyAsDouble(ridden), 1);
    BigDecimal atWished = Shown.rounded(value.applyAsDouble(wished), 1);
    return new Row(
        name,
        List.of(
            Figures.signed(atRidden.doubleValue(), 1),
            Figures.signed(atWished.doubleValue(), 1),
            Figures.signed(atRidden.subtract(atWished).doubleValue(), 1)),
        emphasis);
  }

  /** The numbers behind the curves; the row nearest to the chosen speed is marked. */
  static Table points(Curve curve, double chosen) {
    List<Column> head = new ArrayList<>();
    head.add(new Column("Speed", "km/h"));
    head.add(new Column("Outcome", ""));
    PointColumn.LIST.forEach(column -> head.add(new Column(column.name(), column.unit())));
    double step = nearest(curve, chosen);
    List<Row> rows =
        curve.outcomes().stream()
            .map(outcome -> pointRow(outcome, Math.abs(outcome.speed() - step) < SAME_SPEED))
            .toList();
    return new Table("Trim points over speed", head, rows);
  }

  private static double nearest(Curve curve, double chosen) {
    return curve.outcomes().stream()
        .map(TrimOutcome::speed)
        .min((a, b) -> Double.compare(Math.abs(a - chosen), Math.abs(b - chosen)))
        .orElse(chosen);
  }

  private static Row pointRow(TrimOutcome outcome, boolean marked) {
    Optional<TrimPoint> point = outcome.findPoint();
    List<String> cells = new ArrayList<>();
    cells.add(outcomeWords(outcome));
    for (PointColumn column : PointColumn.LIST) {
      cells.add(point.map(column.cell()).orElse("–"));
    }
    return new Row(
        Figures.fixed(Shown.kmh(outcome.speed()), 0),
        cells,
        marked ? Emphasis.MARKED : Emphasis.NONE);
  }

  private static String outcomeWords(TrimOutcome outcome) {
    if (outcome instanceof TrimOutcome.NoTrim none) {
      return ReasonWords.brief(none);
    }
    List<String> limits =
        outcome.findPoint().orElseThrow().brokenLimits().stream()
            .sorted()
            .map(ReasonWords::brief)
            .toList();
    return limits.isEmpty() ? "inside every limit" : String.join(", ", limits);
  }

  private static String speed(TrimPoint point) {
    return Figures.shortest(Shown.rounded(Shown.kmh(point.speed()), 1).doubleValue())
        + "\u00a0km/h";
  }

  /** One column of the split: wholes rounded, parts taken between them. */
  private record Quantity(CauseParts parts, Function<Double, Double> shown, int decimals) {
    String wanted() {
      return whole(parts.wanted());
    }

    String atWishedSpeed() {
      return whole(parts.atWishedSpeed());
    }

    String ridden() {
      return whole(parts.ridden());
    }

    String measured() {
      return parts.measured().isPresent() ? whole(parts.measured().getAsDouble()) : "–";
    }

    String setPart() {
      return part(parts.atWishedSpeed(), parts.wanted());
    }

    String speedPart() {
      return part(parts.ridden(), parts.atWishedSpeed());
    }

    String unexplainedPart() {
      return parts.measured().isPresent()
          ? part(parts.measured().getAsDouble(), parts.ridden())
          : "–";
    }

    private BigDecimal rounded(double value) {
      return Shown.rounded(shown.apply(value), decimals);
    }

    private String whole(double value) {
      return Figures.fixed(rounded(value).doubleValue(), decimals);
    }

    private String part(double whole, double without) {
      return Figures.signed(rounded(whole).subtract(rounded(without)).doubleValue(), decimals);
    }
  }

  private record Term(String name, ToDoubleFunction<MomentTerms> value) {
    static final List<Term> LIST =
        List.of(
            new Term("Front wing", MomentTerms::frontWing),
            new Term("Stabilizer", MomentTerms::stabilizer),
            new Term("Thrust line", MomentTerms::thrustLine),
            new Term("Drags in the water", MomentTerms::drags),
            new Term("Masses of the gear", MomentTerms::masses),
            new Term("Your feet", MomentTerms::feet),
            new Term("Deck's height (lever)", MomentTerms::deckLever),
            new Term("Air on you", MomentTerms::air),
            new Term("Buoyancy", MomentTerms::buoyancy));
  }

  private record PointColumn(String name, String unit, Function<TrimPoint, String> cell) {
    static final List<PointColumn> LIST =
        List.of(
            of("Deck", "°", point -> Shown.degrees(point.pitch()), 1),
            of("Front wing's angle", "°", p -> Shown.degrees(p.frontWingAngleOfAttack()), 1),
            of("Foot share", "%", point -> PERCENT * point.footShare(), 0),
            of("Front leg", "kg", TrimPoint::frontLeg, 0),
            of("Back leg", "kg", TrimPoint::backLeg, 0),
            of("Forward reserve", "mm", point -> Shown.mm(point.forwardReserve()), 0),
            of("Thrust", "N", TrimPoint::thrust, 0),
            new PointColumn("Power", "W", AnswerTables::power),
            of("To the stall", "°", point -> Shown.degrees(point.stallMargin()), 1));

    private static PointColumn of(
        String name, String unit, ToDoubleFunction<TrimPoint> value, int decimals) {
      return new PointColumn(
          name, unit, point -> Figures.fixed(value.applyAsDouble(point), decimals));
    }
  }

  private static String power(TrimPoint point) {
    return point.electricPower().isPresent()
        ? Figures.grouped(point.electricPower().getAsDouble())
        : "–";
  }
}
