package trimwright.kernel.wedge;

import java.util.ArrayList;
import java.util.List;

/**
 * Covers a wedge with triangles. Both faces carry the same pattern, one straight above the other,
 * and the walls join them; so neighbours meet edge to edge everywhere.
 *
 * <p>The pattern: a line across the middle parts the outline into two convex halves with one hole
 * each, and each half is a {@link ConvexRing}. Not safe for several threads; used once.
 */
final class WedgeSurface {
  private static final int FEWEST_CHORDS = 4;

  /** Places of the outline nearer than this are one: a thousandth of what printers resolve [m]. */
  private static final double SAME_PLACE = 1e-6;

  private final ShimWedge wedge;

  /** Places in plan, outline first [m]. */
  private final List<double[]> places = new ArrayList<>();

  private final List<int[]> pattern = new ArrayList<>();
  private final List<int[]> triangles = new ArrayList<>();

  WedgeSurface(ShimWedge wedge) {
    this.wedge = wedge;
  }

  /** The surface; corner i of the lower face lies below corner i + n of the upper one. */
  Solid solid() {
    List<double[]> right = rightHalf();
    List<double[]> left = right.stream().map(at -> new double[] {-at[0], -at[1]}).toList();
    // Each half ends where the other one begins
    places.addAll(right.subList(0, right.size() - 1));
    places.addAll(left.subList(0, left.size() - 1));
    int outline = places.size();
    int middle = right.size() - 1;
    int[] rightHole = hole(wedge.boltSpacing() / 2);
    int[] leftHole = hole(-wedge.boltSpacing() / 2);
    pattern.addAll(ConvexRing.triangles(places, range(0, middle + 1), rightHole));
    int[] leftHalf = range(middle, outline + 1);
    leftHalf[leftHalf.length - 1] = 0;
    pattern.addAll(ConvexRing.triangles(places, leftHalf, leftHole));
    faces();
    walls(range(0, outline), true);
    walls(rightHole, false);
    walls(leftHole, false);
    return new Solid(corners(), triangles);
  }

  /** The outline's half towards the thick end, counter-clockwise, with both ends on the middle. */
  private List<double[]> rightHalf() {
    double radius = wedge.cornerRadius();
    double x = wedge.length() / 2 - radius;
    double y = wedge.width() / 2 - radius;
    int chords = chordsPerQuarter(radius);
    double[] last = {0, wedge.width() / 2};
    List<double[]> half = new ArrayList<>(List.of(new double[] {0, -wedge.width() / 2}));
    for (int quarter = -1; quarter <= 0; quarter++) {
      for (int i = 0; i <= chords; i++) {
        double turn = (quarter + (double) i / chords) * Math.PI / 2;
        double side = quarter < 0 ? -y : y;
        double[] at = {x + radius * Math.cos(turn), side + radius * Math.sin(turn)};
        if (isApart(at, half.get(half.size() - 1)) && isApart(at, last)) {
          half.add(at);
        }
      }
    }
    half.add(last);
    return half;
  }

  private static boolean isApart(double[] a, double[] b) {
    return Math.hypot(a[0] - b[0], a[1] - b[1]) > SAME_PLACE;
  }

  private static int chordsPerQuarter(double radius) {
    double halfAngle = Math.acos(Math.max(0, 1 - ShimWedge.CHORD_ERROR / radius));
    return Math.max(FEWEST_CHORDS, (int) Math.ceil(Math.PI / 4 / halfAngle));
  }

  /** Adds a hole's places, counter-clockwise, and gives their numbers. */
  private int[] hole(double middle) {
    int first = places.size();
    double radius = wedge.holeDiameter() / 2;
    int chords = 4 * chordsPerQuarter(radius);
    for (int i = 0; i < chords; i++) {
      double turn = 2 * Math.PI * i / chords;
      places.add(new double[] {middle + radius * Math.cos(turn), radius * Math.sin(turn)});
    }
    return range(first, places.size());
  }

  private static int[] range(int from, int to) {
    int[] numbers = new int[to - from];
    for (int i = 0; i < numbers.length; i++) {
      numbers[i] = from + i;
    }
    return numbers;
  }

  private void faces() {
    int n = places.size();
    for (int[] t : pattern) {
      triangles.add(new int[] {t[0] + n, t[1] + n, t[2] + n});
      triangles.add(new int[] {t[2], t[1], t[0]});
    }
  }

  /** Joins both faces along a loop; the body lies on its left, seen from above, or on its right. */
  private void walls(int[] loop, boolean bodyLeft) {
    int n = places.size();
    for (int i = 0; i < loop.length; i++) {
      int a = loop[bodyLeft ? i : (i + 1) % loop.length];
      int b = loop[bodyLeft ? (i + 1) % loop.length : i];
      triangles.add(new int[] {a, b, b + n});
      triangles.add(new int[] {a, b + n, a + n});
    }
  }

  private List<double[]> corners() {
    List<double[]> corners = new ArrayList<>();
    for (double[] at : places) {
      corners.add(new double[] {at[0], at[1], 0});
    }
    for (double[] at : places) {
      corners.add(new double[] {at[0], at[1], wedge.thickness(at[0])});
    }
    return corners;
  }
}
