package trimwright.kernel.numeric;

/**
 * Many functions of one variable, tabulated together at evenly spaced nodes and interpolated by the
 * cubic through the four nodes around (Lagrange). The error falls with the fourth power of the
 * spacing. Outside the nodes the end cubic goes on.
 *
 * <p>Immutable once filled; {@link Place} objects are made per caller.
 */
public final class UniformTable {
  private final double from;
  private final double spacing;
  private final int nodes;
  private final double[][] values;

  /**
   * A table.
   *
   * @param from first node
   * @param spacing between nodes, above 0
   * @param values one array per function, a value per node, at least four; kept
   * @throws IllegalArgumentException if the spacing is not above 0 or there are fewer than four
   *     nodes
   */
  public UniformTable(double from, double spacing, double[][] values) {
    if (!(spacing > 0) || values.length == 0 || values[0].length < 4) {
      throw new IllegalArgumentException(
          "a table needs a spacing above 0 and at least 4 nodes, spacing was " + spacing);
    }
    this.from = from;
    this.spacing = spacing;
    this.nodes = values[0].length;
    this.values = values;
  }

  /** First node. */
  public double from() {
    return from;
  }

  /** Last node. */
  public double to() {
    return from + spacing * (nodes - 1);
  }

  /**
   * Where an argument lies among the nodes.
   *
   * @param x argument
   * @return weights to read every function with
   */
  public Place at(double x) {
    double t = (x - from) / spacing;
    int i = (int) Math.floor(t);
    i = Math.max(1, Math.min(nodes - 3, i));
    double u = t - i;
    // Lagrange weights at -1, 0, 1, 2.
    return new Place(
        i - 1,
        -u * (u - 1) * (u - 2) / 6,
        (u + 1) * (u - 1) * (u - 2) / 2,
        -(u + 1) * u * (u - 2) / 2,
        (u + 1) * u * (u - 1) / 6);
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
