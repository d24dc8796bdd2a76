package trimwright.kernel.turn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Drive;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.PlacedWing;

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

  private static final double ASIDE = 0.4;

  /** Least part of what is left that a step takes [1]. */
  private static final double LEAST_PART = 0.1;

  private static final TurnLimit[] ORDER = {
    TurnLimit.TIP, TurnLimit.RAIL, TurnLimit.STALL, TurnLimit.FEET, TurnLimit.POWER
  };

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
    return new Search(rideCase, speed, pitch).study();
  }

  /** The first limit that a turn breaks, in the order in which they hurt. */
  static TurnLimit broken(RideCase rideCase, Optional<TurnPoint> found) {
    if (found.isEmpty()) {
      return TurnLimit.NO_CIRCLE;
    }
    for (TurnLimit limit : ORDER) {
      if (room(rideCase, limit, found.get()) < 0) {
        return limit;
      }
    }
    return TurnLimit.NONE;
  }

  /** What a turn has left to a limit, in the limit's own unit; negative beyond it. */
  private static double room(RideCase rideCase, TurnLimit limit, TurnPoint p) {
    RideLimits limits = rideCase.limits();
    return switch (limit) {
      case TIP -> p.tipDepth() - 0.5 * rideCase.chopHeight() - limits.of(RideLimit.TIP_DEPTH);
      case RAIL ->
          railHeight(rideCase, p.bank(), p.pitch())
              - 0.5 * rideCase.chopHeight()
              - limits.of(RideLimit.BOARD_CLEARANCE);
      case STALL -> p.stripMargin() - limits.of(RideLimit.STALL_MARGIN);
      case FEET ->
          Math.min(
              p.footShare() - limits.of(RideLimit.LEAST_FOOT_SHARE),
              limits.of(RideLimit.MOST_FOOT_SHARE) - p.footShare());
      case POWER ->
          rideCase.setup().drive().map(Drive::maximumPower).orElse(Double.POSITIVE_INFINITY)
              - p.electricPower().orElse(0);
      case NO_CIRCLE, NONE -> 0;
    };
  }

  /**
   * Height of the board's inner edge above the still surface, at its middle and half its thickness,
   * where boards are widest. The front wing's root keeps its depth.
   *
   * @param rideCase the case
   * @param bank [rad]
   * @param pitch of the deck in its own plane of symmetry [rad]
   * @return height [m], negative below the surface
   */
  static double railHeight(RideCase rideCase, double bank, double pitch) {
    Craft craft = new Craft(rideCase);
    Deck deck = craft.deck();
    Board board = rideCase.setup().board();
    Attitude at = Attitude.of(pitch - deck.baseAngle());
    double along = board.massCentreAhead() - board.track();
    double ahead = deck.aheadInFoil(along, 0.5 * board.thickness());
    double above = deck.aboveInFoil(along, 0.5 * board.thickness());
    PlacedWing front = craft.wings().get(0);
    double aboveRoot = (ahead - front.ahead()) * at.sin() + (above - front.above()) * at.cos();
    return aboveRoot * Math.cos(bank) - 0.5 * board.width() * Math.sin(bank) - rideCase.immersion();
  }

  /** One search: every turn found so far says where the next one's pitch and slip lie. */
  private static final class Search {
    private final TurnSolver solver;
    private final RideCase rideCase;
    private final double speed;
    private final double base;
    private final List<TurnPoint> points = new ArrayList<>();

    /** Banks, pitches and slips of the last two turns found, the later one last. */
    private final double[][] last;

    Search(RideCase rideCase, double speed, double pitch) {
      this.rideCase = rideCase;
      this.speed = speed;
      solver = new TurnSolver(rideCase);
      base = rideCase.setup().mast().baseAngle();
      last = new double[][] {{-1, pitch, 0}, {0, pitch, 0}};
    }

    TurnStudy study() {
      double inside = 0;
      double circle = solver.steepest(speed);
      double most = rideCase.limits().of(RideLimit.BANK);
      boolean ends = circle < most;
      most = Math.min(circle, most);
      for (int i = 1; inside < most; i++) {
        double bank = Math.min(most, i * STEP);
        Optional<TurnPoint> point = at(bank);
        TurnLimit broken = broken(rideCase, point);
        if (broken != TurnLimit.NONE) {
          return narrowed(inside, bank, point, broken);
        }
        points.add(point.get());
        inside = bank;
      }
      return new TurnStudy(speed, points, ends ? TurnLimit.NO_CIRCLE : TurnLimit.NONE);
    }

    private Optional<TurnPoint> at(double bank) {
      double share = (bank - last[1][0]) / (last[1][0] - last[0][0]);
      Optional<TurnPoint> point =
          solver.at(
              speed,
              bank,
              last[1][1] + share * (last[1][1] - last[0][1]),
              last[1][2] + share * (last[1][2] - last[0][2]));
      if (point.isPresent()) {
        last[0] = last[1];
        last[1] = new double[] {bank, point.get().pitch() - base, point.get().slip()};
      }
      return point;
    }

    private TurnStudy narrowed(
        double from, double to, Optional<TurnPoint> beyond, TurnLimit first) {
      double inside = from;
      double outside = to;
      TurnLimit limit = first;
      Optional<TurnPoint> within =
          points.isEmpty() ? Optional.empty() : Optional.of(points.get(points.size() - 1));
      Optional<TurnPoint> past = beyond;
      Optional<TurnPoint> found = Optional.empty();
      boolean below = true;
      while (outside - inside > NEAR) {
        double bank = 0.5 * (inside + outside);
        if (within.isPresent() && past.isPresent()) {
          double left = room(rideCase, limit, within.get());
          double over = room(rideCase, limit, past.get());
          double root = inside + left / (left - over) * (outside - inside);
          // A little to either side, so that both ends close in.
          bank =
              Math.max(
                  inside + LEAST_PART * (outside - inside),
                  Math.min(
                      outside - LEAST_PART * (outside - inside),
                      root + (below ? -ASIDE : ASIDE) * NEAR));
        }
        Optional<TurnPoint> point = at(bank);
        TurnLimit broken = broken(rideCase, point);
        below = broken != TurnLimit.NONE;
        if (below) {
          outside = bank;
          limit = broken;
          past = point;
        } else {
          inside = bank;
          within = point;
          found = point;
        }
      }
      found.ifPresent(points::add);
      return new TurnStudy(speed, points, limit);
    }
  }
}
