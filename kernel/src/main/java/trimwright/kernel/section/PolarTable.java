package trimwright.kernel.section;

import java.util.Optional;
import trimwright.kernel.layer.Disturbance;

/**
 * A section's polars over angle of attack, Reynolds number and finish, computed once: curves that
 * are smooth in all and never overshoot what was computed. Reynolds numbers beyond the first and
 * last are taken at those.
 *
 * <p>A table is a pure function of outline, settings and {@link #VERSION}; its numbers go in and
 * out as plain arrays. Building takes some 600 flows, a few seconds. Immutable; may be shared
 * between threads.
 */
public final class PolarTable {
  /** Raised whenever the same input gives other numbers. */
  public static final int VERSION = 3;

  private static final double DEGREE = Math.PI / 180;
  private static final int LOWEST_DEGREES = -12;
  private static final int HIGHEST_DEGREES = 20;
  private static final double LOWEST_REYNOLDS = 1e5;
  private static final double HIGHEST_REYNOLDS = 5e6;
  private static final int REYNOLDS_COUNT = 8;

  /** Logarithms closer than this are of one Reynolds number [1]. */
  private static final double SAME_PLACE = 1e-9;

  private final double[] angles;
  private final double[] logReynolds;

  /** By finish, then by Reynolds number. */
  private final PolarRow[][] rows;

  /** By finish; quantities one after the other, each over the angles. */
  private final ReynoldsCurves[] curves;

  private PolarTable(double[] angles, double[] logReynolds, PolarRow[][] rows) {
    this.angles = angles;
    this.logReynolds = logReynolds;
    this.rows = rows;
    curves = new ReynoldsCurves[rows.length];
    for (int f = 0; f < rows.length; f++) {
      double[][] flat = new double[logReynolds.length][];
      for (int r = 0; r < flat.length; r++) {
        flat[r] = flat(rows[f][r]);
      }
      curves[f] = new ReynoldsCurves(logReynolds, flat);
    }
  }

  private double[] flat(PolarRow row) {
    double[] flat = new double[PolarRow.QUANTITIES * angles.length];
    for (int k = 0; k < flat.length; k++) {
      flat[k] = row.value(k / angles.length, k % angles.length);
    }
    return flat;
  }

  /**
   * What a table is computed for besides the outline.
   *
   * @param disturbance disturbances of the stream
   * @param scuffedStation where a scuffed surface turns turbulent, on both sides [chords]
   */
  public record Settings(Disturbance disturbance, double scuffedStation) {
    /** Natural waters; scuffed from 5 % of the chord on: chosen, as for the fitted drag. */
    public static final Settings USUAL =
        new Settings(Disturbance.WATERS, ProfileDrag.SCUFFED_TRANSITION);

    /**
     * Settings.
     *
     * @throws IllegalArgumentException if the station is not 0.01 to 0.95 chords
     */
    public Settings {
      if (!(scuffedStation >= 0.01 && scuffedStation <= 0.95)) {
        throw new IllegalArgumentException(
            "a scuffed surface turns turbulent at 0.01 to 0.95 chords, was " + scuffedStation);
      }
    }
  }

  /** Whoever waits for a table. */
  @FunctionalInterface
  public interface Progress {
    /**
     * Told after each polar.
     *
     * @param share done so far, 0 to 1 [1]
     * @return whether to go on
     */
    boolean goOn(double share);
  }

  /**
   * Builds a table.
   *
   * @param shape outline
   * @param settings what else it depends on
   * @param progress told how far it is
   * @return the table; empty if it was stopped
   */
  public static Optional<PolarTable> build(
      SectionShape shape, Settings settings, Progress progress) {
    double[] angles = new double[HIGHEST_DEGREES - LOWEST_DEGREES + 1];
    for (int i = 0; i < angles.length; i++) {
      angles[i] = (LOWEST_DEGREES + i) * DEGREE;
    }
    double[] logs = new double[REYNOLDS_COUNT];
    double from = Math.log(LOWEST_REYNOLDS);
    double to = Math.log(HIGHEST_REYNOLDS);
    for (int i = 0; i < logs.length; i++) {
      logs[i] = from + (to - from) * i / (logs.length - 1);
    }
    ViscousSurface surface = ViscousSurface.of(shape);
    Finish[] finishes = Finish.values();
    PolarRow[][] rows = new PolarRow[finishes.length][logs.length];
    int done = 0;
    for (Finish finish : finishes) {
      double forced = finish == Finish.CLEAN ? 1 : settings.scuffedStation();
      for (int i = 0; i < logs.length; i++) {
        double reynolds = Math.exp(logs[i]);
        rows[finish.ordinal()][i] =
            PolarSweep.run(surface, angles, reynolds, settings.disturbance(), forced);
        done++;
        if (!progress.goOn(done / (double) (finishes.length * logs.length))) {
          return Optional.empty();
        }
      }
    }
    return Optional.of(new PolarTable(angles, logs, rows));
  }

