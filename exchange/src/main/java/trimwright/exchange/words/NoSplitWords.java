package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.NoTrimReason;
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

  String headline() {
    NoTrim first = none.first();
    String at = "at " + speed(first);
    return switch (first.reason()) {
      case TOO_SLOW -> slow(SplitWords.upperFirst(at) + " it does not fly; ");
      case STALLED -> slow(SplitWords.upperFirst(at) + " a wing is past its stall; ");
      case THRUST_SHORT ->
          none.wishedSpeed()
              ? "Wish for less speed: " + at + " the drive cannot push you."
              : "Check the speed you gave: " + at + " the drive cannot push you.";
      case FEET_CANNOT_REACH ->
          FootReach.find(first)
              .map(reach -> feet(reach, at))
              .orElse("Change stance or set: " + at + " your feet cannot reach.");
    };
  }

  private String slow(String what) {
    OptionalDouble from = none.fliesFrom();
    String verb = none.wishedSpeed() ? "wish for " : "ask about ";
    return what
        + (from.isPresent()
            ? verb + amounts.speed(from.getAsDouble()) + " or more, or fit a larger front wing."
            : verb + "another speed, or fit a larger front wing.");
  }

  private String feet(FootReach reach, String at) {
    String orders = FeetCure.of(caseFile, reach, amounts).orders();
    return (orders.isEmpty() ? "Change speed or set" : SplitWords.upperFirst(orders))
        + ": "
        + at
        + " "
        + reach.place(amounts)
        + ".";
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
              ? "It flies from " + amounts.speed(from.getAsDouble()) + " on; look at its curve."
              : "Look at its curve to see from what speed it flies, if at all.");
    }
    return all;
  }

  private boolean slowSomewhere() {
    return List.of(none.ridden(), none.wished()).stream()
        .flatMap(Optional::stream)
        .map(NoTrim::reason)
        .anyMatch(r -> r == NoTrimReason.TOO_SLOW || r == NoTrimReason.STALLED);
  }

  private String sentence(NoTrim outcome, String where) {
    Optional<FootReach> reach = FootReach.find(outcome);
    if (outcome.reason() == NoTrimReason.FEET_CANNOT_REACH && reach.isPresent()) {
      return "At "
          + where
          + " your feet cannot reach: "
          + reach.get().place(amounts)
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
        ? "."
        : ". For the "
            + Shown.decimals(100 * share, 0)
            + " % on the front foot that you want, "
            + orders
            + ".";
  }

  private String limit(NoTrim outcome) {
    Optional<Drive> drive = caseFile.rideCase().setup().drive();
    return outcome.reason() == NoTrimReason.THRUST_SHORT && drive.isPresent()
        ? " The drive has " + Shown.decimals(drive.get().maximumPower(), 0) + " W."
        : "";
  }

  private String speed(NoTrim outcome) {
    return amounts.speed(outcome.speed());
  }
}
