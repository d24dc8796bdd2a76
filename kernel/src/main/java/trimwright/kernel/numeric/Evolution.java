package trimwright.kernel.numeric;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.hipparchus.ode.sampling.StepNormalizer;

/**
 * A state that changes over time, x' = f(t, x), from a start to an end or to the first of some
 * events: Dormand and Prince's pair of order 8(5,3) with steps of its own choosing (E. Hairer, S.
 * P. Nørsett and G. Wanner, Solving Ordinary Differential Equations I), from the general library.
 */
public final class Evolution {
  private static final double LEAST_STEP = 1e-9;

  /** Error permitted per step, absolute and relative [of each state]. */
  private static final double TOLERANCE = 1e-8;

  /** How near an event's time is found [s]. */
  private static final double EVENT_TOLERANCE = 1e-7;

  private static final int MOST_ROOT_STEPS = 100;

  /** How often a system that could not be followed is tried again, and with what shorter steps. */
  private static final int MOST_TRIES = 4;

  private static final double SHORTER = 0.1;

  /** Event of an end where the state could not be followed further. */
  public static final int LOST = -2;

  private Evolution() {}

  /** Rates of a state. */
  @FunctionalInterface
  public interface Rates {
    /**
     * The rates.
     *
     * @param time [s]
     * @param state there; not to be changed
     * @param rates receives them
     */
    void at(double time, double[] state, double[] rates);
  }

  /** Something that ends the evolution when it falls below zero. */
  @FunctionalInterface
  public interface Event {
    /**
     * Above zero while it has not come.
     *
     * @param time [s]
     * @param state there
     * @return value, continuous
     */
    double at(double time, double[] state);
  }

  /** Takes states at even times, and the last one. */
  @FunctionalInterface
  public interface Visitor {
    /**
     * A state.
     *
     * @param time [s]
     * @param state there; not to be kept
     */
    void at(double time, double[] state);
  }

  /**
   * How it ended.
   *
   * @param event which event came first; -1 if none did, {@link #LOST} where the state could not be
   *     followed further
   * @param time of the end [s]
   * @param state there
   */
  public record End(int event, double time, double[] state) {}

  /**
   * Follows a state.
   *
   * @param rates its rates
   * @param start at time 0; not changed. An event that is below zero here ends it at once
   * @param duration [s], above 0
   * @param step between the visitor's times [s]
   * @param longestStep of the integration [s]: no longer than what happens from outside
   * @param events what ends it
   * @param visitor takes the states
   * @return the end
   */
  public static End follow(
      Rates rates,
      double[] start,
      double duration,
      double step,
      double longestStep,
      List<Event> events,
      Visitor visitor) {
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i).at(0, start) < 0) {
        visitor.at(0, start);
        return new End(i, 0, start.clone());
      }
    }
    // A first try of a stiff system can run beyond all numbers before any error is estimated.
    double most = longestStep;
    for (int tries = 0; tries < MOST_TRIES; tries++) {
      List<Seen> seen = new ArrayList<>();
      try {
        End end = attempt(rates, start, duration, step, most, events, seen);
        seen.forEach(s -> visitor.at(s.time(), s.state()));
        return end;
      } catch (MathIllegalStateException | MathIllegalArgumentException e) {
        most *= SHORTER;
        if (tries == MOST_TRIES - 1) {
          seen.forEach(s -> visitor.at(s.time(), s.state()));
          return seen.isEmpty()
              ? new End(LOST, 0, start.clone())
              : new End(LOST, seen.get(seen.size() - 1).time(), seen.get(seen.size() - 1).state());
        }
      }
    }
    throw new IllegalStateException("no try");
  }

  private record Seen(double time, double[] state) {}

  private static End attempt(
      Rates rates,
      double[] start,
      double duration,
      double step,
      double longestStep,
      List<Event> events,
      List<Seen> seen) {
    DormandPrince853Integrator integrator =
        new DormandPrince853Integrator(LEAST_STEP, longestStep, TOLERANCE, TOLERANCE);
    integrator.setInitialStepSize(Math.min(step, longestStep));
    int[] ended = {-1};
    for (int i = 0; i < events.size(); i++) {
      integrator.addEventDetector(new Detector(events.get(i), i, ended, longestStep));
    }
    integrator.addStepHandler(
        new StepNormalizer(
            step, (at, isLast) -> seen.add(new Seen(at.getTime(), at.getPrimaryState()))));
    ODEStateAndDerivative end =
        integrator.integrate(new Equation(rates, start.length), new ODEState(0, start), duration);
    double last = seen.isEmpty() ? -1 : seen.get(seen.size() - 1).time();
    if (end.getTime() > last + EVENT_TOLERANCE) {
      seen.add(new Seen(end.getTime(), end.getPrimaryState()));
    }
    return new End(ended[0], end.getTime(), end.getPrimaryState());
  }

  private record Equation(Rates rates, int states) implements OrdinaryDifferentialEquation {
    @Override
    public int getDimension() {
      return states;
    }

    @Override
    public double[] computeDerivatives(double time, double[] state) {
      double[] derivatives = new double[states];
      rates.at(time, state, derivatives);
      return derivatives;
    }
  }

  private record Detector(Event event, int number, int[] ended, double interval)
      implements ODEEventDetector, ODEEventHandler {
    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return AdaptableInterval.of(interval);
    }

    @Override
    public int getMaxIterationCount() {
      return MOST_ROOT_STEPS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, EVENT_TOLERANCE, 0, 5);
    }

    @Override
    public ODEEventHandler getHandler() {
      return this;
    }

    @Override
    public double g(ODEStateAndDerivative at) {
      return event.at(at.getTime(), at.getPrimaryState());
    }

    @Override
    public Action eventOccurred(
        ODEStateAndDerivative at, ODEEventDetector detector, boolean increasing) {
      if (increasing) {
        return Action.CONTINUE;
      }
      ended[0] = number;
      return Action.STOP;
    }
  }
}
