package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.turn.TurnSolver;

/**
 * The envelope as the Bench draws it: beside the limits themselves, turns of the wished speed from
 * bank to bank past the first limit, so that a person sees where a tip comes out.
 *
 * @param envelope the limits
 * @param banks turns from level on in steps of five degrees, as far as there is a steady one
 * @param breach the turn in which the higher tip comes up to the troughs of the chop; empty where
 *     no steady turn of the speed gets there
 * @param fastest highest speed at which the drive still gives the thrust within its limits [m/s];
 *     empty without a drive, where it is short at the wished speed, or not short up to 120 km/h
 */
public record BenchEnvelope(
    Envelope envelope, List<TurnPoint> banks, Optional<TurnPoint> breach, OptionalDouble fastest) {
  /** Step of the bank [rad]. */
  private static final double STEP = Math.toRadians(5);

  /** How near the bank of the breach is found [rad]. */
  private static final double NEAR = Math.toRadians(0.25);

  /** Step in which the fastest speed is looked for [m/s], and the fastest looked at: 120 km/h. */
  private static final double PACE = 2 / 3.6;

  private static final double MOST = 120 / 3.6;

  private static final int HALVINGS = 6;

  /** Copies the list. */
  public BenchEnvelope {
    banks = List.copyOf(banks);
  }

  /**
   * The envelope of a case.
   *
   * @param caseFile the case
   * @param isStopped asked between its parts whether to stop
   * @return empty where it was stopped
   */
  public static Optional<BenchEnvelope> find(CaseFile caseFile, BooleanSupplier isStopped) {
    if (isStopped.getAsBoolean()) {
      return Optional.empty();
    }
    Envelope envelope = EnvelopeStudy.of(caseFile);
    if (isStopped.getAsBoolean()) {
      return Optional.empty();
    }
    RideCase rideCase = caseFile.rideCase();
    List<TurnPoint> banks = banks(rideCase, envelope);
    Optional<TurnPoint> breach = breach(rideCase, banks);
    if (isStopped.getAsBoolean()) {
      return Optional.empty();
    }
    return Optional.of(new BenchEnvelope(envelope, banks, breach, fastest(rideCase)));
  }

  private static List<TurnPoint> banks(RideCase rideCase, Envelope envelope) {
    List<TurnPoint> banks = new ArrayList<>();
    envelope.straight().ifPresent(banks::add);
    double most = rideCase.limits().of(RideLimit.BANK);
    TurnSolver solver = new TurnSolver(rideCase);
    boolean goesOn = !banks.isEmpty();
    for (int i = 1; goesOn && i * STEP < most + NEAR; i++) {
      TurnPoint last = banks.get(banks.size() - 1);
      Optional<TurnPoint> next = solver.at(last.speed(), i * STEP, fuselage(rideCase, last));
      next.ifPresent(banks::add);
      goesOn = next.isPresent();
    }
    return banks;
  }

  /** The first bank at which the tip has no water above it in a trough. */
  private static Optional<TurnPoint> breach(RideCase rideCase, List<TurnPoint> banks) {
    for (int i = 1; i < banks.size(); i++) {
      if (isOut(rideCase, banks.get(i))) {
        return Optional.of(narrowed(rideCase, banks.get(i - 1), banks.get(i)));
      }
    }
    return Optional.empty();
  }

  private static TurnPoint narrowed(RideCase rideCase, TurnPoint inside, TurnPoint outside) {
    TurnSolver solver = new TurnSolver(rideCase);
    double from = inside.bank();
    TurnPoint found = outside;
    while (found.bank() - from > NEAR) {
      double bank = 0.5 * (from + found.bank());
      Optional<TurnPoint> point = solver.at(found.speed(), bank, fuselage(rideCase, inside));
      if (point.isPresent() && isOut(rideCase, point.get())) {
        found = point.get();
      } else {
        from = bank;
      }
    }
    return found;
  }

  private static boolean isOut(RideCase rideCase, TurnPoint point) {
    return point.tipDepth() < 0.5 * rideCase.chopHeight();
  }

  private static double fuselage(RideCase rideCase, TurnPoint point) {
    return point.pitch() - rideCase.setup().mast().baseAngle();
  }

  private static OptionalDouble fastest(RideCase rideCase) {
    if (rideCase.setup().drive().isEmpty()) {
      return OptionalDouble.empty();
    }
    CaseSolver solver = CaseSolver.of(rideCase);
    double speed = rideCase.rider().wishedSpeed();
    if (isShort(solver, speed)) {
      return OptionalDouble.empty();
    }
    double slower = speed;
    for (double v = speed + PACE; v < MOST; v += PACE) {
      if (isShort(solver, v)) {
        double faster = v;
        for (int i = 0; i < HALVINGS; i++) {
          double middle = 0.5 * (slower + faster);
          if (isShort(solver, middle)) {
            faster = middle;
          } else {
            slower = middle;
          }
        }
        return OptionalDouble.of(slower);
      }
      slower = v;
    }
    return OptionalDouble.empty();
  }

  private static boolean isShort(CaseSolver solver, double speed) {
    return solver.findReason(speed).filter(NoTrimReason.THRUST_SHORT::equals).isPresent();
  }
}
