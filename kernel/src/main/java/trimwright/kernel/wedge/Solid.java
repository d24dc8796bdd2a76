package trimwright.kernel.wedge;

import java.util.List;
import java.util.Objects;

/**
 * A surface by triangles, each listed counter-clockwise as seen from outside the body. Immutable.
 * Whether it encloses a body is for {@link SolidCheck} to say.
 */
public final class Solid {
  private final double[][] corners;
  private final int[][] triangles;

  /**
   * Copies its arguments.
   *
   * @param corners places, three finite coordinates each [m]
   * @param triangles numbers of three different corners each
   * @throws IllegalArgumentException if a corner has not three finite coordinates, or a triangle
   *     not three different corners of the list
   */
  public Solid(List<double[]> corners, List<int[]> triangles) {
    this.corners = corners.stream().map(double[]::clone).toArray(double[][]::new);
    this.triangles = triangles.stream().map(int[]::clone).toArray(int[][]::new);
    for (double[] corner : this.corners) {
      if (corner.length != 3 || !Double.isFinite(corner[0] + corner[1] + corner[2])) {
        throw new IllegalArgumentException("a corner needs three finite coordinates");
      }
    }
    for (int[] triangle : this.triangles) {
      if (triangle.length != 3
          || triangle[0] == triangle[1]
          || triangle[1] == triangle[2]
          || triangle[2] == triangle[0]) {
        throw new IllegalArgumentException("a triangle needs three different corners");
      }
      for (int corner : triangle) {
        Objects.checkIndex(corner, this.corners.length);
      }
    }
  }

  /** How many corners there are. */
  public int cornerCount() {
    return corners.length;
  }

  /** How many triangles there are. */
  public int triangleCount() {
    return triangles.length;
  }

  /**
   * A corner's place.
   *
   * @param index from 0
   * @return coordinates [m]
   */
  public double[] corner(int index) {
    return corners[index].clone();
  }

  /**
   * A triangle's corners.
   *
   * @param index from 0
   * @return numbers of its corners, counter-clockwise from outside
   */
  public int[] triangle(int index) {
    return triangles[index].clone();
  }

  /**
   * A triangle's area as a vector along its outward normal [m²].
   *
   * @param index from 0
   */
  public double[] area(int index) {
    double[] a = corners[triangles[index][0]];
    double[] b = corners[triangles[index][1]];
    double[] c = corners[triangles[index][2]];
    double[] u = {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
    double[] v = {c[0] - a[0], c[1] - a[1], c[2] - a[2]};
    return new double[] {
      (u[1] * v[2] - u[2] * v[1]) / 2,
      (u[2] * v[0] - u[0] * v[2]) / 2,
      (u[0] * v[1] - u[1] * v[0]) / 2
    };
  }

  /**
   * Enclosed volume by the divergence theorem [m³]: the sum over all triangles of place · area / 3.
   * Above 0 where triangles face outward; it means nothing of a surface that is not closed.
   */
  public double volume() {
    double sum = 0;
    for (int i = 0; i < triangles.length; i++) {
      // Measured from a corner of the body, which loses fewer digits far from the origin
      double[] from = corners[triangles[0][0]];
      double[] a = corners[triangles[i][0]];
      double[] area = area(i);
      for (int k = 0; k < 3; k++) {
        sum += (a[k] - from[k]) * area[k];
      }
    }
    return sum / 3;
  }
}
