package trimwright.kernel.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Points of an outline as somebody wrote them down, put in order: upper surface first, from the
 * trailing edge round to it again, no point twice, none stepping back. Says what was put right.
 *
 * @param x distances, any unit
 * @param y heights, same unit
 * @param repairs what was put right
 */
record OutlinePoints(double[] x, double[] y, List<OutlineRepair> repairs) {
  private static final int FEWEST_POINTS = 15;

  /** Points nearer to each other than this are one point [chords]. */
  private static final double SAME = 1e-7;

  /** The largest step back that is taken for a slip of the hand or of a scanner [chords]. */
  private static final double LARGEST_SLIP = 0.01;

  /** The largest share of points that may be left out for stepping back [1]. */
  private static final double MOST_SLIPS = 0.2;

  /** Scatter that is worth a word: 0.02 mm on a chord of 200 mm [chords]. */
  private static final double ROUGH = 1e-4;

  /** Scatter at which the pressures would be those of the scatter [chords]. */
  private static final double TOO_ROUGH = 2e-3;

  /** Nearer to the nose a smooth outline is curved too much for the measure of scatter [chords]. */
  private static final double NOSE = 0.05;

  /**
   * Puts points in order.
   *
   * @throws IllegalArgumentException if they cannot be an outline, saying what is wrong
   */
  static OutlinePoints of(double[] x, double[] y) {
    if (x.length != y.length) {
      throw new IllegalArgumentException(
          "an outline must have as many x as y, had " + x.length + " and " + y.length);
    }
    List<OutlineRepair> repairs = new ArrayList<>();
    OutlinePoints points = new OutlinePoints(x, y, repairs).distinct();
    points.requireEnough();
    if (points.area() < 0) {
      points = points.reversed();
      repairs.add(new OutlineRepair(OutlineRepair.Kind.LOWER_FIRST, 0, 0));
    }
    points = points.withoutSlips();
    points.requireEnough();
    points.measureScatter();
    return points;
  }

  /** A length for a sentence [chords]: four decimals tell where to look. */
  static String shown(double length) {
    return String.format(Locale.ROOT, "%.4f", length);
  }

  private int size() {
    return x.length;
  }

  private void requireEnough() {
    if (size() < FEWEST_POINTS) {
      throw new IllegalArgumentException(
          "an outline must have at least " + FEWEST_POINTS + " different points, had " + size());
    }
  }

  /** Drops repeated neighbours, and refuses what is not a number. */
  private OutlinePoints distinct() {
    double size = 0;
    for (int i = 0; i < x.length; i++) {
      if (!Double.isFinite(x[i]) || !Double.isFinite(y[i])) {
        throw new IllegalArgumentException(
            "point " + (i + 1) + " of an outline must be two numbers, was " + x[i] + ", " + y[i]);
      }
      size = Math.max(size, Math.hypot(x[i] - x[0], y[i] - y[0]));
    }
    boolean[] kept = new boolean[x.length];
    int last = -1;
    int left = 0;
    for (int i = 0; i < x.length; i++) {
      kept[i] = last < 0 || Math.hypot(x[i] - x[last], y[i] - y[last]) > SAME * size;
      left += kept[i] ? 0 : 1;
      last = kept[i] ? i : last;
    }
    if (left > 0) {
      repairs.add(new OutlineRepair(OutlineRepair.Kind.REPEATED, left, 0));
    }
    return only(kept);
  }

  private OutlinePoints only(boolean[] kept) {
    double[] keptX = new double[x.length];
    double[] keptY = new double[x.length];
    int n = 0;
    for (int i = 0; i < x.length; i++) {
      if (kept[i]) {
        keptX[n] = x[i];
        keptY[n] = y[i];
        n++;
      }
    }
    return new OutlinePoints(Arrays.copyOf(keptX, n), Arrays.copyOf(keptY, n), repairs);
  }

  /** Twice the enclosed area; positive when the points run over the upper surface first. */
  private double area() {
    double sum = 0;
    int n = size();
    for (int i = 0; i < n; i++) {
      int j = (i + 1) % n;
      sum += x[i] * y[j] - x[j] * y[i];
    }
    return sum;
  }

