package trimwright.kernel.turn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.RideCase;

/**
 * Turns of one speed with growing bank, up to the first limit.
 *
 * @param speed of the foil [m/s]
 * @param points turns inside every limit, from the least bank to the greatest; empty where not even
 *     the first is
 * @param limit what the next bank breaks
 */
public record TurnStudy(double speed, List<TurnPoint> points, TurnLimit limit) {
  /** Step of the bank [rad]. */
  private static final double STEP = Math.toRadians(10);

  /** How near the greatest bank is found [rad]. */
  private static final double NEAR = Math.toRadians(1);

  /** Copies the list. */
  public TurnStudy {
    points = List.copyOf(points);
  }

  /** The tightest turn inside every limit. */
  public Optional<TurnPoint> tightest() {
    return points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
  }

  /**
   * Looks at growing banks.
   *
   * @param rideCase the case, held against its own limits
   * @param speed of the foil [m/s]
   * @param pitch of the fuselage in the straight ride at this speed [rad]
   * @return the turns
   */
  public static TurnStudy of(RideCase rideCase, double speed, double pitch) {
    TurnSolver solver = new TurnSolver(rideCase);
    List<TurnPoint> points = new ArrayList<>();
    double inside = 0;
    double start = pitch;
    double most = rideCase.limits().of(RideLimit.BANK);
    for (int i = 1; inside < most; i++) {
      double bank = Math.min(most, i * STEP);
      Optional<TurnPoint> point = solver.at(speed, bank, start);
      TurnLimit broken = broken(rideCase, point);
      if (broken != TurnLimit.NONE) {
        return narrowed(solver, rideCase, speed, start, points, inside, bank, broken);
      }
      points.add(point.get());
      inside = bank;
      start = point.get().pitch() - rideCase.setup().mast().baseAngle();
    }
    return new TurnStudy(speed, points, TurnLimit.NONE);
  }

  private static TurnStudy narrowed(
      TurnSolver solver,
      RideCase rideCase,
      double speed,
      double start,
      List<TurnPoint> points,
      double from,
      double to,
      TurnLimit first) {
    double inside = from;
    double outside = to;
    TurnLimit limit = first;
    Optional<TurnPoint> last = Optional.empty();
    while (outside - inside > NEAR) {
      double bank = 0.5 * (inside + outside);
      Optional<TurnPoint> point = solver.at(speed, bank, start);
      TurnLimit broken = broken(rideCase, point);
      if (broken == TurnLimit.NONE) {
        inside = bank;
        last = point;
      } else {
        outside = bank;
        limit = broken;
      }
    }
    last.ifPresent(points::add);
    return new TurnStudy(speed, points, limit);
  }

  /** The first limit that a turn breaks, in the order in which they hurt. */
  static TurnLimit broken(RideCase rideCase, Optional<TurnPoint> found) {
    if (found.isEmpty()) {
      return TurnLimit.NO_CIRCLE;
    }
    TurnPoint p = found.get();
    RideLimits limits = rideCase.limits();
    if (limits.breaks(RideLimit.TIP_DEPTH, p.tipDepth() - 0.5 * rideCase.chopHeight())) {
      return TurnLimit.TIP;
    }
    if (limits.breaks(RideLimit.STALL_MARGIN, p.stripMargin())) {
      return TurnLimit.STALL;
    }
    if (limits.breaks(RideLimit.LEAST_FOOT_SHARE, p.footShare())
        || limits.breaks(RideLimit.MOST_FOOT_SHARE, p.footShare())) {
      return TurnLimit.FEET;
    }
    double most =
        rideCase.setup().drive().map(Drive::maximumPower).orElse(Double.POSITIVE_INFINITY);
    return p.electricPower().orElse(0) > most ? TurnLimit.POWER : TurnLimit.NONE;
  }
}
