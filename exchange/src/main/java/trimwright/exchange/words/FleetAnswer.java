package trimwright.exchange.words;

import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.RidersFile;
import trimwright.exchange.read.StockFile;
import trimwright.fitting.fleet.Proven;

/**
 * Hardware for riders who share it.
 *
 * @param riders who they are
 * @param stock the parts
 * @param bases each rider's case on some setup of the stock
 * @param wanted how many sets there may be
 * @param hardware how many sets were chosen from
 * @param sets the parts of each set chosen
 * @param cards each rider's card, in the file's order
 * @param alone what each rider would have alone, in the same order
 * @param served persons served; a bound on what any choice can serve
 * @param worst largest shortfall among those served [1]
 * @param mean mean shortfall of the persons served; a bound on what any choice that serves as many
 *     can have [1]
 * @param looked cards solved in full
 * @param fallen cards that passed the tables and fell at the full solution
 */
public record FleetAnswer(
    RidersFile riders,
    StockFile stock,
    List<CaseFile> bases,
    int wanted,
    int hardware,
    List<List<String>> sets,
    List<SharedCard> cards,
    List<SharedCard> alone,
    Proven served,
    double worst,
    Proven mean,
    int looked,
    int fallen) {
  /** Copies the lists. */
  public FleetAnswer {
    bases = List.copyOf(bases);
    sets = List.copyOf(sets);
    cards = List.copyOf(cards);
    alone = List.copyOf(alone);
  }
}
