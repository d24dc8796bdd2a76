package trimwright.kernel.numeric;

import org.ojalgo.matrix.decomposition.LU;
import org.ojalgo.matrix.store.R064Store;

/**
 * A dense square system of linear equations, factored once and solved for many right-hand sides.
 * One object is one workspace: it may be factored again and again without new memory, and is not
 * for use by two threads.
 */
public final class LinearSystem {
  private final int size;
  private final R064Store matrix;
  private final R064Store right;
  private final R064Store solution;
  private final LU<Double> lu;

  /**
   * A workspace for systems of one size.
   *
   * @param size number of unknowns, above 0 [1]
   * @throws IllegalArgumentException if the size is not above 0
   */
  public LinearSystem(int size) {
    if (size < 1) {
      throw new IllegalArgumentException("a linear system needs at least 1 unknown, was " + size);
    }
    this.size = size;
    matrix = R064Store.FACTORY.make(size, size);
    right = R064Store.FACTORY.make(size, 1);
    solution = R064Store.FACTORY.make(size, 1);
    lu = LU.R064.make(size, size);
  }

  /**
   * A factored system.
   *
   * @param rowMajor coefficients, row after row; not kept
   * @param size number of unknowns
   * @return the factored system
   * @throws ArithmeticException if the matrix is singular
   */
  public static LinearSystem factor(double[] rowMajor, int size) {
    LinearSystem system = new LinearSystem(size);
    system.refactor(rowMajor);
    return system;
  }

  /**
   * Factors another matrix in the same memory.
   *
   * @param rowMajor coefficients, row after row; not kept
   * @throws ArithmeticException if the matrix is singular
   */
  public void refactor(double[] rowMajor) {
    // The library stores columns.
    double[] columns = matrix.data;
    for (int i = 0; i < size; i++) {
      int from = i * size;
      for (int j = 0; j < size; j++) {
        columns[j * size + i] = rowMajor[from + j];
      }
    }
    decompose();
  }

  /**
   * Factors another matrix in the same memory.
   *
   * @param columnMajor coefficients, column after column; not kept
   * @throws ArithmeticException if the matrix is singular
   */
  public void refactorColumns(double[] columnMajor) {
    System.arraycopy(columnMajor, 0, matrix.data, 0, size * size);
    decompose();
  }

  private void decompose() {
    if (!lu.decompose(matrix) || !lu.isSolvable()) {
      throw new ArithmeticException("the system of " + size + " equations is singular");
    }
  }

  /**
   * Solves for one right-hand side.
   *
   * @param rhs right-hand side, as long as the system is large
   * @param x receives the solution
   */
  public void solve(double[] rhs, double[] x) {
    System.arraycopy(rhs, 0, right.data, 0, size);
    lu.getSolution(right, solution);
    System.arraycopy(solution.data, 0, x, 0, size);
  }
}
