package trimwright.web.trim;

import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import trimwright.desk.CaseStudy;
import trimwright.desk.SpeedRange;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.CauseWords;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** Has a case computed and puts what comes out into the page's words, pictures and tables. */
@Component
class TrimAnswers {
  /** Ends of the curve on the page [km/h]: the speeds at which foil boards are ridden. */
  private static final double FROM_KMH = 10;

  private static final double TO_KMH = 40;
  private static final double STEP_KMH = 1;
  private static final int PERCENT = 100;

  /** Everything the page shows of a case at a speed. */
  Answer at(CaseFile caseFile, double speedKmh) {
    CaseStudy study = CaseStudy.of(caseFile);
    double speed = Unit.KILOMETRE_PER_HOUR.toSi(speedKmh);
    Curve curve = study.curve(range(speedKmh));
    TrimOutcome outcome = study.trim(speed);
    CauseOutcome cause = study.cause(speed);
    VerdictWords verdict = VerdictWords.of(caseFile, curve, outcome);
    return new Answer(
        new Answer.Verdict(tone(outcome), verdict.first(), verdict.second()),
        outcome.findPoint().map(point -> PagePictures.sideView(caseFile, point)),
        PagePictures.curves(caseFile, curve, speed),
        outcome.findPoint().map(TrimAnswers::legs),
        cause(caseFile, cause),
        AnswerTables.points(curve, speed),
        cause instanceof CauseOutcome.Split split
            ? Optional.of(AnswerTables.moments(split))
            : Optional.empty());
  }

  /** The curve of a case, wide enough to hold a speed. */
  Curve curve(CaseFile caseFile, double speedKmh) {
    return CaseStudy.of(caseFile).curve(range(speedKmh));
  }

  /** The trim of a case at a speed. */
  Optional<TrimPoint> findPoint(CaseFile caseFile, double speedKmh) {
    return CaseStudy.of(caseFile).trim(Unit.KILOMETRE_PER_HOUR.toSi(speedKmh)).findPoint();
  }

  private static SpeedRange range(double speedKmh) {
    return SpeedRange.kmh(
        Math.min(FROM_KMH, Math.floor(speedKmh)), Math.max(TO_KMH, Math.ceil(speedKmh)), STEP_KMH);
  }

  private static Answer.Tone tone(TrimOutcome outcome) {
    return outcome
        .findPoint()
        .map(point -> point.brokenLimits().isEmpty() ? Answer.Tone.GOOD : Answer.Tone.WARN)
        .orElse(Answer.Tone.BAD);
  }

  private static Answer.Legs legs(TrimPoint point) {
    double share = Math.min(1, Math.max(0, point.footShare()));
    return new Answer.Legs(
        Figures.fixed(point.frontLeg(), 0),
        Figures.fixed(point.backLeg(), 0),
        Figures.fixed(PERCENT * point.footShare(), 0),
        Figures.fixed(Shown.mm(point.forwardReserve()), 0),
        (int) Math.round(PERCENT * share));
  }

  private static Answer.Cause cause(CaseFile caseFile, CauseOutcome outcome) {
    CauseWords words = CauseWords.of(caseFile, outcome);
    Optional<Table> split =
        outcome instanceof CauseOutcome.Split found
            ? Optional.of(AnswerTables.split(found))
            : Optional.empty();
    return new Answer.Cause(
        words.headline(), words.sentences(), split, List.copyOf(words.ruleOutFirst()));
  }
}
