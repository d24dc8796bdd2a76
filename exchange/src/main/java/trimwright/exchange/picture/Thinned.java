package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * An outline with fewer places that leaves the original nowhere by more than a tolerance (U. Ramer
 * 1972; D. H. Douglas, T. K. Peucker 1973; from memory).
 */
final class Thinned {
  /** A tenth of a millimetre: no screen shows it [m]. */
  static final double UNSEEN = 1e-4;

  private Thinned() {}

  /** The outline without the places that nobody sees; first and last stay. */
  static List<Spot> of(List<Spot> outline) {
    return of(outline, UNSEEN);
  }

  static List<Spot> of(List<Spot> outline, double tolerance) {
    int n = outline.size();
    if (n < 3) {
      return outline;
    }
    BitSet kept = new BitSet(n);
    kept.set(0);
    kept.set(n - 1);
    keep(outline, 0, n - 1, tolerance, kept);
    List<Spot> thin = new ArrayList<>(kept.cardinality());
    for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
      thin.add(outline.get(i));
    }
    return thin;
  }

  private static void keep(List<Spot> all, int from, int to, double tolerance, BitSet kept) {
    double furthest = 0;
    int at = -1;
    for (int i = from + 1; i < to; i++) {
      double distance = distance(all.get(i), all.get(from), all.get(to));
      if (distance > furthest) {
        furthest = distance;
        at = i;
      }
    }
    if (furthest > tolerance) {
      kept.set(at);
      keep(all, from, at, tolerance, kept);
      keep(all, at, to, tolerance, kept);
    }
  }

  /** From a place to the straight piece between two others. */
  private static double distance(Spot p, Spot a, Spot b) {
    double x = b.ahead() - a.ahead();
    double y = b.above() - a.above();
    double square = x * x + y * y;
    double u = p.ahead() - a.ahead();
    double v = p.above() - a.above();
    double t = square == 0 ? 0 : Math.max(0, Math.min(1, (u * x + v * y) / square));
    double across = u - t * x;
    double up = v - t * y;
    return Math.sqrt(across * across + up * up);
  }
}
