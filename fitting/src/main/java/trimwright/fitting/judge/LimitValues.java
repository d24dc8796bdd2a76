package trimwright.fitting.judge;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.envelope.PartLoads;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.rig.BoardHeight;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.kernel.turn.TurnPoint;

/**
 * How near a ride comes to its limits: of each limit the worst value that was met where the ride
 * trims. What it does not have (a rating, a battery, falls that were not asked for) has no value.
 * Immutable.
 */
public final class LimitValues {
  private final Map<RideLimit, Double> values;

  private LimitValues(Map<RideLimit, Double> values) {
    this.values = values;
  }

  /**
   * The values of a ride.
   *
   * @param judged the ride; of {@link FullJudge#whole} where loads, take-off and falls count too
   */
  public static LimitValues of(Judged judged) {
    LimitValues found = new LimitValues(new EnumMap<>(RideLimit.class));
    Craft craft = new Craft(judged.rideCase());
    Stream.concat(judged.outcomes().stream(), Stream.of(judged.wished()))
        .map(TrimOutcome::findPoint)
        .flatMap(Optional::stream)
        .forEach(point -> found.point(craft, point));
    judged.envelope().ifPresent(found::envelope);
    judged.falls().ifPresent(found::falls);
    return found;
  }

  /**
   * The worst value of a limit.
   *
   * @param limit which
   * @return in the limit's unit; empty where the ride has none
   */
  public OptionalDouble find(RideLimit limit) {
    Double value = values.get(limit);
    return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
  }

  private void point(Craft craft, TrimPoint p) {
    least(RideLimit.STALL_MARGIN, p.stallMargin());
    least(RideLimit.LEAST_FOOT_SHARE, p.footShare());
    most(RideLimit.MOST_FOOT_SHARE, p.footShare());
    least(RideLimit.STATIC_MARGIN, p.staticMargin() - p.deckLeverShare());
    most(RideLimit.PITCH, Math.abs(p.pitch()));
    double fuselage = p.pitch() - craft.rideCase().setup().mast().baseAngle();
    least(RideLimit.BOARD_CLEARANCE, BoardHeight.aboveCrests(craft, fuselage));
    least(RideLimit.TIP_DEPTH, Room.tipDepth(craft, fuselage, 0));
    least(RideLimit.PROPELLER_DEPTH, Room.propellerDepth(craft, fuselage));
  }

  private void envelope(Envelope e) {
    least(
        RideLimit.CAVITATION_SPEED_RATIO,
        e.straight().map(TurnPoint::cavitationSpeedRatio).orElse(Double.NaN));
    least(RideLimit.TAKE_OFF_THRUST_RATIO, e.takeOffThrustRatio());
    Stream.of(e.mast(), e.frontWing(), e.stabilizer())
        .flatMap(Optional::stream)
        .filter(loads -> loads.rating().isPresent())
        .forEach(loads -> most(RideLimit.RATING_SHARE, share(loads)));
  }

  private static double share(PartLoads loads) {
    return loads.most() / loads.rating().orElseThrow();
  }

  /** The best speed counts, for a cap can hold to it, but in the worst posture. */
  private void falls(FallStudy study) {
    for (Posture posture : Posture.values()) {
      least(
          RideLimit.BOW_CLEAR_TIME,
          study.of(posture).stream()
              .map(FallPoint::noseDrop)
              .mapToDouble(drop -> drop.bowClearFor())
              .max()
              .orElse(Double.NaN));
      least(
          RideLimit.BREACH_TIME,
          study.of(posture).stream()
              .map(FallPoint::breach)
              .mapToDouble(breach -> breach.margin())
              .max()
              .orElse(Double.NaN));
    }
  }

  private void least(RideLimit limit, double value) {
    add(limit, value, Math::min);
  }

  private void most(RideLimit limit, double value) {
    add(limit, value, Math::max);
  }

  private void add(RideLimit limit, double value, DoubleBinaryOperator worse) {
    if (Double.isFinite(value)) {
      values.merge(limit, value, worse::applyAsDouble);
    }
  }
}
