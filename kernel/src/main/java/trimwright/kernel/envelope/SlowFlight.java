package trimwright.kernel.envelope;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.kernel.cause.LowestFlight;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.turn.TurnSolver;

/**
 * The slow end of flight, straight and banked, and what the rider feels first.
 *
 * @param stallSpeed lowest speed at which the wings carry the weight without a stalled strip [m/s]
 * @param banked the same in turns
 * @param warning what changes on the way down to it; empty where the ride just above cannot be held
 */
public record SlowFlight(
    double stallSpeed, List<BankedStall> banked, Optional<StallWarning> warning) {
  /** Below any foil board's flight: 5.4 km/h [m/s]. */
  private static final double WALKING = 1.5;

  /** How far above the stall the warning is read, and over what stretch [m/s]: 1 and 3 km/h. */
  private static final double NEAR = 1 / 3.6;

  private static final double FURTHER = 3 / 3.6;

  private static final double[] BANKS = {Math.toRadians(15), Math.toRadians(30)};

  /** No turn is looked for outside these many times the straight stall speed [1]. */
  private static final double LEAST = 0.6;

  private static final double MOST = 2.5;

  private static final int HALVINGS = 8;

  /** Where a search begins without a straight ride near the stall [rad]. */
  private static final double PITCH = Math.toRadians(8);

  /** Copies the list. */
  public SlowFlight {
    banked = List.copyOf(banked);
  }

  /**
   * Where a turn of a bank stalls.
   *
   * @param bank [rad]
   * @param speed lowest speed at which the turn exists without a stalled strip [m/s]
   * @param circle whether it ends there because no circle has this bank at a lower speed, before
   *     any strip stalls
   */
  public record BankedStall(double bank, double speed, boolean circle) {}

  /**
   * The way from three to one km/h above the stall.
   *
   * @param pitchRise how much the nose comes up [rad]
   * @param footShareChange how much load moves to the front foot [1], negative to the back foot
   * @param footPressureMove the same as a way on the deck, forward positive [m]
   */
  public record StallWarning(double pitchRise, double footShareChange, double footPressureMove) {}

  /**
   * The slow end of a case.
   *
   * @param solver of the case
   * @param turns of the same case
   * @return empty where nothing flies
   */
  public static Optional<SlowFlight> of(CaseSolver solver, TurnSolver turns) {
    OptionalDouble stall = new LowestFlight(solver).above(WALKING);
    if (stall.isEmpty()) {
      return Optional.empty();
    }
    double speed = stall.getAsDouble();
    Optional<TrimPoint> near = point(solver, speed + NEAR);
    Optional<TrimPoint> further = point(solver, speed + FURTHER);
    Optional<StallWarning> warning =
        near.isPresent() && further.isPresent()
            ? Optional.of(
                new StallWarning(
                    near.get().pitch() - further.get().pitch(),
                    near.get().footShare() - further.get().footShare(),
                    near.get().footPressureAheadOfMast() - further.get().footPressureAheadOfMast()))
            : Optional.empty();
    double base = solver.rideCase().setup().mast().baseAngle();
    double pitch = near.map(TrimPoint::pitch).orElse(PITCH) - base;
    List<BankedStall> banked = new ArrayList<>();
    Optional<BankedStall> upright = search(turns, 0, speed, pitch);
    for (double bank : BANKS) {
      Optional<BankedStall> found = search(turns, bank, speed, pitch);
      if (upright.isPresent() && found.isPresent()) {
        banked.add(beside(found.get(), upright.get(), speed));
      }
    }
    return Optional.of(new SlowFlight(speed, banked, warning));
  }

  /** A trim point whether or not drive and feet can hold it. */
  private static Optional<TrimPoint> point(CaseSolver solver, double speed) {
    TrimOutcome outcome = solver.trim(speed);
    return outcome.findPoint().isPresent()
        ? outcome.findPoint()
        : outcome instanceof TrimOutcome.NoTrim none ? none.wouldNeed() : Optional.empty();
  }

  /**
   * The turns' lattice knows no waves, which carry or sink the slowest rides by some degrees: what
   * it says is the ratio to its own upright ride.
   */
  private static BankedStall beside(BankedStall found, BankedStall upright, double straight) {
    double speed =
        found.circle()
            ? Math.max(found.speed(), straight)
            : straight * found.speed() / upright.speed();
    return new BankedStall(found.bank(), speed, found.circle());
  }

  private static Optional<BankedStall> search(
      TurnSolver turns, double bank, double straight, double pitch) {
    double textbook = straight / Math.sqrt(Math.cos(bank));
    Optional<TurnSolver.Slowest> found = turns.slowest(bank, textbook, pitch);
    return found.isPresent()
        ? found.map(s -> new BankedStall(bank, s.speed(), s.circle()))
        : halved(turns, bank, straight, pitch);
  }

  /** The slow way, for cases in which the quick one does not settle. */
  private static Optional<BankedStall> halved(
      TurnSolver turns, double bank, double straight, double pitch) {
    double low = LEAST * straight;
    double high = MOST * straight;
    if (!flies(turns.at(high, bank, 0))) {
      return Optional.empty();
    }
    boolean circle = false;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = 0.5 * (low + high);
      if (flies(turns.at(middle, bank, pitch))) {
        high = middle;
      } else {
        low = middle;
        circle = !turns.hasCircle(middle / TurnSolver.NEAR_CIRCLE, bank);
      }
    }
    return Optional.of(new BankedStall(bank, high, circle));
  }

  private static boolean flies(Optional<TurnPoint> point) {
    return point.filter(p -> p.stripMargin() > 0).isPresent();
  }
}
