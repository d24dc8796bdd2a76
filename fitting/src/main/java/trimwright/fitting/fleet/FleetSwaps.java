package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A good fleet, quickly: sets are added one by one, each the best at its turn, then exchanged one
 * for one while that betters it. No more than a start for the exact search.
 */
final class FleetSwaps {
  private final Columns columns;
  private final int fleet;
  private final double apart;

  FleetSwaps(Columns columns, int fleet) {
    this.columns = columns;
    this.fleet = fleet;
    double worst = 0;
    double persons = 0;
    for (int i = 0; i < columns.riders(); i++) {
      persons += columns.persons(i);
      for (int c = 0; c < columns.count(); c++) {
        worst = columns.fits(i, c) ? Math.max(worst, columns.mark(i, c)) : worst;
      }
    }
    apart = 1 + worst * persons;
  }

  /**
   * Betters a fleet.
   *
   * @param start columns to begin with; may be none
   */
  List<Integer> better(List<Integer> start, Allowance allowance) {
    List<Integer> chosen = new ArrayList<>(start);
    double value = value(marks(chosen, -1));
    boolean better = true;
    // Adding is quick, and a fleet of nothing would be a poor answer.
    while (better && (chosen.size() < fleet || !allowance.isOver())) {
      better = false;
      for (int out = chosen.size() < fleet ? -1 : 0; out < chosen.size(); out++) {
        int in = entering(chosen, out, value);
        if (in >= 0) {
          if (out < 0) {
            chosen.add(in);
          } else {
            chosen.set(out, in);
          }
          value = value(marks(chosen, -1));
          better = true;
        }
        if (chosen.size() < fleet && better) {
          break;
        }
      }
    }
    return chosen;
  }

  /** The column that betters a fleet most in place of one of its own, -1 where none does. */
  private int entering(List<Integer> chosen, int out, double value) {
    double[] without = marks(chosen, out);
    int[] used = used(chosen, out);
    double least = value - 1e-9 * Math.max(1, value);
    int in = -1;
    for (int c = 0; c < columns.count(); c++) {
      if (isThere(c, used)) {
        double with = 0;
        for (int i = 0; i < without.length && with < least; i++) {
          double mark = columns.fits(i, c) ? columns.mark(i, c) : apart;
          with += columns.persons(i) * Math.min(without[i], mark);
        }
        if (with < least) {
          least = with;
          in = c;
        }
      }
    }
    return in;
  }

  private boolean isThere(int column, int[] used) {
    for (int part : columns.parts(column)) {
      if (used[part] >= columns.supply(part)) {
        return false;
      }
    }
    return true;
  }

  private int[] used(List<Integer> chosen, int out) {
    int[] used = new int[columns.scarce()];
    for (int k = 0; k < chosen.size(); k++) {
      if (k != out) {
        for (int part : columns.parts(chosen.get(k))) {
          used[part]++;
        }
      }
    }
    return used;
  }

  private double[] marks(List<Integer> chosen, int out) {
    double[] best = new double[columns.riders()];
    Arrays.fill(best, apart);
    for (int k = 0; k < chosen.size(); k++) {
      if (k != out) {
        for (int i = 0; i < best.length; i++) {
          if (columns.fits(i, chosen.get(k))) {
            best[i] = Math.min(best[i], columns.mark(i, chosen.get(k)));
          }
        }
      }
    }
    return best;
  }

  private double value(double[] best) {
    double sum = 0;
    for (int i = 0; i < best.length; i++) {
      sum += columns.persons(i) * best[i];
    }
    return sum;
  }
}
