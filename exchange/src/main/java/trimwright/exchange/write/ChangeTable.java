package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import trimwright.exchange.read.LimitKey;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.ChangeAnswer;
import trimwright.exchange.words.ChangeOrders;
import trimwright.exchange.words.ChangeWords;
import trimwright.exchange.words.RuleOut;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WishWords;
import trimwright.fitting.change.Effect;
import trimwright.fitting.change.KindAdvice;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.trim.TrimPoint;

/** What to change about a case, for a terminal: what to do, then before and after of everything. */
final class ChangeTable {
  private final ChangeAnswer answer;
  private final ChangeOrders orders;

  /** A row's number and the ride that it tells of. */
  private record Row(String mark, Effect effect) {}

  ChangeTable(ChangeAnswer answer) {
    this.answer = answer;
    orders = new ChangeOrders(answer, Measures.METRIC);
  }

  String text() {
    StringBuilder out = new StringBuilder(answer.base().name());
    answer.stock().ifPresent(stock -> out.append(", ").append(stock.name()));
    out.append("\n\nRule out first:\n");
    int number = 0;
    for (RuleOut item : RuleOut.listFor(answer.base())) {
      number++;
      out.append(number).append(". ").append(item.what()).append(". ").append(item.how());
      out.append('\n');
    }
    out.append('\n');
    ChangeWords.of(answer, Measures.METRIC).forEach(line -> out.append(line).append('\n'));
    out.append("\nEach change by itself, the least effort first:\n\n");
    out.append(changes());
    List<Row> rows = rows();
    out.append("\nWishes; a star falls short of what is good, two are poor:\n\n");
    out.append(wishes(rows));
    out.append("\nLimits, the worst over the speeds; a star breaks one:\n\n");
    out.append(limits(rows));
    out.append("\nTrim at the wished speed:\n\n").append(trims(rows)).append('\n');
    CautionWords.listFor(answer.base()).forEach(line -> out.append(line).append('\n'));
    ChangeWords.cautions().forEach(line -> out.append(line).append('\n'));
    return out.toString();
  }

  private String changes() {
    TextTable table = new TextTable().number("", "").words("change").words("verdict");
    int number = 0;
    for (KindAdvice kind : answer.advice().kinds()) {
      number++;
      table.row(
          List.of(
              Integer.toString(number),
              kind.effect().map(orders::order).orElse(ChangeOrders.title(kind.kind())),
              ChangeWords.verdict(kind, answer.stock().isPresent())
                  + (kind.verdict() == KindAdvice.Verdict.HELPS
                      ? kind.effect().filter(Effect::isEnough).map(e -> ", enough").orElse("")
                      : "")));
    }
    char letter = 'a';
    for (Effect pair : answer.advice().pairs()) {
      table.row(
          List.of(
              String.valueOf(letter), orders.order(pair), pair.isEnough() ? "enough" : "helps"));
      letter++;
    }
    return table.text();
  }

  private List<Row> rows() {
    List<Row> rows = new ArrayList<>();
    rows.add(new Row("now", answer.advice().present()));
    int number = 0;
    for (KindAdvice kind : answer.advice().kinds()) {
      number++;
      String mark = Integer.toString(number);
      kind.effect().ifPresent(e -> rows.add(new Row(mark, e)));
    }
    char letter = 'a';
    for (Effect pair : answer.advice().pairs()) {
      rows.add(new Row(String.valueOf(letter), pair));
      letter++;
    }
    return rows;
  }

  private static String wishes(List<Row> rows) {
    TextTable table = new TextTable().number("", "").number("short by", "");
    for (Wish wish : Wish.values()) {
      table.number(MatchWriter.head(wish), WishWords.symbol(wish));
    }
    for (Row row : rows) {
      List<String> cells = new ArrayList<>();
      cells.add(row.mark());
      cells.add(Shown.decimals(row.effect().shortfall(), 3));
      for (Wish wish : Wish.values()) {
        double value = row.effect().judged().values().of(wish);
        double lacks = row.effect().asked().wishes().shortfall(wish, value);
        cells.add((lacks >= 1 ? "**" : lacks > 0 ? "*" : "") + WishWords.cell(wish, value));
      }
      table.row(cells);
    }
    return table.text();
  }

