package trimwright.fitting.judge;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.quick.PairTable;
import trimwright.kernel.quick.QuickBalance;
import trimwright.kernel.quick.QuickTrim;
import trimwright.kernel.rig.BoardHeight;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.NoTrimReason;

/**
 * Judges rides from tables, by the definitions of {@link FullJudge#ride}: all its wishes and
 * grounds. Balances are found once per rig and shim; then feet and track are placed algebraically.
 *
 * <p>Immutable; may be shared between threads.
 */
public final class QuickJudge {
  /** How near the slowest flight is found [m/s]. */
  private static final double NEAR = 1e-7;

  /** Steps of that search; each leaves a small part of the miss. */
  private static final int MOST_STEPS = 40;

  private final RideAsked asked;
  private final double[] speeds;
  private final int rideSpeeds;
  private final int wished;
  private final FeetPlacer placer;

  /**
   * A judge.
   *
   * @param asked what is asked of every setup
   * @throws IllegalArgumentException if its speeds lie outside those of the tables
   */
  public QuickJudge(RideAsked asked) {
    this.asked = asked;
    double[] ride = asked.span().speeds();
    double wishedSpeed = asked.base().rider().wishedSpeed();
    rideSpeeds = ride.length;
    speeds = Arrays.copyOf(ride, rideSpeeds + 1);
    speeds[rideSpeeds] = wishedSpeed;
    wished = rideSpeeds;
    for (double speed : speeds) {
      if (speed < PairTable.slowest() || speed > PairTable.fastest()) {
        throw new IllegalArgumentException(
            "speeds must be from "
                + PairTable.slowest()
                + " to "
                + PairTable.fastest()
                + " m/s, was "
                + speed);
      }
    }
    placer = new FeetPlacer(asked);
  }

  /** What is asked. */
  public RideAsked asked() {
    return asked;
  }

  /**
   * A pair of wings with a shim.
   *
   * @param table of the pair, made for {@link TableCase#of} the ride
   * @param shim leading edge up positive [rad]
   * @return its loads at the ride's speeds
   */
  public ShimLoads loads(PairTable table, double shim) {
    return new ShimLoads(table, shim, speeds);
  }

  /**
   * A rig.
   *
   * @param middle the ride on it, the mast in the middle of its track; its shim does not count
   * @return empty where the ride is not possible on it
   */
  public Optional<QuickRig> rig(RideCase middle) {
    return Room.isThere(middle) ? Optional.of(new QuickRig(middle, speeds)) : Optional.empty();
  }

  /**
   * Finds the balances of a rig with a shim.
   *
   * @param rig the rig
   * @param loads of its own pair of wings
   * @return balances with what neither track nor stance changes
   */
  public QuickRide ride(QuickRig rig, ShimLoads loads) {
    double[] pressure = new double[speeds.length];
    double[] perTrack = new double[speeds.length];
    double[] pitch = new double[speeds.length];
    QuickBalance[] balances = new QuickBalance[speeds.length];
    RideLimits limits = rig.rideCase().limits();
    int grounds = 0;
    for (int i = 0; i < speeds.length; i++) {
      QuickTrim trim = rig.at(i).trim(loads.at(i));
      Optional<NoTrimReason> reason =
          trim.reason().filter(r -> r != NoTrimReason.FEET_CANNOT_REACH);
      if (reason.isPresent()) {
        grounds |= bit(Ground.of(reason.get()));
        if (reason.get() == NoTrimReason.TOO_SLOW) {
          // Nothing that is looked at here comes before it.
          return new QuickRide(rig, grounds, pressure, perTrack, pitch);
        }
        continue;
      }
      QuickBalance b = trim.balance().orElseThrow();
      balances[i] = b;
      pressure[i] = b.footPressure();
      perTrack[i] = b.footPressurePerTrack();
      pitch[i] = b.pitch();
      grounds |= broken(rig, limits, b);
    }
    if (grounds == 0) {
      for (int i = 0; i < speeds.length; i++) {
        double margin = rig.at(i).foilMargin(loads.at(i), balances[i]);
        if (limits.breaks(RideLimit.STATIC_MARGIN, margin)) {
          grounds |= bit(Ground.STATIC_MARGIN);
        }
      }
    }
    QuickRide ride = new QuickRide(rig, grounds, pressure, perTrack, pitch);
    if (grounds == 0) {
      fill(ride, loads, balances);
    }
    return ride;
  }

