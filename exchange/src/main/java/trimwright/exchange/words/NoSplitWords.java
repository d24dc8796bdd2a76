package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome.Excess;
import trimwright.kernel.trim.TrimOutcome.NoTrim;

/** The words where a speed has no trim and so no split; {@link CauseWords} is its door. */
final class NoSplitWords {
  private final CaseFile caseFile;
  private final CauseOutcome.NoSplit none;
  private final Amounts amounts;

  NoSplitWords(CaseFile caseFile, CauseOutcome.NoSplit none, Amounts amounts) {
    this.caseFile = caseFile;
    this.none = none;
    this.amounts = amounts;
  }

  /** What to do at the speed ridden; empty where that one trims. */
  Optional<String> order() {
    return none.ridden().map(this::ridden);
  }

  private String ridden(NoTrim ridden) {
    String why = ": at " + speed(ridden) + " " + ReasonWords.clause(ridden) + ".";
    if (ridden.excess().isPresent()) {
      return (ridden.excess().get() == Excess.WINGS ? "Ride slower" : CHECK) + why;
    }
    return switch (ridden.reason()) {
      case TOO_SLOW, STALLED -> {
        if (none.fliesFrom().isPresent()) {
          yield "Ride " + amounts.speedUp(none.fliesFrom().getAsDouble()) + " or more" + why;
        }
        yield wishedTrims()
            ? pace(ridden) + why
            : ridden.reason() == NoTrimReason.TOO_SLOW
                ? "Ride faster, or fit a larger front wing" + why
                : "Change speed or set" + why;
      }
      case THRUST_SHORT ->
          (wishedTrims() ? pace(ridden) : nearStall(ridden) ? "Ride faster" : "Ride slower") + why;
      case FEET_CANNOT_REACH -> feet(ridden);
    };
  }

  private static final String CHECK = "Check masses, volumes, wind and pull";

  private String feet(NoTrim ridden) {
    Optional<FeetCure> cure = FootReach.find(ridden).map(r -> FeetCure.of(caseFile, r, amounts));
    if (wishedTrims()) {
      String first = cure.map(FeetCure::first).orElse("");
      return pace(ridden) + (first.isEmpty() ? "" : ", or " + first) + ".";
    }
    String orders = cure.map(FeetCure::orders).orElse("");
    return orders.isEmpty()
        ? "Change speed or set: at " + speed(ridden) + " your feet cannot reach."
        : Sentence.upperFirst(orders) + ".";
  }

  private boolean wishedTrims() {
    return none.wished().isEmpty();
  }

  private static boolean nearStall(NoTrim outcome) {
    return outcome
        .wouldNeed()
        .filter(p -> p.brokenLimits().contains(Limit.STALL_MARGIN))
        .isPresent();
  }

  /** From the speed ridden towards the wished one. */
  private String pace(NoTrim ridden) {
    var faster =
        amounts
            .roundedSpeed(caseFile.rideCase().rider().wishedSpeed())
            .subtract(amounts.roundedSpeed(ridden.speed()));
    return "Ride " + amounts.pace(faster) + (faster.signum() >= 0 ? " faster" : " slower");
  }

  /** What to do about the wished speed, or else about the one ridden. */
  String headline() {
    if (none.wished().isEmpty()) {
      return ridden(none.first());
    }
    NoTrim wished = none.first();
    String why = ": at " + speed(wished) + " " + ReasonWords.clause(wished) + ".";
    if (wished.excess().isPresent()) {
      return (wished.excess().get() == Excess.WINGS ? "Wish for less speed" : CHECK) + why;
    }
    return switch (wished.reason()) {
      case TOO_SLOW, STALLED ->
          (none.fliesFrom().isPresent()
                  ? "Wish for " + amounts.speedUp(none.fliesFrom().getAsDouble()) + " or more"
                  : "Wish for another speed, or change the set")
              + why;
      case THRUST_SHORT -> "Wish for " + (nearStall(wished) ? "more" : "less") + " speed" + why;
      case FEET_CANNOT_REACH -> {
        String first =
            FootReach.find(wished).map(r -> FeetCure.of(caseFile, r, amounts).first()).orElse("");
        yield (first.isEmpty() ? "Wish for another speed, or change the set" : upper(first)) + why;
      }
    };
  }

