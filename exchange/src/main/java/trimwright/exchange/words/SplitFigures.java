package trimwright.exchange.words;

import java.math.BigDecimal;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.cause.CauseParts;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimPoint;

/**
 * The figures of one split as they are shown, and which of them leads.
 *
 * <p>Wholes are rounded, parts are their differences. Speeds that read the same are one speed to
 * the reader, and so must be what they give: the ridden one's values stand for both.
 */
final class SplitFigures {
  /**
   * A rider complains as much of a degree of pitch as of a twentieth of the load on the wrong foot.
   * Chosen; decides which of the two is named first.
   */
  static final double ANGLE_WEIGHT_DEGREES = 1;

  static final double SHARE_WEIGHT = 0.05;

  /** The trade's step for angles: less is not worth a spanner [degrees]. */
  private static final BigDecimal ANGLE_STEP = new BigDecimal("0.5");

  /** Less than this few riders feel [degrees]. Chosen. */
  private static final BigDecimal FELT = BigDecimal.ONE;

  /** A measurement further off than this speaks against the case file or the gear [degrees]. */
  private static final BigDecimal FAR_OFF = new BigDecimal("2");

  /** What is named first. */
  enum Lead {
    /** A measurement that the computation cannot explain. */
    LIST,
    /** A limit that the speed ridden breaks and the wished speed does not. */
    LEAVE_LIMIT,
    /** A wing near its stall at the wished speed. */
    NEAR_STALL,
    /** A foil unstable by itself at the wished speed. */
    UNSTABLE,
    /** A board that touches the chop at either speed. */
    CHOP,
    /** The load on the feet, where it is the larger complaint or breaks its limit. */
    FEET,
    /** A set whose part the speed hides. */
    HIDDEN,
    /** The speed, where it makes the larger part. */
    PACE,
    /** The set, where it makes the larger part. */
    SET,
    /** The speed, for the feet's sake alone. */
    PACE_FOR_FEET,
    /** An angle that few feel. */
    SMALL,
    /** All as wished. */
    NOTHING
  }

  final Amounts amounts;
  final TrimPoint riddenPoint;
  final TrimPoint wishedPoint;
  final String riddenSpeed;
  final String wishedSpeed;

  /** Wished less ridden, as shown [km/h or mph]. */
  final BigDecimal faster;

  final BigDecimal ridden;
  final BigDecimal wished;
  final BigDecimal wanted;
  final Optional<BigDecimal> measured;
  final FeetWords feet;
  final WedgeWords wedge;
  final Lead lead;

  SplitFigures(CaseFile caseFile, CauseOutcome.Split split, Amounts amounts) {
    this.amounts = amounts;
    riddenPoint = split.ridden();
    BigDecimal from = amounts.roundedSpeed(riddenPoint.speed());
    BigDecimal to = amounts.roundedSpeed(split.wished().speed());
    riddenSpeed = amounts.speed(from);
    wishedSpeed = amounts.speed(to);
    faster = to.subtract(from);
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
    wedge =
        new WedgeWords(
            caseFile.rideCase().setup().mast().baseAngle(), wishedPoint, setPart(), setMatters());
    lead = lead();
  }

  private Lead lead() {
    if (listFirst()) {
      return Lead.LIST;
    }
    boolean stalls = wishedPoint.brokenLimits().contains(Limit.STALL_MARGIN);
    boolean unstable = wishedPoint.brokenLimits().contains(Limit.STATIC_MARGIN);
    if (findLimitLeft().isPresent() && !stalls && !unstable) {
      return Lead.LEAVE_LIMIT;
    }
    if (stalls) {
      return Lead.NEAR_STALL;
    }
    if (unstable) {
      return Lead.UNSTABLE;
    }
    if (riddenPoint.brokenLimits().contains(Limit.BOARD_CLEARANCE)) {
      return Lead.CHOP;
    }
    boolean oneFoot = riddenPoint.brokenLimits().contains(Limit.FOOT_SHARE) && !feet.right();
    if (oneFoot || feet.louderThan(speedPart().abs().max(setPart().abs()).max(whole().abs()))) {
      return Lead.FEET;
    }
    return pitchLead();
  }

  private Lead pitchLead() {
    if (matters(speedPart()) && setMatters() && !paceHelps()) {
      return Lead.HIDDEN;
    }
    if (speedMatters()
        && paceHelps()
        && !(setMatters() && setPart().abs().compareTo(speedPart().abs()) > 0)) {
      return Lead.PACE;
    }
    if (setMatters()) {
      return Lead.SET;
    }
    if (feet.rightAtWishedSpeedOnly()) {
      return Lead.PACE_FOR_FEET;
    }
    if (!feet.right()) {
      return Lead.FEET;
    }
    return matters(whole()) ? Lead.SMALL : Lead.NOTHING;
  }

  /** The gravest limit that the speed ridden breaks and the wished one does not. */
  Optional<Limit> findLimitLeft() {
    return faster.signum() == 0
        ? Optional.empty()
        : riddenPoint.brokenLimits().stream()
            .filter(limit -> !wishedPoint.brokenLimits().contains(limit))
            .sorted()
            .findFirst();
  }

  boolean listFirst() {
    return matters(unexplained())
        && (unexplained().abs().compareTo(FAR_OFF) > 0
            || unexplained().abs().compareTo(speedPart().abs().max(setPart().abs())) >= 0);
  }

  /** What riders feel of the speed, alone or together with the set. */
  private boolean speedMatters() {
    return felt(speedPart()) || felt(whole()) && matters(speedPart());
  }

  /** What riders feel of the set, alone or together with the speed. */
  boolean setMatters() {
    return setFelt() || felt(whole()) && matters(setPart());
  }

  /** Whether riders still feel the set's part at the wished speed. */
  boolean setFelt() {
    return felt(setPart());
  }

  /** Whether the wished speed brings the deck nearer to the wish: not where the parts cancel. */
  boolean paceHelps() {
    return setPart().abs().compareTo(whole().abs()) < 0;
  }

  BigDecimal whole() {
    return ridden.subtract(wanted);
  }

  BigDecimal speedPart() {
    return ridden.subtract(wished);
  }

  BigDecimal setPart() {
    return wished.subtract(wanted);
  }

  BigDecimal unexplained() {
    return measured.map(m -> m.subtract(ridden)).orElse(BigDecimal.ZERO);
  }

  static boolean matters(BigDecimal degrees) {
    return degrees.abs().compareTo(ANGLE_STEP) >= 0;
  }

  private static boolean felt(BigDecimal degrees) {
    return degrees.abs().compareTo(FELT) >= 0;
  }

  private static BigDecimal tenth(double angle) {
    return Shown.rounded(Shown.degrees(angle), 1);
  }
}
