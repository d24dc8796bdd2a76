package trimwright.kernel.range;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.numeric.Roots;
import trimwright.kernel.propel.BatteryPack;
import trimwright.kernel.rig.Battery;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** Finds how far and how long a case rides. */
public final class RangeSolver {
  /** How near a best speed is found [m/s]: the ride's length hardly changes about it. */
  private static final double SPEED_TOLERANCE = 0.02;

  /** Speed over the ground below which there is no headway [m/s]. */
  private static final double NO_HEADWAY = 0.1;

  /** A battery from which nothing is drawn is taken to last this long: a day [s]. */
  private static final double FOR_EVER = 86_400;

  /** Energy per metre below which a way is taken to cost no less [J/m]: a wind that pushes. */
  private static final double NEXT_TO_NOTHING = 1e-3;

  private final CaseSolver solver;
  private final BatteryPack pack;
  private final List<TrimOutcome> outcomes;

  private RangeSolver(CaseSolver solver, BatteryPack pack, List<TrimOutcome> outcomes) {
    this.solver = solver;
    this.pack = pack;
    this.outcomes = outcomes;
  }

  /**
   * How far and how long.
   *
   * @param solver of the case
   * @param outcomes of its curve, by rising speed; best speeds are looked for between the slowest
   *     and the fastest of its trim points
   * @param home the way home, where one is to be ridden, with what {@link
   *     RideLimit#BATTERY_RESERVE} leaves of what may be used
   * @return empty where there is no drive or no battery
   */
  public static Optional<RideRange> find(
      CaseSolver solver, List<TrimOutcome> outcomes, Optional<WayHome> home) {
    Optional<Battery> battery = solver.rideCase().setup().battery();
    if (battery.isEmpty() || solver.findPowertrain().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new RangeSolver(solver, battery.get().pack(), outcomes).solve(home));
  }

  private RideRange solve(Optional<WayHome> home) {
    List<Optional<RangePoint>> points =
        outcomes.stream()
            .map(TrimOutcome::findPoint)
            .map(found -> found.map(p -> point(p.speed(), p.electricPower().orElseThrow())))
            .toList();
    List<Double> trimmed =
        outcomes.stream().flatMap(o -> o.findPoint().stream()).map(TrimPoint::speed).toList();
    DoubleUnaryOperator drain = v -> drain(solver, v);
    return new RideRange(
        solver.findPowertrain().orElseThrow().basis(),
        pack.usableEnergy(),
        pack.capacityShare(),
        points,
        point(best(drain, trimmed)),
        point(best(v -> drain(solver, v) / v, trimmed)),
        home.flatMap(way -> home(way, trimmed)));
  }

  private Optional<RangePoint> point(OptionalDouble speed) {
    if (speed.isEmpty()) {
      return Optional.empty();
    }
    double v = speed.getAsDouble();
    OptionalDouble power = solver.findPower(v);
    return power.isPresent() ? Optional.of(point(v, power.getAsDouble())) : Optional.empty();
  }

  private RangePoint point(double speed, double power) {
    double drain = pack.drain(power);
    double duration = drain > 0 ? Math.min(FOR_EVER, pack.usableEnergy() / drain) : FOR_EVER;
    return new RangePoint(speed, power, drain, duration, speed * duration);
  }

  /** How fast a case empties the battery at a speed [W]; infinite where there is no trim. */
  private double drain(CaseSolver at, double speed) {
    OptionalDouble power = at.findPower(speed);
    return power.isPresent() ? pack.drain(power.getAsDouble()) : Double.POSITIVE_INFINITY;
  }

  /** The speed of the least value: the best of the trimmed ones, then between its neighbours. */
  private static OptionalDouble best(DoubleUnaryOperator cost, List<Double> speeds) {
    int best = -1;
    double least = Double.POSITIVE_INFINITY;
    List<Double> costs = new ArrayList<>();
    for (int i = 0; i < speeds.size(); i++) {
      double here = cost.applyAsDouble(speeds.get(i));
      costs.add(here);
      if (here < least) {
        least = here;
        best = i;
      }
    }
    if (best < 0) {
      return OptionalDouble.empty();
    }
    double from = speeds.get(Math.max(0, best - 1));
    double to = speeds.get(Math.min(speeds.size() - 1, best + 1));
    double between = Roots.leastBetween(cost, from, to, SPEED_TOLERANCE);
    return OptionalDouble.of(cost.applyAsDouble(between) <= least ? between : speeds.get(best));
  }

  private Optional<HomeRide> home(WayHome way, List<Double> trimmed) {
    double reserve = solver.rideCase().limits().of(RideLimit.BATTERY_RESERVE);
    CaseSolver back = solver.withHeadWind(way.headWind());
    DoubleUnaryOperator perMetre = v -> perMetre(back, v, v - way.current());
    OptionalDouble best = best(perMetre, trimmed);
    if (best.isEmpty()) {
      return Optional.empty();
    }
    double speed = best.getAsDouble();
    double overGround = speed - way.current();
    double homeward = perMetre.applyAsDouble(speed);
    double energy = homeward * way.distance();
    double wished = solver.rideCase().rider().wishedSpeed();
    CaseSolver out = solver.withHeadWind(-way.headWind());
    double outward = perMetre(out, wished, wished + way.current());
    double budget = pack.usableEnergy() * (1 - reserve);
    double farthest = budget / Math.max(outward + homeward, NEXT_TO_NOTHING);
    return Optional.of(
        new HomeRide(
            speed,
            overGround,
            way.distance() / overGround,
            energy,
            energy / pack.usableEnergy(),
            reserve,
            Double.isFinite(outward) ? OptionalDouble.of(farthest) : OptionalDouble.empty()));
  }

  /** Energy per metre over the ground [J/m]; infinite without headway or trim. */
  private double perMetre(CaseSolver at, double speed, double overGround) {
    return overGround < NO_HEADWAY ? Double.POSITIVE_INFINITY : drain(at, speed) / overGround;
  }
}
