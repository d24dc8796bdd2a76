package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.LimitKey;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.ChangeAnswer;
import trimwright.exchange.words.ChangeOrders;
import trimwright.exchange.words.ChangeWords;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.fitting.change.Change;
import trimwright.fitting.change.ChangeKind;
import trimwright.fitting.change.Effect;
import trimwright.fitting.change.KindAdvice;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.wish.Wish;

/** What to change about a case, as JSON; {@link ChangeTable} has it as text. */
public final class ChangeWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-change/1";

  /** Bolt spacing over which a shim's thickness is told [m]. */
  private static final double SPACING = 0.01;

  private final ChangeAnswer answer;
  private final ChangeOrders orders;

  private ChangeWriter(ChangeAnswer answer) {
    this.answer = answer;
    orders = new ChangeOrders(answer, Measures.METRIC);
  }

  /**
   * The JSON document.
   *
   * @param answer what was found
   * @return text that satisfies {@code change.schema.json}
   */
  public static String json(ChangeAnswer answer) {
    return new ChangeWriter(answer).document();
  }

  /**
   * The advice as text for a terminal.
   *
   * @param answer what was found
   * @return the text
   */
  public static String table(ChangeAnswer answer) {
    return new ChangeTable(answer).text();
  }

  private String document() {
    RideAsked asked = answer.advice().present().asked();
    JsonDocument document = JsonDocument.start(FORMAT, answer.base().digest());
    JsonFields fields =
        document
            .fields()
            .text("name", answer.base().name())
            .text("sections", SectionCode.of(answer.base()))
            .text("stock_name", answer.stock().map(StockFile::name).orElse(null))
            .text("stock_digest", answer.stock().map(StockFile::digest).orElse(null));
    fields
        .object("asked")
        .text("riding", Codes.of(answer.kind()))
        .flag("first_flights", asked.isFirstFlights())
        .number("from_kmh", Shown.kmh(asked.span().from()))
        .number("to_kmh", Shown.kmh(asked.span().to()))
        .number("wished_speed_kmh", Shown.kmh(asked.base().rider().wishedSpeed()))
        .number("feet_reach_mm", Shown.mm(asked.feetReach()));
    fields.list(
        "wishes", List.of(Wish.values()), (item, wish) -> MatchWriter.wish(item, wish, asked));
    fields.list("limits", ChangeRide.LIMITS, (item, key) -> limit(item, key, asked));
    fields.list(
        "rule_out_first",
        RuleOut.listFor(answer.base()),
        (item, r) -> item.text("what", r.what()).text("how", r.how()));
    ChangeRide.write(fields.object("present"), answer.advice().present());
    Optional<Effect> first = answer.advice().first();
    first.ifPresentOrElse(
        e ->
            fields
                .object("do_first")
                .texts("kinds", e.changes().stream().map(c -> Codes.of(c.kind())).toList())
                .text("order", orders.order(e)),
        () -> fields.none("do_first"));
    fields.list("changes", answer.advice().kinds(), this::kind);
    fields.list("pairs", answer.advice().pairs(), this::effect);
    fields.texts("words", ChangeWords.of(answer, Measures.METRIC));
    List<String> cautions = new ArrayList<>(CautionWords.listFor(answer.base()));
    cautions.addAll(ChangeWords.cautions());
    fields.texts("cautions", cautions);
    return document.text();
  }

  private static void limit(JsonFields item, LimitKey key, RideAsked asked) {
    item.text("limit", key.key())
        .number("figure", key.shown(asked.base().limits().of(key.limit())))
        .text("unit", key.unit())
        .text("bound", key.least());
  }

  private void kind(JsonFields item, KindAdvice kind) {
    item.text("kind", Codes.of(kind.kind()))
        .text("title", ChangeOrders.title(kind.kind()))
        .text("verdict", Codes.of(kind.verdict()))
        .text("verdict_words", ChangeWords.verdict(kind, answer.stock().isPresent()))
        .whole("looked_at", kind.tried());
    kind.effect().ifPresentOrElse(e -> effect(item.object("best"), e), () -> item.none("best"));
  }

  private void effect(JsonFields item, Effect effect) {
    item.list("made", effect.changes(), ChangeWriter::made)
        .text("order", orders.order(effect))
        .texts("details", orders.details(effect));
    CaseFile after = answer.caseFile(effect);
    boolean shimmed = effect.changes().stream().anyMatch(c -> c.kind() == ChangeKind.SHIM);
    double angle = after.rideCase().setup().shim();
    if (shimmed && ShimWords.isShim(angle)) {
      item.object("shim")
          .number("angle_deg", Shown.degrees(angle))
          .text("leading_edge", angle > 0 ? "up" : "down")
          .text(
              "thick_end",
              ShimWords.thickEndInFront(angle, after.notes().stabilizerMounting())
                  ? "front"
                  : "back")
          .number("thicker_per_10_mm_mm", Shown.mm(SPACING * Math.tan(Math.abs(angle))))
          .text("command", ChangeOrders.command(after));
    } else {
      item.none("shim");
    }
    ChangeRide.write(item.object("ride"), effect);
    item.text("case_digest", after.digest()).text("case", after.text());
  }

  private static void made(JsonFields item, Change change) {
    double amount = change.amount();
    item.text("kind", Codes.of(change.kind())).text("part", change.part().orElse(null));
    switch (change.kind()) {
      case SPEED -> item.number("faster_kmh", Shown.kmh(amount));
      case STANCE -> item.number("feet_forward_mm", Shown.mm(amount));
      case TRACK -> item.number("mast_forward_mm", Shown.mm(amount));
      case SHIM -> item.number("leading_edge_up_deg", Shown.degrees(amount));
      case WEDGE -> item.number("nose_up_deg", Shown.degrees(amount));
      default -> {}
    }
  }
}
