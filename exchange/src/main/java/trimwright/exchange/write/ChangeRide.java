package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import trimwright.exchange.read.LimitKey;
import trimwright.exchange.words.GroundWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.WishWords;
import trimwright.fitting.change.Effect;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.trim.TrimPoint;

/**
 * One ride of the advice on changes: every wish, every limit and the trim, each in its own unit.
 */
final class ChangeRide {
  /** Limits that a ride is held against when changes are looked for, in their order. */
  static final List<LimitKey> LIMITS =
      Stream.of(LimitKey.values()).filter(key -> isHeld(key.limit())).toList();

  private ChangeRide() {}

  private static boolean isHeld(RideLimit limit) {
    return switch (limit) {
      case STALL_MARGIN,
          LEAST_FOOT_SHARE,
          MOST_FOOT_SHARE,
          STATIC_MARGIN,
          PITCH,
          BOARD_CLEARANCE,
          TIP_DEPTH,
          PROPELLER_DEPTH,
          CAVITATION_SPEED_RATIO,
          RATING_SHARE,
          TAKE_OFF_THRUST_RATIO,
          BOW_CLEAR_TIME,
          BREACH_TIME ->
          true;
      default -> false;
    };
  }

  /** Whether a limit is broken; take-off and falls by their own rules. */
  static boolean breaks(Effect effect, RideLimit limit) {
    Set<Ground> grounds = effect.judged().grounds();
    return switch (limit) {
      case TAKE_OFF_THRUST_RATIO -> grounds.contains(Ground.TAKE_OFF);
      case BOW_CLEAR_TIME -> grounds.contains(Ground.BOW_CLEAR);
      case BREACH_TIME -> grounds.contains(Ground.BREACH);
      default ->
          effect
              .asked()
              .base()
              .limits()
              .breaks(limit, effect.limits().find(limit).orElse(Double.NaN));
    };
  }

  /** The ride's fields. */
  static void write(JsonFields fields, Effect effect) {
    RideAsked asked = effect.asked();
    fields
        .flag("enough", effect.isEnough())
        .number("shortfall", effect.shortfall())
        .texts("breaks", effect.judged().grounds().stream().map(GroundWords::code).toList());
    JsonFields values = fields.object("values");
    JsonFields shortfalls = fields.object("shortfalls");
    for (Wish wish : Wish.values()) {
      String key = WishWords.key(wish);
      WishValues all = effect.judged().values();
      values.number(
          key,
          all.has(wish)
              ? OptionalDouble.of(WishWords.number(wish, all.of(wish)))
              : OptionalDouble.empty());
      shortfalls.number(WishWords.code(wish), asked.wishes().shortfall(wish, all.of(wish)));
    }
    JsonFields limits = fields.object("limits");
    for (LimitKey key : LIMITS) {
      OptionalDouble value = effect.limits().find(key.limit());
      limits.number(
          key.key(),
          value.isPresent()
              ? OptionalDouble.of(key.shown(value.getAsDouble()))
              : OptionalDouble.empty());
    }
    JsonFields trim = fields.object("trim");
    trim.number("speed_kmh", Shown.kmh(effect.judged().wished().speed()))
        .text("outcome", Codes.of(effect.judged().wished()));
    Optional<TrimPoint> point = effect.judged().wished().findPoint();
    trim.number("pitch_deg", of(point.map(p -> Shown.degrees(p.pitch()))))
        .number("foot_share", of(point.map(TrimPoint::footShare)))
        .number("front_leg_kg", of(point.map(TrimPoint::frontLeg)))
        .number("back_leg_kg", of(point.map(TrimPoint::backLeg)))
        .number("thrust_n", of(point.map(TrimPoint::thrust)))
        .number(
            "electric_power_w", point.map(TrimPoint::electricPower).orElse(OptionalDouble.empty()));
  }

  private static OptionalDouble of(Optional<Double> value) {
    return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
