package trimwright.fitting.judge;

import trimwright.kernel.quick.PairLoads;
import trimwright.kernel.quick.PairTable;

/**
 * What a pair of wings with one shim does at each of the ride's speeds, read from its table once.
 */
public final class ShimLoads {
  private final PairTable table;
  private final double shim;
  private final PairLoads[] atSpeeds;

  ShimLoads(PairTable table, double shim, double[] speeds) {
    this.table = table;
    this.shim = shim;
    atSpeeds = new PairLoads[speeds.length];
    for (int i = 0; i < speeds.length; i++) {
      atSpeeds[i] = table.at(speeds[i], shim);
    }
  }

  PairLoads at(int index) {
    return atSpeeds[index];
  }

  /** At any speed within the table [m/s]. */
  PairLoads at(double speed) {
    return table.at(speed, shim);
  }
}
