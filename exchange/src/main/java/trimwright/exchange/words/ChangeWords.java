package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trimwright.exchange.unit.Measures;
import trimwright.fitting.change.Change;
import trimwright.fitting.change.ChangeAdvice;
import trimwright.fitting.change.ChangeKind;
import trimwright.fitting.change.Effect;
import trimwright.fitting.change.KindAdvice;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.trim.TrimPoint;

/** What to change, what to do first, numbers next. */
public final class ChangeWords {
  /** What falls short by less is not spoken of; the table has it [1]. Chosen. */
  private static final double HAIR = 0.05;

  private final ChangeAnswer answer;
  private final ChangeAdvice advice;
  private final Measures measures;
  private final Amounts amounts;
  private final ChangeOrders orders;

  private ChangeWords(ChangeAnswer answer, Measures measures) {
    this.answer = answer;
    advice = answer.advice();
    this.measures = measures;
    amounts = Amounts.of(measures);
    orders = new ChangeOrders(answer, measures);
  }

  /**
   * The words.
   *
   * @param answer what was found
   * @param measures that the reader reads
   * @return sentences, the first of them what to do
   */
  public static List<String> of(ChangeAnswer answer, Measures measures) {
    return new ChangeWords(answer, measures).all();
  }

  private List<String> all() {
    List<String> all = new ArrayList<>();
    Optional<Effect> first = advice.first();
    if (first.isPresent()) {
      all.add("Do this first: " + Sentence.lowerFirst(orders.order(first.get())) + ".");
      all.addAll(orders.details(first.get()));
      all.addAll(effect(first.get()));
      all.add(why(first.get()));
      printed(first.get()).ifPresent(all::add);
    } else if (advice.present().isEnough()) {
      all.add(
          "Change nothing: inside all limits, and deck and feet are near enough to what you wish.");
      all.addAll(left(advice.present()));
      best()
          .ifPresent(
              e ->
                  all.add(
                      "If you want more all the same, most is gained by this: "
                          + Sentence.lowerFirst(orders.order(e))
                          + "."));
    } else {
      all.addAll(nothingHelps());
    }
    advice.pairs().stream()
        .filter(pair -> first.filter(f -> f == pair).isEmpty())
        .forEach(
            pair ->
                all.add(
                    (pair.isEnough() ? "Enough together: " : "Better together: ")
                        + Sentence.lowerFirst(orders.order(pair))
                        + "."));
    return all;
  }

  /** What is wrong now and stays wrong. */
  private List<String> nothingHelps() {
    List<String> all = new ArrayList<>();
    if (advice.present().passes()) {
      all.add(
          "Leave it as it is, or look for another set: no change that was looked at makes it better by"
              + " as much as counts.");
      all.addAll(left(advice.present()));
      return all;
    }
    all.add(
        answer.advice().present().asked().isFirstFlights()
            ? "Do not give this setup to somebody who flies for the first time: no change that was"
                + " looked at brings it inside all limits, so none is advised."
            : "Do not ride it so: no change that was looked at brings it inside all limits, so none is"
                + " advised.");
    advice.present().judged().grounds().forEach(g -> all.add(GroundWords.sentence(g)));
    advice.kinds().stream()
        .filter(k -> k.verdict() == KindAdvice.Verdict.BREAKS_LIMITS)
        .map(k -> k.effect().orElseThrow())
        .filter(e -> e.judged().grounds().size() < advice.present().judged().grounds().size())
        .min(Comparator.comparingInt(e -> e.judged().grounds().size()))
        .ifPresent(
            e ->
                all.add(
                    "Nearest comes: "
                        + Sentence.lowerFirst(orders.order(e))
                        + "; then there remains "
                        + names(e)
                        + "."));
    return all;
  }

  private static String names(Effect e) {
    return e.judged().grounds().stream().map(GroundWords::name).collect(Collectors.joining(", "));
  }

  /** Before and after at the wished speed, then the wishes that move. */
  private List<String> effect(Effect after) {
    List<String> all = new ArrayList<>();
    Effect now = advice.present();
    Optional<TrimPoint> then = after.judged().wished().findPoint();
    Optional<TrimPoint> before = now.judged().wished().findPoint();
    if (then.isPresent()) {
      all.add(before.map(b -> trims(b, then.get())).orElseGet(() -> trim(then.get())));
    }
    now.judged().grounds().stream()
        .filter(ground -> !after.judged().grounds().contains(ground))
        .forEach(ground -> all.add("It mends this: " + GroundWords.sentence(ground)));
    String moved =
        Stream.of(Wish.values())
            .filter(wish -> now.asked().wishes().weight(wish) > 0)
            .filter(wish -> !text(wish, now).equals(text(wish, after)))
            .map(
                wish ->
                    WishWords.title(wish).toLowerCase(Locale.ROOT)
                        + " from "
                        + text(wish, now)
                        + " to "
                        + text(wish, after))
            .collect(Collectors.joining(", "));
    if (!moved.isEmpty()) {
      all.add("Of your wishes it moves: " + moved + ".");
    }
    all.addAll(left(after));
    return all;
  }

  private String text(Wish wish, Effect effect) {
    return WishWords.text(wish, effect.judged().values(), measures);
  }

