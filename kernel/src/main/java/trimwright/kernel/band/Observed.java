package trimwright.kernel.band;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * The numbers of one case that get a band, in a row: every quantity at every speed, then both ends
 * of a stretch of rideable speeds; a NaN where there is none.
 */
final class Observed {
  private static final int QUANTITIES = Quantity.values().length;

  private Observed() {}

  /** Place of a quantity at a speed in the row. */
  static int place(int speed, Quantity quantity) {
    return speed * QUANTITIES + quantity.ordinal();
  }

  /** Place of the lower end of the rideable stretch; the upper one follows. */
  static int window(int speeds) {
    return speeds * QUANTITIES;
  }

  /**
   * The numbers of a case.
   *
   * @param solver of the case
   * @param speeds [m/s]
   * @param stretch the stretch to follow: of this case's own the one that overlaps it most is taken
   */
  static double[] of(CaseSolver solver, List<Double> speeds, Optional<SpeedInterval> stretch) {
    double[] row = new double[window(speeds.size()) + 2];
    Arrays.fill(row, Double.NaN);
    for (int i = 0; i < speeds.size(); i++) {
      Optional<TrimPoint> point = balance(solver.trim(speeds.get(i)));
      if (point.isPresent()) {
        for (Quantity quantity : Quantity.values()) {
          row[place(i, quantity)] = quantity.of(point.get());
        }
      }
    }
    if (stretch.isPresent()) {
      Curve curve = solver.curve(List.of());
      double most = 0;
      for (SpeedInterval own : curve.rideableIntervals()) {
        double overlap = overlap(own, stretch.get());
        if (overlap > most) {
          most = overlap;
          row[window(speeds.size())] = own.from();
          row[window(speeds.size()) + 1] = own.to();
        }
      }
    }
    return row;
  }

  /** The balance of forces at a speed, held by feet and drive or not. */
  static Optional<TrimPoint> balance(TrimOutcome outcome) {
    return outcome instanceof TrimOutcome.NoTrim none ? none.wouldNeed() : outcome.findPoint();
  }

  private static double overlap(SpeedInterval a, SpeedInterval b) {
    return Math.min(a.to(), b.to()) - Math.max(a.from(), b.from());
  }
}
