package trimwright.kernel.motion;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.hull.TouchingBoard;
import trimwright.kernel.numeric.Elimination;
import trimwright.kernel.propel.Powertrain;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.ThrustLine;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * All that a case's motions share: its tables, masses and drive. Immutable; may be shared between
 * threads.
 */
public final class MotionModel {
  /** Steps of pitch, thrust and foot pressure for slopes [rad, N, m]. */
  private static final double[] STEPS = {1e-5, 1e-2, 1e-4};

  private static final int MOST_STEPS = 20;

  /** Forces that count as balanced [N, N·m]. */
  private static final double BALANCED = 1e-7;

  /** Half the step for the downwash's slope [rad]. */
  private static final double WASH_STEP = Math.toRadians(0.5);

  private final CaseSolver solver;
  private final Craft craft;
  private final WingTable table;
  private final MovedWater moved;
  private final ThrustLine line;
  private final TouchingBoard board;
  private final WingPlaces places;
  private final MotionShape shape;
  private final Posture posture;
  private final Optional<Powertrain> powertrain;

  private MotionModel(CaseSolver solver, WingTable table, TouchingBoard board, Posture posture) {
    this.solver = solver;
    craft = solver.craft();
    this.table = table;
    this.board = board;
    this.posture = posture;
    moved = MovedWater.of(craft);
    line = new ThrustLine(craft);
    places = WingPlaces.of(craft);
    shape = new MotionShape(craft);
    powertrain = solver.findPowertrain();
  }

  /**
   * For small motions about the trims, the board in the air.
   *
   * @param solver of the case
   * @return the model
   */
  public static MotionModel small(CaseSolver solver) {
    return new MotionModel(solver, WingTable.near(solver), null, Posture.STANDING);
  }

  /**
   * For motions of any size, the board as it comes down to the water too.
   *
   * @param solver of the case
   * @return the model
   */
  public static MotionModel large(CaseSolver solver) {
    return new MotionModel(
        solver, WingTable.wide(solver), new TouchingBoard(solver.craft()), Posture.STANDING);
  }

  /**
   * The same with the rider in another posture.
   *
   * @param other posture
   * @return the model
   */
  public MotionModel with(Posture other) {
    return new MotionModel(solver, table, board, other);
  }

  /** The trims from which motions begin. */
  public CaseSolver solver() {
    return solver;
  }

  /** Of the rider. */
  public Posture posture() {
    return posture;
  }

  /** The craft. */
  public Craft craft() {
    return craft;
  }

  WingTable table() {
    return table;
  }

  MovedWater moved() {
    return moved;
  }

  ThrustLine line() {
    return line;
  }

  /** Null where the board stays in the air. */
  TouchingBoard board() {
    return board;
  }

  WingPlaces places() {
    return places;
  }

  MotionShape shape() {
    return shape;
  }

  /**
   * Follows a motion from a trim over time.
   *
   * @param trim where it begins
   * @param controls what rider and wind do
   * @param water how the water moves
   * @param body whether it sways or keeps upright, see {@link Body}
   * @param duration [s]
   * @param step between the moments [s]
   * @param ends what ends it; {@link MotionEnd#LIMIT_OF_MODEL} always does
   * @return the motion
   */
  public MotionTrace follow(
      MotionTrim trim,
      Controls controls,
      WaterMotion water,
      Body body,
      double duration,
      double step,
      Set<MotionEnd> ends) {
    return new MotionRun(this, trim, controls, water, body == Body.FREE)
        .follow(duration, step, ends);
  }

  /** How a body stands on the board. */
  public enum Body {
    /** Upright over a place of the deck; the feet press wherever that takes them. */
    FOLLOWS,
    /** The feet press where they are told; the mass above sways as that moves it. */
    FREE
  }

  /**
   * The modes about the trim of a speed alone, of a rider who keeps upright.
   *
   * @param speed [m/s]
   * @return the fastest growing first; none where there is no trim
   */
  public List<Mode> listModes(double speed) {
    return findTrim(speed)
        .map(trim -> new SmallMotion(this, trim, false).modes())
        .orElse(List.of());
  }

