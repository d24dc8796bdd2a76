package trimwright.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import trimwright.kernel.numeric.LinearSystem;

/**
 * Factoring and solving one dense system: the library the kernel uses beside the other candidate.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class LinearSystemBenchmark {
  /** Unknowns: 48 of the standard lattice, 160 of the section panels. */
  @Param({"48", "160"})
  public int unknowns;

  private double[] matrix;
  private double[] right;
  private double[] solution;
  private LinearSystem ours;
  private LinearSolverDense<DMatrixRMaj> other;
  private DMatrixRMaj otherMatrix;
  private DMatrixRMaj otherRight;
  private DMatrixRMaj otherSolution;

  /** A dominant diagonal, as lattices have. */
  @Setup
  public void build() {
    Random random = new Random(1);
    matrix = new double[unknowns * unknowns];
    right = new double[unknowns];
    solution = new double[unknowns];
    for (int i = 0; i < unknowns; i++) {
      for (int j = 0; j < unknowns; j++) {
        matrix[i * unknowns + j] = random.nextDouble() + (i == j ? unknowns : 0);
      }
      right[i] = random.nextDouble();
    }
    ours = new LinearSystem(unknowns);
    other = LinearSolverFactory_DDRM.lu(unknowns);
    otherMatrix = new DMatrixRMaj(unknowns, unknowns);
    otherRight = new DMatrixRMaj(unknowns, 1);
    otherSolution = new DMatrixRMaj(unknowns, 1);
  }

  /** The kernel's system, on ojAlgo. */
  @Benchmark
  public double[] ojAlgo() {
    ours.refactorColumns(matrix);
    ours.solve(right, solution);
    return solution;
  }

  /** EJML, which overwrites the matrix it is given. */
  @Benchmark
  public double[] ejml() {
    System.arraycopy(matrix, 0, otherMatrix.data, 0, matrix.length);
    System.arraycopy(right, 0, otherRight.data, 0, right.length);
    if (!other.setA(otherMatrix)) {
      throw new ArithmeticException("singular");
    }
    other.solve(otherRight, otherSolution);
    return otherSolution.data;
  }
}
