package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;

/** The words about the load on the feet. */
final class FeetWords {
  /** A foot share this near the wish counts as met [percent]. */
  private static final long SHARE_STEP_PERCENT = 5;

  /** A change of foot share that is not worth another speed [percent]. Chosen. */
  private static final long HAIR_PERCENT = 3;

  private final CaseFile caseFile;
  private final BigDecimal riddenSpeed;
  private final BigDecimal wishedSpeed;
  private final long ridden;
  private final long wished;
  private final long wanted;
  private final Amounts amounts;

  /** Load on the front foot at the wished speed. */
  private final String frontLeg;

  /** Pressure centre at the wished speed ahead of where it is wanted [m]. */
  private final double shift;

  private final FeetCure cure;

  FeetWords(CaseFile caseFile, CauseOutcome.Split split, Amounts amounts) {
    this.caseFile = caseFile;
    this.amounts = amounts;
    riddenSpeed = amounts.roundedSpeed(split.ridden().speed());
    wishedSpeed = amounts.roundedSpeed(split.wished().speed());
    ridden = percent(split.footShare().ridden());
    boolean same = riddenSpeed.compareTo(wishedSpeed) == 0;
    wished = same ? ridden : percent(split.footShare().atWishedSpeed());
    wanted = percent(split.footShare().wanted());
    frontLeg = amounts.mass((same ? split.ridden() : split.wished()).frontLeg());
    CauseParts place = split.footPressure();
    shift = (same ? place.ridden() : place.atWishedSpeed()) - place.wanted();
    cure = FeetCure.of(caseFile, shift, amounts);
  }

  /** Whether the feet are as wished at the wished speed. */
  boolean right() {
    return right(wished);
  }

  /** Whether the wished speed brings the load to where it is wanted, by more than a hair. */
  boolean rightAtWishedSpeedOnly() {
    return right()
        && !right(ridden)
        && Math.abs(ridden - wanted) - Math.abs(wished - wanted) >= HAIR_PERCENT;
  }

  /** Whether the feet complain more than this much pitch [degrees]. */
  boolean louderThan(BigDecimal degrees) {
    return !right()
        && Math.abs(wished - wanted) / (100 * SplitFigures.SHARE_WEIGHT)
            > degrees.doubleValue() / SplitFigures.ANGLE_WEIGHT_DEGREES;
  }

  /** Whether going from the speed ridden to the wished one makes the feet worse. */
  boolean worseAtWishedSpeed() {
    return Math.abs(wished - wanted) - Math.abs(ridden - wanted) >= SHARE_STEP_PERCENT;
  }

  private boolean betterAtWishedSpeed() {
    return Math.abs(ridden - wanted) - Math.abs(wished - wanted) >= SHARE_STEP_PERCENT;
  }

  /** What to do about the feet, and why. */
  String headline() {
    return Sentence.upperFirst(first()) + ": " + load() + ".";
  }

  /** The load at the wished speed; without a capital or a full stop. */
  String load() {
    return "the front foot carries "
        + wished
        + " % at "
        + amounts.speed(wishedSpeed)
        + ", you want "
        + wanted
        + " %";
  }

  /** The load on the feet at both speeds. */
  String sentence() {
    boolean same = riddenSpeed.compareTo(wishedSpeed) == 0;
    return "Feet: the front foot carries "
        + (same ? "" : ridden + " % at " + amounts.speed(riddenSpeed) + " and ")
        + wished
        + " % ("
        + frontLeg
        + ") at "
        + amounts.speed(wishedSpeed)
        + "; you want "
        + wanted
        + " %"
        + verdict(same)
        + "."
        + pace(same);
  }

  private String verdict(boolean same) {
    if (right()) {
      return same || right(ridden)
          ? ", so the feet are right"
          : ", so the feet are right at your wished speed";
    }
    return right(ridden) && !same ? ", so the feet are right only as you ride now" : "";
  }

  private String pace(boolean same) {
    if (same || !(worseAtWishedSpeed() || betterAtWishedSpeed())) {
      return "";
    }
    return " Riding "
        + (wishedSpeed.compareTo(riddenSpeed) > 0 ? "faster" : "slower")
        + (worseAtWishedSpeed() ? " makes the feet worse." : " helps the feet.");
  }

  /** The cures and what to mind with each; empty where the feet are right. */
  List<String> cures() {
    if (right()) {
      return List.of();
    }
    List<String> all = new ArrayList<>();
    String along = cure.orders();
    // Lift at the back presses the nose down, and the weight must go back to hold it up.
    boolean up = shift > 0;
    String turn = "turn the stabilizer's leading edge " + (up ? "up" : "down");
    all.add(
        Sentence.upperFirst(along.isEmpty() ? turn : along + ", or " + turn)
            + ", half a degree at a time"
            + (along.isEmpty()
                ? "."
                : ". These are cures for one mismatch: take one, not a bit of each."));
    all.addAll(cure.warnings());
    all.addAll(ShimWords.turn(up, caseFile.notes().stabilizerMounting()));
    double shim = caseFile.rideCase().setup().shim();
    if (ShimWords.isShim(shim)) {
      ShimWords now = ShimWords.of(shim, caseFile.notes().stabilizerMounting());
      all.add("As it is shimmed now: " + Sentence.lowerFirst(now.headline()) + " " + now.fitting());
      if (shim > 0 != up) {
        all.add("Take that shim out first: it turns the other way.");
      }
    }
    return all;
  }

  /** Both ways along the board, or the stabilizer where neither will do; without a capital. */
  String order() {
    String along = cure.orders();
    return along.isEmpty() ? turn() : along;
  }

  /** The first of these ways. */
  String first() {
    String along = cure.first();
    return along.isEmpty() ? turn() : along;
  }

  private String turn() {
    return "turn the stabilizer's leading edge " + (shift > 0 ? "up" : "down") + " half a degree";
  }

  private boolean right(long share) {
    return Math.abs(share - wanted) < SHARE_STEP_PERCENT;
  }

  private static long percent(double share) {
    return Shown.rounded(share * 100, 0).longValue();
  }
}