  /**
   * How a case behaves about its trim at a speed.
   *
   * @param speed [m/s]
   * @return empty where there is no trim
   */
  public Optional<Manners> findManners(double speed) {
    return findTrim(speed).map(trim -> Manners.of(this, trim));
  }

  /**
   * The steady state at a speed: the trim's, made to balance to the last digit with this model's
   * tables.
   *
   * @param speed [m/s]
   * @return empty where there is no trim
   */
  public Optional<MotionTrim> findTrim(double speed) {
    return solver.trim(speed) instanceof TrimOutcome.Trimmed trimmed
        ? Optional.of(balanced(trimmed.point()))
        : Optional.empty();
  }

  private MotionTrim balanced(TrimPoint point) {
    double pitch = point.pitch() - craft.deck().baseAngle();
    MotionTrim trim =
        of(
            point.speed(),
            pitch,
            point.thrust(),
            point.footPressureAheadOfMast(),
            wash(point.speed(), pitch));
    double[][] slopes = new double[3][3];
    for (int step = 0; step < MOST_STEPS; step++) {
      double[] left = left(trim);
      if (Math.abs(left[0]) + Math.abs(left[1]) + Math.abs(left[2]) < BALANCED) {
        break;
      }
      for (int k = 0; k < 3; k++) {
        double[] beside = left(moved(trim, k, STEPS[k]));
        for (int i = 0; i < 3; i++) {
          slopes[i][k] = (beside[i] - left[i]) / STEPS[k];
        }
      }
      double[] change = left.clone();
      if (!Elimination.solve(slopes, change, 3)) {
        break;
      }
      for (int k = 0; k < 3; k++) {
        trim = moved(trim, k, -change[k]);
      }
    }
    return of(
        trim.speed(),
        trim.pitch(),
        trim.thrust(),
        trim.footPressure(),
        wash(trim.speed(), trim.pitch()));
  }

  private double[] left(MotionTrim trim) {
    CraftMotion motion = new CraftMotion(this, trim, held(trim), WaterMotion.STILL, false);
    return motion.steady(motion.start());
  }

  private MotionTrim moved(MotionTrim trim, int which, double by) {
    return of(
        trim.speed(),
        trim.pitch() + (which == 0 ? by : 0),
        trim.thrust() + (which == 1 ? by : 0),
        trim.footPressure() + (which == 2 ? by : 0),
        trim.wash());
  }

  private MotionTrim of(
      double speed, double pitch, double thrust, double footPressure, double wash) {
    return new MotionTrim(
        speed, pitch, thrust, footPressure, craft.airDrag(speed), line.pull(thrust), wash);
  }

  /** How much less the stabilizer's lift grows with the pitch than with its own angle. */
  private double wash(double speed, double pitch) {
    double depth = craft.rideCase().immersion();
    double[] low = new double[WingTable.NUMBERS];
    double[] high = new double[WingTable.NUMBERS];
    table.read(pitch - WASH_STEP, 0, speed, depth, low);
    table.read(pitch + WASH_STEP, 0, speed, depth, high);
    double withPitch = high[4] - low[4];
    table.read(pitch, -WASH_STEP, speed, depth, low);
    table.read(pitch, WASH_STEP, speed, depth, high);
    return 1 - withPitch / (high[4] - low[4]);
  }

  /**
   * Foot pressure and throttle left alone.
   *
   * @param trim the trim
   * @return what they are
   */
  public Controls held(MotionTrim trim) {
    return Controls.of(time -> trim.footPressure(), (time, speed) -> heldThrust(trim, speed));
  }

  /**
   * The trim's thrust at another speed with the throttle left alone; a pull stays as it is.
   *
   * @param trim the trim
   * @param speed [m/s]
   * @return [N]
   */
  public double heldThrust(MotionTrim trim, double speed) {
    return powertrain.isPresent()
        ? powertrain.get().heldThrust(trim.thrust(), trim.speed(), Math.max(0.1, speed))
        : trim.thrust();
  }

  /** The drive, where there is one. */
  public Optional<Powertrain> findPowertrain() {
    return powertrain;
  }
}
