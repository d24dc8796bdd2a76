package trimwright.exchange.words;

import java.math.BigDecimal;
import trimwright.kernel.trim.Limit;

/** What a split asks for first: the order for the verdict, and the headline of the cause. */
final class SplitOrders {
  private final SplitFigures figures;

  SplitOrders(SplitFigures figures) {
    this.figures = figures;
  }

  /** The concrete thing to do at the speed ridden. */
  String order() {
    return switch (figures.lead) {
      case LIST, PACE_FOR_FEET, NOTHING -> headline();
      case LEAVE_LIMIT -> pace() + ": " + limitLeft() + ".";
      case NEAR_STALL ->
          nearNow()
              ? "Ride faster or take a larger front wing: "
                  + ReasonWords.clause(Limit.STALL_MARGIN, figures.riddenPoint)
                  + "."
              : "Wish for more speed, or take a larger front wing.";
      case UNSTABLE -> UNSTABLE + ".";
      case CHOP ->
          "Fly higher or find flatter water: "
              + ReasonWords.clause(Limit.BOARD_CLEARANCE, figures.riddenPoint)
              + ".";
      case FEET -> Sentence.upperFirst(figures.feet.order()) + ".";
      case HIDDEN -> "Fit " + figures.wedge.first() + ", then " + lower(pace()) + ".";
      case PACE -> pace() + afterPace() + ".";
      case SET -> "Fit " + figures.wedge.order() + ".";
      case SMALL ->
          "Change nothing: " + turn(figures.whole()) + " is small, and few riders feel it.";
    };
  }

  private static final String UNSTABLE =
      "Fit a larger stabilizer or a longer fuselage: the foil by itself is unstable";

  /** What the split shows, and what to do about it. */
  String headline() {
    return switch (figures.lead) {
      case LIST ->
          "Check the list first: "
              + figures.unexplained().abs().toPlainString()
              + "° of what you measured is neither speed nor set.";
      case LEAVE_LIMIT -> pace() + ": at " + figures.riddenSpeed + " " + limitLeft() + ".";
      case NEAR_STALL ->
          (nearNow() ? "Ride faster or" : "Wish for more speed, or")
              + " take a larger front wing: at "
              + figures.wishedSpeed
              + " the wing is near its stall.";
      case UNSTABLE -> UNSTABLE + " at " + figures.wishedSpeed + ".";
      case CHOP -> "Fly higher or find flatter water: at either speed the board touches the chop.";
      case FEET -> figures.feet.headline();
      case HIDDEN -> "Change the set before the speed: " + hidden() + ".";
      case PACE -> pace() + thenSeeTo() + ": " + shares() + ".";
      case SET ->
          (SplitFigures.matters(figures.speedPart())
                  ? "Change the set before the speed: it makes "
                  : "Change the set, not the speed: it makes ")
              + turn(figures.setPart())
              + ".";
      case PACE_FOR_FEET -> pace() + " for your feet: the deck's angle can stay.";
      case SMALL ->
          "Leave the deck's angle: " + turn(figures.whole()) + " is small, and few riders feel it.";
      case NOTHING -> "Change nothing: deck and feet are where you want them.";
    };
  }

  /** What the split shows, to stand below the order without saying it again. */
  String why() {
    return switch (figures.lead) {
      case LIST ->
          figures.unexplained().abs().toPlainString()
              + "° of what you measured is neither speed nor set.";
      case NEAR_STALL -> "At " + figures.wishedSpeed + " the wing is near its stall.";
      case UNSTABLE -> "At " + figures.wishedSpeed + " it is the set, and not the speed.";
      case FEET -> Sentence.upperFirst(figures.feet.load()) + ".";
      case NOTHING -> "Neither speed nor set asks for a change.";
      case LEAVE_LIMIT, CHOP, HIDDEN, PACE, SET, PACE_FOR_FEET, SMALL -> parts();
    };
  }

  private String parts() {
    BigDecimal speed = figures.speedPart();
    BigDecimal set = figures.setPart();
    if (speed.signum() == 0) {
      return set.signum() == 0
          ? "The deck's angle is as you want it."
          : turn(set) + " is the set, none of it speed.";
    }
    return turn(speed)
        + " is speed"
        + (set.signum() == 0 ? ", and the set is right." : ", " + turn(set) + " the set.");
  }

  private boolean nearNow() {
    return figures.riddenPoint.brokenLimits().contains(Limit.STALL_MARGIN);
  }

  private String limitLeft() {
    return ReasonWords.clause(figures.findLimitLeft().orElseThrow(), figures.riddenPoint);
  }

  private String hidden() {
    if (!SplitFigures.matters(figures.whole())) {
      return "the two cancel at " + figures.riddenSpeed;
    }
    boolean past = figures.whole().signum() != figures.setPart().signum();
    return figures.riddenSpeed
        + (past ? " more than hides its " : " hides a part of its ")
        + turn(figures.setPart());
  }

  private String thenSeeTo() {
    boolean feetToo = figures.feet.worseAtWishedSpeed();
    if (figures.setFelt()) {
      return feetToo ? ", then see to set and feet" : ", then see to the set";
    }
    return feetToo ? ", then see to your feet" : "";
  }

  private String afterPace() {
    if (figures.setFelt()) {
      return ", then fit " + figures.wedge.first();
    }
    return figures.feet.worseAtWishedSpeed()
        ? ", then " + figures.feet.first()
        : " and the deck settles " + settled();
  }

  /** Where the deck comes to rest at the wished speed. */
  String settled() {
    return figures.wished.signum() == 0 ? "level" : "at " + turn(figures.wished);
  }

  private String shares() {
    return figures.speedPart().abs().toPlainString()
        + "° "
        + Shown.noseWord(figures.speedPart().signum())
        + " is speed, "
        + (SplitFigures.matters(figures.setPart())
            ? turn(figures.setPart()) + " the set"
            : "next to nothing the set");
  }

  String pace() {
    return "Ride "
        + figures.amounts.pace(figures.faster)
        + (figures.faster.signum() >= 0 ? " faster" : " slower");
  }

  private static String lower(String text) {
    return Sentence.lowerFirst(text);
  }

  static String turn(BigDecimal degrees) {
    return degrees.abs().toPlainString() + "° " + Shown.noseWord(degrees.signum());
  }
}
