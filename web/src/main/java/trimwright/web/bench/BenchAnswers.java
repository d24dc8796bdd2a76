package trimwright.web.bench;

import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import trimwright.desk.BenchBands;
import trimwright.desk.BenchEnvelope;
import trimwright.desk.BenchStudy;
import trimwright.desk.KeptPlays;
import trimwright.desk.KeptTables;
import trimwright.desk.SectionPolars;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchBandsWriter;
import trimwright.exchange.write.BenchEnvelopeWriter;
import trimwright.exchange.write.BenchMotionWriter;
import trimwright.exchange.write.BenchWriter;
import trimwright.exchange.write.SectionCode;
import trimwright.exchange.write.SectionState;
import trimwright.kernel.band.Bands;
import trimwright.kernel.play.Play;

/** Has cases computed over the Bench's speeds, a few at once and no more. */
final class BenchAnswers {
  /** More at once would make each of them late on a small machine, and a flood stop it. */
  private static final int AT_ONCE = 2;

  /** A slider that waits longer than this has long been moved on. */
  private static final Duration PATIENCE = Duration.ofSeconds(5);

  private final Duration patience;

  private final Semaphore free = new Semaphore(AT_ONCE, true);

  /** Envelopes go one by one, so that a slider always finds a place among the answers. */
  private final Semaphore oneEnvelope = new Semaphore(1, true);

  private final KeptTables tables = new KeptTables();

  /** Tables of cases with one number moved, for the bands; kept apart, since they are many. */
  private final KeptTables moved = new KeptTables();

  private final KeptPlays plays = new KeptPlays();

  private final SectionJobs sections = new SectionJobs(new SectionPolars(Optional.empty()));

  private final ShimTables shims = new ShimTables(tables, this::isQuiet, sections::of);

  /** First answers kept; each is some 200 kB. */
  private static final int MOST_FIRSTS = 16;

  private final Map<String, String> firsts = new ConcurrentHashMap<>();

  private final CountDownLatch opened = new CountDownLatch(1);
  private volatile long lastAsked = System.nanoTime();

  BenchAnswers() {
    this(PATIENCE);
  }

  /** With another patience, for tests that do not want to wait. */
  BenchAnswers(Duration patience) {
    this.patience = patience;
  }

  /**
   * The answer for a case.
   *
   * @throws TooBusy if others are being computed and none of them ends soon
   */
  String accepted(long sequence, Measures measures, CaseFile caseFile) {
    lastAsked = System.nanoTime();
    String answer = unasked(sequence, measures, caseFile);
    if (opened.getCount() == 0) {
      shims.prepare(caseFile);
    }
    return answer;
  }

  /** The same without counting as asked: {@link Practice}'s. */
  String unasked(long sequence, Measures measures, CaseFile caseFile) {
    return inTurn(
        () -> {
          CaseFile layered = sections.of(caseFile);
          BenchStudy study = BenchStudy.of(layered, measures, tables);
          return BenchWriter.accepted(sequence, measures, layered, study.curve(), study.causes());
        });
  }

  /**
   * The answer for a case as a page opens with it: number 0, and kept for the next page, because
   * the same few cases are opened again and again.
   *
   * @throws TooBusy as {@link #accepted}
   */
  String first(Measures measures, CaseFile caseFile) {
    String standsOn = SectionCode.of(sections.of(caseFile));
    String key = measures + " " + standsOn + " " + caseFile.name() + " " + caseFile.digest();
    if (firsts.size() >= MOST_FIRSTS && !firsts.containsKey(key)) {
      firsts.clear();
    }
    // Whoever asks while it is being worked out waits for that one.
    return firsts.computeIfAbsent(key, k -> accepted(0, measures, caseFile));
  }

  /** The case on its sections' polars where all are there; else as it is. */
  CaseFile onSections(CaseFile caseFile) {
    return sections.of(caseFile);
  }

  /** How far the polars of a case are; what is missing is begun. */
  SectionState sections(CaseFile caseFile) {
    return sections.state(caseFile);
  }

  /** Calls off what is worked out beside the answers. */
  void stop() {
    sections.stop();
  }

