package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.words.BudgetAnswer;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.SharedCard;
import trimwright.exchange.words.SharedWords;
import trimwright.fitting.fleet.StockPoint;
import trimwright.fitting.stock.PartKind;
import trimwright.fitting.stock.StockPart;

/** What to own within a budget, as JSON and as text. */
public final class BudgetWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-budget/1";

  private BudgetWriter() {}

  /**
   * The JSON document.
   *
   * @param answer what was found
   * @return text that satisfies {@code budget.schema.json}
   */
  public static String json(BudgetAnswer answer) {
    JsonDocument document = JsonDocument.start(FORMAT, answer.riders().digest());
    JsonFields fields =
        document
            .fields()
            .text("name", answer.riders().name())
            .text("stock_name", answer.stock().name())
            .text("stock_digest", answer.stock().digest())
            .number("budget", answer.budget())
            .texts("owned", answer.owned())
            .texts("unpriced", answer.unpriced())
            .whole("hardware", answer.hardware())
            .whole("persons", answer.cards().stream().mapToInt(SharedCard::persons).sum())
            .number("money", answer.choice().money());
    SharedRows.proven(fields, "served", answer.choice().served());
    SharedRows.proven(fields, "mean_shortfall", answer.choice().mean());
    fields.whole("looked", answer.looked()).whole("fallen", answer.fallen());
    fields.list("bought", answer.choice().bought(), (item, id) -> bought(item, id, answer));
    fields.list("sets", answer.sets(), (item, parts) -> item.texts("parts", parts));
    fields.list("riders", answer.cards(), SharedRows::card);
    JsonFields curve = fields.object("curve");
    curve.flag("complete", answer.curve().complete());
    curve.list("points", answer.curve().points(), BudgetWriter::point);
    fields.texts("words", SharedWords.of(answer));
    fields.texts("cautions", CautionWords.listFor(answer.bases().get(0)));
    return document.text();
  }

  private static void bought(JsonFields item, String id, BudgetAnswer answer) {
    for (PartKind kind : PartKind.values()) {
      for (StockPart<?> part : answer.stock().stock().list(kind)) {
        if (part.id().equals(id)) {
          item.text("id", id)
              .text("kind", Codes.of(kind))
              .number("price", part.holding().price().orElse(Double.NaN));
        }
      }
    }
  }

  private static void point(JsonFields item, StockPoint point) {
    SharedRows.proven(item, "money", point.money());
    item.whole("persons", point.persons()).texts("bought", point.bought());
  }

  /**
   * The choice as text for a terminal.
   *
   * @param answer what was found
   * @return the text
   */
  public static String table(BudgetAnswer answer) {
    StringBuilder text = new StringBuilder();
    text.append(answer.riders().name()).append(", ").append(answer.stock().name()).append("\n\n");
    SharedWords.of(answer).forEach(line -> text.append(line).append('\n'));
    if (!answer.choice().bought().isEmpty()) {
      TextTable bought = new TextTable().words("buy").number("price", "");
      for (String id : answer.choice().bought()) {
        bought.row(
            List.of(
                id,
                price(answer, id).stream().mapToObj(SharedWords::money).findFirst().orElse("-")));
      }
      text.append('\n').append(bought.text());
    }
    text.append('\n').append(SharedRows.sets(answer.sets()));
    text.append('\n').append(SharedRows.table(answer.cards(), Optional.empty()));
    text.append(SharedRows.legend()).append('\n').append(curve(answer));
    return text.append('\n').append(CautionWords.lines(answer.bases().get(0))).toString();
  }

  private static OptionalDouble price(BudgetAnswer answer, String id) {
    for (PartKind kind : PartKind.values()) {
      for (StockPart<?> part : answer.stock().stock().list(kind)) {
        if (part.id().equals(id)) {
          return part.holding().price();
        }
      }
    }
    return OptionalDouble.empty();
  }

  private static String curve(BudgetAnswer answer) {
    TextTable table =
        new TextTable()
            .number("money", "")
            .number("at least", "")
            .number("persons", "")
            .words("more than before");
    List<String> before = List.of();
    for (StockPoint point : answer.curve().points()) {
      List<String> added = new ArrayList<>(point.bought());
      added.removeAll(before);
      List<String> gone = new ArrayList<>(before);
      gone.removeAll(point.bought());
      before = point.bought();
      table.row(
          List.of(
              SharedWords.money(point.money().value()),
              point.money().isBest() ? "" : SharedWords.money(point.money().bound()),
              Integer.toString(point.persons()),
              String.join(", ", added)
                  + (gone.isEmpty() ? "" : " instead of " + String.join(", ", gone))));
    }
    return "Persons served against money, by tables:\n" + table.text();
  }
}
