package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimPoint;

/** The sentences of one split in reading order; {@link CauseWords} is its door. */
final class SplitWords {
  private final SplitFigures figures;

  SplitWords(SplitFigures figures) {
    this.figures = figures;
  }

  List<String> sentences() {
    List<String> all = new ArrayList<>();
    limits(figures.riddenPoint, figures.riddenSpeed).ifPresent(all::add);
    if (figures.faster.signum() != 0) {
      limits(figures.wishedPoint, figures.wishedSpeed).ifPresent(all::add);
    }
    all.add(
        "At "
            + figures.riddenSpeed
            + " the deck rides "
            + nose(figures.ridden)
            + "; you want it "
            + nose(figures.wanted)
            + ".");
    figures.measured.ifPresent(m -> all.add(measuredSentence(m)));
    all.add(splitSentence());
    if (figures.lead == SplitFigures.Lead.LIST) {
      all.add(
          "Do nothing of what follows before the list is done: it holds only if the list is clean.");
    }
    boolean nearStall = figures.wishedPoint.brokenLimits().contains(Limit.STALL_MARGIN);
    if (SplitFigures.matters(figures.speedPart())
        && figures.paceHelps()
        && figures.faster.signum() != 0
        && !nearStall) {
      all.add(
          "At "
              + figures.wishedSpeed
              + " the deck settles "
              + new SplitOrders(figures).settled()
              + ".");
    }
    if (SplitFigures.matters(figures.setPart())) {
      all.add(figures.wedge.sentence());
    }
    all.add(figures.feet.sentence());
    if (!figures.feet.right() && nearStall) {
      all.add("See to speed and wing before your feet: the load on them changes with both.");
    }
    all.addAll(figures.feet.cures());
    return all;
  }

  private static Optional<String> limits(TrimPoint point, String speed) {
    if (point.brokenLimits().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "At "
            + speed
            + " this is outside the limits. "
            + point.brokenLimits().stream()
                .sorted()
                .map(ReasonWords::of)
                .collect(Collectors.joining(" ")));
  }

  private String measuredSentence(BigDecimal m) {
    String head = "You measured " + nose(m) + ": ";
    if (!SplitFigures.matters(figures.unexplained())) {
      return head + "that agrees with the computation within half a degree.";
    }
    return head
        + figures.unexplained().abs().toPlainString()
        + "° more "
        + Shown.noseWord(figures.unexplained().signum())
        + " than computed. Neither speed nor set explains that: check the list first.";
  }

  private String splitSentence() {
    BigDecimal setPart = figures.setPart();
    BigDecimal speedPart = figures.speedPart();
    String set =
        setPart.signum() == 0 ? "the set is right" : "the set makes " + SplitOrders.turn(setPart);
    if (figures.faster.signum() == 0) {
      return "You ride at your wished speed, so speed has no part in it: " + set + ".";
    }
    return "Riding "
        + figures.amounts.speed(figures.faster.abs())
        + (figures.faster.signum() > 0 ? " slower" : " faster")
        + " than you wish "
        + (speedPart.signum() == 0 ? "changes nothing" : "makes " + SplitOrders.turn(speedPart))
        + "; "
        + set
        + "."
        + together();
  }

  private String together() {
    if (figures.whole().signum() != 0) {
      return " Together: " + SplitOrders.turn(figures.whole()) + ".";
    }
    return figures.setPart().signum() == 0 ? "" : " Together they cancel.";
  }

  private static String nose(BigDecimal degrees) {
    return degrees.signum() == 0 ? "level" : SplitOrders.turn(degrees);
  }
}
