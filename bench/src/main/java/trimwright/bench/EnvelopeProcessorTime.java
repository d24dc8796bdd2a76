package trimwright.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Optional;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.trim.CaseSolver;

/** The envelope of one case in processor time of one thread: for machines that others use too. */
public final class EnvelopeProcessorTime {
  private static final int WARM = 60;
  private static final int RUNS = 61;
  private static final double MILLISECOND = 1e6;

  private EnvelopeProcessorTime() {}

  /**
   * Prints the best and the median run once warm.
   *
   * @param words none
   */
  public static void main(String[] words) {
    CaseSolver solver = CaseSolver.of(BenchCase.rideCase());
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    double[] times = new double[RUNS];
    for (int i = -WARM; i < RUNS; i++) {
      long start = threads.getCurrentThreadCpuTime();
      Envelope.of(solver, Envelope.Ratings.NONE, Optional.empty(), Posture.STANDING);
      if (i >= 0) {
        times[i] = (threads.getCurrentThreadCpuTime() - start) / MILLISECOND;
      }
    }
    Arrays.sort(times);
    System.out.printf("best %.1f ms, median %.1f ms%n", times[0], times[RUNS / 2]);
  }
}
