package trimwright.kernel.layer;

/** Four linear equations, by elimination with the largest element of each column. */
final class SmallSystem {
  private static final int N = LayerState.COUNT;
  private final double[][] lu = new double[N][N];
  private final int[] row = new int[N];
  private final double[] work = new double[N];

  /**
   * Factors a matrix.
   *
   * @return false if it is singular
   */
  boolean factor(double[][] matrix) {
    for (int i = 0; i < N; i++) {
      System.arraycopy(matrix[i], 0, lu[i], 0, N);
      row[i] = i;
    }
    for (int k = 0; k < N; k++) {
      int best = k;
      for (int i = k + 1; i < N; i++) {
        if (Math.abs(lu[i][k]) > Math.abs(lu[best][k])) {
          best = i;
        }
      }
      double[] swapped = lu[k];
      lu[k] = lu[best];
      lu[best] = swapped;
      int r = row[k];
      row[k] = row[best];
      row[best] = r;
      double pivot = lu[k][k];
      if (!(Math.abs(pivot) > 1e-300)) {
        return false;
      }
      for (int i = k + 1; i < N; i++) {
        double f = lu[i][k] / pivot;
        lu[i][k] = f;
        for (int j = k + 1; j < N; j++) {
          lu[i][j] -= f * lu[k][j];
        }
      }
    }
    return true;
  }

  /** Solves for one right-hand side. */
  void solve(double[] right, double[] x) {
    for (int i = 0; i < N; i++) {
      double sum = right[row[i]];
      for (int j = 0; j < i; j++) {
        sum -= lu[i][j] * work[j];
      }
      work[i] = sum;
    }
    for (int i = N - 1; i >= 0; i--) {
      double sum = work[i];
      for (int j = i + 1; j < N; j++) {
        sum -= lu[i][j] * work[j];
      }
      work[i] = sum / lu[i][i];
    }
    System.arraycopy(work, 0, x, 0, N);
  }
}
