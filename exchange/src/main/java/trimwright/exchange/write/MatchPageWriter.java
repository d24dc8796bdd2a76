package trimwright.exchange.write;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.databind.util.RawValue;
import trimwright.exchange.picture.SideScene;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.MatchAnswer;
import trimwright.exchange.words.RiderWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WishReasons;
import trimwright.exchange.words.WishWords;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.match.Candidate;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.match.MatchRow;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.quick.PairTable;

/** What the page of the match asks for. */
public final class MatchPageWriter {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  /** Setups beside the shown ones whose parts may be drawn. */
  private static final int MOST_FALLEN_DRAWN = 8;

  private MatchPageWriter() {}

  /**
   * Another water that a rider may have, as the page offers it.
   *
   * @param code its name on the wire
   * @param title what people call it
   * @param celsius temperature [°C]
   * @param salinity salt [g/kg]
   */
  public record WaterItem(String code, String title, double celsius, double salinity) {}

  /**
   * What the page starts from, as JSON that may stand inside a script element.
   *
   * @param chosen name of the case that the page opens with
   * @param shelf what can be chosen
   * @param waters other waters that can be chosen
   * @return JSON without a less-than sign
   */
  public static String page(String chosen, List<ShelfWriter.Item> shelf, List<WaterItem> waters) {
    ObjectNode root = MAPPER.createObjectNode();
    JsonFields fields = new JsonFields(root).text("case", chosen);
    BenchPageWriter.measures(fields.object("measures"));
    fields.list("shelf", shelf, (node, item) -> item.write(node));
    fields.list(
        "waters",
        waters,
        (node, water) ->
            node.text("code", water.code())
                .text("title", water.title())
                .number("temperature_c", water.celsius())
                .number("salinity_g_kg", water.salinity()));
    fields.list(
        "weights",
        Stream.iterate(0, i -> i + 1).limit(Wishes.MOST_WEIGHT + 1L).toList(),
        (node, weight) -> node.whole("weight", weight).text("words", WishReasons.weight(weight)));
    fields.list(
        "wishes",
        List.of(Wish.values()),
        (node, wish) ->
            node.text("wish", WishWords.code(wish))
                .text("title", WishWords.title(wish))
                .text("value", WishWords.key(wish))
                .flag("in_tables", wish != Wish.MANNERS));
    return BenchPageWriter.scriptSafe(MAPPER.writeValueAsString(root));
  }

  /**
   * A rider and what is usually wished for them.
   *
   * @param item how the case is called
   * @param caseFile the case
   * @param kind of riding
   * @param weightSpread usual one [kg]
   * @param measures of the words
   * @return JSON on one line
   */
  public static String rider(
      ShelfWriter.Item item,
      CaseFile caseFile,
      RidingKind kind,
      double weightSpread,
      Measures measures) {
    ObjectNode root = MAPPER.createObjectNode();
    JsonFields fields = new JsonFields(root);
    item.write(fields);
    double wished = caseFile.rideCase().rider().wishedSpeed();
    RideSpan usual = RideSpan.about(wished);
    fields
        .text("words", RiderWords.of(caseFile, kind, measures))
        .text("riding", RiderWords.title(kind))
        .flag("first_flights", kind == RidingKind.FIRST_FLIGHTS)
        .flag("towed", caseFile.rideCase().pullAboveDeck().isPresent())
        .number("wished_speed_kmh", Shown.kmh(wished))
        .number("from_kmh", Shown.kmh(Math.max(usual.from(), PairTable.slowest())))
        .number("to_kmh", Shown.kmh(Math.min(usual.to(), PairTable.fastest())))
        .number("slowest_kmh", Shown.kmh(PairTable.slowest()))
        .number("fastest_kmh", Shown.kmh(PairTable.fastest()))
        .number("feet_reach_mm", Shown.mm(RideAsked.USUAL_REACH))
        .number("weight_spread_kg", weightSpread);
    Wishes wishes = Wishes.of(kind);
    fields.list(
        "wishes",
        List.of(Wish.values()),
        (node, wish) -> {
          Grade grade = wishes.grade(wish);
          node.text("wish", WishWords.code(wish))
              .text("title", WishWords.title(wish))
              .text("meaning", WishWords.meaning(wish))
              .text("why", WishReasons.why(wish))
              .text("good", WishWords.good(wish, grade, measures))
              .text("poor", WishReasons.poor(wish, grade, measures))
              .whole("weight", wishes.weight(wish));
        });
    fields.texts("cautions", CautionWords.listFor(caseFile));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * A stock that was read.
   *
   * @param file the stock
   * @return JSON on one line
   */
  public static String stock(StockFile file) {
    ObjectNode root = MAPPER.createObjectNode();
    Stock stock = file.stock();
    JsonFields fields =
        new JsonFields(root)
            .flag("accepted", true)
            .text("name", file.name())
            .text("digest", file.digest())
            .whole("driven", SetupSpace.of(stock, Propulsion.DRIVEN).count())
            .whole("towed", SetupSpace.of(stock, Propulsion.TOWED).count());
    fields.list(
        "kinds",
        Stream.of(PartKind.values()).filter(kind -> !stock.list(kind).isEmpty()).toList(),
        (node, kind) -> node.text("kind", Codes.of(kind)).whole("parts", stock.list(kind).size()));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * A question that cannot be looked for.
   *
   * @param problems whole sentences
   * @return JSON on one line
   */
  public static String refused(List<String> problems) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root)
        .flag("accepted", false)
        .text("message", String.join(" ", problems))
        .list("problems", problems, (node, text) -> node.text("message", text));
    return MAPPER.writeValueAsString(root);
  }

