package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/**
 * How many threads work, and how urgently.
 *
 * @param threads at least 1
 * @param background whether everybody else goes first
 */
public record Workers(int threads, boolean background) {
  /** All processors, as urgent as anything. */
  public static Workers all() {
    return new Workers(Runtime.getRuntime().availableProcessors(), false);
  }

  /** All processors but one, which whoever waits at a screen keeps; everybody else goes first. */
  public static Workers behind() {
    return new Workers(Math.max(1, Runtime.getRuntime().availableProcessors() - 1), true);
  }

  /**
   * Checks the number.
   *
   * @throws IllegalArgumentException if there is no thread
   */
  public Workers {
    if (threads < 1) {
      throw new IllegalArgumentException("there must be a thread, were " + threads);
    }
  }

  /**
   * Runs tasks side by side, one per thread, until all have ended.
   *
   * @param tasks as many as threads at most
   * @throws CancellationException if the calling thread was interrupted; its tasks then have been
   */
  void run(List<Runnable> tasks) {
    ExecutorService pool =
        Executors.newFixedThreadPool(
            tasks.size(),
            work -> {
              Thread thread = new Thread(work, "match");
              thread.setDaemon(true);
              thread.setPriority(background ? Thread.MIN_PRIORITY : Thread.NORM_PRIORITY);
              return thread;
            });
    try {
      List<Future<?>> ends = new ArrayList<>();
      tasks.forEach(task -> ends.add(pool.submit(task)));
      for (Future<?> end : ends) {
        end.get();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("stopped");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException fault) {
        throw fault;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }
}
