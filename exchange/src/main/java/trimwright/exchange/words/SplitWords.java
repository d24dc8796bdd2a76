package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimPoint;

/**
 * The words of one split; {@link CauseWords} is its door.
 *
 * <p>What is named first: a measurement that the computation cannot explain; then a wing near its
 * stall or a foil unstable by itself at the wished speed; then pitch or feet, whichever is the
 * larger complaint, a degree counting as much as a twentieth of the load.
 */
final class SplitWords {
  /**
   * A rider complains as much of a degree of pitch as of a twentieth of the load on the wrong foot.
   * Chosen; decides which of the two is named first.
   */
  static final double ANGLE_WEIGHT_DEGREES = 1;

  static final double SHARE_WEIGHT = 0.05;

  /** The trade's step for angles: less is not worth a spanner [degrees]. */
  private static final BigDecimal ANGLE_STEP = new BigDecimal("0.5");

  /** A measurement further off than this speaks against the case file or the gear [degrees]. */
  private static final BigDecimal FAR_OFF = new BigDecimal("2");

  private final TrimPoint riddenPoint;
  private final TrimPoint wishedPoint;
  private final String riddenSpeed;
  private final String wishedSpeed;

  private final Amounts amounts;

  /** Wished less ridden, as shown [km/h or mph]. */
  private final BigDecimal faster;

  private final BigDecimal ridden;
  private final BigDecimal wished;
  private final BigDecimal wanted;
  private final Optional<BigDecimal> measured;
  private final FeetWords feet;
  private final WedgeWords wedge;

  SplitWords(CaseFile caseFile, CauseOutcome.Split split, Amounts amounts) {
    this.amounts = amounts;
    riddenPoint = split.ridden();
    BigDecimal from = amounts.roundedSpeed(riddenPoint.speed());
    BigDecimal to = amounts.roundedSpeed(split.wished().speed());
    riddenSpeed = amounts.speed(from);
    wishedSpeed = amounts.speed(to);
    faster = to.subtract(from);
    // Speeds that read the same are one speed to the reader, and so must be what they give.
    boolean same = faster.signum() == 0;
    wishedPoint = same ? riddenPoint : split.wished();
    CauseParts pitch = split.pitch();
    ridden = tenth(pitch.ridden());
    wished = same ? ridden : tenth(pitch.atWishedSpeed());
    wanted = tenth(pitch.wanted());
    measured =
        pitch.measured().isPresent()
            ? Optional.of(tenth(pitch.measured().getAsDouble()))
            : Optional.empty();
    feet = new FeetWords(caseFile, split, amounts);
    wedge = new WedgeWords(caseFile.rideCase().setup().mast().baseAngle(), wishedPoint, setPart());
  }

  String headline() {
    if (listFirst()) {
      return "Check the list first: "
          + unexplained().abs().toPlainString()
          + "° of what you measured is neither speed nor set.";
    }
    if (wishedPoint.brokenLimits().contains(Limit.STALL_MARGIN)) {
      return "Ride faster or take a larger front wing: at your wished speed the wing is near its"
          + " stall.";
    }
    if (wishedPoint.brokenLimits().contains(Limit.STATIC_MARGIN)) {
      return "Change the set first, a larger stabilizer or a longer fuselage: at your wished speed"
          + " the foil by itself is unstable.";
    }
    if (feet.louderThan(speedPart().abs().max(setPart().abs()).max(whole().abs()))) {
      return feet.headline();
    }
    return pitchHeadline();
  }

  private String pitchHeadline() {
    boolean speedMatters = matters(speedPart());
    boolean setMatters = wedge.felt();
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
    if (speedMatters
        && paceHelps()
        && !(setMatters && setPart().abs().compareTo(speedPart().abs()) > 0)) {
      return paceFirst()
          + (setMatters ? ", then see to the set" : "")
          + ": "
          + shareOf()
          + (feet.worseAtWishedSpeed() ? ", but your feet get worse" : "")
          + ".";
    }
    if (setMatters) {
      return (speedMatters
              ? "Change the set before the speed: "
              : "Change the set, not the speed: ")
          + wedge.order()
          + ".";
    }
    if (feet.rightAtWishedSpeedOnly()) {
      return paceFirst() + " for your feet: the deck's angle can stay.";
    }
    if (matters(whole())) {
      return "Leave the deck's angle: "
          + turn(whole())
          + " is small, and few riders feel it"
          + (feet.right() ? "." : "; see to your feet.");
    }
    return feet.right()
        ? "Change nothing: deck and feet are where you want them."
        : "Leave the deck's angle and see to your feet.";
  }

  List<String> sentences() {
    List<String> all = new ArrayList<>();
    limits(riddenPoint, riddenSpeed).ifPresent(all::add);
    if (faster.signum() != 0) {
      limits(wishedPoint, wishedSpeed).ifPresent(all::add);
    }
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
    if (listFirst()) {
      all.add(
          "Do nothing of what follows before the list is done: it holds only if the list is clean.");
    }
    if (matters(speedPart())
        && paceHelps()
        && faster.signum() != 0
        && !wishedPoint.brokenLimits().contains(Limit.STALL_MARGIN)) {
      all.add(
          paceFirst()
              + " and the deck settles "
              + (wished.signum() == 0 ? "" : "at ")
              + Shown.nose(wished.doubleValue())
              + ".");
    }
    if (matters(setPart())) {
      all.add(wedge.sentence());
    }
    all.add(feet.sentence());
    if (!feet.right() && wishedPoint.brokenLimits().contains(Limit.STALL_MARGIN)) {
      all.add("See to speed and wing before your feet: the load on them changes with both.");
    }
    all.addAll(feet.cures());
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
    String set = setPart().signum() == 0 ? "the set is right" : "the set makes " + turn(setPart());
    if (faster.signum() == 0) {
      return "You ride at your wished speed, so speed has no part in it: " + set + ".";
    }
    return "Riding "
        + amounts.speed(faster.abs())
        + " "
        + (faster.signum() > 0 ? "slower" : "faster")
        + " than you wish "
        + (speedPart().signum() == 0 ? "changes nothing" : "makes " + turn(speedPart()))
        + "; "
        + set
        + "."
        + together();
  }

  private String together() {
    if (whole().signum() != 0) {
      return " Together: " + turn(whole()) + ".";
    }
    return setPart().signum() == 0 ? "" : " Together they cancel.";
  }

  private String paceFirst() {
    return "Ride " + amounts.pace(faster) + " " + (faster.signum() >= 0 ? "faster" : "slower");
  }

  private String shareOf() {
    return speedPart().abs().toPlainString()
        + "° "
        + Shown.noseWord(speedPart().doubleValue())
        + (matters(setPart())
            ? " is speed, " + turn(setPart()) + " the set"
            : " is speed, next to nothing the set");
  }

  private boolean listFirst() {
    return matters(unexplained())
        && (unexplained().abs().compareTo(FAR_OFF) > 0
            || unexplained().abs().compareTo(speedPart().abs().max(setPart().abs())) >= 0);
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
    return degrees.abs().toPlainString() + "° " + Shown.noseWord(degrees.doubleValue());
  }

  private static BigDecimal tenth(double angle) {
    return Shown.rounded(Shown.degrees(angle), 1);
  }

  static String lowerFirst(String text) {
    return text.substring(0, 1).toLowerCase(Locale.ROOT) + text.substring(1);
  }

  static String upperFirst(String text) {
    return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }
}
