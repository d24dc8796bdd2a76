package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.words.SetupWords;
import trimwright.exchange.words.SharedCard;
import trimwright.exchange.words.Shown;
import trimwright.fitting.fleet.Proven;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;

/** What documents about shared hardware have in common. */
final class SharedRows {
  private SharedRows() {}

  /** A card, with null for all that a rider who is not served lacks. */
  static void card(JsonFields item, SharedCard card) {
    Optional<StockSetup> setup = card.setup();
    item.text("id", card.rider()).whole("persons", card.persons());
    if (setup.isEmpty()) {
      item.none("set");
    } else {
      item.whole("set", card.set() + 1L);
    }
    item.number("speed_kmh", Shown.kmh(card.asked().base().rider().wishedSpeed()));
    settings(item, card);
  }

  /** Hardware and settings. */
  static void settings(JsonFields item, SharedCard card) {
    Optional<StockSetup> setup = card.setup();
    item.text("setup", setup.map(SetupWords::parts).orElse(null))
        .text("shim", setup.flatMap(s -> s.foil().shim()).map(StockPart::id).orElse(null))
        .number("shim_deg", setup.map(s -> Shown.degrees(s.foil().shimAngle())).orElse(Double.NaN))
        .text("shim_words", setup.map(SetupWords::shim).orElse(null))
        .number("track_mm", setup.map(s -> Shown.mm(s.track())).orElse(Double.NaN))
        .number("feet_forward_mm", setup.isPresent() ? Shown.mm(card.feet()) : Double.NaN)
        .number("shortfall", setup.isPresent() ? card.shortfall() : Double.NaN)
        .number("shortfall_by_tables", card.byTables())
        .flag("solved_in_full", card.judged().isPresent());
  }

  /** A value found, its bound and the gap between. */
  static void proven(JsonFields fields, String name, Proven proven) {
    fields
        .number(name, proven.value())
        .number(name + "_bound", proven.bound())
        .number(name + "_gap", proven.gap());
  }

  /** Each rider's row for a terminal. */
  static String table(List<SharedCard> cards, Optional<List<SharedCard>> alone) {
    TextTable table =
        new TextTable()
            .words("rider")
            .number("persons", "")
            .number("set", "")
            .number("speed", "km/h")
            .words("shim")
            .number("mast", "mm")
            .number("feet", "mm")
            .number("short by", "");
    if (alone.isPresent()) {
      table.number("alone", "");
    }
    for (int i = 0; i < cards.size(); i++) {
      SharedCard card = cards.get(i);
      List<String> cells = new ArrayList<>();
      cells.add(card.rider());
      cells.add(Integer.toString(card.persons()));
      boolean served = card.setup().isPresent();
      cells.add(served ? Integer.toString(card.set() + 1) : "-");
      cells.add(Shown.decimals(Shown.kmh(card.asked().base().rider().wishedSpeed()), 0));
      cells.add(card.setup().map(SetupWords::shim).orElse("not served"));
      cells.add(card.setup().map(s -> Shown.decimals(Shown.mm(s.track()), 0)).orElse("-"));
      cells.add(served ? Shown.decimals(Shown.mm(card.feet()), 0) : "-");
      cells.add(served ? shortfall(card) : "-");
      if (alone.isPresent()) {
        cells.add(alone.get().get(i).setup().isPresent() ? shortfall(alone.get().get(i)) : "-");
      }
      table.row(cells);
    }
    return table.text();
  }

  private static String shortfall(SharedCard card) {
    return Shown.decimals(card.shortfall(), 2) + (card.judged().isPresent() ? "" : "?");
  }

  /** The sets, numbered. */
  static String sets(List<List<String>> sets) {
    StringBuilder text = new StringBuilder();
    for (int set = 0; set < sets.size(); set++) {
      text.append("Set ").append(set + 1).append(": ").append(String.join(", ", sets.get(set)));
      text.append('\n');
    }
    return text.toString();
  }

  /** What the table's heads mean, in one line. */
  static String legend() {
    return "mast: forward of its track's middle; feet: both further forward; short by: 0 all wishes"
        + " met, 1 all poor; ? by tables alone\n";
  }
}
