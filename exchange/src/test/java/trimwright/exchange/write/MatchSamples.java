package trimwright.exchange.write;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.demo.DemoStock;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.read.StockCases;
import trimwright.exchange.read.StockFile;
import trimwright.exchange.read.StockReader;
import trimwright.exchange.words.MatchAnswer;
import trimwright.fitting.judge.PairTables;
import trimwright.fitting.judge.QuickJudge;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.fitting.match.MatchResult;
import trimwright.fitting.match.MatchSearch;
import trimwright.fitting.match.Progress;
import trimwright.fitting.match.Screen;
import trimwright.fitting.match.Variation;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Propulsion;
import trimwright.fitting.stock.SetupSpace;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.trim.SurfaceTables;

/** Matches over a corner of the made-up stock, each computed once for all tests. */
final class MatchSamples {
  static final StockFile STOCK =
      StockReader.read(DemoStock.text(), SectionFiles.NONE).findValue().orElseThrow();

  private static MatchAnswer some;
  private static MatchAnswer none;

  private MatchSamples() {}

  // Not in the class's own making: its threads would wait for it to end.

  /** Somebody for whom two setups pass. */
  static synchronized MatchAnswer some() {
    if (some == null) {
      some =
          answer(
              "light-carver",
              Set.of(
                  "board-1380", "mast-800", "fuselage-660", "wing-1000-780", "stabilizer-170-310"),
              Optional.empty());
    }
    return some;
  }

  /** Somebody for whom none does: the rules of first flights. */
  static synchronized MatchAnswer none() {
    if (none == null) {
      none =
          answer(
              "heavy-beginner",
              Set.of(
                  "board-1950", "mast-750", "fuselage-850", "wing-2050-960", "stabilizer-480-520"),
              Optional.of(new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty())));
    }
    return none;
  }

  private static MatchAnswer answer(String id, Set<String> keep, Optional<FallDrive> first) {
    CaseFile file =
        CaseReader.read(DemoCases.find(id).orElseThrow().text(), SectionFiles.NONE)
            .findValue()
            .orElseThrow();
    StockCases cases = StockCases.of(file, STOCK);
    RidingKind kind = RidingKind.valueOf(file.notes().skill().name());
    RideAsked asked =
        new RideAsked(
            file.rideCase(),
            RideSpan.about(file.rideCase().rider().wishedSpeed()),
            Wishes.of(kind),
            0.1,
            Posture.STANDING,
            first);
    double temperature = cases.waterTemperature();
    Screen screen =
        new Screen(
            SetupSpace.of(STOCK.stock().keeping(keep), Propulsion.DRIVEN),
            new QuickJudge(asked),
            temperature,
            PairTables.ANEW);
    MatchResult result =
        new MatchSearch(
                screen,
                SurfaceTables.ANEW,
                setup -> Envelope.Ratings.NONE,
                temperature,
                new Workers(1, false),
                Progress.NONE)
            .find(
                new MatchSearch.Size(2, first.isPresent() ? 1 : 2),
                Wish.TAKE_OFF,
                Wish.RANGE,
                List.of(new Variation("as it is", asked, temperature)),
                cases.ownParts());
    return new MatchAnswer(
        file,
        STOCK,
        kind,
        result,
        result.rows().stream()
            .map(
                row ->
                    cases
                        .caseFile(row.candidate().setup(), row.candidate().placement().feet())
                        .findValue()
                        .orElseThrow())
            .toList());
  }
}
