package trimwright.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.ChangedCases;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.words.ChangeAnswer;
import trimwright.exchange.write.SectionCode;
import trimwright.fitting.change.Change;
import trimwright.fitting.change.ChangeAdvice;
import trimwright.fitting.change.ChangeSearch;
import trimwright.fitting.change.ChangeStep;
import trimwright.fitting.change.ChangedRide;
import trimwright.fitting.change.OwnParts;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.stock.Stock;

/**
 * The smallest change that makes a case's ride meet its wishes. All that is told of a change is
 * computed from the case file that it makes.
 */
public final class ChangeStudy {
  private ChangeStudy() {}

  /**
   * Where other parts come from.
   *
   * @param file the stock as it was read
   * @param pieces its parts as they are computed with, see {@link LayeredStock}
   */
  public record Parts(StockFile file, Stock pieces) {}

  /**
   * Looks for changes.
   *
   * @param caseFile the case as it is computed with
   * @param files finds the coordinates files that it names
   * @param parts other parts, where a stock was given
   * @param question what is wanted
   * @param sections puts a changed case's wings on the same kind of sections
   * @param progress told what has been looked at
   * @param isStopped asked again and again
   * @return the advice
   * @throws java.util.concurrent.CancellationException if it was stopped
   */
  public static ChangeAnswer find(
      CaseFile caseFile,
      SectionFiles files,
      Optional<Parts> parts,
      ChangeQuestion question,
      UnaryOperator<CaseFile> sections,
      Consumer<ChangeStep> progress,
      BooleanSupplier isStopped) {
    ChangedCases cases = ChangedCases.of(caseFile, files, parts.map(Parts::file));
    OwnParts own = parts.map(p -> cases.parts(p.pieces())).orElse(OwnParts.NONE);
    RideAsked asked =
        RiderAsked.of(caseFile, question.span(), question.feetReach(), question.weights());
    String code = SectionCode.of(caseFile);
    ChangedRide confirmed =
        changes ->
            after(cases, changes, sections)
                // Two models in one comparison would show their difference as if it were a change's
                .filter(file -> SectionCode.of(file).equals(code))
                .map(file -> new ChangedRide.Rated(file.rideCase(), EnvelopeStudy.ratings(file)));
    ChangeAdvice advice =
        new ChangeSearch(asked, own, confirmed, new KeptTables(), progress, isStopped).find();
    return new ChangeAnswer(
        caseFile, parts.map(Parts::file), RiderAsked.kind(caseFile), advice, cases);
  }

  private static Optional<CaseFile> after(
      ChangedCases cases, List<Change> changes, UnaryOperator<CaseFile> sections) {
    return cases
        .caseFile(changes)
        .findValue()
        .map(file -> changes.isEmpty() ? file : sections.apply(file));
  }
}