  /**
   * The polar at a Reynolds number.
   *
   * @param reynolds Reynolds number on the chord [1]
   * @param finish surface state
   */
  public PolarRow at(double reynolds, Finish finish) {
    PolarRow[] known = rows[finish.ordinal()];
    int last = logReynolds.length - 1;
    double place = Math.max(logReynolds[0], Math.min(logReynolds[last], Math.log(reynolds)));
    double[] flat = curves[finish.ordinal()].value(place);
    double[][] values = new double[PolarRow.QUANTITIES][angles.length];
    for (int q = 0; q < values.length; q++) {
      System.arraycopy(flat, q * angles.length, values[q], 0, angles.length);
    }
    return new PolarRow(angles, values, kinds(known, place));
  }

  /** Between two Reynolds numbers each angle is as sure as the less sure of the two there. */
  private PointKind[] kinds(PolarRow[] known, double place) {
    int above = 0;
    while (above < logReynolds.length - 1 && logReynolds[above] < place - SAME_PLACE) {
      above++;
    }
    PointKind[] kinds = known[above].kinds().clone();
    if (above > 0 && Math.abs(logReynolds[above] - place) > SAME_PLACE) {
      for (int i = 0; i < kinds.length; i++) {
        kinds[i] = kinds[i].or(known[above - 1].kinds()[i]);
      }
    }
    return kinds;
  }

  /** How all points came about, both finishes and all Reynolds numbers together. */
  public PolarRow.Counts counts() {
    PolarRow.Counts sum = new PolarRow.Counts(0, 0, 0);
    for (PolarRow[] finish : rows) {
      for (PolarRow row : finish) {
        sum = sum.plus(row.counts());
      }
    }
    return sum;
  }

  /**
   * A table as plain arrays.
   *
   * @param angles of attack [rad]
   * @param logReynolds natural logarithms of the Reynolds numbers
   * @param values coefficients: by finish, Reynolds number, quantity (lift, drag, moment, lowest
   *     pressure), angle
   * @param kinds by finish, Reynolds number, angle: place of its {@link PointKind}
   */
  @SuppressWarnings("ArrayRecordComponent")
  public record Numbers(double[] angles, double[] logReynolds, double[] values, int[] kinds) {}

  /** The table's numbers; copies. */
  public Numbers numbers() {
    int finishes = rows.length;
    int width = PolarRow.QUANTITIES * angles.length;
    double[] values = new double[finishes * logReynolds.length * width];
    int[] kinds = new int[finishes * logReynolds.length * angles.length];
    int k = 0;
    int c = 0;
    for (PolarRow[] finish : rows) {
      for (PolarRow row : finish) {
        for (int q = 0; q < PolarRow.QUANTITIES; q++) {
          for (int a = 0; a < angles.length; a++) {
            values[k++] = row.value(q, a);
          }
        }
        for (PointKind kind : row.kinds()) {
          kinds[c++] = kind.ordinal();
        }
      }
    }
    return new Numbers(angles.clone(), logReynolds.clone(), values, kinds);
  }

  /**
   * A table from its numbers.
   *
   * @param numbers as {@link #numbers} gave them
   * @throws IllegalArgumentException if the arrays do not fit together
   */
  public static PolarTable of(Numbers numbers) {
    double[] angles = numbers.angles().clone();
    double[] logs = numbers.logReynolds().clone();
    int finishes = Finish.values().length;
    int rowsCount = finishes * logs.length;
    if (numbers.values().length != rowsCount * PolarRow.QUANTITIES * angles.length
        || numbers.kinds().length != rowsCount * angles.length) {
      throw new IllegalArgumentException(
          "a polar table of "
              + angles.length
              + " angles and "
              + logs.length
              + " Reynolds numbers cannot hold "
              + numbers.values().length
              + " values and "
              + numbers.kinds().length
              + " kinds");
    }
    PolarRow[][] rows = new PolarRow[finishes][logs.length];
    int k = 0;
    for (int r = 0; r < rowsCount; r++) {
      double[][] values = new double[PolarRow.QUANTITIES][angles.length];
      for (double[] quantity : values) {
        System.arraycopy(numbers.values(), k, quantity, 0, angles.length);
        k += angles.length;
      }
      PointKind[] kinds = new PointKind[angles.length];
      for (int a = 0; a < kinds.length; a++) {
        kinds[a] = kind(numbers.kinds()[r * angles.length + a]);
      }
      rows[r / logs.length][r % logs.length] = new PolarRow(angles, values, kinds);
    }
    return new PolarTable(angles, logs, rows);
  }

  private static PointKind kind(int place) {
    PointKind[] all = PointKind.values();
    if (place < 0 || place >= all.length) {
      throw new IllegalArgumentException("a point's kind is 0 to 2, was " + place);
    }
    return all[place];
  }
}
