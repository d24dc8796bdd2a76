package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;

/** The words of one split; {@link CauseWords} is its door. */
final class SplitWords {
  /** The trade's step for angles: less is not worth a spanner [degrees]. */
  private static final BigDecimal ANGLE_STEP = new BigDecimal("0.5");

  /** A foot share this near the wish counts as met [percent]. */
  private static final int SHARE_STEP_PERCENT = 5;

  /**
   * A rider complains as much of a degree of pitch as of a twentieth of the load on the wrong foot.
   * Chosen; decides which of the two is named first.
   */
  static final double ANGLE_WEIGHT_DEGREES = 1;

  static final double SHARE_WEIGHT = 0.05;

  private final CaseFile caseFile;
  private final String riddenSpeed;
  private final String wishedSpeed;

  /** Wished less ridden, as shown [km/h]. */
  private final BigDecimal faster;

  private final BigDecimal ridden;
  private final BigDecimal wished;
  private final BigDecimal wanted;
  private final Optional<BigDecimal> measured;
  private final long riddenShare;
  private final long wishedShare;
  private final long wantedShare;
  private final long setMillimetres;
  private final long frontKilograms;

  SplitWords(CaseFile caseFile, CauseOutcome.Split split) {
    this.caseFile = caseFile;
    BigDecimal from = Shown.rounded(Shown.kmh(split.ridden().speed()), 1);
    BigDecimal to = Shown.rounded(Shown.kmh(split.wished().speed()), 1);
    riddenSpeed = from.toPlainString() + " km/h";
    wishedSpeed = to.toPlainString() + " km/h";
    faster = to.subtract(from);
    CauseParts pitch = split.pitch();
    ridden = tenth(pitch.ridden());
    wished = tenth(pitch.atWishedSpeed());
    wanted = tenth(pitch.wanted());
    measured =
        pitch.measured().isPresent()
            ? Optional.of(tenth(pitch.measured().getAsDouble()))
            : Optional.empty();
    CauseParts share = split.footShare();
    riddenShare = percent(share.ridden());
    wishedShare = percent(share.atWishedSpeed());
    wantedShare = percent(share.wanted());
    setMillimetres = Shown.rounded(Shown.mm(split.footPressure().setPart()), 0).longValue();
    frontKilograms = Shown.rounded(split.wished().frontLeg(), 0).longValue();
  }

  String headline() {
    if (unexplained().abs().compareTo(ANGLE_STEP) >= 0
        && unexplained().abs().compareTo(speedPart().abs().max(setPart().abs())) >= 0) {
      return "Check the list first: "
          + unexplained().abs().toPlainString()
          + "° of what you measured is neither speed nor set.";
    }
    boolean speedMatters = matters(speedPart());
    boolean setMatters = matters(setPart());
    if (!speedMatters && !setMatters) {
      return feetRight()
          ? "Change nothing: deck and feet are where you want them."
          : "Leave the deck's angle, and " + feetFirst() + ".";
    }
    if (speedMatters && setMatters && !paceHelps()) {
      return matters(whole())
          ? "Change the set before you change speed: at "
              + riddenSpeed
              + " your speed hides a part of the set's "
              + turn(setPart())
              + "."
          : "Change the set before you change speed: the two cancel at "
              + riddenSpeed
              + ", and only there.";
    }
    if (speedMatters && !(setMatters && setPart().abs().compareTo(speedPart().abs()) > 0)) {
      return paceFirst() + (setMatters ? ", then see to the set" : "") + ": " + shareOf() + ".";
    }
    return (speedMatters ? "Change the set before the speed: " : "Change the set, not the speed: ")
        + wedge()
        + ", or a front wing that carries you flatter.";
  }

  List<String> sentences() {
    List<String> all = new ArrayList<>();
    all.add(
        "At "
            + riddenSpeed
            + " the deck rides "
            + Shown.nose(ridden.doubleValue())
            + "; you want it "
            + (wanted.signum() == 0 ? "level" : Shown.nose(wanted.doubleValue()))
            + ".");
    measured.ifPresent(m -> all.add(measuredSentence(m)));
    all.add(splitSentence());
    if (matters(speedPart()) && paceHelps() && faster.signum() != 0) {
      all.add(
          paceFirst()
              + " and the deck settles "
              + (wished.signum() == 0 ? "" : "at ")
              + Shown.nose(wished.doubleValue())
              + ".");
    }
    if (matters(setPart())) {
      all.add(
          "For the set's part put "
              + wedge()
              + ": it turns the deck and leaves the load on your feet as it is.");
    }
    all.add(feetSentence());
    if (!feetRight()) {
      all.add(feetCures());
      if (caseFile.rideCase().setup().shim() != 0) {
        all.addAll(shimSentences());
      }
    }
    return all;
  }

