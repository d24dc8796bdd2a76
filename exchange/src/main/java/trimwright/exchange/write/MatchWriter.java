package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.GroundWords;
import trimwright.exchange.words.MatchAnswer;
import trimwright.exchange.words.MatchWords;
import trimwright.exchange.words.SetupWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WishWords;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.match.Candidate;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.match.MatchRow;
import trimwright.fitting.match.Tally;
import trimwright.fitting.match.Varied;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;

/** Setups that suit a rider, as JSON and as text. */
public final class MatchWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-match/1";

  private MatchWriter() {}

  /**
   * The JSON document.
   *
   * @param answer what was found
   * @return text that satisfies {@code match.schema.json}
   */
  public static String json(MatchAnswer answer) {
    return json(answer, Measures.METRIC);
  }

  /**
   * The JSON document with its words in some measures; numbers stay metric.
   *
   * @param answer what was found
   * @param measures of the words
   * @return text that satisfies {@code match.schema.json}
   */
  public static String json(MatchAnswer answer, Measures measures) {
    MatchResult result = answer.result();
    RideAsked asked = result.asked();
    JsonDocument document = JsonDocument.start(FORMAT, answer.base().digest());
    JsonFields fields =
        document
            .fields()
            .text("name", answer.base().name())
            .text("stock_name", answer.stock().name())
            .text("stock_digest", answer.stock().digest());
    fields
        .object("asked")
        .text("riding", Codes.of(answer.kind()))
        .flag("first_flights", asked.isFirstFlights())
        .number("from_kmh", Shown.kmh(asked.span().from()))
        .number("to_kmh", Shown.kmh(asked.span().to()))
        .number("wished_speed_kmh", Shown.kmh(asked.base().rider().wishedSpeed()))
        .number("feet_reach_mm", Shown.mm(asked.feetReach()));
    fields.list("wishes", List.of(Wish.values()), (item, wish) -> wish(item, wish, asked));
    Tally.Counts all = result.tally().all();
    fields.whole("setups", all.setups()).whole("passed", all.passed());
    fell(fields, all);
    fields.list("parts", parts(answer), (item, part) -> part(item, part, result.tally()));
    fields.whole("looked", result.looked()).flag("sure", result.sure());
    fields.list(
        "rows",
        indices(result.rows().size()),
        (item, i) -> row(item, result, result.rows().get(i), answer.cases().get(i), measures));
    fields.list("fallen", result.fallen(), (item, f) -> fallen(item, result, f, measures));
    JsonFields front = fields.object("front");
    front.texts("of", result.frontWishes().stream().map(WishWords::code).toList());
    front.list("points", result.front(), (item, c) -> point(item, c, measures));
    fields.texts("words", MatchWords.of(answer, measures));
    fields.texts("cautions", CautionWords.listFor(answer.base()));
    return document.text();
  }

  private static List<Integer> indices(int count) {
    return Stream.iterate(0, i -> i + 1).limit(count).toList();
  }

  static void wish(JsonFields item, Wish wish, RideAsked asked) {
    Grade grade = asked.wishes().grade(wish);
    item.text("wish", WishWords.code(wish))
        .text("value", WishWords.key(wish))
        .text("title", WishWords.title(wish))
        .text("meaning", WishWords.meaning(wish))
        .text("unit", WishWords.symbol(wish))
        .number("good_from", WishWords.number(wish, grade.from()))
        .number("good_to", WishWords.number(wish, grade.to()))
        .number("poor_by", WishWords.number(wish, grade.poor()))
        .whole("weight", asked.wishes().weight(wish));
  }

  private static void fell(JsonFields fields, Tally.Counts counts) {
    fields.list(
        "fell",
        Stream.of(Ground.values()).filter(ground -> counts.fell(ground) > 0).toList(),
        (item, ground) ->
            item.text("ground", GroundWords.code(ground))
                .text("name", GroundWords.name(ground))
                .whole("setups", counts.fell(ground)));
  }

  private record NamedPart(PartKind kind, StockPart<?> part) {}

  private static List<NamedPart> parts(MatchAnswer answer) {
    List<NamedPart> parts = new ArrayList<>();
    for (PartKind kind : PartKind.values()) {
      for (StockPart<?> part : answer.stock().stock().list(kind)) {
        parts.add(new NamedPart(kind, part));
      }
    }
    return parts;
  }

  private static void part(JsonFields item, NamedPart named, Tally tally) {
    Tally.Counts counts = tally.of(named.part());
    item.text("id", named.part().id())
        .text("kind", Codes.of(named.kind()))
        .flag("there", named.part().holding().isThere())
        .whole("setups", counts.setups())
        .whole("passed", counts.passed());
    fell(item, counts);
  }

  private static void row(
      JsonFields item, MatchResult result, MatchRow row, CaseFile file, Measures measures) {
    item.whole("rank", row.rank());
    item.numbers("tied_with", row.ties().stream().mapToDouble(i -> i + 1).toArray());
    setup(item, row.candidate(), measures);
    item.number("shortfall", row.shortfall())
        .number("shortfall_reach", row.reach())
        .number("worst_shortfall", row.worst())
        .number("mean_shortfall", row.mean());
    values(item.object("values"), row.judged().values());
    JsonFields each = item.object("shortfalls");
    for (Wish wish : Wish.values()) {
      each.number(
          WishWords.code(wish),
          result.asked().wishes().shortfall(wish, row.judged().values().of(wish)));
    }
    difference(item.object("table_difference"), row);
    item.list("varied", row.varied(), MatchWriter::varied);
    item.text("case_digest", file.digest()).text("case", file.text());
  }

  private static void varied(JsonFields item, Varied varied) {
    item.text("name", varied.name())
        .number("shortfall", varied.shortfall())
        .texts("breaks", varied.grounds().stream().sorted().map(GroundWords::code).toList());
  }

  /** What the tables said less than the full solution. */
  private static void difference(JsonFields fields, MatchRow row) {
    for (Wish wish : Wish.values()) {
      double table = row.candidate().placement().values().of(wish);
      double full = row.judged().values().of(wish);
      fields.number(WishWords.key(wish), WishWords.number(wish, table - full));
    }
    fields.number("shortfall", row.candidate().placement().shortfall() - row.shortfall());
  }

  private static void setup(JsonFields item, Candidate candidate, Measures measures) {
    JsonFields parts = item.object("parts");
    parts.text("board", candidate.upper().board().id());
    parts.text("battery", candidate.upper().battery().map(StockPart::id).orElse(null));
    parts.text("mast", candidate.upper().mast().id());
    parts.text("drive", candidate.upper().drive().map(StockPart::id).orElse(null));
    parts.text("fuselage", candidate.foil().fuselage().id());
    parts.text("front_wing", candidate.foil().frontWing().id());
    parts.text("stabilizer", candidate.foil().stabilizer().id());
    parts.text("shim", candidate.foil().shim().map(StockPart::id).orElse(null));
    item.text("setup", SetupWords.parts(candidate.setup()))
        .number("shim_deg", Shown.degrees(candidate.foil().shimAngle()))
        .text("shim_words", SetupWords.shim(candidate.setup()))
        .number("track_mm", Shown.mm(candidate.placement().track()))
        .number("feet_forward_mm", Shown.mm(candidate.placement().feet()))
        .texts("places", SetupWords.places(candidate.placement(), measures));
  }

  private static void values(JsonFields fields, WishValues values) {
    for (Wish wish : Wish.values()) {
      fields.number(WishWords.key(wish), value(wish, values));
    }
  }

  private static OptionalDouble value(Wish wish, WishValues values) {
    return values.has(wish)
        ? OptionalDouble.of(WishWords.number(wish, values.of(wish)))
        : OptionalDouble.empty();
  }

  private static void fallen(
      JsonFields item, MatchResult result, MatchResult.Fallen fallen, Measures measures) {
    setup(item, fallen.candidate(), measures);
    item.number("shortfall", result.asked().wishes().shortfall(fallen.judged().values()));
    values(item.object("values"), fallen.judged().values());
    item.texts("breaks", fallen.judged().grounds().stream().map(GroundWords::code).toList());
    item.texts("why", fallen.judged().grounds().stream().map(GroundWords::sentence).toList());
  }

  private static void point(JsonFields item, Candidate candidate, Measures measures) {
    setup(item, candidate, measures);
    item.number("shortfall", candidate.placement().shortfall());
    values(item.object("values"), candidate.placement().values());
  }

  /**
   * The match as text for a terminal.
   *
   * @param answer what was found
   * @return the text
   */
  public static String table(MatchAnswer answer) {
    MatchResult result = answer.result();
    StringBuilder text =
        new StringBuilder(answer.base().name())
            .append(", ")
            .append(answer.stock().name())
            .append("\n\n");
    MatchWords.of(answer, Measures.METRIC).forEach(line -> text.append(line).append('\n'));
    if (!result.rows().isEmpty()) {
      text.append(
          "\nIn each wish's own unit; a star falls short of what is good, two of poor:\n\n");
      text.append(rows(result)).append('\n');
      setups(result, text);
    }
    return text.append('\n').append(CautionWords.lines(answer.base())).toString();
  }

  private static String rows(MatchResult result) {
    TextTable table = new TextTable().number("rank", "").number("short by", "").number("worst", "");
    for (Wish wish : Wish.values()) {
      table.number(head(wish), WishWords.symbol(wish));
    }
    for (MatchRow row : result.rows()) {
      List<String> cells = new ArrayList<>();
      cells.add((row.ties().isEmpty() ? "" : "=") + row.rank());
      cells.add(Shown.decimals(row.shortfall(), 2) + "\u00b1" + Shown.decimals(row.reach(), 2));
      cells.add(Double.isFinite(row.worst()) ? Shown.decimals(row.worst(), 2) : "lost");
      for (Wish wish : Wish.values()) {
        double value = row.judged().values().of(wish);
        double lacks = result.asked().wishes().shortfall(wish, value);
        String stars = lacks >= 1 ? "**" : lacks > 0 ? "*" : "";
        cells.add(stars + WishWords.cell(wish, value));
      }
      table.row(cells);
    }
    return table.text();
  }

  static String head(Wish wish) {
    return switch (wish) {
      case LEVEL -> "level";
      case FEET -> "feet";
      case GROWTH -> "growth";
      case TAKE_OFF -> "flies";
      case STALL -> "stall";
      case MANNERS -> "pitchy";
      case TURN -> "lean";
      case RANGE -> "range";
      case GEAR_MASS -> "gear";
      case FEET_MOVED -> "moved";
    };
  }

  private static void setups(MatchResult result, StringBuilder text) {
    for (MatchRow row : result.rows()) {
      text.append(
          String.join(
              ", ",
              Arrays.asList(
                  (row.ties().isEmpty() ? "" : "=")
                      + row.rank()
                      + ": "
                      + SetupWords.parts(row.candidate().setup()),
                  SetupWords.shim(row.candidate().setup()),
                  String.join(
                      ", ", SetupWords.places(row.candidate().placement(), Measures.METRIC)))));
      text.append('\n');
    }
  }
}
