package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.FleetAnswer;
import trimwright.exchange.words.SharedCard;
import trimwright.exchange.words.SharedWords;

/** Hardware for riders who share it, as JSON and as text. */
public final class FleetWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-fleet/1";

  private FleetWriter() {}

  /**
   * The JSON document.
   *
   * @param answer what was found
   * @return text that satisfies {@code fleet.schema.json}
   */
  public static String json(FleetAnswer answer) {
    JsonDocument document = JsonDocument.start(FORMAT, answer.riders().digest());
    JsonFields fields =
        document
            .fields()
            .text("name", answer.riders().name())
            .text("stock_name", answer.stock().name())
            .text("stock_digest", answer.stock().digest())
            .whole("sets_wanted", answer.wanted())
            .whole("hardware", answer.hardware())
            .whole("persons", answer.cards().stream().mapToInt(SharedCard::persons).sum());
    SharedRows.proven(fields, "served", answer.served());
    fields.number("worst_shortfall", answer.worst());
    SharedRows.proven(fields, "mean_shortfall", answer.mean());
    fields.whole("looked", answer.looked()).whole("fallen", answer.fallen());
    fields.list("sets", answer.sets(), (item, parts) -> item.texts("parts", parts));
    fields.list(
        "riders",
        IntStream.range(0, answer.cards().size()).boxed().toList(),
        (item, i) -> rider(item, answer.cards().get(i), answer.alone().get(i)));
    fields.texts("words", SharedWords.of(answer));
    fields.texts("cautions", CautionWords.listFor(answer.bases().get(0)));
    return document.text();
  }

  private static void rider(JsonFields item, SharedCard shared, SharedCard alone) {
    SharedRows.card(item, shared);
    SharedRows.settings(item.object("alone"), alone);
    item.number(
        "sharing_costs",
        shared.setup().isPresent() ? shared.shortfall() - alone.shortfall() : Double.NaN);
  }

  /**
   * The choice as text for a terminal.
   *
   * @param answer what was found
   * @return the text
   */
  public static String table(FleetAnswer answer) {
    StringBuilder text = new StringBuilder();
    text.append(answer.riders().name()).append(", ").append(answer.stock().name()).append("\n\n");
    SharedWords.of(answer).forEach(line -> text.append(line).append('\n'));
    List<List<String>> sets = answer.sets();
    if (!sets.isEmpty()) {
      text.append('\n').append(SharedRows.sets(sets)).append('\n');
    }
    text.append(SharedRows.table(answer.cards(), Optional.of(answer.alone())));
    return text.append(SharedRows.legend())
        .append('\n')
        .append(CautionWords.lines(answer.bases().get(0)))
        .toString();
  }
}
