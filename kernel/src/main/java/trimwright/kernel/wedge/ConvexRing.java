package trimwright.kernel.wedge;

import java.util.ArrayList;
import java.util.List;

/**
 * Triangles between two convex polygons of which one lies inside the other.
 *
 * <p>Going round once, the edges of both are taken in the order of their directions, and each makes
 * a triangle with the corner that the other polygon has reached. Then no triangle crosses the inner
 * polygon: an outer edge's line keeps clear of it, and meets the inner corner that is farthest out
 * in the edge's own normal; an outer corner lies beyond the line of every inner edge whose
 * direction comes between those of the two edges that meet there. So it holds for any two such
 * polygons, and needs no search and no tolerance.
 */
final class ConvexRing {
  private ConvexRing() {}

  /**
   * Fills the ring.
   *
   * @param places coordinates in the plane
   * @param outer numbers of the outer polygon's corners, convex, counter-clockwise
   * @param inner numbers of the inner polygon's corners, convex, counter-clockwise
   * @return triangles by corners, counter-clockwise
   */
  static List<int[]> triangles(List<double[]> places, int[] outer, int[] inner) {
    double[] outerTurn = directions(places, outer);
    double[] innerTurn = directions(places, inner);
    int outerStart = smallest(outerTurn);
    int innerStart = smallest(innerTurn);
    List<int[]> triangles = new ArrayList<>();
    int i = 0;
    int j = 0;
    while (i < outer.length || j < inner.length) {
      int at = (outerStart + i) % outer.length;
      int in = (innerStart + j) % inner.length;
      boolean takeOuter = j == inner.length || (i < outer.length && outerTurn[at] <= innerTurn[in]);
      if (takeOuter) {
        triangles.add(new int[] {outer[at], outer[(at + 1) % outer.length], inner[in]});
        i++;
      } else {
        triangles.add(new int[] {outer[at], inner[(in + 1) % inner.length], inner[in]});
        j++;
      }
    }
    return triangles;
  }

  /** Directions of the edges that begin at each corner, from 0 to a whole turn [rad]. */
  private static double[] directions(List<double[]> places, int[] loop) {
    double[] turn = new double[loop.length];
    for (int i = 0; i < loop.length; i++) {
      double[] from = places.get(loop[i]);
      double[] to = places.get(loop[(i + 1) % loop.length]);
      double angle = Math.atan2(to[1] - from[1], to[0] - from[0]);
      turn[i] = angle < 0 ? angle + 2 * Math.PI : angle;
    }
    return turn;
  }

  private static int smallest(double[] values) {
    int at = 0;
    for (int i = 1; i < values.length; i++) {
      if (values[i] < values[at]) {
        at = i;
      }
    }
    return at;
  }
}
