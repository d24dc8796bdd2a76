package trimwright.fitting.fleet;

import java.util.Arrays;

/**
 * A row that holds for every choice of items: what the mark of a rider (0 when unserved) is at
 * least. With {@code mark} 1 in the programme that counts the unserved it reads: unserved, or one
 * of the items is there.
 *
 * @param rider whose
 * @param mark the mark while none of the items is there and the rider is served
 * @param items that can lower it
 * @param lowers by how much each of them can, one for each item
 */
record Cut(int rider, double mark, int[] items, double[] lowers) {
  /**
   * Nobody is served who lacks something of every option: the rider is unserved unless one of the
   * items is there that together meet all options.
   */
  static Cut cover(int rider, RiderChoices choices, double[] x) {
    boolean[] out = choices.transversal(choices.count(), x);
    int[] items = listed(out);
    double[] ones = new double[items.length];
    Arrays.fill(ones, 1);
    return new Cut(rider, 1, items, ones);
  }

  /**
   * A bound on a rider's mark. Let T be items that meet every option better than the mark m. If
   * none of T is there, none of those options is, and the mark is m or more. If the best option
   * there has mark b below m, one of its items in T carries a weight of m - b or more, by the loop
   * below: hence the mark is at least m less the weights of what is there of T. (The radius
   * formulation of the median problem, Cornuejols, Nemhauser and Wolsey 1980, for options of
   * several items; from memory.)
   *
   * @param rider whose
   * @param choices the rider's
   * @param level the option that has the mark m
   * @param x how far each item is there
   */
  static Cut mark(int rider, RiderChoices choices, int level, double[] x) {
    int better = level;
    while (better > 0 && choices.mark(better - 1) == choices.mark(level)) {
      better--;
    }
    boolean[] out = choices.transversal(better, x);
    double[] weight = new double[x.length];
    double mark = choices.mark(level);
    for (int o = 0; o < better; o++) {
      double needed = mark - choices.mark(o);
      int carries = -1;
      for (int item : choices.option(o)) {
        if (out[item]
            && (carries < 0
                || weight[item] > weight[carries]
                || weight[item] == weight[carries] && x[item] < x[carries])) {
          carries = item;
        }
      }
      weight[carries] = Math.max(weight[carries], needed);
    }
    for (int item = 0; item < out.length; item++) {
      out[item] &= weight[item] > 0;
    }
    int[] items = listed(out);
    return new Cut(rider, mark, items, Arrays.stream(items).mapToDouble(i -> weight[i]).toArray());
  }

  private static int[] listed(boolean[] out) {
    int[] items = new int[out.length];
    int count = 0;
    for (int item = 0; item < out.length; item++) {
      if (out[item]) {
        items[count++] = item;
      }
    }
    return Arrays.copyOf(items, count);
  }

  /** How far below its least a rider's value lies. */
  double violation(double[] x, double unserved, double value) {
    double least = mark - mark * unserved;
    for (int i = 0; i < items.length; i++) {
      least -= lowers[i] * x[items[i]];
    }
    return least - value;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Cut cut
        && rider == cut.rider
        && mark == cut.mark
        && Arrays.equals(items, cut.items)
        && Arrays.equals(lowers, cut.lowers);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * rider + Arrays.hashCode(items)) + Arrays.hashCode(lowers);
  }

  @Override
  public String toString() {
    return "rider " + rider + ": " + mark + " less " + Arrays.toString(lowers);
  }
}
