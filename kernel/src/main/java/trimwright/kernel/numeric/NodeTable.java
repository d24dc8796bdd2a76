package trimwright.kernel.numeric;

import java.util.List;

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

  /** One row per node, functions side by side: they are read together. */
  private final double[][] rows;

  /**
   * A table.
   *
   * @param nodes at least four, rising
   * @param values one array per function, a value per node; not kept
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
    rows = new double[nodes.length][values.length];
    for (int node = 0; node < nodes.length; node++) {
      for (int f = 0; f < values.length; f++) {
        rows[node][f] = values[f][node];
      }
    }
  }

  private NodeTable(double[] nodes, double[][] rows, boolean given) {
    this.nodes = nodes;
    this.rows = rows;
  }

  /**
   * A table of rows.
   *
   * @param nodes at least four, rising; kept, not to be changed
   * @param rows one per node, functions side by side; kept, not to be changed
   * @return the table
   */
  public static NodeTable ofRows(double[] nodes, double[][] rows) {
    return new NodeTable(nodes, rows, true);
  }

  /**
   * What lies between tables with the same nodes and functions.
   *
   * @param tables one per node of another table
   * @param place among those nodes
   * @return the table there, as the cubic through the four around gives it
   */
  public static NodeTable mix(List<NodeTable> tables, Place place) {
    NodeTable first = tables.get(place.first);
    int nodes = first.rows.length;
    double[][] rows = new double[nodes][first.rows[0].length];
    for (int i = 0; i < nodes; i++) {
      combine(
          place,
          first.rows[i],
          tables.get(place.first + 1).rows[i],
          tables.get(place.first + 2).rows[i],
          tables.get(place.first + 3).rows[i],
          0,
          rows[i]);
    }
    return new NodeTable(first.nodes, rows, true);
  }

  /**
   * Reads all functions.
   *
   * @param place from {@link #at}
   * @return their values there
   */
  public double[] read(Place place) {
    double[] out = new double[rows[0].length];
    read(0, place, out);
    return out;
  }

  /**
   * The largest value of one function at the four nodes around.
   *
   * @param function which
   * @param place from {@link #at}
   * @return the largest of the values there
   */
  public double most(int function, Place place) {
    double most = rows[place.first][function];
    for (int i = 1; i < 4; i++) {
      most = Math.max(most, rows[place.first + i][function]);
    }
    return most;
  }

  /**
   * The least value of one function at the four nodes around.
   *
   * @param function which
   * @param place from {@link #at}
   * @return the least of the values there
   */
  public double least(int function, Place place) {
    double least = rows[place.first][function];
    for (int i = 1; i < 4; i++) {
      least = Math.min(least, rows[place.first + i][function]);
    }
    return least;
  }

  /** All nodes, rising. */
  public double[] nodes() {
    return nodes.clone();
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
    int i = place.first;
    return place.a * rows[i][function]
        + place.b * rows[i + 1][function]
        + place.c * rows[i + 2][function]
        + place.d * rows[i + 3][function];
  }

  /**
   * Reads several functions that follow each other.
   *
   * @param first which is the first
   * @param place from {@link #at}
   * @param out receives their values
   */
  public void read(int first, Place place, double[] out) {
    combine(
        place,
        rows[place.first],
        rows[place.first + 1],
        rows[place.first + 2],
        rows[place.first + 3],
        first,
        out);
  }

  private static void combine(
      Place place, double[] r0, double[] r1, double[] r2, double[] r3, int first, double[] out) {
    double a = place.a;
    double b = place.b;
    double c = place.c;
    double d = place.d;
    for (int k = 0; k < out.length; k++) {
      out[k] = a * r0[first + k] + b * r1[first + k] + c * r2[first + k] + d * r3[first + k];
    }
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
