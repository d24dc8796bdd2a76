package trimwright.bench;

import java.util.OptionalDouble;
import java.util.concurrent.TimeUnit;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ojalgo.matrix.decomposition.LU;
import org.ojalgo.matrix.store.MatrixStore;
import org.ojalgo.matrix.store.R064Store;
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
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.LatticeSize;

/**
 * The lattice's own system solved by the kernel and, straightforwardly, by the plain calls of two
 * general libraries.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
public class LatticeSystemBenchmark {
  /** Strips over both spans of both wings, one panel along the chord; half are unknowns. */
  @Param({"48", "96", "192", "384"})
  public int strips;

  private double[] matrix;
  private double[] right;
  private double[] solution;
  private LinearSystem ours;
  private DMatrixRMaj rows;
  private DMatrixRMaj ejmlRight;
  private R064Store ojAlgoMatrix;
  private R064Store ojAlgoRight;

  /** Builds the system. */
  @Setup
  public void build() {
    RideCase rideCase = BenchCase.rideCase();
    Craft craft =
        new Craft(rideCase, new LatticeSize(strips / 3, 1), new LatticeSize(strips / 6, 1));
    Lattice lattice = new Lattice(craft.wings(), false);
    lattice.solve(Math.toRadians(3), OptionalDouble.of(rideCase.immersion()));
    matrix = lattice.system();
    int n = lattice.unknowns();
    right = new double[n];
    solution = new double[n];
    rows = new DMatrixRMaj(n, n);
    ejmlRight = new DMatrixRMaj(n, 1);
    R064Store receiver = R064Store.FACTORY.make(n, n);
    R064Store column = R064Store.FACTORY.make(n, 1);
    for (int i = 0; i < n; i++) {
      right[i] = 1 + 0.01 * i;
      ejmlRight.set(i, 0, right[i]);
      column.set(i, 0, right[i]);
      for (int j = 0; j < n; j++) {
        rows.set(i, j, matrix[j * n + i]);
        receiver.set(i, j, matrix[j * n + i]);
      }
    }
    ojAlgoMatrix = receiver;
    ojAlgoRight = column;
    ours = new LinearSystem(n);
  }

  /** The kernel's system. */
  @Benchmark
  public double[] kernel() {
    ours.refactorColumns(matrix);
    ours.solve(right, solution);
    return solution;
  }

  /** EJML's general call. */
  @Benchmark
  public DMatrixRMaj ejmlSolve() {
    DMatrixRMaj x = new DMatrixRMaj(right.length, 1);
    if (!CommonOps_DDRM.solve(rows, ejmlRight, x)) {
      throw new ArithmeticException("singular");
    }
    return x;
  }

  /** The general call of ojAlgo, on which the kernel's own stands. */
  @Benchmark
  public MatrixStore<Double> ojAlgoSolve() {
    // A matrix keeps its own decomposition once it has solved; this one starts anew.
    LU<Double> lu = LU.R064.make(ojAlgoMatrix);
    lu.decompose(ojAlgoMatrix);
    return lu.getSolution(ojAlgoRight);
  }
}