  /**
   * A look through a stock that has begun.
   *
   * @param job its name
   * @return JSON on one line
   */
  public static String begun(String job) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root).flag("accepted", true).text("job", job);
    return MAPPER.writeValueAsString(root);
  }

  /**
   * How far a look through a stock is.
   *
   * @param state waiting, running, done, stopped, failed or gone
   * @param words what a person reads
   * @param share how much is done, 0 to 1
   * @return JSON on one line
   */
  public static String state(String state, String words, double share) {
    ObjectNode root = MAPPER.createObjectNode();
    new JsonFields(root).text("state", state).text("words", words).number("share", share);
    return MAPPER.writeValueAsString(root);
  }

  /**
   * What was found, in the measures of all, so that a page need not ask again.
   *
   * @param answer what was found
   * @param remarks about the sections of the stock
   * @return JSON on one line
   */
  public static String found(MatchAnswer answer, List<String> remarks) {
    ObjectNode root = MAPPER.createObjectNode();
    for (Measures measures : Measures.values()) {
      root.putRawValue(
          Codes.of(measures), new RawValue(MatchWriter.json(answer, measures).strip()));
    }
    JsonFields fields = new JsonFields(root).texts("remarks", remarks);
    JsonFields grades = fields.object("good");
    for (Measures measures : Measures.values()) {
      JsonFields each = grades.object(Codes.of(measures));
      for (Wish wish : Wish.values()) {
        Grade grade = answer.result().asked().wishes().grade(wish);
        each.text(WishWords.code(wish), WishWords.good(wish, grade, measures));
      }
    }
    JsonFields texts = fields.object("texts");
    for (Measures measures : Measures.values()) {
      texts.list(
          Codes.of(measures), answer.result().rows(), (node, row) -> texts(node, row, measures));
    }
    JsonFields drawn = fields.object("planforms");
    planforms(answer.result()).forEach((id, outline) -> drawn.numbers(id, outline));
    return MAPPER.writeValueAsString(root);
  }

  /** A row's values as people read them. */
  private static void texts(JsonFields node, MatchRow row, Measures measures) {
    for (Wish wish : Wish.values()) {
      node.text(WishWords.code(wish), WishWords.text(wish, row.judged().values(), measures));
    }
  }

  /** Boards and wings of the shown setups from above, by their names; lengths to 0.1 mm. */
  private static Map<String, double[]> planforms(MatchResult result) {
    Map<String, double[]> all = new LinkedHashMap<>();
    Stream.concat(
            result.rows().stream().map(MatchRow::candidate),
            result.fallen().stream().limit(MOST_FALLEN_DRAWN).map(MatchResult.Fallen::candidate))
        .forEach(candidate -> put(candidate, all));
    return all;
  }

  private static void put(Candidate candidate, Map<String, double[]> all) {
    var board = candidate.upper().board();
    var front = candidate.foil().frontWing();
    var back = candidate.foil().stabilizer();
    all.computeIfAbsent(board.id(), id -> fine(SideScene.planform(board.piece().board())));
    all.computeIfAbsent(front.id(), id -> fine(SideScene.planform(front.piece().shape())));
    all.computeIfAbsent(back.id(), id -> fine(SideScene.planform(back.piece().shape())));
  }

  private static double[] fine(double[] outline) {
    double[] rounded = outline.clone();
    for (int i = 0; i < rounded.length; i++) {
      rounded[i] = Math.rint(rounded[i] * 1e4) / 1e4;
    }
    return rounded;
  }
}
