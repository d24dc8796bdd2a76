package trimwright.web.bench;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Future;
import java.util.concurrent.FutureTask;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trimwright.desk.LayeredCase;
import trimwright.desk.SectionPolars;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.write.SectionState;
import trimwright.kernel.section.Section;

/**
 * Puts cases on the polars of their sections. Polars that are not there yet are built beside the
 * answers, one section after the other on one thread; until then a case stands on fitted sections.
 * May be shared between threads.
 */
final class SectionJobs {
  private static final Logger LOG = LoggerFactory.getLogger(SectionJobs.class);
  private static final int THREAD_KEPT_SECONDS = 5;

  private final SectionPolars polars;

  /** Outlines that layers cannot follow; few people have more than a handful. */
  private final Set<String> failed = ConcurrentHashMap.newKeySet();

  /** How far the builds are that wait or run, by outline [1]. */
  private final Map<String, Double> shares = new ConcurrentHashMap<>();

  /** One at work and one waiting; a newer case takes the waiting one's place. */
  private final ThreadPoolExecutor worker;

  private volatile Future<?> last = new FutureTask<>(() -> null);

  SectionJobs(SectionPolars polars) {
    this.polars = polars;
    worker =
        new ThreadPoolExecutor(
            1,
            1,
            THREAD_KEPT_SECONDS,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(1),
            SectionJobs::thread,
            new ThreadPoolExecutor.DiscardOldestPolicy());
    worker.allowCoreThreadTimeOut(true);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "sections");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    // Not the asking thread's: the server would take this one for part of a page that it closes.
    thread.setContextClassLoader(SectionJobs.class.getClassLoader());
    return thread;
  }

  /** The case on its sections' polars where all are there; else as it is. Starts no build. */
  CaseFile of(CaseFile caseFile) {
    return LayeredCase.find(caseFile, polars).orElse(caseFile);
  }

  /** How far the polars of a case are; what is missing is begun. */
  SectionState state(CaseFile caseFile) {
    Set<Section> sections = LayeredCase.sections(caseFile);
    for (Section section : sections) {
      if (failed.contains(SectionPolars.name(section.shape()))) {
        return SectionState.impossible(section.name());
      }
    }
    Optional<Section> missing =
        sections.stream().filter(section -> polars.find(section).isEmpty()).findFirst();
    if (missing.isEmpty()) {
      return SectionState.READY;
    }
    String outline = SectionPolars.name(missing.get().shape());
    if (shares.putIfAbsent(outline, 0.0) == null) {
      begin(missing.get(), outline);
    }
    return SectionState.underWay(missing.get().name(), shares.getOrDefault(outline, 0.0));
  }

  private void begin(Section section, String outline) {
    // What is pushed out of the queue is begun again when it is asked for again.
    shares.keySet().removeIf(other -> !other.equals(outline) && shares.get(other) == 0);
    last = worker.submit(() -> build(section, outline));
  }

  private void build(Section section, String outline) {
    try {
      SectionPolars.Found found = polars.of(section, share -> shares.put(outline, share));
      if (found.section().isEmpty()) {
        failed.add(outline);
        LOG.warn("no polars of {}: {}", section.name(), found.remark());
      } else if (!found.remark().isEmpty()) {
        LOG.warn("polars of {}: {}", section.name(), found.remark());
      }
    } catch (CancellationException e) {
      LOG.debug("polars of {} were called off", section.name());
    } finally {
      shares.remove(outline);
    }
  }

  /** Calls off what is under way and what waits; whoever asks afterwards begins anew. */
  void stop() {
    worker.getQueue().clear();
    last.cancel(true);
    shares.clear();
  }
}
