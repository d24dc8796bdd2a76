package trimwright.kernel.wedge;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether a surface encloses a body that can be printed. Not looked for: triangles that pass
 * through each other.
 *
 * @param corners corners in use [1]
 * @param edges [1]
 * @param triangles [1]
 * @param closed whether two triangles meet at each edge
 * @param oriented whether neighbours run along each common edge in opposite directions
 * @param plain whether the triangles at each corner make one fan, and none is without area
 * @param pieces bodies that do not touch each other [1]
 * @param volume enclosed, above 0 where the triangles face outward [m³]
 */
public record SolidCheck(
    int corners,
    int edges,
    int triangles,
    boolean closed,
    boolean oriented,
    boolean plain,
    int pieces,
    double volume) {

  /**
   * Looks at a surface.
   *
   * @param solid the surface
   * @return what was found
   */
  public static SolidCheck of(Solid solid) {
    Edges edges = new Edges(solid);
    boolean oriented = edges.oriented();
    return new SolidCheck(
        edges.corners(),
        edges.meeting.size(),
        solid.triangleCount(),
        edges.closed(),
        oriented,
        oriented && edges.oneFanEach() && allHaveArea(solid),
        edges.pieces(),
        solid.triangleCount() == 0 ? 0 : solid.volume());
  }

  /** Corners less edges plus triangles: 2 less twice the number of holes through one body. */
  public int eulerCharacteristic() {
    return corners - edges + triangles;
  }

  /** Whether it is one body, closed, facing outward. */
  public boolean isSolid() {
    return closed && oriented && plain && pieces == 1 && volume > 0;
  }

  /** Holes right through the body; means something where {@link #isSolid}. */
  public int holes() {
    return (2 - eulerCharacteristic()) / 2;
  }

  private static boolean allHaveArea(Solid solid) {
    for (int i = 0; i < solid.triangleCount(); i++) {
      double[] area = solid.area(i);
      if (Math.hypot(Math.hypot(area[0], area[1]), area[2]) == 0) {
        return false;
      }
    }
    return true;
  }

  /** An edge from one corner to another. */
  private record Edge(int from, int to) {
    Edge either() {
      return from < to ? this : back();
    }

    Edge back() {
      return new Edge(to, from);
    }
  }

  private static final class Edges {
    private final Solid solid;

    /** Triangles that run along an edge in its direction. */
    private final Map<Edge, Integer> along = new HashMap<>();

    /** The triangle that last ran along an edge, by its corner across. */
    private final Map<Edge, Integer> across = new HashMap<>();

    /** Triangles at an edge, either way. */
    private final Map<Edge, Integer> meeting = new HashMap<>();

    Edges(Solid solid) {
      this.solid = solid;
      for (int i = 0; i < solid.triangleCount(); i++) {
        int[] t = solid.triangle(i);
        for (int k = 0; k < 3; k++) {
          Edge edge = new Edge(t[k], t[(k + 1) % 3]);
          along.merge(edge, 1, Integer::sum);
          across.put(edge, t[(k + 2) % 3]);
          meeting.merge(edge.either(), 1, Integer::sum);
        }
      }
    }

    int corners() {
      return (int) along.keySet().stream().mapToInt(Edge::from).distinct().count();
    }

    boolean closed() {
      return meeting.values().stream().allMatch(count -> count == 2);
    }

    boolean oriented() {
      return along.entrySet().stream()
          .allMatch(e -> e.getValue() == 1 && along.containsKey(e.getKey().back()));
    }

    /** Of an oriented surface: whether one walk round each corner meets all its triangles. */
    boolean oneFanEach() {
      Map<Integer, List<Integer>> leaving = new HashMap<>();
      along
          .keySet()
          .forEach(e -> leaving.computeIfAbsent(e.from(), c -> new ArrayList<>()).add(e.to()));
      for (Map.Entry<Integer, List<Integer>> fan : leaving.entrySet()) {
        int first = fan.getValue().get(0);
        int at = first;
        int met = 0;
        do {
          at = across.get(new Edge(fan.getKey(), at));
          met++;
        } while (at != first);
        if (met != fan.getValue().size()) {
          return false;
        }
      }
      return true;
    }

    int pieces() {
      int[] group = new int[solid.cornerCount()];
      for (int i = 0; i < group.length; i++) {
        group[i] = i;
      }
      for (Edge edge : meeting.keySet()) {
        group[leader(group, edge.from())] = leader(group, edge.to());
      }
      return (int)
          along.keySet().stream().mapToInt(e -> leader(group, e.from())).distinct().count();
    }

    private static int leader(int[] group, int corner) {
      int at = corner;
      while (group[at] != at) {
        group[at] = group[group[at]];
        at = group[at];
      }
      return at;
    }
  }
}
