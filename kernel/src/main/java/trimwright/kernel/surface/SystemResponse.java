package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;
import java.util.stream.IntStream;
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

  /**
   * Parts that the pitches are shared out in. A table has some twenty, and each part makes a
   * lattice of its own, which costs about as much as one pitch.
   */
  private static final int MOST_PARTS = 2;

  private final NodeTable table;
  private final int[] firstStrip;
  private final int[] strips;

  private SystemResponse(NodeTable table, int[] firstStrip, int[] strips) {
    this.table = table;
    this.firstStrip = firstStrip;
    this.strips = strips;
  }

  /**
   * Solves and tabulates, on several threads at once: no pitch needs another's solution, so the
   * table is the same whatever their number.
   *
   * @param workspaces gives a lattice to each thread; all of the same wings
   * @param datumDepth depth of the datum at a pitch [m]; a NaN means deep water
   * @param pitches to solve at, at least four, rising [rad]
   * @return the table
   */
  public static SystemResponse tabulate(
      Supplier<Lattice> workspaces, DoubleUnaryOperator datumDepth, double[] pitches) {
    int parts = Math.min(MOST_PARTS, pitches.length);
    List<List<SurfaceFlow>> nodes =
        IntStream.range(0, parts)
            .parallel()
            .mapToObj(
                part -> {
                  int from = part * pitches.length / parts;
                  int to = (part + 1) * pitches.length / parts;
                  return solve(workspaces.get(), datumDepth, pitches, from, to);
                })
            .flatMap(List::stream)
            .toList();
    return of(pitches, nodes);
  }

  private static List<List<SurfaceFlow>> solve(
      Lattice lattice, DoubleUnaryOperator datumDepth, double[] pitches, int from, int to) {
    List<List<SurfaceFlow>> nodes = new ArrayList<>(to - from);
    for (int node = from; node < to; node++) {
      double depth = datumDepth.applyAsDouble(pitches[node]);
      lattice.solve(
          pitches[node], Double.isNaN(depth) ? OptionalDouble.empty() : OptionalDouble.of(depth));
      nodes.add(lattice.flows());
    }
    return nodes;
  }

  private static SystemResponse of(double[] pitches, List<List<SurfaceFlow>> nodes) {
    List<SurfaceFlow> any = nodes.get(0);
    int[] first = new int[any.size()];
    int[] strips = new int[any.size()];
    int functions = 0;
    for (int s = 0; s < any.size(); s++) {
      strips[s] = any.get(s).stripLift().length;
      first[s] = functions + TOTALS;
      functions += TOTALS + strips[s];
    }
    double[][] values = new double[functions][nodes.size()];
    for (int node = 0; node < nodes.size(); node++) {
      for (int s = 0; s < any.size(); s++) {
        SurfaceFlow f = nodes.get(node).get(s);
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