  private String trims(TrimPoint a, TrimPoint b) {
    List<String> parts = new ArrayList<>();
    parts.add(
        nose(a).equals(nose(b))
            ? "the deck stays " + nose(b)
            : "the deck goes from " + nose(a) + " to " + nose(b));
    parts.add(
        share(a).equals(share(b))
            ? "the front foot keeps its " + share(b) + " of the load (" + legs(b) + ")"
            : "the front foot goes from "
                + share(a)
                + " to "
                + share(b)
                + " of the load (from "
                + legs(a)
                + " to "
                + legs(b)
                + ")");
    if (a.electricPower().isPresent() && b.electricPower().isPresent()) {
      parts.add(
          watts(a).equals(watts(b))
              ? "the power stays " + watts(b)
              : "the power goes from " + watts(a) + " to " + watts(b));
    }
    return (amounts.speed(a.speed()).equals(amounts.speed(b.speed()))
            ? "At " + amounts.speed(b.speed()) + " "
            : "From " + amounts.speed(a.speed()) + " to " + amounts.speed(b.speed()) + " ")
        + String.join(", ", parts)
        + ".";
  }

  private String trim(TrimPoint p) {
    return "At "
        + amounts.speed(p.speed())
        + " the deck then is "
        + nose(p)
        + ", the front foot carries "
        + share(p)
        + " of the load ("
        + legs(p)
        + ").";
  }

  private static String nose(TrimPoint p) {
    return Shown.nose(Shown.degrees(p.pitch()));
  }

  private static String share(TrimPoint p) {
    return Shown.decimals(100 * p.footShare(), 0) + " %";
  }

  private String legs(TrimPoint p) {
    return amounts.mass(p.frontLeg()) + " in front, " + amounts.mass(p.backLeg()) + " behind";
  }

  private static String watts(TrimPoint p) {
    return Shown.decimals(p.electricPower().getAsDouble(), 0) + " W";
  }

  /** What a ride leaves to be wished. */
  private List<String> left(Effect effect) {
    String lacking =
        Stream.of(Wish.values())
            .filter(wish -> effect.asked().wishes().weight(wish) > 0)
            .filter(wish -> lacks(effect, wish) > HAIR)
            .sorted(Comparator.comparingDouble(wish -> -lacks(effect, wish)))
            .map(
                wish ->
                    WishWords.title(wish).toLowerCase(Locale.ROOT)
                        + " "
                        + text(wish, effect)
                        + " (good is "
                        + WishWords.good(wish, effect.asked().wishes().grade(wish), measures)
                        + ")")
            .collect(Collectors.joining(", "));
    return lacking.isEmpty()
        ? List.of("It meets every wish that weighs, or misses it by a hair.")
        : List.of("Of what you wish it leaves: " + lacking + ".");
  }

  private static double lacks(Effect effect, Wish wish) {
    return effect.asked().wishes().shortfall(wish, effect.judged().values().of(wish));
  }

  /** Why this one comes first. */
  private String why(Effect first) {
    if (first.isEnough()) {
      return first.changes().size() > 1
          ? "No single change is enough; of the pairs that are this takes least effort."
          : "It is the least effort that is enough.";
    }
    if (!advice.present().passes()) {
      return "It is the least effort that brings the ride inside its limits; then ask again.";
    }
    Optional<Effect> best = best();
    return best.isEmpty() || best.get() == first
        ? "No change is enough by itself; this one does most."
        : "No change is enough by itself. This one does most of what the best would ("
            + Sentence.lowerFirst(orders.order(best.get()))
            + "), for less effort.";
  }

  /** The best single change that helps. */
  private Optional<Effect> best() {
    return advice.kinds().stream()
        .filter(k -> k.verdict() == KindAdvice.Verdict.HELPS)
        .map(k -> k.effect().orElseThrow())
        .min(Comparator.comparingDouble(Effect::shortfall));
  }

  private Optional<String> printed(Effect effect) {
    return effect.changes().stream().anyMatch(ChangeWords::isMade)
            && ShimWords.isShim(answer.caseFile(effect).rideCase().setup().shim())
        ? Optional.of(
            "A body to print, its sizes and its bolts: "
                + ChangeOrders.command(answer.caseFile(effect)))
        : Optional.empty();
  }

  private static boolean isMade(Change change) {
    return change.kind() == ChangeKind.SHIM && change.part().isEmpty();
  }

  /**
   * What comes of a kind of change, in a few words.
   *
   * @param kind advice on it
   * @param hasStock whether a stock was given
   */
  public static String verdict(KindAdvice kind, boolean hasStock) {
    return switch (kind.verdict()) {
      case HELPS -> "helps";
      case NO_HELP -> "helps nothing";
      case BREAKS_LIMITS ->
          "breaks: "
              + kind.effect().orElseThrow().judged().grounds().stream()
                  .map(GroundWords::name)
                  .collect(Collectors.joining(", "));
      case NONE_THERE ->
          kind.kind().isPart() && !hasStock ? "no stock was named" : "none that is known to fit";
    };
  }

  /** What comes after the cautions of every case. */
  public static List<String> cautions() {
    return List.of(
        "After a change tighten and check every bolt, and make the first ride slow,"
            + " in calm deep water, away from people.",
        "Nothing here says that a setup is safe.");
  }
}
