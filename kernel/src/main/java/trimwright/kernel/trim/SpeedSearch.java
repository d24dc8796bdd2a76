package trimwright.kernel.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import trimwright.kernel.numeric.Roots;

/**
 * Finds the speeds that people ask for: a sweep over all speeds at which anything flies, the ends
 * of every run of trim points found by halving, and in each run every root. A run that touches the
 * wanted value between two sweep points without crossing at either is caught by looking for the
 * extreme there.
 */
final class SpeedSearch {
  /** The slowest and the fastest speed looked at [m/s]: 5 and 90 km/h. */
  private static final double SLOWEST = 5 / 3.6;

  private static final double FASTEST = 25;

  /** Step of the sweep [m/s]: about 1 km/h. */
  private static final double STEP = 0.28;

  /** Width of the last bracket of a speed [m/s]. */
  private static final double SPEED_TOLERANCE = 1e-7;

  /** Width of the last bracket of a window's end [m/s]: 0.001 km/h. */
  private static final double WINDOW_TOLERANCE = 3e-4;

  private final TrimSolver solver;
  private final List<List<Balance>> runs;

  SpeedSearch(TrimSolver solver) {
    this.solver = solver;
    runs = sweep();
  }

  private List<List<Balance>> sweep() {
    List<List<Balance>> found = new ArrayList<>();
    List<Balance> run = null;
    double before = Double.NaN;
    for (double v = SLOWEST; v <= FASTEST; v += STEP) {
      TrimSolver.Found f = solver.find(v);
      if (f.trimmed()) {
        if (run == null) {
          run = new ArrayList<>();
          found.add(run);
          if (!Double.isNaN(before)) {
            run.add(edge(v, before));
          }
        }
        run.add(f.balance().get());
      } else if (run != null) {
        run.add(edge(before, v));
        run = null;
      }
      before = v;
    }
    return found;
  }

  /** The last trim point on the way from a speed that has one to a speed that has none. */
  private Balance edge(double with, double without) {
    double inside = with;
    double outside = without;
    Balance last = solver.find(with).balance().get();
    while (Math.abs(outside - inside) > WINDOW_TOLERANCE) {
      double middle = 0.5 * (inside + outside);
      TrimSolver.Found f = solver.find(middle);
      if (f.trimmed()) {
        inside = middle;
        last = f.balance().get();
      } else {
        outside = middle;
      }
    }
    return last;
  }

  /** Every speed at which a quantity takes a value, rising. */
  List<Double> speedsWith(ToDoubleFunction<Balance> quantity, double value) {
    List<Double> speeds = new ArrayList<>();
    for (List<Balance> run : runs) {
      double[] miss = run.stream().mapToDouble(b -> quantity.applyAsDouble(b) - value).toArray();
      for (int i = 1; i < miss.length; i++) {
        double a = run.get(i - 1).speed();
        double b = run.get(i).speed();
        if (miss[i - 1] == 0) {
          speeds.add(a);
        } else if (miss[i - 1] > 0 != miss[i] > 0 && miss[i] != 0) {
          speeds.add(root(quantity, value, a, miss[i - 1], b, miss[i]));
        }
        if (i + 1 < miss.length && turns(miss[i - 1], miss[i], miss[i + 1])) {
          touch(quantity, value, run, miss, i, speeds);
        }
      }
      if (miss.length > 0 && miss[miss.length - 1] == 0) {
        speeds.add(run.get(miss.length - 1).speed());
      }
    }
    speeds.sort(null);
    return speeds;
  }

  /** Whether three misses of one sign come nearest to zero in the middle. */
  private static boolean turns(double a, double b, double c) {
    boolean sameSide = a > 0 == b > 0 && b > 0 == c > 0;
    return sameSide && Math.abs(b) <= Math.abs(a) && Math.abs(b) <= Math.abs(c);
  }

  private void touch(
      ToDoubleFunction<Balance> quantity,
      double value,
      List<Balance> run,
      double[] miss,
      int i,
      List<Double> speeds) {
    double a = run.get(i - 1).speed();
    double c = run.get(i + 1).speed();
    double sign = Math.signum(miss[i]);
    double nearest =
        Roots.leastBetween(
            v -> sign * (quantity.applyAsDouble(balance(v)) - value), a, c, SPEED_TOLERANCE * 100);
    double there = quantity.applyAsDouble(balance(nearest)) - value;
    if (there == 0 || there > 0 != miss[i] > 0) {
      speeds.add(root(quantity, value, a, miss[i - 1], nearest, there));
      if (there != 0) {
        speeds.add(root(quantity, value, nearest, there, c, miss[i + 1]));
      }
    }
  }

  private double root(
      ToDoubleFunction<Balance> quantity, double value, double a, double fa, double b, double fb) {
    return Roots.between(
        v -> quantity.applyAsDouble(balance(v)) - value, a, fa, b, fb, SPEED_TOLERANCE);
  }

  /** Inside a run every speed has a balance. */
  private Balance balance(double speed) {
    return solver.find(speed).balance().orElseThrow();
  }

  List<EvenFeetSpeed> evenFeetSpeeds() {
    List<EvenFeetSpeed> even = new ArrayList<>();
    for (double v : speedsWith(solver::footShare, 0.5)) {
      double step = 1e-3 * v;
      Optional<Balance> slower = solver.find(v - step).balance();
      Optional<Balance> faster = solver.find(v + step).balance();
      double before = slower.map(solver::footShare).orElse(0.5);
      double after = faster.map(solver::footShare).orElse(0.5);
      even.add(new EvenFeetSpeed(v, after > before));
    }
    return even;
  }

  /** The slowest level speed; the pitch falls with speed, so that there is hardly ever a second. */
  OptionalDouble levelSpeed() {
    return speedsWith(solver::deckPitch, 0).stream().mapToDouble(v -> v).findFirst();
  }

  /** Stretches of speed inside every limit. */
  List<SpeedInterval> rideable() {
    List<SpeedInterval> intervals = new ArrayList<>();
    for (List<Balance> run : runs) {
      double from = Double.NaN;
      double before = Double.NaN;
      boolean wasIn = false;
      for (Balance b : run) {
        boolean in = inside(b);
        if (in && !wasIn) {
          from = Double.isNaN(before) ? b.speed() : end(b.speed(), before);
        } else if (!in && wasIn) {
          intervals.add(new SpeedInterval(from, end(before, b.speed())));
        }
        wasIn = in;
        before = b.speed();
      }
      if (wasIn) {
        intervals.add(new SpeedInterval(from, before));
      }
    }
    return intervals;
  }

  private double end(double in, double out) {
    double inside = in;
    double outside = out;
    while (Math.abs(outside - inside) > WINDOW_TOLERANCE) {
      double middle = 0.5 * (inside + outside);
      if (inside(balance(middle))) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }

  private boolean inside(Balance b) {
    return solver.limitsBroken(b).isEmpty();
  }
}
