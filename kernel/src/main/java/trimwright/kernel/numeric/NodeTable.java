package trimwright.kernel.numeric;

/**
 * Many functions of one variable, tabulated together at rising nodes and interpolated by the cubic
 * through the four nodes around (Lagrange). For smooth functions the error falls with the fourth
 * power of the spacing; where a function has a fold the nodes should lie close. Outside the nodes
 * the end cubic goes on.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class NodeTable {
  private final double[] nodes;
  private final double[][] values;

  /**
   * A table.
   *
   * @param nodes at least four, rising
   * @param values one array per function, a value per node; kept
   * @throws IllegalArgumentException if there are fewer than four nodes or they do not rise
   */
  public NodeTable(double[] nodes, double[][] values) {
    if (nodes.length < 4) {
      throw new IllegalArgumentException("a table needs at least 4 nodes, was " + nodes.length);
    }
    for (int i = 1; i < nodes.length; i++) {
      if (!(nodes[i] > nodes[i - 1])) {
        throw new IllegalArgumentException(
            "nodes must rise, were " + nodes[i - 1] + " then " + nodes[i]);
      }
    }
    this.nodes = nodes.clone();
    this.values = values;
  }

  /** First node. */
  public double from() {
    return nodes[0];
  }

  /** Last node. */
  public double to() {
    return nodes[nodes.length - 1];
  }

  /**
   * Where an argument lies among the nodes.
   *
   * @param x argument
   * @return weights to read every function with
   */
  public Place at(double x) {
    int i = 1;
    while (i < nodes.length - 3 && nodes[i + 1] <= x) {
      i++;
    }
    double n0 = nodes[i - 1];
    double n1 = nodes[i];
    double n2 = nodes[i + 1];
    double n3 = nodes[i + 2];
    double d0 = x - n0;
    double d1 = x - n1;
    double d2 = x - n2;
    double d3 = x - n3;
    return new Place(
        i - 1,
        d1 * d2 * d3 / ((n0 - n1) * (n0 - n2) * (n0 - n3)),
        d0 * d2 * d3 / ((n1 - n0) * (n1 - n2) * (n1 - n3)),
        d0 * d1 * d3 / ((n2 - n0) * (n2 - n1) * (n2 - n3)),
        d0 * d1 * d2 / ((n3 - n0) * (n3 - n1) * (n3 - n2)));
  }

  /**
   * Reads one function.
   *
   * @param function which
   * @param place from {@link #at}
   * @return its value there
   */
  public double read(int function, Place place) {
    double[] v = values[function];
    int i = place.first;
    return place.a * v[i] + place.b * v[i + 1] + place.c * v[i + 2] + place.d * v[i + 3];
  }

  /**
   * A place among the nodes with its four weights.
   *
   * @param first node of the first weight
   * @param a first weight
   * @param b second weight
   * @param c third weight
   * @param d fourth weight
   */
  public record Place(int first, double a, double b, double c, double d) {}
}
