package trimwright.kernel.surface;

import java.util.ArrayList;
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
 * <p>Nothing that a caller can see changes; may be shared between threads.
 */
public final class SystemResponse implements SurfaceResponse {
  private static final int TOTALS = 5;

  /**
   * Least spacing of the pitches at which shifts are kept [rad]. They bear on what the sections
   * change alone and vary slowly.
   */
  private static final double SHIFT_SPACING = Math.toRadians(4.5);

  private final NodeTable table;
  private final NodeTable shifts;
  private final int[] firstStrip;
  private final int[] strips;
  private volatile Kept kept;

  /** The shifts last asked for: many speeds ask for one pitch. */
  private volatile Shifts last;

  private SystemResponse(NodeTable table, NodeTable shifts, int[] firstStrip, int[] strips) {
    this.table = table;
    this.shifts = shifts;
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
    boolean[] coarse = coarse(pitches);
    List<LoadShifts> shifts = new ArrayList<>();
    for (int node = 0; node < nodes; node++) {
      double pitch = pitches[node];
      double depth = datumDepth.applyAsDouble(pitch);
      lattice.solve(pitch, Double.isNaN(depth) ? OptionalDouble.empty() : OptionalDouble.of(depth));
      List<SurfaceFlow> flows = lattice.flows();
      if (coarse[node]) {
        shifts.add(lattice.shifts());
      }
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
    double[] at = new double[shifts.size()];
    int next = 0;
    for (int node = 0; node < nodes; node++) {
      if (coarse[node]) {
        at[next++] = pitches[node];
      }
    }
    NodeTable kept = new NodeTable(at, columns(shifts));
    return new SystemResponse(new NodeTable(pitches, values), kept, first, strips);
  }

  /** Every pitch that lies far enough from the one before and from the last, and the last. */
  private static boolean[] coarse(double[] pitches) {
    int last = pitches.length - 1;
    double spacing = Math.min(SHIFT_SPACING, (pitches[last] - pitches[0]) / 6);
    boolean[] coarse = new boolean[pitches.length];
    double before = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < last; i++) {
      if (pitches[i] - before >= spacing && pitches[last] - pitches[i] >= 0.5 * spacing) {
        coarse[i] = true;
        before = pitches[i];
      }
    }
    coarse[last] = true;
    return coarse;
  }

  private static double[][] columns(List<LoadShifts> shifts) {
    LoadShifts one = shifts.get(0);
    int all = one.lift().length + one.up().length + one.noseUp().length + one.farDrag().length;
    double[][] columns = new double[all][shifts.size()];
    for (int i = 0; i < shifts.size(); i++) {
      LoadShifts s = shifts.get(i);
      int f = 0;
      for (double[] part : new double[][] {s.lift(), s.up(), s.noseUp(), s.farDrag()}) {
        for (double value : part) {
          columns[f++][i] = value;
        }
      }
    }
    return columns;
  }

  @Override
  public LoadShifts shifts(double pitch) {
    Shifts before = last;
    if (before == null || before.pitch != pitch) {
      before = new Shifts(pitch, read(pitch));
      last = before;
    }
    return before.shifts;
  }

  private LoadShifts read(double pitch) {
    NodeTable.Place place = shifts.at(pitch);
    int n = 0;
    for (int count : strips) {
      n += count;
    }
    double[] lift = new double[n * n];
    double[] up = new double[strips.length * n];
    double[] noseUp = new double[strips.length * n];
    double[] farDrag = new double[n * n];
    shifts.read(0, place, lift);
    shifts.read(lift.length, place, up);
    shifts.read(lift.length + up.length, place, noseUp);
    shifts.read(lift.length + up.length + noseUp.length, place, farDrag);
    return new LoadShifts(n, lift, up, noseUp, farDrag);
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

  /** The table last made is kept: a change that leaves wings and water alone asks for it again. */
  @Override
  public Loads loads(Object sections, Couplings couplings) {
    Kept made = kept;
    if (made == null || !made.sections.equals(sections)) {
      made = new Kept(sections, new LoadTable(this, couplings, table.nodes()));
      kept = made;
    }
    return made.loads;
  }

  private record Shifts(double pitch, LoadShifts shifts) {}

  private record Kept(Object sections, LoadTable loads) {}
}
