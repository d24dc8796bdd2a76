package trimwright.web.match;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Looks through stocks, one after the other on one thread behind everybody else. A visitor has one
 * at a time: a new one ends the old. What nobody has asked for within a minute ends; an answer is
 * kept a little longer, so that a lost connection costs no minutes. May be shared between threads.
 */
final class MatchJobs {
  private static final Logger LOG = LoggerFactory.getLogger(MatchJobs.class);

  /** Jobs that wait behind the one at work. */
  private static final int MOST_WAITING = 3;

  /** Jobs remembered, answers among them; each some 300 kB. */
  private static final int MOST_KEPT = 12;

  private static final Duration UNASKED = Duration.ofMinutes(1);
  private static final Duration ANSWER_KEPT = Duration.ofMinutes(10);
  private static final int THREAD_KEPT_SECONDS = 5;
  private static final int REFERENCE_BITS = 32;

  private final LongSupplier clock;
  private final SecureRandom random = new SecureRandom();

  /** By name, the oldest first. */
  private final Map<String, MatchJob> jobs = new LinkedHashMap<>();

  private final ThreadPoolExecutor worker =
      new ThreadPoolExecutor(
          1,
          1,
          THREAD_KEPT_SECONDS,
          TimeUnit.SECONDS,
          new ArrayBlockingQueue<>(MOST_WAITING),
          MatchJobs::thread);

  MatchJobs() {
    this(System::nanoTime);
  }

  /**
   * With another clock, for tests that do not want to wait.
   *
   * @param clock [ns]
   */
  MatchJobs(LongSupplier clock) {
    this.clock = clock;
    worker.allowCoreThreadTimeOut(true);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "match-job");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    // Not the asking thread's: the server would take this one for part of a page that it closes.
    thread.setContextClassLoader(MatchJobs.class.getClassLoader());
    return thread;
  }

  /**
   * Begins a job, or puts it behind others; the visitor's last one ends.
   *
   * @param visitor whose it is
   * @param work what to do
   * @return its name; empty where too many wait
   */
  synchronized Optional<String> start(String visitor, MatchWork work) {
    tidy();
    jobs.values().removeIf(job -> job.visitor().equals(visitor) && stopped(job));
    MatchJob job = new MatchJob(UUID.randomUUID().toString(), visitor, clock, UNASKED.toNanos());
    try {
      job.set(worker.submit(() -> run(job, work)));
    } catch (RejectedExecutionException e) {
      LOG.debug("too many looks through stocks wait", e);
      return Optional.empty();
    }
    jobs.put(job.id(), job);
    return Optional.of(job.id());
  }

  private boolean stopped(MatchJob job) {
    job.stop();
    worker.purge();
    return true;
  }

  private void run(MatchJob job, MatchWork work) {
    if (!job.begin()) {
      return;
    }
    try {
      job.finish(work.run(job));
    } catch (CancellationException e) {
      LOG.debug("a look through a stock was stopped", e);
      job.end();
    } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
      if (job.isStopped()) {
        LOG.debug("a look through a stock was stopped in the middle", e);
        job.end();
      } else {
        String reference = String.format("%08X", random.nextLong() >>> REFERENCE_BITS);
        LOG.error("reference {}: a look through a stock failed", reference, e);
        job.fail(reference);
      }
    }
  }

  /**
   * A job, which counts as asked for.
   *
   * @param id its name
   * @return the job; empty where there is none any more
   */
  synchronized Optional<MatchJob> find(String id) {
    tidy();
    Optional<MatchJob> job = Optional.ofNullable(jobs.get(id));
    job.ifPresent(MatchJob::noteAsked);
    return job;
  }

  /** How many come before a job that waits. */
  synchronized int ahead(MatchJob job) {
    int ahead = 0;
    for (MatchJob other : jobs.values()) {
      if (other == job) {
        return ahead;
      }
      if (other.state() == MatchJob.State.WAITING || other.state() == MatchJob.State.RUNNING) {
        ahead++;
      }
    }
    return ahead;
  }

  /** Ends a job, if there is one of that name. */
  synchronized void stop(String id) {
    Optional.ofNullable(jobs.get(id)).ifPresent(this::stopped);
  }

  /** Ends what nobody asks for, and forgets what is long over. */
  private void tidy() {
    List<String> over = new ArrayList<>();
    for (MatchJob job : jobs.values()) {
      boolean isAtWork =
          job.state() == MatchJob.State.WAITING || job.state() == MatchJob.State.RUNNING;
      if (isAtWork && job.isStopped()) {
        stopped(job);
      }
      if (!isAtWork && job.unasked() > ANSWER_KEPT.toNanos()) {
        over.add(job.id());
      }
    }
    over.forEach(jobs::remove);
    while (jobs.size() >= MOST_KEPT) {
      // At work are at most four; the oldest that is not goes.
      String oldest =
          jobs.values().stream()
              .filter(
                  job ->
                      job.state() != MatchJob.State.WAITING
                          && job.state() != MatchJob.State.RUNNING)
              .findFirst()
              .orElseThrow()
              .id();
      jobs.remove(oldest);
    }
  }

  /** Ends everything: the shop closes. */
  synchronized void stop() {
    jobs.values().forEach(MatchJob::stop);
    jobs.clear();
    worker.shutdownNow();
  }
}
