package trimwright.kernel.surface;

import java.util.List;

/**
 * Geometry of a symmetric wing, by stations from root to tip. Between stations everything is
 * linear.
 *
 * @param span distance between the tips [m]
 * @param stations at least two, fractions rising from 0 to 1
 */
public record WingShape(double span, List<Station> stations) {
  /**
   * Checks the physical invariants.
   *
   * @throws IllegalArgumentException if the span is not above 0 or the stations do not rise from 0
   *     to 1
   */
  public WingShape {
    stations = List.copyOf(stations);
    if (!(span > 0) || !Double.isFinite(span)) {
      throw new IllegalArgumentException("span must be above 0 m, was " + span + " m");
    }
    if (stations.size() < 2
        || stations.get(0).fraction() != 0
        || stations.get(stations.size() - 1).fraction() != 1) {
      throw new IllegalArgumentException("stations must run from fraction 0 to fraction 1");
    }
    for (int i = 1; i < stations.size(); i++) {
      if (!(stations.get(i).fraction() > stations.get(i - 1).fraction())) {
        throw new IllegalArgumentException(
            "station fractions must rise, were "
                + stations.get(i - 1).fraction()
                + " then "
                + stations.get(i).fraction());
      }
    }
  }

  /** Planform area, projected along the span [m²]. */
  public double area() {
    double half = 0;
    for (int i = 1; i < stations.size(); i++) {
      Station a = stations.get(i - 1);
      Station b = stations.get(i);
      half += 0.5 * (a.chord() + b.chord()) * (b.fraction() - a.fraction());
    }
    return half * span;
  }

  /** Mean chord: area over span [m]. */
  public double meanChord() {
    return area() / span;
  }

  /** Aspect ratio: span squared over area [1]. */
  public double aspectRatio() {
    return span * span / area();
  }
}
