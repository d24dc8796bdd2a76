package trimwright.kernel.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.rig.Propulsion;
import trimwright.kernel.rig.RideCase;

/**
 * Solves a take-off. At evenly spaced speeds from rest to lift-off the board takes the trim of
 * least drag, which at full thrust is the quickest way; length and time are sums of dv/a by
 * Simpson's rule, a the acceleration with the water that goes along. Steady at each speed: waves
 * and layers are those of a boat that has long been at it.
 *
 * <p>Lift-off is the slowest speed at which wings, buoyancy and thrust carry everything with the
 * stern just touching, within the largest trim and with room to the stall.
 */
public final class TakeOffSolver {
  /**
   * Intervals of speed, even. With these the run lies within 2 % of its limit where the thrust is
   * well above the drag.
   */
  static final int INTERVALS = 24;

  private final WaterBalance balance;
  private final Posture posture;
  private final TakeOffLimits limits;
  private final boolean driven;

  private TakeOffSolver(
      WaterBalance balance, Posture posture, TakeOffLimits limits, boolean driven) {
    this.balance = balance;
    this.posture = posture;
    this.limits = limits;
    this.driven = driven;
  }

  private static TakeOffSolver of(
      RideCase c, Posture posture, TakeOffLimits limits, Optional<DoubleUnaryOperator> thrust) {
    WaterBalance balance = new WaterBalance(c, posture, limits, thrust);
    return new TakeOffSolver(balance, posture, limits, thrust.isPresent());
  }

  /**
   * The same craft with the rider resting on it in another way; its wings' loads are shared.
   *
   * @param other posture
   * @return another solver
   */
  public TakeOffSolver with(Posture other) {
    return new TakeOffSolver(balance.with(other), other, limits, driven);
  }

  /**
   * A solver with the case's own drive and limits.
   *
   * @param rideCase the case
   * @param posture how the rider rests on the board
   * @return a solver; without a drive it asks for the pull needed
   */
  public static TakeOffSolver of(RideCase rideCase, Posture posture) {
    return of(
        rideCase,
        posture,
        TakeOffLimits.of(rideCase.limits()),
        Propulsion.find(rideCase).map(drive -> speed -> drive.greatestThrust(speed).thrust()));
  }

  /**
   * A solver with a thrust of its own.
   *
   * @param rideCase the case
   * @param posture how the rider rests on the board
   * @param limits what counts as workable
   * @param greatestThrust over speed [m/s], from 0 on [N]
   * @return a solver
   */
  public static TakeOffSolver of(
      RideCase rideCase,
      Posture posture,
      TakeOffLimits limits,
      DoubleUnaryOperator greatestThrust) {
    return of(rideCase, posture, limits, Optional.of(greatestThrust));
  }

  /**
   * The board, as it lies in the water.
   *
   * @return hull
   */
  public BoardHull hull() {
    return balance.hull();
  }

  /**
   * The craft at a speed and trim, the board as deep as it must be.
   *
   * @param speed [m/s], 0 or more
   * @param trim bow up [rad], within the limits
   * @return state; with vertical forces above 0 where the board is out of the water
   */
  public WaterState at(double speed, double trim) {
    return balance.at(speed).at(trim);
  }

  /** The acceleration at a speed, at the trim of least drag [m/s²]. */
  double acceleration(double speed) {
    return TrimChoice.of(balance.at(speed), limits).best().acceleration();
  }

  /** The take-off. */
  public TakeOff solve() {
    return solve(INTERVALS);
  }

  TakeOff solve(int intervals) {
    WaterState rest = balance.at(0).at(limits.leastTrim());
    if (rest.up() < -1e-3 * (1 + rest.hull().lift())) {
      return none(TakeOffVerdict.SINKS);
    }
    LiftOffSearch search = new LiftOffSearch(balance, limits);
    Optional<WaterState> carried = search.carried();
    if (carried.isEmpty()) {
      return none(TakeOffVerdict.NEVER_CARRIED);
    }
    Optional<WaterState> liftOff = search.driven(carried.get());
    WaterState end = liftOff.orElse(carried.get());
    return new Run(end, intervals).result(liftOff.isPresent());
  }

  private TakeOff none(TakeOffVerdict verdict) {
    return new TakeOff(
        verdict,
        posture,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        0,
        limits.dragBand(),
        Optional.empty());
  }

  /** The speeds of one run. */
  private final class Run {
    private final WaterState end;
    private final List<TrimChoice> choices = new ArrayList<>();
    private final double[] thrust;
    private final double step;

    Run(WaterState end, int intervals) {
      this.end = end;
      step = end.speed() / intervals;
      thrust = new double[intervals + 1];
      for (int i = 0; i <= intervals; i++) {
        WaterBalance.AtSpeed here = balance.at(i == intervals ? end.speed() : i * step);
        TrimChoice choice = TrimChoice.of(here, limits);
        if (i == intervals) {
          choice = choice.withBest(end);
        }
        choices.add(choice);
        thrust[i] = driven ? choice.best().level(here.greatest()) : choice.best().drag();
      }
    }

