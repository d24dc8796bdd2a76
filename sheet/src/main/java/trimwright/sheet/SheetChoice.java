package trimwright.sheet;

import java.time.LocalDate;
import java.util.Objects;
import trimwright.exchange.unit.Measures;

/**
 * What is chosen for one print.
 *
 * @param paper size of the paper
 * @param measures units of its numbers
 * @param riderName whose sheet it is; blank for a line to write the name on
 * @param date printed at the top
 */
public record SheetChoice(Paper paper, Measures measures, String riderName, LocalDate date) {
  /** Checks that everything is there. */
  public SheetChoice {
    Objects.requireNonNull(paper, "paper");
    Objects.requireNonNull(measures, "measures");
    Objects.requireNonNull(riderName, "riderName");
    Objects.requireNonNull(date, "date");
  }
}
