package trimwright.exchange.read;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trimwright.exchange.read.SectionText.Point;

/**
 * Points as a coordinates file lists them: all round in one go, or one surface after the other,
 * each from either edge.
 *
 * @param outline from the trailing edge round the leading edge and back
 * @param joined whether there were two lists
 */
record PointLists(List<Point> outline, boolean joined) {
  /** Nearer than this to an end of the whole length a list begins or ends there [lengths]. */
  private static final double AT_THE_END = 0.2;

  /** No outline goes so far from one point to the next; a second list does [lengths]. */
  private static final double JUMP = 0.5;

  /** Ends of two surfaces that are no further apart along the chord face each other [lengths]. */
  private static final double ONE_PLACE = 1e-3;

  /** Where a point lies from front to back, in lengths. */
  private record Extent(double least, double length) {
    double of(Point point) {
      return (point.x() - least) / length;
    }
  }

  /** Finds out how the points are listed and puts them into one round. */
  static PointLists of(List<Point> given) {
    List<Point> points = withoutCounts(given);
    double least = points.stream().mapToDouble(Point::x).min().orElse(0);
    double most = points.stream().mapToDouble(Point::x).max().orElse(0);
    if (!(most > least)) {
      return new PointLists(points, false);
    }
    Extent extent = new Extent(least, most - least);
    int second = 0;
    for (int i = 1; i < points.size(); i++) {
      if (Math.abs(extent.of(points.get(i)) - extent.of(points.get(i - 1))) > JUMP) {
        second = i;
      }
    }
    if (second == 0) {
      return fromLeadingEdgeRound(points, extent);
    }
    // The first is to end at the leading edge, the second to begin there.
    List<Point> first = new ArrayList<>(points.subList(0, second));
    if (extent.of(first.get(0)) < AT_THE_END) {
      Collections.reverse(first);
    }
    List<Point> last = new ArrayList<>(points.subList(second, points.size()));
    if (extent.of(last.get(0)) > 1 - AT_THE_END) {
      Collections.reverse(last);
    }
    return new PointLists(joined(first, last), true);
  }

  /**
   * One round from the leading edge over the trailing edge and back, which has no jump: it is cut
   * at the trailing edge. Any other round stays as it is.
   */
  private static PointLists fromLeadingEdgeRound(List<Point> points, Extent extent) {
    boolean begins = extent.of(points.get(0)) < AT_THE_END;
    boolean ends = extent.of(points.get(points.size() - 1)) < AT_THE_END;
    if (!begins || !ends) {
      return new PointLists(points, false);
    }
    int edge = 0;
    for (int i = 1; i < points.size(); i++) {
      edge = points.get(i).x() > points.get(edge).x() ? i : edge;
    }
    // Where both surfaces have an end of their own, each keeps it.
    boolean both =
        edge + 1 < points.size()
            && extent.of(points.get(edge)) - extent.of(points.get(edge + 1)) < ONE_PLACE;
    List<Point> first = points.subList(both ? edge + 1 : edge, points.size());
    return new PointLists(joined(first, points.subList(0, edge + 1)), true);
  }

  private static List<Point> joined(List<Point> first, List<Point> second) {
    List<Point> all = new ArrayList<>(first);
    boolean shared = first.get(first.size() - 1).equals(second.get(0));
    all.addAll(second.subList(shared ? 1 : 0, second.size()));
    return all;
  }

  /**
   * Some files begin with the numbers of points above and below; that pair is no point. It is known
   * by its sum, the leading edge counted once or twice, or by standing far from everything else.
   */
  private static List<Point> withoutCounts(List<Point> points) {
    Point first = points.get(0);
    List<Point> rest = points.subList(1, points.size());
    double sum = first.x() + first.y();
    boolean counts =
        first.x() >= 2
            && first.y() >= 2
            && first.x() == Math.rint(first.x())
            && first.y() == Math.rint(first.y());
    boolean apart = rest.stream().allMatch(p -> Math.hypot(p.x(), p.y()) < 2);
    return counts && (sum == rest.size() || sum == rest.size() + 1 || apart) ? rest : points;
  }
}
