package trimwright.kernel.surface;

import java.util.Arrays;
import trimwright.kernel.numeric.GaussLegendre;

/**
 * What surface waves do to the flow at lifting lines one behind the other, beyond the surface's
 * image of the same sense, which {@link Lattice} has: the turn of the onset flow and the change of
 * its speed, each in proportion to the lines' lift.
 *
 * <p>Linear waves on deep water. A line's load that varies along the span as exp(i q y) and is one
 * unit of circulation strong raises at a depth h2 and a distance x downstream of it the upwash
 *
 * <pre>  -(1/pi) PV int_0^inf A sin(p x) dp - n exp(-n H) cos(m x) / (2 - v/n) + q exp(-q H) / 2
 *   A = v k² exp(-k H) / (p (p² - v k)),  k² = p² + q²,  H = h1 + h2,  v = g/V²
 *   n = (v + sqrt(v² + 4 q²)) / 2,  m² = v n</pre>
 *
 * beyond the image's, where p = m is the pole of A (k = n there) and the free waves run downstream
 * only: upstream the integral and the second term cancel far away. The speed along the stream
 * follows from the same potential (times p/k, a quarter wave on). Derived from the linear condition
 * at the surface; where q vanishes it is the classical vortex under a free surface, whose waves far
 * behind have the upwash 2 v c exp(-v H) and whose drag per span is rho v c² exp(-2 v h) (J. V.
 * Wehausen, E. V. Laitone, Surface Waves, Handbuch der Physik IX, 1960: not in hand). Lift is taken
 * as elliptical along the span, and the flow as its mean weighted by the loading of the line that
 * feels it.
 *
 * <p>Valid for small disturbances without spray or breaking, deep water, and lines whose chord is
 * short beside the waves' length 2 pi V²/g (2.5 m at 2 m/s). Immutable; may be shared between
 * threads.
 */
public final class WaveWash {
  /** Standard gravity [m/s²]. */
  private static final double GRAVITY = 9.80665;

  /** Where exp(-k H) has vanished beside all else: k H at an integral's end [1]. */
  private static final double FAR = 18;

  /**
   * Nodes across the stream: the wash within 1e-5 of its limit for wings; a test holds it there. A
   * line much longer than the waves needs more, by this number for each of its half span's waves.
   */
  private static final GaussLegendre ACROSS = GaussLegendre.of(24);

  private static final double NODES_PER_WAVE_NUMBER = 3;
  private static final double SHORT_LINE = 6;

  /**
   * Rules along the stream by the distance in depths: the further away, the faster the integrand
   * turns. With these the wash lies within 1e-5 of its limit; a test holds it there.
   */
  private static final GaussLegendre[] ALONG = new GaussLegendre[20];

  static {
    for (int i = 0; i < ALONG.length; i++) {
      ALONG[i] = GaussLegendre.of(16 + 8 * i);
    }
  }

  private final double[][] turn;
  private final double[][] turnWithDepth;
  private final double[][] speedUp;

  private WaveWash(double[][] turn, double[][] turnWithDepth, double[][] speedUp) {
    this.turn = turn;
    this.turnWithDepth = turnWithDepth;
    this.speedUp = speedUp;
  }

  /**
   * The waves of given lines.
   *
   * @param lines the lines
   * @param speed through the water, above 0 [m/s]
   * @return their wash
   * @throws IllegalArgumentException if the speed is not above 0
   */
  public static WaveWash of(LiftingLine[] lines, double speed) {
    if (!(speed > 0) || !Double.isFinite(speed)) {
      throw new IllegalArgumentException("speed must be above 0 m/s, was " + speed + " m/s");
    }
    double longest = Arrays.stream(lines).mapToDouble(LiftingLine::halfSpan).max().orElse(0);
    double waves = longest * GRAVITY / (speed * speed);
    return of(
        lines,
        speed,
        waves <= SHORT_LINE
            ? ACROSS
            : GaussLegendre.of((int) (ACROSS.size() + NODES_PER_WAVE_NUMBER * waves)));
  }

  /** With other nodes across the stream. */
  static WaveWash of(LiftingLine[] lines, double speed, GaussLegendre nodes) {
    int count = lines.length;
    WaveWash wash =
        new WaveWash(new double[count][count], new double[count][count], new double[count][count]);
    double waveNumber = GRAVITY / (speed * speed);
    for (int i = 0; i < count; i++) {
      for (int j = i; j < count; j++) {
        wash.add(lines, i, j, waveNumber, nodes);
      }
    }
    return wash;
  }