  private OutlinePoints reversed() {
    int n = size();
    double[] backX = new double[n];
    double[] backY = new double[n];
    for (int i = 0; i < n; i++) {
      backX[i] = x[n - 1 - i];
      backY[i] = y[n - 1 - i];
    }
    return new OutlinePoints(backX, backY, repairs);
  }

  /** The point furthest from the middle of the two ends. */
  private int nose() {
    double edgeX = 0.5 * (x[0] + x[size() - 1]);
    double edgeY = 0.5 * (y[0] + y[size() - 1]);
    int best = 0;
    for (int i = 1; i < size(); i++) {
      if (Math.hypot(x[i] - edgeX, y[i] - edgeY) > Math.hypot(x[best] - edgeX, y[best] - edgeY)) {
        best = i;
      }
    }
    return best;
  }

  private double chord(int nose) {
    int last = size() - 1;
    return Math.hypot(0.5 * (x[0] + x[last]) - x[nose], 0.5 * (y[0] + y[last]) - y[nose]);
  }

  /**
   * Leaves out points that come no further from the nose than those before them, where the step
   * back is small and there are few. Larger ones stay, and are refused where surfaces are made.
   */
  private OutlinePoints withoutSlips() {
    int nose = nose();
    double chord = chord(nose);
    boolean[] kept = new boolean[size()];
    Arrays.fill(kept, true);
    double largest = 0;
    int left = 0;
    for (int step = -1; step <= 1; step += 2) {
      double reached = 0;
      for (int i = nose + step; i >= 0 && i < size(); i += step) {
        double distance = Math.hypot(x[i] - x[nose], y[i] - y[nose]);
        // The very ends stay: they are the trailing edge.
        if (distance <= reached && i > 0 && i < size() - 1) {
          kept[i] = false;
          left++;
          largest = Math.max(largest, (reached - distance) / chord);
        }
        reached = Math.max(reached, distance);
      }
    }
    if (left == 0 || largest > LARGEST_SLIP) {
      return this;
    }
    if (left > MOST_SLIPS * size()) {
      throw new IllegalArgumentException(
          "the points of an outline must run along it, but "
              + left
              + " of "
              + size()
              + " step back by up to "
              + shown(largest)
              + " chords");
    }
    repairs.add(new OutlineRepair(OutlineRepair.Kind.STEPPED_BACK, left, largest));
    return only(kept);
  }

  /**
   * How far points lie off the cubic through two neighbours on either side: the median over all but
   * the nose, which one bad point does not move and a smooth outline keeps near its rounding.
   */
  private void measureScatter() {
    int nose = nose();
    double chord = chord(nose);
    double[] off = new double[size()];
    int n = 0;
    for (int i = 2; i < size() - 2; i++) {
      if (Math.abs(i - nose) > 3 && Math.hypot(x[i] - x[nose], y[i] - y[nose]) > NOSE * chord) {
        off[n++] = offCubic(i) / chord;
      }
    }
    if (n == 0) {
      return;
    }
    Arrays.sort(off, 0, n);
    double scatter = off[n / 2];
    if (scatter > TOO_ROUGH) {
      throw new IllegalArgumentException(
          "the points of an outline must lie on a smooth line to within "
              + TOO_ROUGH
              + " chords, scattered by about "
              + shown(scatter));
    }
    if (scatter > ROUGH) {
      repairs.add(new OutlineRepair(OutlineRepair.Kind.ROUGH, 0, scatter));
    }
  }

  private double offCubic(int i) {
    int[] around = {i - 2, i - 1, i + 1, i + 2};
    double[] at = new double[4];
    for (int k = 0; k < 4; k++) {
      at[k] = Math.signum(around[k] - i) * Math.hypot(x[around[k]] - x[i], y[around[k]] - y[i]);
    }
    double lineX = 0;
    double lineY = 0;
    for (int k = 0; k < 4; k++) {
      double weight = 1;
      for (int m = 0; m < 4; m++) {
        weight *= m == k ? 1 : -at[m] / (at[k] - at[m]);
      }
      lineX += weight * x[around[k]];
      lineY += weight * y[around[k]];
    }
    return Math.hypot(lineX - x[i], lineY - y[i]);
  }
}
