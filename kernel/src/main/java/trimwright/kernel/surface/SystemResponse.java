package trimwright.kernel.surface;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.NodeTable;

/**
 * The lattice's answer over a range of pitch. For one immersion the inviscid flow depends on pitch
 * alone, and smoothly so: it is solved at given pitches and interpolated. What depends on speed
 * (friction, lift limits) is added afterwards from the strips' lift.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class SystemResponse implements SurfaceResponse {
  private static final int TOTALS = 5;

  private final NodeTable table;
  private final int[] firstStrip;
  private final int[] strips;

  private SystemResponse(NodeTable table, int[] firstStrip, int[] strips) {
    this.table = table;
    this.firstStrip = firstStrip;
    this.strips = strips;
  }

  /**
   * Solves and tabulates.
   *
   * @param lattice workspace; left with its last solution
   * @param datumDepth depth of the datum at a pitch [m]; a NaN means deep water
   * @param pitches to solve at, at least four, rising [rad]
   * @return the table
   */
  public static SystemResponse tabulate(
      Lattice lattice, DoubleUnaryOperator datumDepth, double[] pitches) {
    int nodes = pitches.length;
    double[][] values = null;
    int[] first = null;
    int[] strips = null;
    for (int node = 0; node < nodes; node++) {
      double pitch = pitches[node];
      double depth = datumDepth.applyAsDouble(pitch);
      lattice.solve(pitch, Double.isNaN(depth) ? OptionalDouble.empty() : OptionalDouble.of(depth));
      List<SurfaceFlow> flows = lattice.flows();
      if (values == null) {
        first = new int[flows.size()];
        strips = new int[flows.size()];
        int functions = 0;
        for (int s = 0; s < flows.size(); s++) {
          strips[s] = flows.get(s).stripLift().length;
          first[s] = functions + TOTALS;
          functions += TOTALS + strips[s];
        }
        values = new double[functions][nodes];
      }
      for (int s = 0; s < flows.size(); s++) {
        SurfaceFlow f = flows.get(s);
        int base = first[s] - TOTALS;
        values[base][node] = f.force().forward();
        values[base + 1][node] = f.force().up();
        values[base + 2][node] = f.force().noseUp();
        values[base + 3][node] = f.boundDrag();
        values[base + 4][node] = f.farFieldDrag();
        for (int k = 0; k < strips[s]; k++) {
          values[base + TOTALS + k][node] = f.stripLift()[k];
        }
      }
    }
    return new SystemResponse(new NodeTable(pitches, values), first, strips);
  }

  @Override
  public SurfaceFlow at(int wing, double pitch) {
    NodeTable.Place place = table.at(pitch);
    int base = firstStrip[wing] - TOTALS;
    double[] lift = new double[strips[wing]];
    table.read(base + TOTALS, place, lift);
    return new SurfaceFlow(
        new PlaneForce(
            table.read(base, place), table.read(base + 1, place), table.read(base + 2, place)),
        table.read(base + 3, place),
        table.read(base + 4, place),
        lift);
  }

  @Override
  public double from() {
    return table.from();
  }

  @Override
  public double to() {
    return table.to();
  }
}
