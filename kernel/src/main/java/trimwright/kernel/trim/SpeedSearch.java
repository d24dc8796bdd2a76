package trimwright.kernel.trim;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import trimwright.kernel.numeric.Roots;

/**
 * Finds the speeds that people ask for by a sweep over all speeds at which anything flies, with the
 * ends of every run found by halving.
 *
 * <p>Roots are looked for wherever the forces balance, whether or not drive and feet can hold it,
 * and kept where they can: trim points may exist on less than one step of the sweep. A quantity
 * that touches the wanted value between two sweep points without crossing at either is caught by
 * looking for the extreme there, and so is a rideable stretch narrower than a step.
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

  /** Runs of speeds whose forces balance, held or not; and those among them that are held. */
  private final List<List<Balance>> balanced;

  private final List<List<Balance>> trimmed;

  SpeedSearch(TrimSolver solver) {
    this.solver = solver;
    List<Double> speeds = new ArrayList<>();
    List<TrimSolver.Found> found = new ArrayList<>();
    for (double v = SLOWEST; v <= FASTEST; v += STEP) {
      speeds.add(v);
      found.add(solver.find(v));
    }
    balanced = runs(speeds, found, TrimSolver.Found::stands);
    trimmed = runs(speeds, found, TrimSolver.Found::trimmed);
  }

  private List<List<Balance>> runs(
      List<Double> speeds, List<TrimSolver.Found> found, Predicate<TrimSolver.Found> belongs) {
    List<List<Balance>> runs = new ArrayList<>();
    List<Balance> run = null;
    for (int i = 0; i < found.size(); i++) {
      if (belongs.test(found.get(i))) {
        if (run == null) {
          run = new ArrayList<>();
          runs.add(run);
          if (i > 0) {
            run.add(edge(speeds.get(i), speeds.get(i - 1), belongs));
          }
        }
        run.add(found.get(i).balance().orElseThrow());
      } else if (run != null) {
        run.add(edge(speeds.get(i - 1), speeds.get(i), belongs));
        run = null;
      }
    }
    return runs;
  }

  /** The last balance on the way from a speed that belongs to a run to a speed that does not. */
  private Balance edge(double with, double without, Predicate<TrimSolver.Found> belongs) {
    double inside = with;
    double outside = without;
    Balance last = balance(with);
    while (Math.abs(outside - inside) > WINDOW_TOLERANCE) {
      double middle = 0.5 * (inside + outside);
      TrimSolver.Found f = solver.find(middle);
      if (belongs.test(f)) {
        inside = middle;
        last = f.balance().get();
      } else {
        outside = middle;
      }
    }
    return last;
  }

  /** Every speed of a trim point at which a quantity takes a value, rising. */
  List<Double> speedsWith(ToDoubleFunction<Balance> quantity, double value) {
    List<Double> speeds = new ArrayList<>();
    for (List<Balance> run : balanced) {
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
    speeds.removeIf(v -> !solver.find(v).trimmed());
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

  /** Inside a run every speed has a balance; should one not, what is nearest will not be kept. */
  private Balance balance(double speed) {
    return solver.nearest(speed);
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

  /** Stretches of speed inside every limit, rising. */
  List<SpeedInterval> rideable() {
    List<SpeedInterval> intervals = new ArrayList<>();
    for (List<Balance> run : trimmed) {
      double from = Double.NaN;
      double before = Double.NaN;
      boolean wasIn = false;
      for (Balance b : run) {
        boolean in = solver.rideable(b);
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
    narrow(intervals);
    intervals.sort(Comparator.comparingDouble(SpeedInterval::from));
    return intervals;
  }

  /**
   * Adds the stretches that lie between two steps of the sweep: where three neighbours are outside
   * and the middle one comes nearest to being inside, the place nearest of all is looked for.
   */
  private void narrow(List<SpeedInterval> intervals) {
    for (List<Balance> run : balanced) {
      double[] slack = run.stream().mapToDouble(solver::slack).toArray();
      for (int i = 1; i + 1 < slack.length; i++) {
        if (peaksOutside(slack[i - 1], slack[i], slack[i + 1])) {
          double below = run.get(i - 1).speed();
          double above = run.get(i + 1).speed();
          double best =
              Roots.leastBetween(v -> -solver.slack(balance(v)), below, above, WINDOW_TOLERANCE);
          boolean found = intervals.stream().anyMatch(j -> j.from() <= best && best <= j.to());
          if (!found && solver.rideable(balance(best))) {
            intervals.add(new SpeedInterval(end(best, below), end(best, above)));
          }
        }
      }
    }
  }

  /** Whether the middle of three lies outside by less than what either step changes. */
  private static boolean peaksOutside(double a, double b, double c) {
    return b < 0 && b >= a && b >= c && -b <= Math.max(b - a, b - c);
  }

  private double end(double in, double out) {
    double inside = in;
    double outside = out;
    while (Math.abs(outside - inside) > WINDOW_TOLERANCE) {
      double middle = 0.5 * (inside + outside);
      if (solver.rideable(balance(middle))) {
        inside = middle;
      } else {
        outside = middle;
      }
    }
    return inside;
  }
}
