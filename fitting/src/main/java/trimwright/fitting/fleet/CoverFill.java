package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trimwright.fitting.fleet.CoverSearch.Aim;
import trimwright.fitting.fleet.CoverSearch.Question;

/**
 * Judges a choice of items, and makes good ones quickly: options are added whole, each time the one
 * that gains most for what it costs. No more than a start for the exact search.
 */
final class CoverFill {
  private final List<RiderChoices> riders;
  private final int items;
  private final List<int[]> sets = new ArrayList<>();
  private final List<int[]> whose = new ArrayList<>();
  private final List<double[]> marks = new ArrayList<>();

  CoverFill(List<RiderChoices> riders, int items) {
    this.riders = List.copyOf(riders);
    this.items = items;
    Map<List<Integer>, List<double[]>> merged = new LinkedHashMap<>();
    for (int rider = 0; rider < riders.size(); rider++) {
      RiderChoices choices = riders.get(rider);
      for (int o = 0; o < choices.count(); o++) {
        List<Integer> key = new ArrayList<>();
        for (int item : choices.option(o)) {
          key.add(item);
        }
        merged
            .computeIfAbsent(key, absent -> new ArrayList<>())
            .add(new double[] {rider, choices.mark(o)});
      }
    }
    merged.forEach(
        (key, served) -> {
          sets.add(key.stream().mapToInt(Integer::intValue).toArray());
          whose.add(served.stream().mapToInt(pair -> (int) pair[0]).toArray());
          marks.add(served.stream().mapToDouble(pair -> pair[1]).toArray());
        });
  }

  /** What items are worth; infinite where they break a limit or leave too many unserved. */
  double value(Question question, boolean[] there) {
    double unserved = 0;
    double sum = 0;
    for (RiderChoices rider : riders) {
      int best = rider.best(there);
      if (best == rider.count()) {
        unserved += rider.persons();
      } else {
        sum += rider.persons() * rider.mark(best);
      }
    }
    if (unserved > question.unserved() || !isWithin(question, there)) {
      return Double.POSITIVE_INFINITY;
    }
    return switch (question.aim()) {
      case UNSERVED -> unserved;
      case MARKS -> sum;
      case MONEY -> money(question.money(), there);
    };
  }

  private static double money(double[] money, boolean[] there) {
    double sum = 0;
    for (int i = 0; i < there.length; i++) {
      sum += there[i] ? money[i] : 0;
    }
    return sum;
  }

  /** Whether items break no limit. */
  boolean isWithin(Question question, boolean[] there) {
    for (Limit limit : question.limits()) {
      double used = 0;
      for (int i = 0; i < limit.items().length; i++) {
        used += there[limit.items()[i]] ? limit.weights()[i] : 0;
      }
      if (used > limit.most()) {
        return false;
      }
    }
    return true;
  }

  /** How scarce an item is: parts of what the limits allow, or its money. */
  double cost(Question question, int item) {
    double cost = question.aim() == Aim.MONEY ? question.money()[item] : 0;
    for (Limit limit : question.limits()) {
      for (int i = 0; i < limit.items().length; i++) {
        if (limit.items()[i] == item && limit.most() > 0) {
          cost += limit.weights()[i] / limit.most();
        }
      }
    }
    return cost;
  }

  /**
   * Items as a start, without those that break a limit, and with options added as long as that
   * gains; then once more with each item left out.
   */
  boolean[] filled(Question question, boolean[] start, Allowance allowance) {
    double[] cost = new double[items];
    for (int i = 0; i < items; i++) {
      cost[i] = cost(question, i);
    }
    boolean[] best = grown(question, isWithin(question, start) ? start : new boolean[items], cost);
    double value = value(question, best);
    for (int out = 0; out < items && !allowance.isOver(); out++) {
      if (best[out]) {
        boolean[] without = best.clone();
        without[out] = false;
        boolean[] other = grown(question, without, cost);
        double found = value(question, other);
        if (found < value) {
          best = other;
          value = found;
        }
      }
    }
    return best;
  }

  private boolean[] grown(Question question, boolean[] start, double[] cost) {
    boolean[] there = start.clone();
    double[] now = new double[riders.size()];
    double unserved = 0;
    double apart = 1;
    for (RiderChoices rider : riders) {
      apart = rider.count() == 0 ? apart : Math.max(apart, 1 + rider.mark(rider.count() - 1));
    }
    boolean graded = question.aim() == Aim.MARKS;
    for (int rider = 0; rider < now.length; rider++) {
      int best = riders.get(rider).best(there);
      boolean served = best < riders.get(rider).count();
      now[rider] = served ? graded ? riders.get(rider).mark(best) : 0 : apart * now.length;
      unserved += served ? 0 : riders.get(rider).persons();
    }
    while (question.aim() != Aim.MONEY || unserved > question.unserved()) {
      int add = most(question, there, now, cost, graded);
      if (add < 0) {
        break;
      }
      for (int item : sets.get(add)) {
        there[item] = true;
      }
      unserved = 0;
      for (int rider = 0; rider < now.length; rider++) {
        int best = riders.get(rider).best(there);
        boolean served = best < riders.get(rider).count();
        now[rider] = served ? graded ? riders.get(rider).mark(best) : 0 : apart * now.length;
        unserved += served ? 0 : riders.get(rider).persons();
      }
    }
    return question.aim() == Aim.MONEY ? without(question, there, cost) : there;
  }

  /** Items without those that are not needed, the dearest first. */
  private boolean[] without(Question question, boolean[] there, double[] cost) {
    Integer[] order = new Integer[items];
    Arrays.setAll(order, item -> item);
    Arrays.sort(order, Comparator.comparingDouble(item -> -cost[item]));
    for (int item : order) {
      if (there[item]) {
        there[item] = false;
        there[item] = Double.isInfinite(value(question, there));
      }
    }
    return there;
  }

  private int most(
      Question question, boolean[] there, double[] now, double[] cost, boolean graded) {
    int best = -1;
    double most = 0;
    for (int s = 0; s < sets.size(); s++) {
      double gain = 0;
      for (int k = 0; k < whose.get(s).length; k++) {
        int rider = whose.get(s)[k];
        double mark = graded ? marks.get(s)[k] : 0;
        gain += riders.get(rider).persons() * Math.max(0, now[rider] - mark);
      }
      if (gain > 0) {
        double needed = 1e-9;
        for (int item : sets.get(s)) {
          needed += there[item] ? 0 : cost[item];
        }
        if (gain / needed > most && isWithin(question, with(there, sets.get(s)))) {
          most = gain / needed;
          best = s;
        }
      }
    }
    return best;
  }

  private static boolean[] with(boolean[] there, int[] more) {
    boolean[] with = there.clone();
    for (int item : more) {
      with[item] = true;
    }
    return with;
  }
}
