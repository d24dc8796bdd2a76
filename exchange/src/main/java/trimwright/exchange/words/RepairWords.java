package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.ReadSection;
import trimwright.kernel.section.OutlineRepair;

/** Says what was put right in a coordinates file. */
public final class RepairWords {
  private RepairWords() {}

  /**
   * One sentence for each repair.
   *
   * @param read what was read
   * @return sentences; none where the file was in order
   */
  public static List<String> of(ReadSection read) {
    List<String> sentences = new ArrayList<>();
    if (read.joined()) {
      sentences.add("The two surfaces were listed apart and were joined.");
    }
    for (OutlineRepair repair : read.repairs()) {
      sentences.add(sentence(repair));
    }
    return sentences;
  }

  private static String sentence(OutlineRepair repair) {
    return switch (repair.kind()) {
      case LOWER_FIRST -> "The lower surface came first; the order was turned round.";
      case REPEATED -> count(repair.points()) + " repeated and left out.";
      case STEPPED_BACK ->
          count(repair.points())
              + " out of order, by up to "
              + percent(repair.size(), 2)
              + " of the chord, and left out.";
      case CLOSED ->
          "The trailing edge was open by "
              + percent(repair.size(), 2)
              + " of the chord; a wedge over the whole chord closes it.";
      case TURNED ->
          "The outline lay at "
              + Shown.decimals(Shown.degrees(repair.size()), 2)
              + " degrees; angles count from its own chord line.";
      case ROUGH ->
          "The points scatter by about "
              + percent(repair.size(), 3)
              + " of the chord about a smooth line and were taken as they are: trust pressures less,"
              + " and smooth them if you can.";
    };
  }

  private static String count(int points) {
    return points == 1 ? "One point was" : points + " points were";
  }

  private static String percent(double share, int decimals) {
    return Shown.decimals(100 * share, decimals) + " %";
  }
}
