package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Set;

/**
 * Chooses items within limits so that riders are served: fewest unserved, least marks, or least
 * money. Exact: branch and cut (Benders' decomposition inside a tree). A node fixes some items; its
 * linear programme over items, riders unserved and marks holds the {@link Cut cuts} found so far
 * and is given those that its solution breaks; its bound is a sum of our own ({@link Programme}). A
 * node whose items are all fixed is judged by looking, so that the library's tolerance decides
 * nothing.
 */
final class CoverSearch {
  private static final int ROUNDS_AT_ROOT = 60;
  private static final int ROUNDS = 3;

  /** Rise of the bound, as a part of what is known, that is worth another round of cuts. */
  private static final double WORTH = 1e-4;

  private final List<RiderChoices> riders;
  private final int items;
  private final CutPool covers = new CutPool();
  private final CutPool marks = new CutPool();
  private final CoverFill fill;

  /** What is to be least. */
  enum Aim {
    /** Persons unserved. */
    UNSERVED,
    /** Sum of marks over the persons served. */
    MARKS,
    /** Money. */
    MONEY
  }

  /**
   * What is asked.
   *
   * @param aim what is to be least
   * @param limits on the items; none of them met by nothing at all
   * @param money of each item; counts for that aim only
   * @param unserved persons that may stay unserved at most
   */
  record Question(Aim aim, List<Limit> limits, double[] money, double unserved) {}

  /**
   * What was found.
   *
   * @param items which are there
   * @param value what was to be least; infinite where the items do not answer the question
   * @param bound what it cannot be below; no more than the value or the one to be bettered
   */
  record Found(boolean[] items, double value, double bound) {}

  /** Some items fixed: 1 there, -1 not, 0 free. */
  private record Node(byte[] fixed, int depth, double bound) {}

  CoverSearch(List<RiderChoices> riders, int items) {
    this.riders = List.copyOf(riders);
    this.items = items;
    fill = new CoverFill(riders, items);
    for (int rider = 0; rider < riders.size(); rider++) {
      if (riders.get(rider).count() > 0) {
        marks.add(Cut.mark(rider, riders.get(rider), 0, new double[items]));
      }
    }
  }

  /**
   * Searches.
   *
   * @param question what is asked
   * @param start items to better; need not answer the question
   * @param toBeat a value that alone is of interest to be below
   * @param allowance how long
   */
  Found search(Question question, boolean[] start, double toBeat, Allowance allowance) {
    return new Run(question, start, toBeat, allowance).run();
  }

  /** What items are worth; infinite where they break a limit or leave too many unserved. */
  double value(Question question, boolean[] there) {
    return fill.value(question, there);
  }

  /** One search. */
  private final class Run {
    private final Question question;
    private final Allowance allowance;
    private final double penalty;
    private final PriorityQueue<Node> open =
        new PriorityQueue<>(
            Comparator.comparingDouble(Node::bound)
                .thenComparing(Comparator.comparingInt(Node::depth).reversed()));
    private final Set<String> tried = new HashSet<>();
    private boolean[] best;
    private double value;
    private double beat;

    Run(Question question, boolean[] start, double toBeat, Allowance allowance) {
      this.question = question;
      this.allowance = allowance;
      best = start;
      value = value(question, start);
      beat = Math.min(toBeat, value);
      improve(question.aim() == Aim.MONEY ? new boolean[items] : start);
      // A person too many unserved costs more than anything that is still of interest.
      penalty = 1 + (Double.isInfinite(beat) ? dearest() : beat);
    }

    private double dearest() {
      double sum = Arrays.stream(question.money()).sum();
      for (RiderChoices rider : riders) {
        double worst = rider.count() == 0 ? 0 : rider.mark(rider.count() - 1);
        sum += rider.persons() * (1 + worst);
      }
      return sum;
    }

