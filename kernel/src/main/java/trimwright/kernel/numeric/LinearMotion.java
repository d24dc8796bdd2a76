package trimwright.kernel.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
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
    Arrays.sort(
        pairs, Comparator.<double[]>comparingDouble(p -> -p[0]).thenComparingDouble(p -> -p[1]));
    return pairs;
  }

  /** Takes the states of a motion one by one. */
  @FunctionalInterface
  public interface Visitor {
    /**
     * A state.
     *
     * @param time [s]
     * @param state there; not to be kept
     * @return whether to go on
     */
    boolean at(double time, double[] state);
  }

  /**
   * The states at even times from rest at x = 0, b held from time 0 on; exact but for rounding: the
   * exponential of the matrix with b as one column more.
   *
   * @param push b
   * @param step between the times [s]
   * @param count how many steps at most
   * @param visitor takes one state per time, the first at time 0
   */
  public void fromRest(double[] push, double step, int count, Visitor visitor) {
    int n = rates.length;
    RealMatrix wider = MatrixUtils.createRealMatrix(n + 1, n + 1);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        wider.setEntry(i, j, rates[i][j] * step);
      }
      wider.setEntry(i, n, push[i] * step);
    }
    double[][] onward = MatrixUtils.matrixExponential(wider).getData();
    double[] state = new double[n + 1];
    double[] next = new double[n + 1];
    state[n] = 1;
    for (int k = 0; k <= count && visitor.at(k * step, state); k++) {
      for (int i = 0; i <= n; i++) {
        double sum = 0;
        for (int j = 0; j <= n; j++) {
          sum += onward[i][j] * state[j];
        }
        next[i] = sum;
      }
      double[] before = state;
      state = next;
      next = before;
    }
  }

  /**
   * The steady swing under a push that swings: x of x' = A x + b exp(i w t), x = X exp(i w t).
   *
   * @param real real part of b
   * @param imaginary imaginary part of b
   * @param frequency w [rad/s]
   * @return X, real parts then imaginary parts; empty where the motion swings so by itself
   */
  public Optional<double[][]> swing(double[] real, double[] imaginary, double frequency) {
    int n = rates.length;
    double[][] matrix = new double[2 * n][2 * n];
    double[] right = new double[2 * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        matrix[i][j] = -rates[i][j];
        matrix[n + i][n + j] = -rates[i][j];
      }
      matrix[i][n + i] = -frequency;
      matrix[n + i][i] = frequency;
      right[i] = real[i];
      right[n + i] = imaginary[i];
    }
    return Elimination.solve(matrix, right, 2 * n)
        ? Optional.of(new double[][] {Arrays.copyOf(right, n), Arrays.copyOfRange(right, n, 2 * n)})
        : Optional.empty();
  }

  /**
   * Eigenvalues with the motion that belongs to them.
   *
   * @return one per eigenvalue, ordered as {@link #eigenvalues}
   */
  public List<Eigen> modes() {
    EigenDecompositionNonSymmetric all =
        new EigenDecompositionNonSymmetric(MatrixUtils.createRealMatrix(rates));
    List<Eigen> modes = new ArrayList<>();
    Complex[] values = all.getEigenvalues();
    for (int k = 0; k < values.length; k++) {
      double[] real = new double[rates.length];
      double[] imaginary = new double[rates.length];
      for (int i = 0; i < real.length; i++) {
        real[i] = all.getEigenvector(k).getEntry(i).getReal();
        imaginary[i] = all.getEigenvector(k).getEntry(i).getImaginary();
      }
      modes.add(new Eigen(values[k].getReal(), values[k].getImaginary(), real, imaginary));
    }
    modes.sort(
        Comparator.<Eigen>comparingDouble(e -> -e.growth).thenComparingDouble(e -> -e.frequency));
    return modes;
  }

  /**
   * An eigenvalue and its vector, to a common factor.
   *
   * @param growth real part [1/s]
   * @param frequency imaginary part [rad/s]
   * @param real real parts of the states
   * @param imaginary their imaginary parts
   */
  public record Eigen(double growth, double frequency, double[] real, double[] imaginary) {}
}
