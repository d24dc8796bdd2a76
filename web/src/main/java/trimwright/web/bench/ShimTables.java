package trimwright.web.bench;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.trim.SurfaceTables;

/**
 * Works out ahead, while nobody asks, the tables of lifting surfaces that the shim's slider will
 * want: of all sliders it alone turns a wing, and a new table takes longer than all the rest of an
 * answer. May be shared between threads.
 */
final class ShimTables {
  private static final Logger LOG = LoggerFactory.getLogger(ShimTables.class);

  static final String PATH = "setup.shim.angle_deg";

  /** How long nobody must have asked before work begins, and between two looks. */
  static final Duration QUIET = Duration.ofMillis(500);

  /** The slider's notches and its ends [degrees]. */
  private static final double NOTCH = 0.5;

  private static final int NOTCHES_EITHER_WAY = 8;

  private static final int THREAD_KEPT_SECONDS = 5;

  private final SurfaceTables tables;
  private final Predicate<Duration> isQuiet;
  private final UnaryOperator<CaseFile> onSections;

  /** One at work and one waiting; a newer case takes the waiting one's place. */
  private final ThreadPoolExecutor worker;

  /**
   * None yet.
   *
   * @param tables where they are kept
   * @param isQuiet whether nobody has asked for so long
   * @param onSections puts a case on the sections that its answers stand on
   */
  ShimTables(
      SurfaceTables tables, Predicate<Duration> isQuiet, UnaryOperator<CaseFile> onSections) {
    this.tables = tables;
    this.isQuiet = isQuiet;
    this.onSections = onSections;
    this.worker =
        new ThreadPoolExecutor(
            1,
            1,
            THREAD_KEPT_SECONDS,
            TimeUnit.SECONDS,
            new ArrayBlockingQueue<>(1),
            ShimTables::thread,
            new ThreadPoolExecutor.DiscardOldestPolicy());
    worker.allowCoreThreadTimeOut(true);
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "shims-ahead");
    thread.setDaemon(true);
    thread.setPriority(Thread.MIN_PRIORITY);
    // Not the asking thread's: the server would take this one for part of a page that it closes.
    thread.setContextClassLoader(ShimTables.class.getClassLoader());
    return thread;
  }

  /** Works out the tables around a case, the nearest shims first, unless another case comes. */
  void prepare(CaseFile caseFile) {
    worker.execute(() -> work(caseFile));
  }

  private void work(CaseFile caseFile) {
    try {
      awaitQuiet();
      for (CaseFile shimmed : shimmed(caseFile)) {
        awaitQuiet();
        if (!worker.getQueue().isEmpty()) {
          return;
        }
        tables.of(new Craft(onSections.apply(shimmed).rideCase()));
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    } catch (IllegalArgumentException | ArithmeticException e) {
      // Whoever moves the slider there is told in words; nobody has asked yet.
      LOG.debug("no tables ahead for {}", caseFile.name(), e);
    }
  }

  private void awaitQuiet() throws InterruptedException {
    while (!isQuiet.test(QUIET)) {
      Thread.sleep(QUIET.toMillis());
    }
  }

  /** The case with each shim of the slider that it can have, the nearest first. */
  static List<CaseFile> shimmed(CaseFile caseFile) {
    Map<String, String> fields = CaseDraft.fields(caseFile);
    double present = Double.parseDouble(fields.getOrDefault(PATH, "0"));
    List<Double> angles = new ArrayList<>();
    for (int notch = -NOTCHES_EITHER_WAY; notch <= NOTCHES_EITHER_WAY; notch++) {
      angles.add(notch * NOTCH);
    }
    angles.sort(Comparator.comparingDouble(angle -> Math.abs(angle - present)));
    List<CaseFile> all = new ArrayList<>();
    for (double angle : angles) {
      Map<String, String> turned = new HashMap<>(fields);
      turned.put(PATH, Double.toString(angle));
      CaseDraft.of(turned).read(Measures.METRIC, SectionFiles.NONE).caseFile().ifPresent(all::add);
    }
    return all;
  }
}