    Found run() {
      byte[] fixed = new byte[items];
      for (int item = 0; item < items; item++) {
        int of = item;
        // What is in no option serves nobody, and has its price.
        fixed[item] = (byte) (riders.stream().anyMatch(rider -> rider.has(of)) ? 0 : -1);
      }
      open.add(new Node(fixed, 0, 0));
      while (!open.isEmpty() && !allowance.isOver()) {
        Node node = open.poll();
        if (isBeaten(node.bound())) {
          open.clear();
        } else {
          expand(node);
        }
      }
      double bound = open.isEmpty() ? beat : Math.min(beat, rounded(open.peek().bound()));
      return new Found(best, value, bound);
    }

    /** Persons are whole, so that a bound between two numbers of them is the upper one. */
    private double rounded(double bound) {
      return question.aim() == Aim.UNSERVED ? Math.ceil(bound - 1e-6) : bound;
    }

    private boolean isBeaten(double bound) {
      return rounded(bound) >= beat - Proven.SETTLED / 10 * Math.max(1, Math.abs(beat));
    }

    private void improve(boolean[] there) {
      if (!tried.add(Arrays.toString(there))) {
        return;
      }
      boolean[] filled = fill.filled(question, there, allowance);
      double found = value(question, filled);
      if (found < value) {
        value = found;
        best = filled;
        beat = Math.min(beat, value);
      }
    }

    private void expand(Node node) {
      byte[] fixed = node.fixed();
      double bound = node.bound();
      double[] x = new double[0];
      int most = node.depth() == 0 ? ROUNDS_AT_ROOT : ROUNDS;
      int still = 0;
      for (int round = 0; round < most && still < 3 && !allowance.isOver(); round++) {
        Programme.Answer answer = programme(fixed).minimise(allowance);
        double before = bound;
        bound = Math.max(bound, answer.bound());
        if (isBeaten(bound)) {
          return;
        }
        fixed = fixed(fixed, answer);
        x = answer.x();
        if (x.length == 0) {
          break;
        }
        if (round == 0 || node.depth() == 0) {
          improve(rounded(x));
        }
        if (!cut(x)) {
          break;
        }
        still = bound - before > WORTH * Math.max(1, Math.abs(beat)) ? 0 : still + 1;
      }
      branch(fixed, node.depth(), bound, x);
    }

    private boolean[] rounded(double[] x) {
      boolean[] there = new boolean[items];
      for (int i = 0; i < items; i++) {
        there[i] = x[i] > 0.5;
      }
      return there;
    }

    /** Fixes items that would lift the bound above what is of interest on their other side. */
    private byte[] fixed(byte[] fixed, Programme.Answer answer) {
      byte[] more = fixed.clone();
      for (int i = 0; i < items; i++) {
        if (more[i] == 0 && isBeaten(answer.bound() + Math.abs(answer.slopes()[i]))) {
          more[i] = (byte) (answer.slopes()[i] > 0 ? -1 : 1);
        }
      }
      return more;
    }

    private void branch(byte[] fixed, int depth, double bound, double[] x) {
      int on = -1;
      double most = -1;
      for (int i = 0; i < items; i++) {
        if (fixed[i] == 0) {
          double apart = x.length == 0 ? 0 : Math.min(x[i], 1 - x[i]);
          double weight = (apart + 1e-9) * (1 + fill.cost(question, i));
          if (weight > most) {
            most = weight;
            on = i;
          }
        }
      }
      if (on < 0) {
        improve(there(fixed));
        double exact = value(question, there(fixed));
        if (exact < value) {
          value = exact;
          best = there(fixed);
          beat = Math.min(beat, value);
        }
        return;
      }
      for (byte side : new byte[] {1, -1}) {
        byte[] child = fixed.clone();
        child[on] = side;
        if (side < 0 || fill.isWithin(question, there(child))) {
          open.add(new Node(child, depth + 1, bound));
        }
      }
    }

    private boolean[] there(byte[] fixed) {
      boolean[] there = new boolean[items];
      for (int i = 0; i < items; i++) {
        there[i] = fixed[i] > 0;
      }
      return there;
    }

