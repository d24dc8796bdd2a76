package trimwright.kernel.surface;

/**
 * Square matrices as columns one after another: products run along columns, which the compiler does
 * several numbers at a time; a sum along a row it does not.
 */
final class Columns {
  private Columns() {}

  /** Matrix times vector; columns whose factor is 0 are passed over. */
  static double[] times(double[] columns, double[] x) {
    double[] product = new double[x.length];
    for (int j = 0; j < x.length; j++) {
      if (x[j] != 0) {
        add(x[j], columns, j * x.length, product, 0, x.length);
      }
    }
    return product;
  }

  /** Adds a multiple of a column. */
  static void add(double factor, double[] from, int at, double[] to, int begin, int n) {
    for (int k = 0; k < n; k++) {
      to[begin + k] += factor * from[at + k];
    }
  }

  /** The same matrix by its rows. */
  static double[] transposed(double[] columns, int n) {
    double[] rows = new double[n * n];
    for (int j = 0; j < n; j++) {
      for (int k = 0; k < n; k++) {
        rows[k * n + j] = columns[j * n + k];
      }
    }
    return rows;
  }
}