  /** What stands in the way, to stand below the order without saying it again. */
  String why() {
    if (none.ridden().isEmpty()) {
      NoTrim wished = none.first();
      return "There is no trim at your wished "
          + speed(wished)
          + ": "
          + ReasonWords.clause(wished)
          + ".";
    }
    NoTrim ridden = none.ridden().get();
    if (slow(ridden) && none.fliesFrom().isPresent()) {
      return "It flies from " + amounts.speed(none.fliesFrom().getAsDouble()) + " on.";
    }
    return FootReach.find(ridden)
        .filter(reach -> ridden.reason() == NoTrimReason.FEET_CANNOT_REACH)
        .map(reach -> upper(reach.place(amounts)) + ".")
        .orElseGet(() -> ReasonWords.of(ridden, amounts));
  }

  List<String> sentences() {
    List<String> all = new ArrayList<>();
    none.wished().ifPresent(n -> all.add(sentence(n, "your wished speed of " + speed(n))));
    none.ridden()
        .filter(n -> none.wished().map(w -> w.speed() != n.speed()).orElse(true))
        .ifPresent(n -> all.add(sentence(n, "the " + speed(n) + " you ride")));
    if (slowSomewhere()) {
      OptionalDouble from = none.fliesFrom();
      all.add(
          from.isPresent()
              ? "It flies from "
                  + amounts.speed(from.getAsDouble())
                  + " on, sooner with a larger front wing; look at its curve."
              : "Look at its curve to see from what speed it flies, if at all.");
    }
    return all;
  }

  private boolean slowSomewhere() {
    return Stream.concat(none.ridden().stream(), none.wished().stream())
        .anyMatch(NoSplitWords::slow);
  }

  private static boolean slow(NoTrim outcome) {
    return outcome.excess().isEmpty()
        && (outcome.reason() == NoTrimReason.TOO_SLOW || outcome.reason() == NoTrimReason.STALLED);
  }

  private String sentence(NoTrim outcome, String where) {
    Optional<FootReach> reach = FootReach.find(outcome);
    if (outcome.reason() == NoTrimReason.FEET_CANNOT_REACH && reach.isPresent()) {
      String orders = FeetCure.of(caseFile, reach.get(), amounts).orders();
      return "At "
          + where
          + " your feet cannot reach: "
          + reach.get().place(amounts)
          + "."
          + (orders.isEmpty() ? "" : " To reach it, " + orders + ".")
          + wish(reach.get());
    }
    return "At "
        + where
        + " there is no trim. "
        + ReasonWords.of(outcome, amounts)
        + limit(outcome);
  }

  /** How far the feet must go not only to reach but to carry as wished. */
  private String wish(FootReach reach) {
    Rider rider = caseFile.rideCase().rider();
    double share = rider.wishedFootShare();
    double shift =
        reach.ahead()
            ? reach.distance() + (1 - share) * rider.stance()
            : -reach.distance() - share * rider.stance();
    String orders = FeetCure.of(caseFile, shift, amounts).orders();
    return orders.isEmpty()
        ? ""
        : " For the "
            + Shown.decimals(100 * share, 0)
            + " % on the front foot that you want, "
            + orders
            + ".";
  }

  private String limit(NoTrim outcome) {
    // Of "takes 900 W, the drive has 800 W" the second half: the first has been said.
    String takes = ReasonWords.power(caseFile, outcome);
    return takes.isEmpty() ? "" : " " + upper(takes.substring(takes.indexOf(", ") + 2)) + ".";
  }

  private String speed(NoTrim outcome) {
    return amounts.speed(outcome.speed());
  }

  private static String upper(String text) {
    return Sentence.upperFirst(text);
  }
}
