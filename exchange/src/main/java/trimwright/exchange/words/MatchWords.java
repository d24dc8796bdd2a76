package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trimwright.exchange.unit.Measures;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.match.Candidate;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.match.MatchRow;
import trimwright.fitting.match.Tally;
import trimwright.fitting.wish.Wish;

/** What a match says, what to do first, numbers next. */
public final class MatchWords {
  /** Grounds that are named. */
  private static final int MOST_GROUNDS = 3;

  private MatchWords() {}

  /**
   * The words.
   *
   * @param answer what was found
   * @param measures in which units
   */
  public static List<String> of(MatchAnswer answer, Measures measures) {
    MatchResult result = answer.result();
    List<String> words = new ArrayList<>();
    if (result.rows().isEmpty()) {
      none(result, words);
    } else {
      best(result, measures, words);
    }
    words.add(counted(result));
    if (result.asked().isFirstFlights()) {
      words.add(
          "First flights: the falls of the rules come first and are traded for nothing. They are"
              + " computed standing, kneeling and prone, with the gentlest remote.");
    }
    return words;
  }

  private static void none(MatchResult result, List<String> words) {
    if (result.fallen().isEmpty() || result.sure()) {
      words.add("No setup of this stock passes all limits for this rider: none is recommended.");
    } else {
      words.add(
          "None of the "
              + count(result.looked(), "setup")
              + " that suit the wishes best passes all limits: none is recommended. The others were"
              + " not solved in full.");
    }
    if (!result.fallen().isEmpty()) {
      MatchResult.Fallen near = result.fallen().get(0);
      words.add(
          "The first of them breaks limits: " + setup(near.candidate(), Measures.METRIC) + ".");
      near.judged().grounds().forEach(ground -> words.add(GroundWords.sentence(ground)));
    }
  }

  private static void best(MatchResult result, Measures measures, List<String> words) {
    MatchRow first = result.rows().get(0);
    words.add("Try this first: " + setup(first.candidate(), measures) + ".");
    words.add(misses(first, result, measures));
    if (!first.ties().isEmpty()) {
      words.add(
          first.ties().size() == result.rows().size() - 1
              ? "With what is known of the parts none of the setups shown can be told from it: take"
                  + " what is at hand, or measure the parts."
              : count(first.ties().size(), "other setup")
                  + " shown cannot be told from it with what is known of the parts.");
    }
    if (!result.sure()) {
      words.add(
          "Only "
              + result.looked()
              + " setups were solved in full: one that is not shown may be as good as the last.");
    }
  }

  /** What the best setup leaves to be wished. */
  private static String misses(MatchRow row, MatchResult result, Measures measures) {
    List<Wish> missed =
        Stream.of(Wish.values())
            .filter(wish -> result.asked().wishes().weight(wish) > 0)
            .filter(wish -> lacks(row, result, wish) > 0)
            .sorted(
                Comparator.comparingDouble(
                    wish -> -lacks(row, result, wish) * result.asked().wishes().weight(wish)))
            .limit(MOST_GROUNDS)
            .toList();
    if (missed.isEmpty()) {
      return "It meets every wish that weighs.";
    }
    return "Of what you wish it leaves: "
        + missed.stream()
            .map(
                wish ->
                    WishWords.title(wish).toLowerCase(Locale.ROOT)
                        + " "
                        + WishWords.text(wish, row.judged().values(), measures)
                        + " (good is "
                        + WishWords.good(wish, result.asked().wishes().grade(wish), measures)
                        + ")")
            .collect(Collectors.joining(", "))
        + ".";
  }

  private static double lacks(MatchRow row, MatchResult result, Wish wish) {
    return result.asked().wishes().shortfall(wish, row.judged().values().of(wish));
  }

  private static String setup(Candidate candidate, Measures measures) {
    return SetupWords.parts(candidate.setup())
        + ", "
        + SetupWords.shim(candidate.setup())
        + ", "
        + String.join(", ", SetupWords.places(candidate.placement(), measures));
  }

  /** How many passed, and what most of the others fell to. */
  private static String counted(MatchResult result) {
    Tally.Counts all = result.tally().all();
    String counted =
        "Of "
            + count(all.setups(), "setup")
            + " "
            + grouped(all.passed())
            + (all.passed() == 1 ? " passes" : " pass")
            + " the limits that tables know";
    List<Ground> fell =
        Stream.of(Ground.values())
            .filter(ground -> all.fell(ground) > 0)
            .sorted(Comparator.comparingLong(ground -> -all.fell(ground)))
            .limit(MOST_GROUNDS)
            .toList();
    return fell.isEmpty()
        ? counted + "."
        : counted
            + "; "
            + fell.stream()
                .map(ground -> grouped(all.fell(ground)) + " fell to " + GroundWords.name(ground))
                .collect(Collectors.joining(", "))
            + ".";
  }

  private static String count(long number, String what) {
    return grouped(number) + " " + what + (number == 1 ? "" : "s");
  }

  /** A whole number with its thousands apart. */
  public static String grouped(long number) {
    return String.format(Locale.ROOT, "%,d", number);
  }
}
