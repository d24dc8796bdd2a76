package trimwright.web.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.desk.KeptPairs;
import trimwright.desk.LayeredStock;
import trimwright.desk.MatchStudy;
import trimwright.desk.SectionPolars;
import trimwright.exchange.words.MatchAnswer;
import trimwright.exchange.write.MatchPageWriter;
import trimwright.fitting.match.Workers;
import trimwright.fitting.stock.Stock;

/**
 * Looks through a stock as the command does, behind whoever waits at a screen: on all processors
 * but one, where there are several. What it keeps are finished tables alone.
 */
final class StockSearch {
  private final SectionPolars polars = new SectionPolars(Optional.empty());
  private final KeptPairs pairs = new KeptPairs(Optional.empty());

  /**
   * Looks for what was asked.
   *
   * @throws java.util.concurrent.CancellationException if it was stopped
   */
  String run(MatchAsked asked, MatchJob watch) {
    List<String> remarks = new ArrayList<>();
    Stock parts =
        LayeredStock.of(
            asked.cases().stock().stock(),
            polars,
            watch::atSection,
            (name, remark) -> remarks.add("Polars of " + name + ": " + remark));
    MatchAnswer answer =
        MatchStudy.find(asked.cases(), parts, asked.question(), pairs, Workers.behind(), watch);
    return MatchPageWriter.found(answer, remarks);
  }
}
