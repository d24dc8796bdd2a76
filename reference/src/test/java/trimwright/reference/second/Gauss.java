package trimwright.reference.second;

/** Plain elimination with row exchange, so that the second ways share no code with the first. */
final class Gauss {
  private Gauss() {}

  /** Solves a x = b; both arguments are overwritten. */
  static double[] solve(double[][] a, double[] b) {
    int n = b.length;
    for (int k = 0; k < n; k++) {
      int pivot = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(a[i][k]) > Math.abs(a[pivot][k])) {
          pivot = i;
        }
      }
      double[] row = a[k];
      a[k] = a[pivot];
      a[pivot] = row;
      double value = b[k];
      b[k] = b[pivot];
      b[pivot] = value;
      for (int i = k + 1; i < n; i++) {
        double f = a[i][k] / a[k][k];
        if (f != 0) {
          for (int j = k; j < n; j++) {
            a[i][j] -= f * a[k][j];
          }
          b[i] -= f * b[k];
        }
      }
    }
    for (int i = n - 1; i >= 0; i--) {
      double sum = b[i];
      for (int j = i + 1; j < n; j++) {
        sum -= a[i][j] * b[j];
      }
      b[i] = sum / a[i][i];
    }
    return b;
  }
}
