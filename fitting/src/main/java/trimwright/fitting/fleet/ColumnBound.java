package trimwright.fitting.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * A bound on the least sum of marks over the persons served (each mark 0: nothing; persons unserved
 * are priced) that a fleet can have, and which columns can be in a better one than is known.
 *
 * <p>Lagrange's relaxation: rider i pays up to a<sub>i</sub> for being served or for staying
 * unserved, which costs p a person; scarce part q has the rent r<sub>q</sub>. For any such numbers
 * not below 0, with a<sub>i</sub> at most p persons, and f sets in the fleet,
 *
 * <pre>
 *   B = sum a - p U - sum supply r - f w,   w = max over columns (gain - rents, 0),
 *   gain of column h = sum over the riders whom it fits of max(a_i - persons_i mark_ih, 0)
 * </pre>
 *
 * is at most the sum of marks of every fleet that leaves U persons unserved or fewer. Proof: with
 * y<sub>h</sub> 1 for the sets of the fleet, the sum of marks is at least the sum of a over the
 * served less the gains of the fleet's sets; the sum of a over the unserved is at most p U; the
 * gains are at most w plus rents each, there are f sets at most, and rents sum to supply r at most.
 * A fleet that holds column h has w more than that column's gain less its rents to spare: its sum
 * of marks is at least B + w - (gain - rents)<sub>h</sub>. So a column for which this is above the
 * known sum is in no better fleet (reduced-cost fixing). Where only serving counts, all marks are
 * 0, p is 1, U is 0, and B bounds the persons unserved.
 *
 * <p>The numbers are sought by cutting planes (Kelley 1960; from memory). How well they are found
 * moves the bound, never its truth: it is evaluated from them in plain sums over all columns.
 */
final class ColumnBound {
  private static final int MOST_ROUNDS = 200;
  private static final int MOST_ROWS_A_ROUND = 30;

  /** Part of the gap to the outer programme that is not worth another round. */
  private static final double CLOSE = 1e-6;

  private final Columns columns;
  private final int fleet;
  private final double unserved;
  private final boolean counting;
  private final double dearest;
  private final int riders;
  private final List<Plane> planes = new ArrayList<>();

  private double bound = Double.NEGATIVE_INFINITY;
  private double[] spare = new double[0];

  /** A column with the riders whom it pays to serve with it. */
  private record Plane(int column, boolean[] with) {}

  private ColumnBound(Columns columns, int fleet, boolean counting, double unserved, double known) {
    this.columns = columns;
    this.fleet = fleet;
    this.unserved = unserved;
    this.counting = counting;
    riders = columns.riders();
    double top = known + 1;
    for (int c = 0; c < columns.count(); c++) {
      for (int i = 0; i < riders; i++) {
        if (columns.fits(i, c)) {
          top = Math.max(top, columns.mark(i, c));
        }
      }
    }
    dearest = 2 * top;
  }

  /** A bound on the persons unserved. */
  static ColumnBound unserved(Columns columns, int fleet, double known, Allowance allowance) {
    ColumnBound search = new ColumnBound(columns, fleet, true, 0, known);
    search.run(known, allowance);
    return search;
  }

  /** A bound on the sum of marks with no more than some persons unserved. */
  static ColumnBound marks(
      Columns columns, int fleet, double unserved, double known, Allowance allowance) {
    ColumnBound search = new ColumnBound(columns, fleet, false, unserved, known);
    search.run(known, allowance);
    return search;
  }

  /** What no fleet can be below. */
  double bound() {
    return Math.max(0, bound);
  }

  /**
   * The columns that can be in a fleet of less than a value.
   *
   * @param value to be bettered
   */
  boolean[] below(double value) {
    boolean[] keep = new boolean[columns.count()];
    double rounding = 1e-9 * Math.max(1, Math.abs(value));
    for (int c = 0; c < keep.length; c++) {
      keep[c] = spare.length == 0 || bound + spare[c] < value + rounding;
    }
    return keep;
  }