  private static int broken(QuickRig rig, RideLimits limits, QuickBalance b) {
    int grounds = 0;
    if (limits.breaks(RideLimit.STALL_MARGIN, b.stallMargin())) {
      grounds |= bit(Ground.STALL_MARGIN);
    }
    double deck = b.pitch() + rig.craft().deck().baseAngle();
    if (limits.breaks(RideLimit.PITCH, Math.abs(deck))) {
      grounds |= bit(Ground.PITCH);
    }
    if (limits.breaks(RideLimit.TIP_DEPTH, Room.tipDepth(rig.craft(), b.pitch(), 0))) {
      grounds |= bit(Ground.TIP_DEPTH);
    }
    if (limits.breaks(RideLimit.PROPELLER_DEPTH, Room.propellerDepth(rig.craft(), b.pitch()))) {
      grounds |= bit(Ground.PROPELLER_DEPTH);
    }
    return grounds;
  }

  private static int bit(Ground ground) {
    return 1 << ground.ordinal();
  }

  private void fill(QuickRide ride, ShimLoads loads, QuickBalance[] balances) {
    RideCase c = ride.rig().rideCase();
    double[] values = ride.values;
    Arrays.fill(values, Double.NaN);
    QuickBalance at = balances[wished];
    double stall = Double.POSITIVE_INFINITY;
    for (int i = 0; i < rideSpeeds; i++) {
      stall = Math.min(stall, balances[i].stallMargin());
    }
    double deck = at.pitch() + ride.rig().craft().deck().baseAngle();
    OptionalDouble power =
        c.setup().drive().isPresent() ? OptionalDouble.of(at.power()) : OptionalDouble.empty();
    values[Wish.LEVEL.ordinal()] = Math.abs(deck - c.rider().wishedPitch());
    values[Wish.STALL.ordinal()] = stall;
    values[Wish.GEAR_MASS.ordinal()] = ride.rig().craft().partsMass();
    values[Wish.TURN.ordinal()] = Room.tipBank(ride.rig().craft(), at.pitch());
    values[Wish.RANGE.ordinal()] = FullJudge.range(c, power, speeds[wished]);
    values[Wish.TAKE_OFF.ordinal()] = slowest(ride.rig(), loads);
  }

  /** The speed at which the wings just carry the weight before the first stall [m/s]. */
  private double slowest(QuickRig rig, ShimLoads loads) {
    double speed = speeds[0];
    for (int i = 0; i < MOST_STEPS; i++) {
      double next = rig.at(speed).stallSpeed(loads.at(speed));
      next = Math.max(PairTable.slowest(), Math.min(PairTable.fastest(), next));
      if (Math.abs(next - speed) < NEAR) {
        return next;
      }
      speed = next;
    }
    return speed;
  }

  /**
   * Places mast and feet.
   *
   * @param ride balances of a rig with a shim
   * @param track the mast forward of its track's middle [m]
   * @return where the feet stand best, and what that gives
   */
  public Placement place(QuickRide ride, double track) {
    double[] shares = shares(ride, track);
    int first = Integer.numberOfTrailingZeros(ride.grounds);
    if (first < Ground.FEET.ordinal()) {
      return fallen(track, Ground.values()[first]);
    }
    int notch = placer.place(shares, rideSpeeds);
    if (notch == FeetPlacer.NOWHERE) {
      return fallen(track, Ground.FEET);
    }
    if (first < Ground.BOARD_CLEARANCE.ordinal()) {
      return fallen(track, Ground.values()[first]);
    }
    if (touches(ride, track)) {
      return fallen(track, Ground.BOARD_CLEARANCE);
    }
    if (!ride.passes()) {
      return fallen(track, Ground.values()[first]);
    }
    double feet = notch * RideAsked.NOTCH;
    double[] values = ride.values.clone();
    values[Wish.FEET.ordinal()] = placer.meanMiss(shares, rideSpeeds, notch);
    values[Wish.GROWTH.ordinal()] =
        Math.abs(shares[rideSpeeds - 1] - shares[0]) / (speeds[rideSpeeds - 1] - speeds[0]);
    values[Wish.FEET_MOVED.ordinal()] = Math.abs(feet);
    WishValues all = WishValues.of(values);
    return new Placement(track, feet, Optional.empty(), all, asked.wishes().shortfall(all));
  }

  private static Placement fallen(double track, Ground ground) {
    return new Placement(
        track, 0, Optional.of(ground), WishValues.none(), Double.POSITIVE_INFINITY);
  }

  private boolean touches(QuickRide ride, double track) {
    double limit = ride.rig().rideCase().limits().of(RideLimit.BOARD_CLEARANCE);
    for (double pitch : ride.pitch) {
      if (BoardHeight.aboveCrests(ride.rig().craft(), pitch, track) < limit) {
        return true;
      }
    }
    return false;
  }

  private double[] shares(QuickRide ride, double track) {
    Rider r = asked.base().rider();
    double back = r.backFoot() - track;
    double[] shares = new double[speeds.length];
    for (int i = 0; i < shares.length; i++) {
      shares[i] = (ride.pressure[i] + ride.perTrack[i] * track - back) / r.stance();
    }
    return shares;
  }
}