    private Programme programme(byte[] fixed) {
      Programme programme = new Programme();
      Aim aim = question.aim();
      for (int i = 0; i < items; i++) {
        double money = aim == Aim.MONEY ? question.money()[i] : 0;
        programme.variable(fixed[i] > 0 ? 1 : 0, fixed[i] < 0 ? 0 : 1, money);
      }
      double persons = 0;
      for (RiderChoices rider : riders) {
        persons += rider.persons();
        double least = rider.count() == 0 ? 1 : 0;
        programme.variable(least, 1, aim == Aim.UNSERVED ? rider.persons() : 0);
      }
      if (aim == Aim.MARKS) {
        for (RiderChoices rider : riders) {
          double worst = rider.count() == 0 ? 0 : rider.mark(rider.count() - 1);
          programme.variable(0, worst, rider.persons());
        }
      }
      for (Limit limit : question.limits()) {
        Programme.Row row = programme.atMost(limit.most());
        for (int i = 0; i < limit.items().length; i++) {
          row.with(limit.items()[i], limit.weights()[i]);
        }
      }
      Programme.Row left = programme.atMost(question.unserved());
      for (int rider = 0; rider < riders.size(); rider++) {
        left.with(items + rider, riders.get(rider).persons());
      }
      left.with(programme.variable(0, persons, penalty), -1);
      for (Cut cut : covers.awake()) {
        row(programme, cut).with(items + cut.rider(), 1);
      }
      if (aim == Aim.MARKS) {
        for (Cut cut : marks.awake()) {
          row(programme, cut)
              .with(items + cut.rider(), cut.mark())
              .with(items + riders.size() + cut.rider(), 1);
        }
      }
      return programme;
    }

    private Programme.Row row(Programme programme, Cut cut) {
      Programme.Row row = programme.atLeast(cut.mark());
      for (int i = 0; i < cut.items().length; i++) {
        row.with(cut.items()[i], cut.lowers()[i]);
      }
      return row;
    }

    /** Adds or wakes the cuts that a solution breaks. */
    private boolean cut(double[] x) {
      double[] there = Arrays.copyOf(x, items);
      double[] unserved = Arrays.copyOfRange(x, items, items + riders.size());
      boolean graded = question.aim() == Aim.MARKS;
      int any = covers.look(there, null, unserved);
      double[] values =
          graded ? Arrays.copyOfRange(x, items + riders.size(), items + 2 * riders.size()) : x;
      if (graded) {
        any += marks.look(there, unserved, values);
      }
      for (int rider = 0; rider < riders.size(); rider++) {
        RiderChoices choices = riders.get(rider);
        if (choices.count() > 0 && !choices.isServedAnyway() && unserved[rider] < 1) {
          Cut cover = Cut.cover(rider, choices, there);
          boolean broken = cover.violation(there, 0, unserved[rider]) > CutPool.BROKEN;
          any += broken && covers.add(cover) ? 1 : 0;
        }
        if (graded && unserved[rider] < 1) {
          any += cutMarks(rider, there, unserved[rider], values[rider]) ? 1 : 0;
        }
      }
      return any > 0;
    }
  }

  /** Adds the most broken of a rider's mark cuts, over levels that grow apart. */
  private boolean cutMarks(int rider, double[] there, double unserved, double value) {
    RiderChoices choices = riders.get(rider);
    Cut worst = null;
    double most = CutPool.BROKEN;
    for (int level : levels(choices, there)) {
      Cut cut = Cut.mark(rider, choices, level, there);
      double violation = cut.violation(there, unserved, value);
      if (violation > most) {
        most = violation;
        worst = cut;
      }
    }
    return worst != null && marks.add(worst);
  }

  private static List<Integer> levels(RiderChoices choices, double[] there) {
    boolean[] whole = new boolean[there.length];
    for (int i = 0; i < there.length; i++) {
      whole[i] = there[i] > 1 - CutPool.BROKEN;
    }
    List<Integer> levels = new ArrayList<>();
    int best = Math.min(choices.best(whole), choices.count() - 1);
    for (int level = best; level > 0; level = level * 2 / 3) {
      levels.add(level);
    }
    return levels;
  }
}
