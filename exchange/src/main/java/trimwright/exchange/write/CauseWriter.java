package trimwright.exchange.write;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.stream.Stream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.SureWords;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.SplitBands;
import trimwright.kernel.band.Spread;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;
import trimwright.kernel.trim.TrimOutcome;

/** The cause split as JSON and as text. */
public final class CauseWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-cause/1";

  /**
   * Decimals of split values. Wholes are rounded to these, and parts are subtracted afterwards as
   * decimal numbers, so that the parts in a document add up in every printed digit.
   */
  private static final int DECIMALS = 9;

  private CauseWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param riddenSpeed the speed asked about [m/s]
   * @param outcome the split, or why there is none
   * @param bands of a split, where they were asked for
   * @return text that satisfies {@code cause.schema.json}
   */
  public static String json(
      CaseFile caseFile, double riddenSpeed, CauseOutcome outcome, Optional<SplitBands> bands) {
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    JsonFields fields =
        document
            .fields()
            .text("name", caseFile.name())
            .text("sections", SectionCode.of(caseFile))
            .number("ridden_speed_kmh", Shown.kmh(riddenSpeed))
            .number("wished_speed_kmh", Shown.kmh(caseFile.rideCase().rider().wishedSpeed()));
    if (outcome instanceof CauseOutcome.Split split) {
      JsonFields pitch = fields.object("pitch_deg");
      parts(pitch, split.pitch(), Shown::degrees);
      bands(pitch, bands, Quantity.PITCH, split.pitch(), Shown::degrees);
      JsonFields footShare = fields.object("foot_share");
      parts(footShare, split.footShare(), DoubleUnaryOperator.identity());
      bands(
          footShare, bands, Quantity.FOOT_SHARE, split.footShare(), DoubleUnaryOperator.identity());
      JsonFields footPressure = fields.object("foot_pressure_mm");
      parts(footPressure, split.footPressure(), Shown::mm);
      bands(footPressure, bands, Quantity.FOOT_PRESSURE, split.footPressure(), Shown::mm);
      JsonFields terms = fields.object("moment_terms_nm");
      PointColumn.writeTerms(terms.object("ridden"), split.ridden().momentTerms());
      PointColumn.writeTerms(terms.object("at_wished_speed"), split.wished().momentTerms());
      fields.none("no_split");
    } else if (outcome instanceof CauseOutcome.NoSplit none) {
      for (String name :
          List.of("pitch_deg", "foot_share", "foot_pressure_mm", "moment_terms_nm")) {
        fields.none(name);
      }
      JsonFields first = fields.object("no_split");
      noTrim(first, none.first(), none.wishedSpeed());
      first.list(
          "every",
          Stream.concat(none.wished().stream(), none.ridden().stream()).toList(),
          (item, n) -> noTrim(item, n, none.wished().filter(w -> w == n).isPresent()));
      OptionalDouble from = none.fliesFrom();
      first.number(
          "flies_from_kmh",
          from.isPresent()
              ? OptionalDouble.of(Shown.kmh(from.getAsDouble()))
              : OptionalDouble.empty());
    }
    CauseWords words = CauseWords.of(caseFile, outcome, Measures.METRIC);
    fields.list(
        "rule_out_first",
        words.ruleOutFirst(),
        (item, r) -> item.text("what", r.what()).text("how", r.how()));
    fields.object("words").text("headline", words.headline()).texts("sentences", words.sentences());
    fields.texts("how_sure", sure(caseFile, outcome, bands));
    return document.text();
  }

  private static List<String> sure(
      CaseFile caseFile, CauseOutcome outcome, Optional<SplitBands> bands) {
    return outcome instanceof CauseOutcome.Split split && bands.isPresent()
        ? SureWords.of(caseFile, split, bands.get(), Measures.METRIC)
        : List.of();
  }

  private static void bands(
      JsonFields fields,
      Optional<SplitBands> bands,
      Quantity quantity,
      CauseParts parts,
      DoubleUnaryOperator unit) {
    BandColumn.write(fields, "ridden_band", bands.flatMap(b -> b.ridden().find(quantity)), unit);
    BandColumn.write(
        fields, "at_wished_speed_band", bands.flatMap(b -> b.wished().find(quantity)), unit);
    band(fields, "speed_part_band", bands.flatMap(b -> b.speedPart(quantity)), unit);
    band(fields, "set_part_band", bands.flatMap(b -> b.setPart(quantity, parts.wanted())), unit);
  }

  private static void band(
      JsonFields fields, String name, Optional<Spread.Difference> part, DoubleUnaryOperator unit) {
    part.ifPresentOrElse(
        d ->
            fields.numbers(
                name,
                unit.applyAsDouble(d.value() - d.reach()),
                unit.applyAsDouble(d.value() + d.reach())),
        () -> fields.none(name));
  }

  private static void noTrim(JsonFields fields, TrimOutcome.NoTrim none, boolean wishedSpeed) {
    fields
        .number("speed_kmh", Shown.kmh(none.speed()))
        .text("which", wishedSpeed ? "wished_speed" : "ridden_speed")
        .text("reason", Codes.of(none.reason()))
        .text("words", ReasonWords.of(none, Measures.METRIC));
  }

  private static void parts(JsonFields fields, CauseParts parts, DoubleUnaryOperator unit) {
    BigDecimal ridden = decimal(unit.applyAsDouble(parts.ridden()));
    BigDecimal wished = decimal(unit.applyAsDouble(parts.atWishedSpeed()));
    BigDecimal wanted = decimal(unit.applyAsDouble(parts.wanted()));
    fields
        .exact("ridden", ridden.doubleValue())
        .exact("at_wished_speed", wished.doubleValue())
        .exact("wanted", wanted.doubleValue())
        .exact("speed_part", ridden.subtract(wished).doubleValue())
        .exact("set_part", wished.subtract(wanted).doubleValue());
    Optional<BigDecimal> measured =
        parts.measured().isPresent()
            ? Optional.of(decimal(unit.applyAsDouble(parts.measured().getAsDouble())))
            : Optional.empty();
    optional(fields, "measured", measured);
    optional(fields, "unexplained_part", measured.map(m -> m.subtract(ridden)));
  }

  private static void optional(JsonFields fields, String name, Optional<BigDecimal> value) {
    value.ifPresentOrElse(v -> fields.exact(name, v.doubleValue()), () -> fields.none(name));
  }

  private static BigDecimal decimal(double value) {
    return Shown.rounded(value, DECIMALS);
  }

  /**
   * The cause as text for a terminal.
   *
   * @param caseFile the case
   * @param outcome the split, or why there is none
   * @param bands of a split, where they were asked for
   * @return the text
   */
  public static String table(CaseFile caseFile, CauseOutcome outcome, Optional<SplitBands> bands) {
    CauseWords words = CauseWords.of(caseFile, outcome, Measures.METRIC);
    StringBuilder out = new StringBuilder(caseFile.name()).append("\n\n");
    out.append(words.headline()).append("\n\n");
    words.sentences().forEach(sentence -> out.append(sentence).append('\n'));
    if (outcome instanceof CauseOutcome.Split split) {
      out.append('\n').append(splitTable(split)).append('\n').append(termsTable(split));
    }
    List<String> sure = sure(caseFile, outcome, bands);
    if (!sure.isEmpty()) {
      out.append("\nHow sure (95 of 100 such setups, as their parts are known):\n");
      sure.forEach(sentence -> out.append(sentence).append('\n'));
    }
    out.append("\nRule out first:\n");
    int number = 0;
    for (RuleOut item : words.ruleOutFirst()) {
      number++;
      out.append(number).append(". ").append(item.what()).append(". ").append(item.how());
      out.append('\n');
    }
    return out.toString();
  }

  private static String splitTable(CauseOutcome.Split split) {
    TextTable table =
        new TextTable()
            .words("")
            .number("pitch", "deg")
            .number("front foot", "%")
            .number("pressure centre", "mm");
    List<ShownParts> columns =
        List.of(
            ShownParts.of(split.pitch(), Shown::degrees, 1),
            ShownParts.of(split.footShare(), share -> share * 100, 0),
            ShownParts.of(split.footPressure(), Shown::mm, 0));
    row(table, "ridden", columns, ShownParts::ridden);
    row(table, "at wished speed", columns, ShownParts::wished);
    row(table, "wanted", columns, ShownParts::wanted);
    row(table, "speed part", columns, p -> p.ridden().subtract(p.wished()));
    row(table, "set part", columns, p -> p.wished().subtract(p.wanted()));
    if (split.pitch().measured().isPresent()) {
      BigDecimal measured = Shown.rounded(Shown.degrees(split.pitch().measured().getAsDouble()), 1);
      BigDecimal unexplained = measured.subtract(columns.get(0).ridden());
      table.row(List.of("measured", measured.toPlainString(), "", ""));
      table.row(List.of("unexplained part", unexplained.toPlainString(), "", ""));
    }
    return table.text();
  }

  /** Wholes as shown; parts are differences of these, so that a reader's sum comes out. */
  private record ShownParts(BigDecimal ridden, BigDecimal wished, BigDecimal wanted) {
    static ShownParts of(CauseParts parts, DoubleUnaryOperator unit, int decimals) {
      return new ShownParts(
          Shown.rounded(unit.applyAsDouble(parts.ridden()), decimals),
          Shown.rounded(unit.applyAsDouble(parts.atWishedSpeed()), decimals),
          Shown.rounded(unit.applyAsDouble(parts.wanted()), decimals));
    }
  }

  private static void row(
      TextTable table,
      String name,
      List<ShownParts> columns,
      Function<ShownParts, BigDecimal> part) {
    List<String> cells = new ArrayList<>(List.of(name));
    columns.forEach(column -> cells.add(part.apply(column).toPlainString()));
    table.row(cells);
  }

  private static String termsTable(CauseOutcome.Split split) {
    TextTable table =
        new TextTable()
            .words("moment about the mast's foot, nose-up positive")
            .number("ridden", "Nm")
            .number("wished", "Nm");
    for (PointColumn.Term term : PointColumn.Term.ALL) {
      table.row(
          List.of(
              term.name().replace('_', ' '),
              Shown.decimals(term.value().applyAsDouble(split.ridden().momentTerms()), 1),
              Shown.decimals(term.value().applyAsDouble(split.wished().momentTerms()), 1)));
    }
    return table.text();
  }
}
