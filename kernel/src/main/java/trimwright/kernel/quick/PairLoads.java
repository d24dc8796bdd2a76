package trimwright.kernel.quick;

/**
 * A pair's loads at one speed with one shim, over pitch. All per unit of dynamic pressure.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class PairLoads {
  private final PitchNodes nodes;
  private final double[] row;

  PairLoads(PitchNodes nodes, double[] row) {
    this.nodes = nodes;
    this.row = row;
  }

  /** Lowest pitch [rad]. */
  public double from() {
    return nodes.from();
  }

  /** Highest pitch [rad]. */
  public double to() {
    return nodes.to();
  }

  /** Upward force of both wings at a pitch [rad], over dynamic pressure [m²]. */
  public double up(double pitch) {
    return nodes.value(pitch, row, 0);
  }

  /** Forward force likewise [m²]; drag is negative. */
  public double forward(double pitch) {
    return nodes.value(pitch, row, nodes.count());
  }

  /** Moment about the datum likewise, nose up positive [m³]. */
  public double noseUp(double pitch) {
    return nodes.value(pitch, row, 2 * nodes.count());
  }

  /** Pitch at which the first strip of either wing stalls nose up [rad]. */
  public double stallPitch() {
    return row[3 * nodes.count()];
  }

  /** Pitch below which a strip of either wing is stalled nose down [rad]. */
  public double lowestPitch() {
    return row[3 * nodes.count() + 1];
  }

  /** Upward force at a node. */
  double upAt(int node) {
    return row[node];
  }

  PitchNodes nodes() {
    return nodes;
  }

  /** Upward force in an interval. */
  PitchNodes.Cubic upIn(int interval) {
    return nodes.cubic(interval, row, 0);
  }
}
