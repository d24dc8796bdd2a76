package trimwright.exchange.words;

import java.util.Optional;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.stock.StockSetup;

/**
 * A rider's card on hardware that is shared: shim, track, feet and speed.
 *
 * @param rider the name in the riders file
 * @param persons how many ride like this
 * @param asked what was asked of every setup for this rider
 * @param set the hardware's place among the sets shown, from 0; -1 where the rider has none
 * @param setup hardware with shim and track; empty where the rider has none
 * @param feet how far both feet are moved forward [m]
 * @param byTables shortfall by tables, a lower bound but for what tables miss [1]
 * @param judged what the full solution says; empty where it was not asked or there is no setup
 */
public record SharedCard(
    String rider,
    int persons,
    RideAsked asked,
    int set,
    Optional<StockSetup> setup,
    double feet,
    double byTables,
    Optional<Judged> judged) {

  /** Shortfall by the full solution where there is one, by tables otherwise [1]. */
  public double shortfall() {
    return judged.map(full -> asked.wishes().shortfall(full.values())).orElse(byTables);
  }
}