  private String limits(List<Row> rows) {
    List<LimitKey> keys =
        ChangeRide.LIMITS.stream()
            .filter(
                key ->
                    rows.stream().anyMatch(r -> r.effect().limits().find(key.limit()).isPresent()))
            .toList();
    TextTable table = new TextTable().number("", "");
    keys.forEach(
        key -> table.number(head(key.limit()), key.unit().equals("°") ? "deg" : key.unit()));
    table.row(cells("limit", keys, key -> figure(key)));
    for (Row row : rows) {
      table.row(cells(row.mark(), keys, key -> cell(row.effect(), key)));
    }
    return table.text();
  }

  private static List<String> cells(
      String mark, List<LimitKey> keys, Function<LimitKey, String> cell) {
    List<String> cells = new ArrayList<>(List.of(mark));
    keys.forEach(key -> cells.add(cell.apply(key)));
    return cells;
  }

  private String figure(LimitKey key) {
    double figure = key.shown(answer.base().rideCase().limits().of(key.limit()));
    return (key.limit().tighter() == RideLimit.Tighter.ABOVE ? "from " : "to ")
        + Shown.decimals(figure, decimals(key));
  }

  private static String cell(Effect effect, LimitKey key) {
    OptionalDouble value = effect.limits().find(key.limit());
    if (value.isEmpty()) {
      return "-";
    }
    boolean broken = ChangeRide.breaks(effect, key.limit());
    return (broken ? "*" : "") + Shown.decimals(key.shown(value.getAsDouble()), decimals(key));
  }

  private static int decimals(LimitKey key) {
    return switch (key.unit()) {
      case "mm" -> 0;
      case "°" -> 1;
      default -> 2;
    };
  }

  private static String head(RideLimit limit) {
    return switch (limit) {
      case STALL_MARGIN -> "stall";
      case LEAST_FOOT_SHARE -> "least front";
      case MOST_FOOT_SHARE -> "most front";
      case STATIC_MARGIN -> "stable";
      case PITCH -> "tilt";
      case BOARD_CLEARANCE -> "board";
      case TIP_DEPTH -> "tip";
      case PROPELLER_DEPTH -> "prop";
      case CAVITATION_SPEED_RATIO -> "cavit.";
      case RATING_SHARE -> "rating";
      case TAKE_OFF_THRUST_RATIO -> "take-off";
      case BOW_CLEAR_TIME -> "bow";
      case BREACH_TIME -> "breach";
      default -> throw new IllegalArgumentException("no column for " + limit);
    };
  }

  private static String trims(List<Row> rows) {
    TextTable table =
        new TextTable()
            .number("", "")
            .number("speed", "km/h")
            .number("pitch", "deg")
            .number("front foot", "%")
            .number("front leg", "kg")
            .number("back leg", "kg")
            .number("power", "W");
    for (Row row : rows) {
      TrimPoint p = row.effect().judged().wished().findPoint().orElse(null);
      List<String> cells = new ArrayList<>();
      cells.add(row.mark());
      cells.add(Shown.decimals(Shown.kmh(row.effect().judged().wished().speed()), 1));
      cells.add(p == null ? "-" : Shown.decimals(Shown.degrees(p.pitch()), 1));
      cells.add(p == null ? "-" : Shown.decimals(100 * p.footShare(), 0));
      cells.add(p == null ? "-" : Shown.decimals(p.frontLeg(), 0));
      cells.add(p == null ? "-" : Shown.decimals(p.backLeg(), 0));
      cells.add(
          p == null || p.electricPower().isEmpty()
              ? "-"
              : Shown.decimals(p.electricPower().getAsDouble(), 0));
      table.row(cells);
    }
    return table.text();
  }
}
