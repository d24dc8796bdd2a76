package trimwright.kernel.motion;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.numeric.Roots;

/**
 * Whether somebody who answers late can hold a motion that grows by itself.
 *
 * <p>Looked at are the growing parts alone: a feedback on them leaves the others as they are. With
 * p(s) their characteristic polynomial of degree n, a person who feels them and their rates and
 * answers after a time d closes the loop to p(s) + k(s) exp(-s d) = 0, k a polynomial of degree n -
 * 1 of the person's choosing. Tried are the k that give one real root as many fold as possible, n +
 * 1 fold, where the n-th derivative of p(s) exp(s d) vanishes. For one growing part that is the
 * best there is (held while growth times delay is below 1), and for x'' = a x it gives the known a
 * d² below 2 (G. Stépán, Retarded Dynamical Systems, 1989, from memory). That all roots then lie to
 * the left is counted by the principle of the argument. A person who feels the other parts too, or
 * foresees, could hold somewhat more; people at a stick give up near a product of 1 (H. R. Jex, J.
 * D. McDonnell and A. V. Phatak, IEEE Transactions on Human Factors in Electronics 7, 1966, from
 * memory).
 */
final class DelayedHold {
  private static final int PARTS = 4000;

  private DelayedHold() {}

  /**
   * Whether a feedback holds.
   *
   * @param growing pairs of growth [1/s] and frequency [rad/s]; of a conjugate pair both
   * @param delay [s], above 0
   */
  static boolean holds(List<double[]> growing, double delay) {
    if (growing.isEmpty()) {
      return true;
    }
    if (growing.size() == 1) {
      return growing.get(0)[0] * delay < 1;
    }
    double[] p = polynomial(growing);
    for (double root : realRoots(derivative(p, delay, growing.size()))) {
      if (stands(p, feedback(p, delay, root), delay)) {
        return true;
      }
    }
    return false;
  }

  /** Coefficients, the constant first, of the polynomial with these roots. */
  static double[] polynomial(List<double[]> roots) {
    double[] p = {1};
    for (double[] root : roots) {
      if (root[1] == 0) {
        p = times(p, new double[] {-root[0], 1});
      } else if (root[1] > 0) {
        p = times(p, new double[] {root[0] * root[0] + root[1] * root[1], -2 * root[0], 1});
      }
    }
    return p;
  }

  private static double[] times(double[] a, double[] b) {
    double[] c = new double[a.length + b.length - 1];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < b.length; j++) {
        c[i + j] += a[i] * b[j];
      }
    }
    return c;
  }

  private static double[] slope(double[] p) {
    double[] d = new double[Math.max(1, p.length - 1)];
    for (int i = 1; i < p.length; i++) {
      d[i - 1] = i * p[i];
    }
    return d;
  }

  /** The polynomial in the n-th derivative of p(s) exp(s d). */
  private static double[] derivative(double[] p, double delay, int n) {
    double[] q = p;
    for (int i = 0; i < n; i++) {
      double[] slope = slope(q);
      double[] next = new double[q.length];
      for (int k = 0; k < next.length; k++) {
        next[k] = delay * q[k] + (k < slope.length ? slope[k] : 0);
      }
      q = next;
    }
    return q;
  }

  private static double value(double[] p, double s) {
    double sum = 0;
    for (int i = p.length - 1; i >= 0; i--) {
      sum = sum * s + p[i];
    }
    return sum;
  }

  /** Negative real roots, by their changes of sign: those that could hold. */
  private static List<Double> realRoots(double[] q) {
    double bound = 1;
    for (double c : q) {
      bound = Math.max(bound, 1 + Math.abs(c / q[q.length - 1]));
    }
    List<Double> roots = new ArrayList<>();
    double right = 0;
    double atRight = value(q, 0);
    for (int i = 1; i <= PARTS; i++) {
      double left = -bound * Math.pow((double) i / PARTS, 2);
      double atLeft = value(q, left);
      if (atLeft * atRight < 0) {
        double sign = atRight;
        roots.add(
            Roots.between(
                s -> sign > 0 ? value(q, s) : -value(q, s),
                left,
                sign > 0 ? atLeft : -atLeft,
                right,
                Math.abs(atRight),
                1e-9));
      }
      right = left;
      atRight = atLeft;
    }
    return roots;
  }

  /** The k whose values and slopes at a root are those of -p(s) exp(s d). */
  private static double[] feedback(double[] p, double delay, double root) {
    int n = p.length - 1;
    double[] k = new double[n];
    double[] q = p;
    double factor = -Math.exp(root * delay);
    double factorial = 1;
    double[] power = {1};
    for (int i = 0; i < n; i++) {
      double taylor = factor * value(q, root) / factorial;
      for (int j = 0; j < power.length; j++) {
        k[j] += taylor * power[j];
      }
      power = times(power, new double[] {-root, 1});
      factorial *= i + 1;
      q = derivative(q, delay, 1);
    }
    return k;
  }

  /**
   * Whether all roots of p(s) + k(s) exp(-s d) lie to the left: up the imaginary axis its argument
   * then turns by n quarter turns.
   */
  private static boolean stands(double[] p, double[] k, double delay) {
    int n = p.length - 1;
    double reach = 1;
    for (int i = 0; i < n; i++) {
      reach = Math.max(reach, 20 * (1 + Math.abs(p[i]) + Math.abs(k[i])));
    }
    double turned = 0;
    double before = argument(p, k, delay, 0);
    for (int i = 1; i <= PARTS; i++) {
      // Close where the loop acts, wide apart where s to the n rules.
      double w = reach * Math.pow((double) i / PARTS, 3);
      double now = argument(p, k, delay, w);
      turned += Math.IEEEremainder(now - before, 2 * Math.PI);
      before = now;
    }
    return Math.abs(turned - n * Math.PI / 2) < 0.5;
  }

  private static double argument(double[] p, double[] k, double delay, double w) {
    double[] a = onAxis(p, w);
    double[] b = onAxis(k, w);
    double c = Math.cos(w * delay);
    double s = -Math.sin(w * delay);
    return Math.atan2(a[1] + b[0] * s + b[1] * c, a[0] + b[0] * c - b[1] * s);
  }

  /** A polynomial at i w. */
  private static double[] onAxis(double[] p, double w) {
    double real = 0;
    double imaginary = 0;
    for (int i = p.length - 1; i >= 0; i--) {
      double r = -imaginary * w + p[i];
      imaginary = real * w;
      real = r;
    }
    return new double[] {real, imaginary};
  }
}
