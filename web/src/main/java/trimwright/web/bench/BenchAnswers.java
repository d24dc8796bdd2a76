package trimwright.web.bench;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.stereotype.Component;
import trimwright.desk.BenchStudy;
import trimwright.desk.KeptTables;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchWriter;

/** Has a case computed over the Bench's speeds and puts what comes out into one answer. */
@Component
class BenchAnswers {
  /** More at once would make each of them late on a small machine, and a flood stop it. */
  private static final int AT_ONCE = 2;

  /** A slider that waits longer than this has long been moved on [s]. */
  private static final int PATIENCE_SECONDS = 5;

  private final KeptTables tables = new KeptTables();
  private final Semaphore free = new Semaphore(AT_ONCE, true);

  /**
   * The answer for a case.
   *
   * @throws TooBusy if others are being computed and none of them ends soon
   */
  String accepted(long sequence, Measures measures, CaseFile caseFile) {
    takeTurn();
    try {
      BenchStudy study = BenchStudy.of(caseFile, measures, tables);
      return BenchWriter.accepted(sequence, measures, caseFile, study.curve(), study.causes());
    } finally {
      free.release();
    }
  }

  private void takeTurn() {
    try {
      if (!free.tryAcquire(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        throw new TooBusy();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new TooBusy();
    }
  }
}