  /** Notes that a page has been opened with that case; its sliders will be moved soon. */
  void noteOpened(CaseFile caseFile) {
    lastAsked = System.nanoTime();
    opened.countDown();
    shims.prepare(caseFile);
  }

  /** Waits until a page has been opened. */
  void awaitOpened() throws InterruptedException {
    opened.await();
  }

  /** Whether nobody has asked for so long. */
  boolean isQuiet(Duration time) {
    return System.nanoTime() - lastAsked > time.toNanos();
  }

  /**
   * What is worked out of a case.
   *
   * @throws TooBusy as {@link #accepted}
   */
  BenchStudy study(Measures measures, CaseFile caseFile) {
    return inTurn(() -> BenchStudy.of(sections.of(caseFile), measures, tables));
  }

  /**
   * The bands of a case as it is handed in, see {@link #onSections}.
   *
   * @throws TooBusy as {@link #accepted}
   */
  Bands bands(Measures measures, CaseFile caseFile) {
    return inTurn(
            () -> BenchBands.find(caseFile, Optional.empty(), measures, tables, moved, () -> false))
        .orElseThrow()
        .bands();
  }

  /**
   * The answer with the bands of a case, given up as soon as anybody moves a slider: whoever asked
   * asks again at rest.
   *
   * @throws TooBusy as {@link #accepted}
   */
  String banded(long sequence, Measures measures, CaseFile caseFile, Optional<CaseFile> pinned) {
    long begun = lastAsked;
    CaseFile layered = sections.of(caseFile);
    Optional<CaseFile> reference = pinned.map(sections::of);
    return inTurn(
        () ->
            BenchBands.find(layered, reference, measures, tables, moved, () -> lastAsked != begun)
                .map(
                    bench ->
                        BenchBandsWriter.accepted(
                            sequence,
                            measures,
                            layered,
                            bench.bands(),
                            bench.study().causes(),
                            bench.splits(),
                            bench.reference()))
                .orElseGet(() -> BenchBandsWriter.stopped(sequence)));
  }

  /**
   * The envelope of a case, one at a time; given up as {@link #banded}.
   *
   * @throws TooBusy as {@link #accepted}
   */
  String envelope(long sequence, Measures measures, CaseFile caseFile) {
    long begun = lastAsked;
    CaseFile layered = sections.of(caseFile);
    return inTurn(
        oneEnvelope,
        () ->
            inTurn(
                () ->
                    BenchEnvelope.find(layered, () -> lastAsked != begun)
                        .map(
                            found ->
                                BenchEnvelopeWriter.accepted(
                                    sequence,
                                    measures,
                                    layered,
                                    found.envelope(),
                                    found.banks(),
                                    found.breach(),
                                    found.fastest()))
                        .orElseGet(() -> BenchEnvelopeWriter.stopped(sequence))));
  }

  /**
   * A play of a case, one at a time; given up as {@link #banded}.
   *
   * @throws TooBusy as {@link #accepted}
   */
  String motion(long sequence, Measures measures, CaseFile caseFile, Play play, double speed) {
    long begun = lastAsked;
    CaseFile layered = sections.of(caseFile);
    return inTurn(
        () ->
            plays
                .find(layered, play, speed, () -> lastAsked != begun)
                .map(
                    found ->
                        BenchMotionWriter.accepted(
                            sequence,
                            measures,
                            layered,
                            play,
                            speed,
                            found.trace(),
                            found.cut(),
                            found.waves()))
                .orElseGet(() -> BenchMotionWriter.stopped(sequence)));
  }

  /**
   * Does something costly when its turn has come.
   *
   * @throws TooBusy as {@link #accepted}
   */
  <T> T inTurn(Supplier<T> work) {
    return inTurn(free, work);
  }

  private <T> T inTurn(Semaphore turn, Supplier<T> work) {
    try {
      if (!turn.tryAcquire(patience.toMillis(), TimeUnit.MILLISECONDS)) {
        throw new TooBusy();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new TooBusy();
    }
    try {
      return work.get();
    } finally {
      turn.release();
    }
  }
}