    TakeOff result(boolean lifts) {
      double[] time = integral(0, false);
      double[] distance = integral(0, true);
      List<RunPoint> points = new ArrayList<>();
      double most = 0;
      int worst = 0;
      for (int i = 0; i < thrust.length; i++) {
        WaterState s = choices.get(i).best();
        points.add(new RunPoint(s, thrust[i], choices.get(i).feet(), distance[i], time[i]));
        most = Math.max(most, s.drag());
        if (points.get(i).surplus() < points.get(worst).surplus()) {
          worst = i;
        }
      }
      boolean isShort = driven && (!lifts || points.get(worst).surplus() <= 0);
      TakeOffVerdict verdict = verdict(isShort, points);
      boolean runs = verdict == TakeOffVerdict.LIFTS;
      int last = thrust.length - 1;
      return new TakeOff(
          verdict,
          posture,
          points,
          Optional.of(end),
          hump(),
          isShort ? Optional.of(point(points.get(worst))) : Optional.empty(),
          finite(runs, distance[last]),
          finite(runs, time[last]),
          finite(runs, integral(-limits.dragBand(), true)[last]),
          finite(runs, integral(limits.dragBand(), true)[last]),
          most,
          limits.dragBand(),
          standing());
    }

    private TakeOffVerdict verdict(boolean isShort, List<RunPoint> points) {
      if (isShort) {
        return TakeOffVerdict.THRUST_SHORT;
      }
      double stern = balance.sternAlong();
      FootRange deck = new FootRange(stern, stern + balance.hull().length());
      for (RunPoint p : points) {
        if (p.feet().isPresent() && !p.feet().get().meets(deck)) {
          return TakeOffVerdict.FEET_CANNOT_REACH;
        }
      }
      return driven ? TakeOffVerdict.LIFTS : TakeOffVerdict.LIFTS_WHEN_PULLED;
    }

    private static OptionalDouble finite(boolean runs, double value) {
      return runs && Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /**
     * Sums of dv/a or of v dv/a up to each speed, with all drags larger by a share; infinite from
     * where the speed no longer grows.
     */
    private double[] integral(double more, boolean way) {
      double[] f = new double[thrust.length];
      for (int i = 0; i < f.length; i++) {
        WaterState s = choices.get(i).best();
        double spare = thrust[i] - (1 + more) * s.drag();
        double a = Math.min(spare / s.mass(), limits.mostAcceleration());
        f[i] = a > 0 ? (way ? s.speed() : 1) / a : Double.POSITIVE_INFINITY;
      }
      double[] sum = new double[f.length];
      for (int i = 1; i < f.length; i++) {
        double part = part(f, i);
        // Infinities of both signs meet where the speed no longer grows.
        sum[i] = Double.isFinite(part) ? sum[i - 1] + step * part : Double.POSITIVE_INFINITY;
      }
      return sum;
    }

    /** The last interval's part of the parabola through three points: Simpson's rule in pairs. */
    private static double part(double[] f, int i) {
      return i == f.length - 1 || i % 2 == 0
          ? (-f[i - 2] + 8 * f[i - 1] + 5 * f[i]) / 12
          : (5 * f[i - 1] + 8 * f[i] - f[i + 1]) / 12;
    }

    /** The largest drag behind which it falls again; between speeds by a parabola. */
    private Optional<TakeOff.Point> hump() {
      int top = 0;
      for (int i = 1; i < thrust.length - 1; i++) {
        boolean peak = drag(i) > drag(i - 1) && drag(i) > drag(i + 1);
        if (peak && (top == 0 || drag(i) > drag(top))) {
          top = i;
        }
      }
      if (top == 0) {
        return Optional.empty();
      }
      double slope = 0.5 * (drag(top + 1) - drag(top - 1));
      double bend = drag(top + 1) - 2 * drag(top) + drag(top - 1);
      double place = -slope / bend;
      double speed = (top + place) * step;
      double most = drag(top) + 0.5 * slope * place;
      double there = driven ? choices.get(top).best().level(balance.at(speed).greatest()) : most;
      return Optional.of(new TakeOff.Point(speed, most, there));
    }

    private double drag(int i) {
      return choices.get(i).best().drag();
    }

    private static TakeOff.Point point(RunPoint p) {
      return new TakeOff.Point(p.state().speed(), p.state().drag(), p.greatestThrust());
    }

    private Optional<FootRange> standing() {
      double from = Double.NEGATIVE_INFINITY;
      double to = Double.POSITIVE_INFINITY;
      for (TrimChoice choice : choices) {
        if (choice.feet().isEmpty()) {
          return Optional.empty();
        }
        from = Math.max(from, choice.feet().get().from());
        to = Math.min(to, choice.feet().get().to());
      }
      return from <= to ? Optional.of(new FootRange(from, to)) : Optional.empty();
    }
  }
}
