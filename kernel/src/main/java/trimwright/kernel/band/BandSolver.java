package trimwright.kernel.band;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimPoint;

/**
 * Carries every input's tolerance through the trim. Each input in turn is moved by half of its
 * standard deviation and the case solved again on the same speeds; inputs that act as a turn of a
 * wing (shim, zero-lift angles, downwash) take that turn's effect in proportion.
 *
 * <p>Speeds at which a quantity takes a value follow from its band there over its slope; the ends
 * of the rideable window are searched for anew.
 *
 * <p>Needs some two dozen tables of the lifting surfaces, which may be kept: each is that of a case
 * with one number moved. For one use by one thread.
 */
public final class BandSolver {
  /** Part of a standard deviation by which an input is moved [1]. Chosen: well above rounding. */
  private static final double STEP = 0.5;

  /** Step of speed for slopes, as a share [1]. */
  private static final double SPEED_STEP = 5e-3;

  private final RideCase rideCase;
  private final Knowledge knowledge;
  private final SurfaceTables tables;
  private final SurfaceResponse flow;
  private final CaseSolver base;
  private final List<Double> speeds;
  private final Curve curve;
  private final double[] row;

  /** By one standard deviation of each input; null where the case has no such input. */
  private final double[][] effects = new double[Input.values().length][];

  private BandSolver(
      RideCase rideCase, Knowledge knowledge, List<Double> asked, SurfaceTables tables) {
    this.rideCase = rideCase;
    this.knowledge = knowledge;
    this.tables = tables;
    Craft craft = new Craft(rideCase);
    flow = tables.of(craft);
    base = CaseSolver.of(craft, flow);
    curve = base.curve(asked);
    speeds = new ArrayList<>(asked);
    curve.levelSpeed().ifPresent(speeds::add);
    curve.evenFeetSpeeds().stream().map(EvenFeetSpeed::speed).forEach(speeds::add);
    row = Observed.of(base, speeds, curve.rideableWindow());
  }

  /**
   * A curve with its bands.
   *
   * @param rideCase the case
   * @param knowledge how its parts are known
   * @param speeds [m/s], rising
   * @param tables where tables of lifting surfaces come from
   * @return the curve over these speeds and its bands
   * @throws IllegalArgumentException if a speed is not above 0
   */
  public static Bands of(
      RideCase rideCase, Knowledge knowledge, List<Double> speeds, SurfaceTables tables) {
    return find(rideCase, knowledge, speeds, tables, () -> false).orElseThrow();
  }

  /**
   * A curve with its bands, unless it is no longer wanted: for whoever may be called away. It is
   * asked before every input, some hundredth of a second apart.
   *
   * @param rideCase the case
   * @param knowledge how its parts are known
   * @param speeds [m/s], rising
   * @param tables where tables of lifting surfaces come from
   * @param isStopped whether to stop
   * @return the curve and its bands; empty where it was stopped
   * @throws IllegalArgumentException if a speed is not above 0
   */
  public static Optional<Bands> find(
      RideCase rideCase,
      Knowledge knowledge,
      List<Double> speeds,
      SurfaceTables tables,
      BooleanSupplier isStopped) {
    BandSolver solver = new BandSolver(rideCase, knowledge, speeds, tables);
    return solver.solveAll(isStopped) ? Optional.of(solver.bands()) : Optional.empty();
  }

  /** Solves for every input; false where it was stopped. */
  private boolean solveAll(BooleanSupplier isStopped) {
    for (Input input : Input.values()) {
      if (isStopped.getAsBoolean()) {
        return false;
      }
      if (input.flow() == Input.Flow.SAME || input.flow() == Input.Flow.OWN) {
        solve(input);
      }
    }
    for (Input input : Input.values()) {
      if (input.flow() != Input.Flow.SAME && input.flow() != Input.Flow.OWN) {
        derive(input);
      }
    }
    return true;
  }

  private Bands bands() {
    int asked = curve.outcomes().size();
    List<Optional<PointBand>> points = new ArrayList<>();
    for (int i = 0; i < asked; i++) {
      points.add(
          curve.outcomes().get(i).findPoint().isPresent()
              ? Optional.of(point(i))
              : Optional.empty());
    }
    int next = asked;
    Optional<Spread> level = Optional.empty();
    if (curve.levelSpeed().isPresent()) {
      level = speed(next++, Quantity.PITCH);
    }
    List<Optional<Spread>> even = new ArrayList<>();
    while (next < speeds.size()) {
      even.add(speed(next++, Quantity.FOOT_SHARE));
    }
    int window = Observed.window(speeds.size());
    return new Bands(curve, points, level, even, spread(window), spread(window + 1));
  }

