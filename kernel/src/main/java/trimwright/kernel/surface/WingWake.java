package trimwright.kernel.surface;

/**
 * The slow water that a wing's friction leaves behind, where it meets a wing further aft: the share
 * of the dynamic pressure that each of that wing's strips has left.
 *
 * <p>Behind a section of drag coefficient c_d the wake's half width and the largest loss of dynamic
 * pressure, at x chords behind the trailing edge, and the loss across it are
 *
 * <pre>  b / c = 0.68 sqrt(c_d (x + 0.15)),   loss = 2.42 sqrt(c_d) / (x + 0.3) cos²(pi z / 2 b)
 * </pre>
 *
 * <p>A. Silverstein, S. Katzoff, W. K. Bullivant, Downwash and wake behind plain and flapped
 * airfoils, NACA Report 651, 1939: the two relations from memory, and afterwards found quoted by
 * others in the same form with the same coefficients; of the report only the abstract was read,
 * which says that wake width and loss are given by distance and profile drag and that the sheet's
 * displacement must be counted. Held against the momentum that the section's drag takes from the
 * water, the two relations carry all of it about two chords behind and three quarters at four.
 *
 * <p>The wake's middle leaves the trailing edge along the stream and sinks with the downwash, taken
 * as that far behind an elliptical loading, 2 L / (q pi b²), over the whole way. Rolling up and the
 * fuselage's own wake are left out. Valid for attached flow. Immutable; may be shared between
 * threads.
 */
public final class WingWake {
  private static final double HALF_WIDTH = 0.68;
  private static final double WIDTH_ORIGIN = 0.15;
  private static final double LOSS = 2.42;
  private static final double LOSS_ORIGIN = 0.3;

  /**
   * Most that can be lost on the wake's middle line; close behind stalled sections only. Chosen.
   */
  private static final double MOST_LOSS = 0.8;

  private final Strips front;
  private final Strips behind;
  private final double span;

  /** For each strip behind: the strip ahead of it, the next further out, and the share of that. */
  private final int[] inner;

  private final int[] outer;
  private final double[] share;

  /**
   * The wake of one wing at another.
   *
   * @param front the wing that sheds it
   * @param behind the wing that meets it
   */
  public WingWake(PlacedWing front, PlacedWing behind) {
    this.front = new Strips(front);
    this.behind = new Strips(behind);
    span = front.shape().span();
    int count = this.behind.count;
    inner = new int[count];
    outer = new int[count];
    share = new double[count];
    for (int k = 0; k < count; k++) {
      double y = this.behind.centreY[k];
      if (y >= 0.5 * span) {
        inner[k] = -1;
        continue;
      }
      double[] centres = this.front.centreY;
      int i = 0;
      while (i < centres.length - 1 && centres[i + 1] <= y) {
        i++;
      }
      inner[k] = i;
      outer[k] = Math.min(i + 1, centres.length - 1);
      double apart = centres[outer[k]] - centres[i];
      share[k] = apart > 0 ? Math.max(0, Math.min(1, (y - centres[i]) / apart)) : 0;
    }
  }

  /**
   * What is left of the dynamic pressure.
   *
   * @param pitch fuselage against the stream, nose up positive [rad]
   * @param drag profile drag coefficient of each strip of the front wing [1]
   * @param lift of the front wing over the dynamic pressure [m²]
   * @param left receives the share for each strip behind, from root to tip [1]
   */
  public void pressureLeft(double pitch, double[] drag, double lift, double[] left) {
    double cos = Math.cos(pitch);
    double sin = Math.sin(pitch);
    double downwash = 2 * lift / (Math.PI * span * span);
    for (int k = 0; k < behind.count; k++) {
      left[k] = 1;
      if (inner[k] < 0) {
        continue;
      }
      double f = share[k];
      int a = inner[k];
      int b = outer[k];
      double chord = front.chord[a] + f * (front.chord[b] - front.chord[a]);
      double ahead = mix(front.centreAhead(a, 1), front.centreAhead(b, 1), f);
      double above = mix(front.centreAbove(a, 1), front.centreAbove(b, 1), f);
      double along = ahead - behind.ahead[k];
      double up = behind.above[k] - above;
      // Into water axes: how far behind along the stream, and how far above the trailing edge.
      double distance = along * cos - (above - behind.above[k]) * sin;
      double height = up * cos - along * sin;
      if (distance <= 0) {
        continue;
      }
      double cd = Math.max(0, mix(drag[a], drag[b], f));
      left[k] = 1 - loss(distance / chord, (height + downwash * distance) / chord, cd);
    }
  }

  private static double mix(double a, double b, double share) {
    return a + share * (b - a);
  }

  /** Share of the dynamic pressure lost [1], lengths in chords. */
  static double loss(double distance, double above, double drag) {
    double half = halfWidth(distance, drag);
    if (!(Math.abs(above) < half)) {
      return 0;
    }
    double cos = Math.cos(0.5 * Math.PI * above / half);
    return Math.min(MOST_LOSS, LOSS * Math.sqrt(drag) / (distance + LOSS_ORIGIN)) * cos * cos;
  }

  /** Half of the wake's width [chords]. */
  static double halfWidth(double distance, double drag) {
    return HALF_WIDTH * Math.sqrt(drag * (distance + WIDTH_ORIGIN));
  }
}