  private List<String> shimSentences() {
    ShimWords shim =
        ShimWords.of(caseFile.rideCase().setup().shim(), caseFile.notes().stabilizerMounting());
    return List.of("As it is shimmed now: " + lowerFirst(shim.headline()) + " " + shim.fitting());
  }

  private String measuredSentence(BigDecimal m) {
    String gap = unexplained().abs().toPlainString() + "°";
    String head = "You measured " + Shown.nose(m.doubleValue()) + ": ";
    if (!matters(unexplained())) {
      return head + "that agrees with the computation within half a degree.";
    }
    return head
        + gap
        + " more "
        + Shown.noseWord(unexplained().doubleValue())
        + " than computed. Neither speed nor set explains that: check the list first.";
  }

  private String splitSentence() {
    if (faster.signum() == 0) {
      return "You ride at your wished speed, so speed has no part in it: the set makes "
          + turn(setPart())
          + ".";
    }
    return "Riding "
        + faster.abs().toPlainString()
        + " km/h "
        + (faster.signum() > 0 ? "slower" : "faster")
        + " than you wish makes "
        + turn(speedPart())
        + "; the set makes "
        + turn(setPart())
        + ". Together: "
        + turn(whole())
        + ".";
  }

  private String feetSentence() {
    return "Feet: the front foot carries "
        + riddenShare
        + " % at "
        + riddenSpeed
        + " and "
        + wishedShare
        + " % ("
        + frontKilograms
        + " kg) at "
        + wishedSpeed
        + "; you want "
        + wantedShare
        + " %"
        + (feetRight() ? ", so the feet are right." : ".");
  }

  private String feetCures() {
    return upperFirst(feetFirst())
        + ", or turn the stabilizer's leading edge "
        // Lift at the back presses the nose down, and the weight must go back to hold it up.
        + (setMillimetres > 0 ? "up" : "down")
        + ", half a degree at a time. These are two cures for one mismatch: take one, not a bit of"
        + " both.";
  }

  private String feetFirst() {
    return "move both feet "
        + Math.abs(setMillimetres)
        + " mm "
        + (setMillimetres > 0 ? "forward" : "back");
  }

  private String paceFirst() {
    return "Ride "
        + faster.abs().stripTrailingZeros().toPlainString()
        + " km/h "
        + (faster.signum() >= 0 ? "faster" : "slower");
  }

  private String shareOf() {
    return speedPart().abs().toPlainString()
        + "° "
        + Shown.noseWord(speedPart().doubleValue())
        + (matters(setPart())
            ? " is speed, " + turn(setPart()) + " the set"
            : " is speed, next to nothing the set");
  }

  private String wedge() {
    // A thick back end lifts the board's tail off the mast: nose down.
    return "a wedge of "
        + setPart().abs().toPlainString()
        + "° under the mast's base, thick end to the "
        + (setPart().signum() > 0 ? "back" : "front");
  }

  private boolean feetRight() {
    return Math.abs(wishedShare - wantedShare) < SHARE_STEP_PERCENT;
  }

  private BigDecimal whole() {
    return ridden.subtract(wanted);
  }

  /** Whether the wished speed brings the deck nearer to the wish: not where the parts cancel. */
  private boolean paceHelps() {
    return setPart().abs().compareTo(whole().abs()) < 0;
  }

  private BigDecimal speedPart() {
    return ridden.subtract(wished);
  }

  private BigDecimal setPart() {
    return wished.subtract(wanted);
  }

  private BigDecimal unexplained() {
    return measured.map(m -> m.subtract(ridden)).orElse(BigDecimal.ZERO);
  }

  private static boolean matters(BigDecimal degrees) {
    return degrees.abs().compareTo(ANGLE_STEP) >= 0;
  }

  private static String turn(BigDecimal degrees) {
    return degrees.signum() == 0
        ? "nothing"
        : degrees.abs().toPlainString() + "° " + Shown.noseWord(degrees.doubleValue());
  }

  private static BigDecimal tenth(double angle) {
    return Shown.rounded(Shown.degrees(angle), 1);
  }

  private static long percent(double share) {
    return Shown.rounded(share * 100, 0).longValue();
  }

  private static String lowerFirst(String text) {
    return text.substring(0, 1).toLowerCase(java.util.Locale.ROOT) + text.substring(1);
  }

  static String upperFirst(String text) {
    return text.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + text.substring(1);
  }
}
