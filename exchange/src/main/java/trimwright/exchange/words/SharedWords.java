package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Skill;
import trimwright.fitting.fleet.Proven;

/** What a choice of hardware for many riders says. */
public final class SharedWords {
  /** Riders left out that are named. */
  private static final int MOST_NAMES = 6;

  /** A cost of sharing that is told: a tenth of poor in one of ten wishes. */
  private static final double TOLD = 0.01;

  private SharedWords() {}

  /** The words of a household's or a school's choice. */
  public static List<String> of(FleetAnswer answer) {
    List<String> words = new ArrayList<>();
    int persons = persons(answer.cards());
    if (answer.sets().isEmpty()) {
      words.add("No set of this stock passes all limits for any of these riders.");
      return words;
    }
    words.add(
        count(answer.sets().size(), "set")
            + (answer.sets().size() == 1 ? " serves " : " serve ")
            + of((long) answer.served().value(), persons)
            + served(answer.served()));
    addLeftOut(answer.cards(), words);
    words.add(answer.wanted() == 1 ? worst(answer) : mean(answer.mean()));
    addCosts(answer, words);
    addChecked(answer.cards(), answer.looked(), answer.fallen(), words);
    addFirstFlights(answer.bases(), words);
    return words;
  }

  /** The words of a choice of what to own. */
  public static List<String> of(BudgetAnswer answer) {
    List<String> words = new ArrayList<>();
    int persons = persons(answer.cards());
    words.add(
        "For "
            + money(answer.choice().money())
            + " of "
            + money(answer.budget())
            + ", "
            + count(answer.choice().bought().size(), "part")
            + (answer.choice().bought().size() == 1 ? " serves " : " serve ")
            + of((long) answer.choice().served().value(), persons)
            + served(answer.choice().served()));
    addLeftOut(answer.cards(), words);
    if (answer.choice().served().value() > 0) {
      words.add(mean(answer.choice().mean()));
    }
    if (!answer.unpriced().isEmpty()) {
      words.add(
          "Without a price, and so not to be bought: "
              + String.join(", ", answer.unpriced())
              + ".");
    }
    words.add("Shims are settings here: they are at hand and outside the budget.");
    if (!answer.curve().complete()) {
      words.add("Time ran out before the curve of money came to its end.");
    }
    addChecked(answer.cards(), answer.looked(), answer.fallen(), words);
    addFirstFlights(answer.bases(), words);
    return words;
  }

  private static int persons(List<SharedCard> cards) {
    return cards.stream().mapToInt(SharedCard::persons).sum();
  }

  private static String of(long served, int persons) {
    return served == persons
        ? "all of " + count(persons, "person")
        : served + " of " + count(persons, "person");
  }

  private static String served(Proven served) {
    return served.isBest()
        ? ": no choice serves more."
        : "; whether up to "
            + (long) served.bound()
            + " can be served was not settled in the time given.";
  }

  private static String worst(FleetAnswer answer) {
    return "Who is worst off falls short by "
        + Shown.decimals(answer.worst(), 2)
        + ", the mean by "
        + Shown.decimals(answer.mean().value(), 2)
        + (answer.mean().isBest()
            ? ": every set was looked at, and none that serves as many is better for the worst off."
            : ": whether another set is better was not settled.");
  }

  private static String mean(Proven mean) {
    String found = "They fall short by " + Shown.decimals(mean.value(), 2) + " in the mean: ";
    return mean.isBest()
        ? found + "of all choices that serve as many none is below."
        : found
            + "none that serves as many is below "
            + Shown.decimals(Math.max(0, mean.bound()), 2)
            + "; the rest was not settled in the time given.";
  }

  private static void addLeftOut(List<SharedCard> cards, List<String> words) {
    List<String> names =
        cards.stream().filter(card -> card.setup().isEmpty()).map(SharedCard::rider).toList();
    if (!names.isEmpty()) {
      String more =
          names.size() > MOST_NAMES ? " and " + (names.size() - MOST_NAMES) + " more" : "";
      words.add(
          "Not served: "
              + names.stream().limit(MOST_NAMES).collect(Collectors.joining(", "))
              + more
              + ".");
    }
  }

  private static void addCosts(FleetAnswer answer, List<String> words) {
    for (int i = 0; i < answer.cards().size() && answer.wanted() == 1; i++) {
      SharedCard shared = answer.cards().get(i);
      SharedCard alone = answer.alone().get(i);
      double cost = shared.shortfall() - alone.shortfall();
      if (shared.setup().isPresent() && cost >= TOLD) {
        words.add(
            shared.rider()
                + " gives up "
                + Shown.decimals(cost, 2)
                + " for sharing; alone it would be "
                + alone.setup().map(SetupWords::parts).orElse("nothing")
                + ".");
      }
    }
  }

  private static void addChecked(
      List<SharedCard> cards, int looked, int fallen, List<String> words) {
    long open = cards.stream().filter(c -> c.setup().isPresent() && c.judged().isEmpty()).count();
    words.add(
        count(looked, "card")
            + (looked == 1 ? " was" : " were")
            + " solved in full, of which "
            + fallen
            + " broke a limit and gave way"
            + (open == 0
                ? "; every card shown is one that holds."
                : "; " + open + " of those shown stand on tables alone."));
  }

  private static void addFirstFlights(List<CaseFile> bases, List<String> words) {
    if (bases.stream().anyMatch(base -> base.notes().skill() == Skill.FIRST_FLIGHTS)) {
      words.add(
          "First flights: the falls of the rules come first and are traded for nothing; licensed"
              + " instruction, local rules and makers' limits come before any of this.");
    }
  }

  private static String count(long number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }

  /** An amount of money, in the shop's currency. */
  public static String money(double amount) {
    return amount == Math.rint(amount)
        ? String.format(Locale.ROOT, "%,.0f", amount)
        : String.format(Locale.ROOT, "%,.2f", amount);
  }
}