  /** Both directions between two lines, or one line upon itself. */
  private void add(LiftingLine[] lines, int i, int j, double waveNumber, GaussLegendre nodes) {
    LiftingLine from = lines[i];
    LiftingLine to = lines[j];
    double depths = from.depth() + to.depth();
    double distance = from.ahead() - to.ahead();
    double end = FAR / depths;
    // q = v/2 sinh(t) makes n = v/2 (1 + cosh(t)): smooth in t however slow or fast.
    double half = 0.5 * waveNumber;
    double last = Math.log(end / half + Math.sqrt(end * end / (half * half) + 1));
    Span sum = new Span(depths, distance, waveNumber);
    for (int a = 0; a < nodes.size(); a++) {
      double t = nodes.node(a, 0, last);
      double grown = Math.exp(t);
      double cosh = 0.5 * (grown + 1 / grown);
      double across = half * 0.5 * (grown - 1 / grown);
      double weight = nodes.weight(a, 0, last) * half * cosh;
      double loading = from.transform(across) * (i == j ? 1 : to.transform(across));
      if (i == j) {
        loading *= loading;
      }
      // Angle = upwash / V, circulation = lift / (rho V transform(0)): 1/(2 pi) in all, both signs
      // of q.
      sum.add(across, weight * loading / (2 * Math.PI));
    }
    turn[j][i] = sum.waves - sum.local;
    turn[i][j] = sum.waves + sum.local;
    turnWithDepth[j][i] = sum.wavesWithDepth - sum.localWithDepth;
    turnWithDepth[i][j] = sum.wavesWithDepth + sum.localWithDepth;
    speedUp[j][i] = sum.localAlong + sum.wavesAlong;
    speedUp[i][j] = sum.localAlong - sum.wavesAlong;
    if (i == j) {
      turnWithDepth[i][i] *= 2;
    }
  }

  /**
   * Nose-up turn of the onset flow at a line [rad] per lift of another (or its own) over the
   * dynamic pressure [m²].
   *
   * @param at line that feels it
   * @param from line whose lift raises the waves
   */
  public double turn(int at, int from) {
    return turn[at][from];
  }

  /**
   * Change of {@link #turn} with the depth of the line that feels it, [rad/m²] per metre; of both
   * its roles at once for a line upon itself.
   */
  public double turnWithDepth(int at, int from) {
    return turnWithDepth[at][from];
  }

  /**
   * Growth of the onset flow's speed at a line as a share of the speed, per lift of another (or its
   * own) over the dynamic pressure [1/m²].
   */
  public double speedUp(int at, int from) {
    return speedUp[at][from];
  }

  /** Sums over the wave numbers along the span. */
  private static final class Span {
    private final double depths;
    private final double distance;
    private final double waveNumber;

    /** The part that both directions share, and that which changes sign between them. */
    private double waves;

    private double local;
    private double wavesWithDepth;
    private double localWithDepth;
    private double localAlong;
    private double wavesAlong;

    // Along the stream, for one wave number across.
    private double sine;
    private double sineWithDepth;
    private double cosine;

    private final GaussLegendre rule;

    Span(double depths, double distance, double waveNumber) {
      this.depths = depths;
      this.distance = distance;
      this.waveNumber = waveNumber;
      rule = ALONG[(int) Math.min(ALONG.length - 1, Math.abs(distance) / depths)];
    }

    void add(double across, double weight) {
      double n = 0.5 * (waveNumber + Math.sqrt(waveNumber * waveNumber + 4 * across * across));
      double pole = Math.sqrt(waveNumber * n);
      double free = n * Math.exp(-n * depths) / (2 - waveNumber / n);
      double image = 0.5 * across * Math.exp(-across * depths);
      double cos = Math.cos(pole * distance);
      waves += weight * (image - free * cos);
      wavesWithDepth += weight * (n * free * cos - across * image);
      wavesAlong += weight * free * pole / n * Math.sin(pole * distance);
      along(across, pole);
      local += weight * sine / Math.PI;
      localWithDepth += weight * sineWithDepth / Math.PI;
      localAlong -= weight * cosine / Math.PI;
    }

    /** Principal values over all wave numbers along the stream. */
    private void along(double across, double pole) {
      sine = 0;
      sineWithDepth = 0;
      cosine = 0;
      // About the pole: what lies evenly on both sides of it is taken together and stays finite.
      for (int i = 0; i < rule.size(); i++) {
        double away = rule.node(i, 0, pole);
        double weight = rule.weight(i, 0, pole);
        integrand(across, pole - away, weight);
        integrand(across, pole + away, weight);
      }
      double end = FAR / depths;
      if (end <= 2 * pole) {
        return;
      }
      double last = Math.log(end / (2 * pole));
      for (int i = 0; i < rule.size(); i++) {
        double p = 2 * pole * Math.exp(rule.node(i, 0, last));
        integrand(across, p, rule.weight(i, 0, last) * p);
      }
    }

    private void integrand(double across, double p, double weight) {
      double k = Math.sqrt(p * p + across * across);
      double common = weight * waveNumber * k * Math.exp(-k * depths) / (p * p - waveNumber * k);
      double s = common * k / p * Math.sin(p * distance);
      sine += s;
      sineWithDepth -= k * s;
      cosine += common * Math.cos(p * distance);
    }
  }
}
