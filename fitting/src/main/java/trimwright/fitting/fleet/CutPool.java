package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The cuts found so far. Those that have long not mattered rest until they are broken again. */
final class CutPool {
  /** Least violation that counts. */
  static final double BROKEN = 1e-6;

  private static final int PATIENCE = 6;

  private final List<Held> all = new ArrayList<>();
  private final Set<Cut> known = new HashSet<>();

  private static final class Held {
    private final Cut cut;
    private int idle;

    private Held(Cut cut) {
      this.cut = cut;
    }
  }

  /** Adds a cut; says whether it is new. */
  boolean add(Cut cut) {
    if (!known.add(cut)) {
      return false;
    }
    all.add(new Held(cut));
    return true;
  }

  /** The cuts that do not rest. */
  List<Cut> awake() {
    return all.stream().filter(held -> held.idle < PATIENCE).map(held -> held.cut).toList();
  }

  /**
   * Wakes the cuts that a solution breaks and counts how long the others have not mattered.
   *
   * @param x how far each item is there
   * @param unserved of each rider; null where it does not lower the cuts
   * @param values what the cuts are about, of each rider
   * @return how many woke
   */
  int look(double[] x, double[] unserved, double[] values) {
    int woke = 0;
    for (Held held : all) {
      int rider = held.cut.rider();
      double violation =
          held.cut.violation(x, unserved == null ? 0 : unserved[rider], values[rider]);
      boolean rests = held.idle >= PATIENCE;
      if (violation > BROKEN) {
        woke += rests ? 1 : 0;
        held.idle = 0;
      } else if (violation > -BROKEN) {
        held.idle = rests ? held.idle : 0;
      } else {
        held.idle++;
      }
    }
    return woke;
  }
}
