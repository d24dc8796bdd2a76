package trimwright.web.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.springframework.stereotype.Component;
import trimwright.desk.CaseStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.exchange.write.BenchWriter;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;

/** Has a case computed over the Bench's speeds and puts what comes out into one answer. */
@Component
class BenchAnswers {
  /** Speeds at which foil boards are ridden [km/h]. */
  private static final double FROM_KMH = 10;

  private static final double TO_KMH = 40;

  /** The same for people who read miles per hour [mph]. */
  private static final double FROM_MPH = 6;

  private static final double TO_MPH = 25;

  /** More at once would make each of them late on a small machine, and a flood stop it. */
  private static final int AT_ONCE = 2;

  /** A slider that waits longer than this has long been moved on [s]. */
  private static final int PATIENCE_SECONDS = 5;

  private final Semaphore free = new Semaphore(AT_ONCE, true);

  /**
   * The answer for a case.
   *
   * @throws TooBusy if others are being computed and none of them ends soon
   */
  String accepted(long sequence, Measures measures, CaseFile caseFile) {
    takeTurn();
    try {
      CaseStudy study = CaseStudy.of(caseFile);
      Curve curve = study.curve(speeds(measures, caseFile));
      List<CauseOutcome> causes = new ArrayList<>();
      curve.outcomes().forEach(outcome -> causes.add(study.cause(outcome.speed())));
      return BenchWriter.accepted(sequence, measures, caseFile, curve, causes);
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

  /** Whole steps of the measure shown, so that each speed shown is one that was computed. */
  private static SpeedRange speeds(Measures measures, CaseFile caseFile) {
    double wished = caseFile.rideCase().rider().wishedSpeed();
    if (measures == Measures.IMPERIAL) {
      double mph = Unit.MILE_PER_HOUR.fromSi(wished);
      double from = Math.min(FROM_MPH, Math.floor(mph));
      double to = Math.max(TO_MPH, Math.ceil(mph));
      return SpeedRange.of(
          Unit.MILE_PER_HOUR.toSi(from), Unit.MILE_PER_HOUR.toSi(to), Unit.MILE_PER_HOUR.toSi(1));
    }
    double kmh = Shown.kmh(wished);
    return SpeedRange.kmh(Math.min(FROM_KMH, Math.floor(kmh)), Math.max(TO_KMH, Math.ceil(kmh)), 1);
  }
}
