package trimwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.words.MatchAnswer;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.match.MatchRow;
import trimwright.fitting.match.MatchSearch;
import trimwright.fitting.match.Progress;
import trimwright.fitting.match.Screen;
import trimwright.fitting.match.Variation;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.stock.Stock;
import trimwright.fitting.stock.StockSetup;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;

/** Which setups of a stock suit the rider of a case. */
public final class MatchStudy {
  /**
   * What is looked at under the rules of first flights: falls take seconds a setup, and a list to
   * choose from is the last thing a beginner needs.
   */
  private static final MatchSearch.Size FIRST_FLIGHTS = new MatchSearch.Size(3, 8);

  private MatchStudy() {}

  /**
   * Looks through a stock.
   *
   * @param cases the rider and the stock
   * @param parts the stock's parts as they are computed with, see {@link LayeredStock}
   * @param question what is wanted
   * @param tables of pairs of wings
   * @param workers who works
   * @param progress told how far it is
   * @return the setups that suit
   * @throws java.util.concurrent.CancellationException if it was stopped
   * @throws IllegalArgumentException if the speeds lie outside those of the tables
   */
  public static MatchAnswer find(
      StockCases cases,
      Stock parts,
      MatchQuestion question,
      PairTables tables,
      Workers workers,
      Progress progress) {
    CaseFile base = cases.base();
    RideAsked asked =
        RiderAsked.of(base, question.span(), question.feetReach(), question.weights());
    double temperature = cases.waterTemperature();
    SetupSpace space = SetupSpace.of(parts, cases.space().propulsion());
    Screen screen = new Screen(space, new QuickJudge(asked), temperature, tables);
    MatchSearch search =
        new MatchSearch(screen, new KeptTables(), ratings(cases), temperature, workers, progress);
    MatchResult result =
        search.find(
            asked.isFirstFlights() ? FIRST_FLIGHTS : question.size(),
            question.one(),
            question.other(),
            variations(asked, temperature, question),
            cases.ownParts());
    List<CaseFile> files = new ArrayList<>();
    for (MatchRow row : result.rows()) {
      files.add(
          cases
              .caseFile(row.candidate().setup(), row.candidate().placement().feet())
              .findValue()
              .orElseThrow());
    }
    return new MatchAnswer(base, cases.stock(), RiderAsked.kind(base), result, files);
  }

  private static Function<StockSetup, Envelope.Ratings> ratings(StockCases cases) {
    return setup ->
        cases.caseFile(setup).findValue().map(EnvelopeStudy::ratings).orElse(Envelope.Ratings.NONE);
  }

  private static List<Variation> variations(
      RideAsked asked, double temperature, MatchQuestion question) {
    List<Variation> all = new ArrayList<>();
    double spread = question.weightSpread();
    if (spread > 0) {
      String by = Math.round(spread) + " kg ";
      all.add(new Variation(by + "heavier", asked.of(weighing(asked.base(), spread)), temperature));
      all.add(
          new Variation(by + "lighter", asked.of(weighing(asked.base(), -spread)), temperature));
    }
    for (MatchQuestion.OtherWater water : question.waters()) {
      all.add(
          new Variation(
              water.name(), asked.of(asked.base().withWater(water.water())), water.temperature()));
    }
    return all;
  }

  private static RideCase weighing(RideCase c, double more) {
    Rider r = c.rider();
    return c.withRider(
        new Rider(
            r.mass() + more,
            r.kitMass(),
            r.height(),
            r.airDragArea(),
            r.frontFoot(),
            r.backFoot(),
            r.wishedSpeed(),
            r.wishedFootShare(),
            r.wishedPitch()));
  }
}
