package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import trimwright.exchange.demo.DemoRiders;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.RidersReader;
import trimwright.exchange.words.BudgetAnswer;
import trimwright.exchange.words.FleetAnswer;
import trimwright.exchange.words.SharedCard;
import trimwright.fitting.fleet.Given;
import trimwright.fitting.fleet.Proven;
import trimwright.fitting.fleet.StockChoice;
import trimwright.fitting.fleet.StockCurve;
import trimwright.fitting.fleet.StockPoint;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.match.MatchRow;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;

/** Answers for riders who share, put together from a match. */
final class SharedSamples {
  private static final RidersFile RIDERS =
      RidersReader.read(DemoRiders.household()).findValue().orElseThrow();

  private SharedSamples() {}

  private static MatchRow row() {
    return MatchSamples.some().result().rows().get(0);
  }

  private static StockSetup setup() {
    return row().candidate().setup();
  }

  private static SharedCard card(String rider, boolean full) {
    MatchResult result = MatchSamples.some().result();
    return new SharedCard(
        rider,
        1,
        result.asked(),
        0,
        Optional.of(setup()),
        row().candidate().placement().feet(),
        row().candidate().placement().shortfall(),
        full ? Optional.of(row().judged()) : Optional.empty());
  }

  private static SharedCard none(String rider) {
    return new SharedCard(
        rider,
        1,
        MatchSamples.some().result().asked(),
        -1,
        Optional.empty(),
        0,
        Double.NaN,
        Optional.empty());
  }

  private static List<String> parts() {
    return setup().parts().map(StockPart::id).toList();
  }

  static FleetAnswer fleet() {
    return new FleetAnswer(
        RIDERS,
        MatchSamples.STOCK,
        List.of(MatchSamples.some().base()),
        2,
        12,
        List.of(parts()),
        List.of(card("mira", true), card("tobin", false)),
        List.of(card("mira", true), none("tobin")),
        new Proven(2, 2),
        0.2,
        new Proven(0.15, 0.125),
        3,
        1);
  }

  static FleetAnswer nobody() {
    return new FleetAnswer(
        RIDERS,
        MatchSamples.STOCK,
        List.of(MatchSamples.some().base()),
        1,
        0,
        List.of(),
        List.of(none("mira"), none("tobin")),
        List.of(none("mira"), none("tobin")),
        new Proven(0, 0),
        0,
        new Proven(0, 0),
        0,
        0);
  }

  static BudgetAnswer budget() {
    List<String> bought = parts();
    return new BudgetAnswer(
        RIDERS,
        MatchSamples.STOCK,
        List.of(MatchSamples.some().base()),
        6000,
        List.of("mast-750"),
        List.of("board-1600"),
        12,
        new StockChoice(
            bought, 5500.5, List.of(new Given(0, 0, 0.1)), new Proven(1, 2), new Proven(0.1, 0.1)),
        List.of(bought),
        List.of(card("mira", true), none("tobin")),
        new StockCurve(
            List.of(
                new StockPoint(new Proven(0, 0), 0, List.of()),
                new StockPoint(new Proven(5500.5, 5400), 1, bought)),
            false),
        1,
        0);
  }
}
