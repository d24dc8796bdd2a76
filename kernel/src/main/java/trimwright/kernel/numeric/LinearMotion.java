package trimwright.kernel.numeric;

import org.hipparchus.complex.Complex;
import org.hipparchus.linear.EigenDecompositionNonSymmetric;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** A motion x' = A x + b with constant A and b. Immutable; may be shared between threads. */
public final class LinearMotion {
  private final double[][] rates;

  /**
   * A motion.
   *
   * @param rates A, square, one array per row; not kept
   */
  public LinearMotion(double[][] rates) {
    this.rates = new double[rates.length][];
    for (int i = 0; i < rates.length; i++) {
      this.rates[i] = rates[i].clone();
    }
  }

  /**
   * Eigenvalues of A.
   *
   * @return pairs of real and imaginary part [1/s], largest real part first; of a conjugate pair
   *     both
   */
  public double[][] eigenvalues() {
    Complex[] values =
        new EigenDecompositionNonSymmetric(MatrixUtils.createRealMatrix(rates)).getEigenvalues();
    double[][] pairs = new double[values.length][];
    for (int i = 0; i < values.length; i++) {
      pairs[i] = new double[] {values[i].getReal(), values[i].getImaginary()};
    }
    java.util.Arrays.sort(
        pairs,
        java.util.Comparator.<double[]>comparingDouble(p -> -p[0]).thenComparingDouble(p -> -p[1]));
    return pairs;
  }

  /**
   * The states at even times from rest at x = 0, b held from time 0 on; exact but for rounding: the
   * exponential of the matrix with b as one column more.
   *
   * @param push b
   * @param step between the times [s]
   * @param count how many steps
   * @return one state per time, the first at time 0
   */
  public double[][] fromRest(double[] push, double step, int count) {
    int n = rates.length;
    RealMatrix wider = MatrixUtils.createRealMatrix(n + 1, n + 1);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        wider.setEntry(i, j, rates[i][j] * step);
      }
      wider.setEntry(i, n, push[i] * step);
    }
    RealMatrix onward = MatrixUtils.matrixExponential(wider);
    double[] state = new double[n + 1];
    state[n] = 1;
    double[][] states = new double[count + 1][];
    for (int k = 0; k <= count; k++) {
      states[k] = java.util.Arrays.copyOf(state, n);
      state = onward.operate(state);
    }
    return states;
  }
}