  private void run(double known, Allowance allowance) {
    if (columns.count() == 0) {
      return;
    }
    double[] pay = new double[riders];
    for (int i = 0; i < riders; i++) {
      pay[i] = columns.persons(i);
    }
    evaluate(pay, counting ? 1 : dearest, new double[columns.scarce()]);
    for (int round = 0; round < MOST_ROUNDS && !allowance.isOver(); round++) {
      Programme.Answer answer = programme().minimise(allowance);
      if (!answer.isThere()) {
        return;
      }
      double[] x = answer.x();
      double price = counting ? 1 : Math.max(0, x[riders + columns.scarce() + 1]);
      double[] rents = new double[columns.scarce()];
      for (int q = 0; q < rents.length; q++) {
        rents[q] = Math.max(0, x[riders + q]);
      }
      for (int i = 0; i < riders; i++) {
        pay[i] = Math.max(0, Math.min(x[i], price * columns.persons(i)));
      }
      boolean added = evaluate(pay, price, rents);
      double outer = -answer.bound();
      if (!added || outer - bound <= CLOSE * Math.max(1, Math.abs(outer)) || bound >= known) {
        return;
      }
    }
  }

  /** Largest value of the relaxation over the planes known, as a programme to be minimised. */
  private Programme programme() {
    Programme programme = new Programme();
    double all = 0;
    for (int i = 0; i < riders; i++) {
      all += columns.persons(i) * (counting ? 1 : dearest);
    }
    for (int i = 0; i < riders; i++) {
      programme.variable(0, columns.persons(i) * (counting ? 1 : dearest), -1);
    }
    for (int q = 0; q < columns.scarce(); q++) {
      programme.variable(0, all, columns.supply(q));
    }
    int w = programme.variable(0, all, fleet);
    if (!counting) {
      int p = programme.variable(0, dearest, unserved);
      for (int i = 0; i < riders; i++) {
        programme.atLeast(0).with(p, columns.persons(i)).with(i, -1);
      }
    }
    for (Plane plane : planes) {
      double least = 0;
      for (int i = 0; i < riders; i++) {
        least -= plane.with()[i] ? columns.persons(i) * columns.mark(i, plane.column()) : 0;
      }
      Programme.Row row = programme.atLeast(least).with(w, 1);
      for (int q : columns.parts(plane.column())) {
        row.with(riders + q, 1);
      }
      for (int i = 0; i < riders; i++) {
        if (plane.with()[i]) {
          row.with(i, -1);
        }
      }
    }
    return programme;
  }

  /** The bound at some numbers; adds the planes that they break. */
  private boolean evaluate(double[] pay, double price, double[] rents) {
    int count = columns.count();
    double[] net = new double[count];
    double most = 0;
    for (int c = 0; c < count; c++) {
      for (int i = 0; i < riders; i++) {
        if (columns.fits(i, c)) {
          net[c] += Math.max(0, pay[i] - columns.persons(i) * columns.mark(i, c));
        }
      }
      for (int q : columns.parts(c)) {
        net[c] -= rents[q];
      }
      most = Math.max(most, net[c]);
    }
    double value = Arrays.stream(pay).sum() - price * unserved - fleet * most;
    for (int q = 0; q < rents.length; q++) {
      value -= columns.supply(q) * rents[q];
    }
    if (value > bound) {
      bound = value;
      spare = new double[count];
      for (int c = 0; c < count; c++) {
        spare[c] = most - net[c];
      }
    }
    return addPlanes(pay, net);
  }

  private boolean addPlanes(double[] pay, double[] net) {
    Integer[] order = new Integer[net.length];
    Arrays.setAll(order, c -> c);
    Arrays.sort(order, Comparator.comparingDouble((Integer c) -> -net[c]).thenComparing(c -> c));
    boolean any = false;
    for (int k = 0; k < Math.min(MOST_ROWS_A_ROUND, order.length); k++) {
      int c = order[k];
      boolean[] with = new boolean[riders];
      for (int i = 0; i < riders; i++) {
        with[i] = columns.fits(i, c) && pay[i] > columns.persons(i) * columns.mark(i, c);
      }
      if (planes.stream().noneMatch(p -> p.column() == c && Arrays.equals(p.with(), with))) {
        planes.add(new Plane(c, with));
        any = true;
      }
    }
    return any;
  }
}