  private PointBand point(int speed) {
    Map<Quantity, Spread> spreads = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      spread(Observed.place(speed, quantity)).ifPresent(s -> spreads.put(quantity, s));
    }
    return new PointBand(spreads);
  }

  private Optional<Spread> spread(int place) {
    return spread(row[place], place, 1);
  }

  /** What every input does to one number, times a factor. */
  private Optional<Spread> spread(double value, int place, double factor) {
    double[] all = new double[effects.length];
    for (int input = 0; input < all.length; input++) {
      all[input] = effects[input] == null ? 0 : factor * effects[input][place];
    }
    boolean whole = Double.isFinite(value) && Arrays.stream(all).allMatch(Double::isFinite);
    return whole ? Optional.of(new Spread(value, all)) : Optional.empty();
  }

  /** The band of a speed at which a quantity takes a value. */
  private Optional<Spread> speed(int index, Quantity quantity) {
    double v = speeds.get(index);
    OptionalDouble slower = at(v * (1 - SPEED_STEP), quantity);
    OptionalDouble faster = at(v * (1 + SPEED_STEP), quantity);
    if (slower.isEmpty() || faster.isEmpty()) {
      return Optional.empty();
    }
    double slope = (faster.getAsDouble() - slower.getAsDouble()) / (2 * SPEED_STEP * v);
    return spread(v, Observed.place(index, quantity), -1 / slope);
  }

  private OptionalDouble at(double speed, Quantity quantity) {
    Optional<TrimPoint> point = Observed.balance(base.trim(speed));
    return point.isPresent() ? OptionalDouble.of(quantity.of(point.get())) : OptionalDouble.empty();
  }

  private void solve(Input input) {
    Optional<Double> deviation = input.deviation(rideCase, knowledge);
    if (deviation.isEmpty()) {
      return;
    }
    double step = STEP * deviation.get();
    double[] up = moved(input, step);
    double[] effect = new double[row.length];
    boolean lost = false;
    for (int i = 0; i < row.length; i++) {
      effect[i] = (up[i] - row[i]) / STEP;
      lost |= Double.isNaN(up[i]) && !Double.isNaN(row[i]);
    }
    if (lost) {
      // No trim on this side of the tolerance: the other side tells.
      double[] down = moved(input, -step);
      for (int i = 0; i < row.length; i++) {
        effect[i] = Double.isNaN(effect[i]) ? (row[i] - down[i]) / STEP : effect[i];
      }
    }
    if (input == Input.DRIVE_EFFICIENCY) {
      powerByEfficiency(effect, deviation.get());
    }
    effects[input.ordinal()] = effect;
  }

  /**
   * More efficiency changes no force: as much less power at every speed, and up to the limit of
   * power as if that were as much higher.
   */
  private void powerByEfficiency(double[] effect, double deviation) {
    for (int i = 0; i < speeds.size(); i++) {
      int power = Observed.place(i, Quantity.ELECTRIC_POWER);
      effect[power] = -deviation * row[power];
    }
  }

  private double[] moved(Input input, double by) {
    Craft craft = input.craft(rideCase, by);
    SurfaceResponse its = input.flow() == Input.Flow.SAME ? flow : tables.of(craft);
    return Observed.of(CaseSolver.of(craft, its), speeds, curve.rideableWindow());
  }

  /** Takes over the effect of a wing's turn. */
  private void derive(Input input) {
    double deviation = input.deviation(rideCase, knowledge).orElseThrow();
    boolean front = input.flow() == Input.Flow.AS_FRONT_WING_SETTING;
    Input turn = front ? Input.FRONT_WING_SETTING : Input.STABILIZER_SETTING;
    double turned = turn.deviation(rideCase, knowledge).orElseThrow();
    double[] effect = effects[turn.ordinal()].clone();
    double[] share = new double[effect.length];
    // A larger zero-lift angle is as if the wing were turned down.
    Arrays.fill(share, (input == Input.SHIM_ANGLE ? 1 : -1) * deviation / turned);
    if (input == Input.DOWNWASH) {
      byDownwash(share, deviation, turned);
    }
    for (int i = 0; i < effect.length; i++) {
      effect[i] *= share[i];
    }
    effects[input.ordinal()] = effect;
  }

  private void byDownwash(double[] share, double deviation, double turned) {
    double step = STEP * turned;
    Craft craft = new Craft(Input.STABILIZER_SETTING.moved(rideCase, step));
    Turned wash = new Turned(rideCase.setup(), flow, tables.of(craft), step);
    double base = rideCase.setup().mast().baseAngle();
    for (int i = 0; i < speeds.size(); i++) {
      double angle = wash.downwash(row[Observed.place(i, Quantity.PITCH)] - base);
      for (Quantity quantity : Quantity.values()) {
        share[Observed.place(i, quantity)] = -deviation * angle / turned;
      }
    }
    int window = Observed.window(speeds.size());
    for (int end = 0; end < 2; end++) {
      Optional<TrimPoint> point =
          Double.isNaN(row[window + end])
              ? Optional.empty()
              : Observed.balance(this.base.trim(row[window + end]));
      share[window + end] =
          point.isPresent()
              ? -deviation * wash.downwash(point.get().pitch() - base) / turned
              : Double.NaN;
    }
  }
}
