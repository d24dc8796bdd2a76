package trimwright.web.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.desk.MatchQuestion;
import trimwright.desk.MatchQuestion.OtherWater;
import trimwright.exchange.read.BenchRequest;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WishWords;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.match.MatchSearch;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.quick.PairTable;
import trimwright.web.bench.BadQuestion;

/**
 * What the page wants looked for.
 *
 * @param cases the rider and the stock
 * @param question what is wanted
 */
record MatchAsked(StockCases cases, MatchQuestion question) {
  /** Farther nobody moves both feet at once [m]. */
  private static final double MOST_FEET = 0.4;

  private static final double MOST_SPREAD = 30;

  /** What a speed may miss a table's end by, for the way there and back between units [m/s]. */
  private static final double PLAY = Unit.KILOMETRE_PER_HOUR.toSi(0.06);

  /**
   * Reads what the page sent.
   *
   * @param request what was sent
   * @param base the rider's case
   * @param stock the stock
   * @param problems takes what is wrong with it, in whole sentences
   * @return the question; empty where something is wrong
   * @throws BadQuestion if it is not what the page sends
   */
  static Optional<MatchAsked> of(
      BenchRequest request, CaseFile base, StockFile stock, List<String> problems) {
    Measures measures = request.measures();
    double from = Unit.KILOMETRE_PER_HOUR.toSi(number(request, "from_kmh"));
    double to = Unit.KILOMETRE_PER_HOUR.toSi(number(request, "to_kmh"));
    double feet = Unit.MILLIMETRE.toSi(number(request, "feet_reach_mm"));
    double spread = number(request, "weight_spread_kg");
    if (!(feet >= 0 && feet <= MOST_FEET && spread >= 0 && spread <= MOST_SPREAD)) {
      throw new BadQuestion();
    }
    double wished = base.rideCase().rider().wishedSpeed();
    checkSpeeds(from, to, wished, measures, problems);
    List<Wish> trade = trade(request);
    Map<Wish, Integer> weights = weights(request);
    if (weights.size() == Wish.values().length
        && weights.values().stream().allMatch(weight -> weight == 0)) {
      problems.add("No wish weighs anything: move at least one of them up.");
    }
    StockCases cases = StockCases.of(base, stock);
    if (cases.space().count() == 0) {
      problems.add(
          base.rideCase().pullAboveDeck().isPresent()
              ? "No board, mast, fuselage and wings of this stock mount together."
              : "No board, battery, mast, drive, fuselage and wings of this stock mount together, or"
                  + " one of these kinds is missing or out.");
    }
    if (!problems.isEmpty()) {
      return Optional.empty();
    }
    RideSpan span =
        new RideSpan(
            Math.max(from, PairTable.slowest()),
            Math.min(to, PairTable.fastest()),
            RideSpan.USUAL_COUNT);
    return Optional.of(
        new MatchAsked(
            cases,
            new MatchQuestion(
                span,
                feet,
                weights,
                trade.get(0),
                trade.get(1),
                waters(request),
                spread,
                MatchSearch.Size.USUAL)));
  }

  private static void checkSpeeds(
      double from, double to, double wished, Measures measures, List<String> problems) {
    if (!(to > from)) {
      problems.add(
          "The slowest speed must lie below the fastest; they are "
              + speed(from, measures)
              + " and "
              + speed(to, measures)
              + ".");
    }
    for (double speed : new double[] {from, to, wished}) {
      if (speed < PairTable.slowest() - PLAY || speed > PairTable.fastest() + PLAY) {
        problems.add(
            "Setups are looked through at speeds from "
                + speed(PairTable.slowest(), measures)
                + " to "
                + speed(PairTable.fastest(), measures)
                + "; "
                + (speed == wished ? "the wished speed is " : "asked for is ")
                + speed(speed, measures)
                + ".");
      }
    }
  }

  private static String speed(double speed, Measures measures) {
    return Shown.decimals(measures.unit(Unit.KILOMETRE_PER_HOUR).fromSi(speed), 1)
        + " "
        + measures.shown(Unit.KILOMETRE_PER_HOUR).symbol();
  }

  private static double number(BenchRequest request, String name) {
    OptionalDouble value = request.number(name);
    return value.orElseThrow(BadQuestion::new);
  }

  private static Wish wish(String code) {
    return Arrays.stream(Wish.values())
        .filter(wish -> WishWords.code(wish).equals(code))
        .findFirst()
        .orElseThrow(BadQuestion::new);
  }

  private static List<Wish> trade(BenchRequest request) {
    Wish one = wish(request.text("trade_one").orElseThrow(BadQuestion::new));
    Wish other = wish(request.text("trade_other").orElseThrow(BadQuestion::new));
    if (one == other || one == Wish.MANNERS || other == Wish.MANNERS) {
      throw new BadQuestion();
    }
    return List.of(one, other);
  }

  private static Map<Wish, Integer> weights(BenchRequest request) {
    Map<Wish, Integer> weights = new EnumMap<>(Wish.class);
    request
        .findFields()
        .orElseThrow(BadQuestion::new)
        .forEach(
            (code, text) -> {
              if (!text.matches("[0-" + Wishes.MOST_WEIGHT + "]")) {
                throw new BadQuestion();
              }
              weights.put(wish(code), Integer.valueOf(text));
            });
    return weights;
  }

  private static List<OtherWater> waters(BenchRequest request) {
    List<OtherWater> waters = new ArrayList<>();
    for (String code : request.text("waters").orElse("").split(",")) {
      if (!code.isEmpty()) {
        waters.add(KnownWater.find(code).orElseThrow(BadQuestion::new).water());
      }
    }
    return waters;
  }
}
