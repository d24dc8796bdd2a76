package trimwright.fitting.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;

/**
 * The trade-off between two wishes: setups of which no other is better in one without being worse
 * in the other. One thread's.
 */
public final class FrontLine {
  private final Wish one;
  private final Wish other;
  private final Wishes wishes;

  /** By what the first wish costs; what the second costs falls along it. */
  private final TreeMap<Double, Candidate> line = new TreeMap<>();

  FrontLine(Wish one, Wish other, Wishes wishes) {
    this.one = one;
    this.other = other;
    this.wishes = wishes;
  }

  /**
   * How bad a value is: rising where less is better, falling where more is; a wish with two ends
   * costs its distance from them.
   */
  static double cost(Grade grade, double value) {
    if (Double.isNaN(value)) {
      return Double.POSITIVE_INFINITY;
    }
    if (Double.isInfinite(grade.from())) {
      return value;
    }
    return Double.isInfinite(grade.to()) ? -value : grade.shortfall(value);
  }

  void take(Candidate candidate) {
    double a = cost(wishes.grade(one), candidate.placement().values().of(one));
    double b = cost(wishes.grade(other), candidate.placement().values().of(other));
    if (Double.isInfinite(a) || Double.isInfinite(b)) {
      return;
    }
    Map.Entry<Double, Candidate> before = line.floorEntry(a);
    if (before != null) {
      double there = costOfOther(before.getValue());
      boolean same = before.getKey() == a && there == b;
      if (there < b
          || there == b && before.getKey() < a
          || same && Candidate.ORDER.compare(before.getValue(), candidate) <= 0) {
        return;
      }
    }
    line.put(a, candidate);
    Map.Entry<Double, Candidate> after = line.higherEntry(a);
    while (after != null && costOfOther(after.getValue()) >= b) {
      line.remove(after.getKey());
      after = line.higherEntry(a);
    }
  }

  private double costOfOther(Candidate candidate) {
    return cost(wishes.grade(other), candidate.placement().values().of(other));
  }

  void add(FrontLine more) {
    more.line.values().forEach(this::take);
  }

  /** The first of the two wishes. */
  public Wish one() {
    return one;
  }

  /** The second. */
  public Wish other() {
    return other;
  }

  /** The setups along it, the best in the first wish first. */
  public List<Candidate> points() {
    return new ArrayList<>(line.values());
  }
}
