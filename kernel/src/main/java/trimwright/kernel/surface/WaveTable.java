package trimwright.kernel.surface;

import java.util.List;
import trimwright.kernel.numeric.NodeTable;

/**
 * The waves of several wings over the speed: {@link WaveWash} tabulated, since a sweep asks for
 * hundreds of speeds. Immutable; may be shared between threads.
 */
public final class WaveTable {
  /**
   * Speeds between which the table stands [m/s]; beyond them the waves are worked out anew. Chosen:
   * 5 to 47 km/h.
   */
  private static final double SLOWEST = 1.4;

  private static final double FASTEST = 13;

  /**
   * Ratio of one speed to the next: the table's turns and growths within 1e-4 per square metre of
   * what they stand for from 2 m/s upwards; a test holds them there.
   */
  private static final double RATIO = 1.1;

  /**
   * Loading grows elliptically: the mean over it of the square of the fraction of the half span.
   */
  private static final double MEAN_SQUARE = 0.25;

  /**
   * Least depth in mean chords: nearer to the surface neither its image nor linear waves hold, and
   * the wing is taken to lie there.
   */
  private static final double LEAST_DEPTH = 0.25;

  /** Numbers per pair of lines: turn, its change with depth, growth of the speed. */
  private static final int KINDS = 3;

  private final LiftingLine[] lines;
  private final NodeTable table;

  private WaveTable(LiftingLine[] lines) {
    this.lines = lines;
    int nodes = 1 + (int) Math.ceil(Math.log(FASTEST / SLOWEST) / Math.log(RATIO));
    double[] speeds = new double[nodes];
    double[][] values = new double[KINDS * lines.length * lines.length][nodes];
    for (int node = 0; node < nodes; node++) {
      speeds[node] = SLOWEST * Math.pow(RATIO, node);
      double[] numbers = numbers(WaveWash.of(lines, speeds[node]));
      for (int f = 0; f < numbers.length; f++) {
        values[f][node] = numbers[f];
      }
    }
    table = new NodeTable(speeds, values);
  }

  /**
   * The waves of wings under a level fuselage.
   *
   * @param wings from the front to the back
   * @param datumDepth depth of the datum [m]
   * @return their waves
   */
  public static WaveTable of(List<PlacedWing> wings, double datumDepth) {
    return new WaveTable(wings.stream().map(w -> line(w, datumDepth)).toArray(LiftingLine[]::new));
  }

  /** A wing's line: its quarter-chord line at the middle of its loading. */
  private static LiftingLine line(PlacedWing wing, double datumDepth) {
    List<Station> stations = wing.shape().stations();
    Station root = stations.get(0);
    Station tip = stations.get(stations.size() - 1);
    double behind = MEAN_SQUARE * (root.ahead() - tip.ahead());
    double below = MEAN_SQUARE * (root.above() - tip.above());
    double depth = datumDepth - wing.above() + below;
    return new LiftingLine(
        0.5 * wing.shape().span(),
        wing.ahead() - behind,
        Math.max(depth, LEAST_DEPTH * wing.shape().meanChord()));
  }

  private double[] numbers(WaveWash wash) {
    int n = lines.length;
    double[] numbers = new double[KINDS * n * n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        int at = KINDS * (i * n + j);
        numbers[at] = wash.turn(i, j);
        numbers[at + 1] = wash.turnWithDepth(i, j);
        numbers[at + 2] = wash.speedUp(i, j);
      }
    }
    return numbers;
  }

  /**
   * The waves at a speed.
   *
   * @param speed through the water, above 0 [m/s]
   * @return the waves
   */
  public Waves at(double speed) {
    double[] numbers;
    if (speed >= table.from() && speed <= table.to()) {
      numbers = new double[KINDS * lines.length * lines.length];
      table.read(0, table.at(speed), numbers);
    } else {
      numbers = numbers(WaveWash.of(lines, speed));
    }
    return new Waves(lines.length, numbers);
  }

  /** The waves at one speed. Immutable; may be shared between threads. */
  public static final class Waves {
    /** No waves: deep water, or a speed at which gravity has no say. */
    public static Waves none(int wings) {
      return new Waves(wings, new double[KINDS * wings * wings]);
    }

    private final int count;
    private final double[] numbers;

    private Waves(int count, double[] numbers) {
      this.count = count;
      this.numbers = numbers;
    }

    /**
     * Nose-up turn of the onset flow at a wing [rad] per lift of a wing over the dynamic pressure
     * [m²].
     *
     * @param at wing that feels it, counted from the front
     * @param from wing whose lift raises the waves
     * @param deeper how much deeper than under a level fuselage the wing that is not the front one
     *     lies [m]
     */
    public double turn(int at, int from, double deeper) {
      int k = KINDS * (at * count + from);
      return at == 0 && from == 0 ? numbers[k] : numbers[k] + deeper * numbers[k + 1];
    }

    /**
     * Growth of the onset flow's speed at a wing, as a share of the speed, per lift of a wing over
     * the dynamic pressure [1/m²].
     *
     * @param at wing that feels it, counted from the front
     * @param from wing whose lift raises the waves
     */
    public double speedUp(int at, int from) {
      return numbers[KINDS * (at * count + from) + 2];
    }
  }
}
