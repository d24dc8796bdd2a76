package trimwright.kernel.numeric;

/**
 * Gaussian elimination with row pivoting in place: for systems of up to some dozen unknowns inside
 * an iteration, where {@link LinearSystem}'s fixed size and factors do not pay.
 */
public final class Elimination {
  private Elimination() {}

  /**
   * Solves a system; matrix and right side are overwritten.
   *
   * @param a rows, each at least {@code n} long
   * @param b right side; receives the solution
   * @param n number of unknowns
   * @return false if the matrix is singular; the right side then holds no solution
   */
  public static boolean solve(double[][] a, double[] b, int n) {
    for (int c = 0; c < n; c++) {
      int pivot = c;
      for (int r = c + 1; r < n; r++) {
        if (Math.abs(a[r][c]) > Math.abs(a[pivot][c])) {
          pivot = r;
        }
      }
      double[] row = a[pivot];
      a[pivot] = a[c];
      a[c] = row;
      double right = b[pivot];
      b[pivot] = b[c];
      b[c] = right;
      if (!(Math.abs(row[c]) > 0)) {
        return false;
      }
      for (int r = c + 1; r < n; r++) {
        double f = a[r][c] / row[c];
        if (f != 0) {
          subtract(a[r], row, f, c + 1, n);
          b[r] -= f * right;
        }
      }
    }
    for (int r = n - 1; r >= 0; r--) {
      double sum = b[r];
      for (int c = r + 1; c < n; c++) {
        sum -= a[r][c] * b[c];
      }
      b[r] = sum / a[r][r];
    }
    return true;
  }

  private static void subtract(double[] from, double[] row, double f, int begin, int end) {
    for (int c = begin; c < end; c++) {
      from[c] -= f * row[c];
    }
  }
}
