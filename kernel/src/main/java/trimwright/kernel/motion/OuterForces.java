package trimwright.kernel.motion;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.hull.TouchingBoard;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.ThrustLine;

/**
 * What acts on board and foil at one moment of a motion, the rider and what follows the
 * accelerations left out: wings, drags, weights, buoyancy, thrust, a touching board. Moments about
 * the datum. One object is one workspace.
 */
final class OuterForces {
  /** Water that hardly streams is taken to stream so fast [m/s]. */
  private static final double LEAST_SPEED = 0.1;

  private final Craft craft;
  private final WingTable table;
  private final ThrustLine line;
  private final TouchingBoard board;
  private final WingPlaces places;
  private final MotionTrim trim;
  private final Controls controls;
  private final WaterMotion water;
  private final double[] wings = new double[WingTable.NUMBERS];
  private double forward;
  private double up;
  private double noseUp;
  private double washRate;
  private double air;
  private double pull;

  OuterForces(MotionModel model, MotionTrim trim, Controls controls, WaterMotion water) {
    craft = model.craft();
    table = model.table();
    line = model.line();
    board = model.board();
    places = model.places();
    this.trim = trim;
    this.controls = controls;
    this.water = water;
  }

  /** Works out a moment; states as in {@link CraftMotion}. */
  void gather(double time, double place, Attitude at, double[] state) {
    double ahead = state[CraftMotion.FORWARD];
    double rising = state[CraftMotion.UP];
    double rate = state[CraftMotion.RATE];
    double pitch = at.angle();
    double depth = state[CraftMotion.DEPTH];
    double sin = at.sin();
    double cos = at.cos();
    double frontDepth = depth - places.frontAhead() * sin - places.frontAbove() * cos;
    double front = place + places.frontAhead() * cos - places.frontAbove() * sin;
    double tail = place + places.tailAhead() * cos - places.tailAbove() * sin;
    double tailDepth = depth - places.tailAhead() * sin - places.tailAbove() * cos;
    double through = ahead - water.forward(front, frontDepth, time);
    double speed = Math.max(LEAST_SPEED, Math.hypot(through, rising));
    double path = Math.atan2(rising, through);
    double atFront =
        pitch - path + (water.upward(front, frontDepth, time) - rate * places.frontMeets()) / speed;
    double atTail =
        pitch - path + (water.upward(tail, tailDepth, time) - rate * places.tailMeets()) / speed;
    double late = atFront - state[CraftMotion.WASH];
    washRate = late * speed / places.apart();
    table.read(
        atFront,
        atTail - atFront + trim.wash() * late,
        speed,
        frontDepth + water.height(front, time),
        wings);
    double pressure = 0.5 * craft.rideCase().water().density() * speed * speed;
    forward = 0;
    up = 0;
    noseUp = 0;
    // The table's axes have the stream level: turn them back. A stream from below lifts forward.
    double turned = pitch - atFront;
    add(wings[0], wings[1], wings[2], turned, pressure);
    addTail(atFront, atTail, turned, pressure);

    double wetDepth = depth + water.height(place, time);
    add(craft.drags(speed).at(at, wetDepth));
    add(craft.weights(at));
    add(craft.buoyancy(at, wetDepth));
    double thrust = controls.thrust(time, ahead);
    add(line.force(at, thrust));
    if (board != null) {
      add(board.force(at, wetDepth, speed, path));
    }
    pull = line.pull(thrust);
    air = craft.airDrag(ahead + controls.gust(time));
  }

  /** A stream from further below at the stabilizer turns its force forward, where it stands. */
  private void addTail(double atFront, double atTail, double turned, double pressure) {
    double more = atFront - atTail;
    double ahead = places.tailAhead() * Math.cos(atFront) - places.tailAbove() * Math.sin(atFront);
    double above = places.tailAhead() * Math.sin(atFront) + places.tailAbove() * Math.cos(atFront);
    double tailForward = wings[3] * Math.cos(more) - wings[4] * Math.sin(more);
    double tailUp = wings[3] * Math.sin(more) + wings[4] * Math.cos(more);
    double tailMoment = wings[5] + (tailUp - wings[4]) * ahead - (tailForward - wings[3]) * above;
    add(tailForward, tailUp, tailMoment, turned, pressure);
  }

  private void add(PlaneForce force) {
    forward += force.forward();
    up += force.up();
    noseUp += force.noseUp();
  }

  /** A force in axes that are turned from the level, nose up. */
  private void add(double ahead, double above, double moment, double turned, double factor) {
    double c = Math.cos(turned);
    double s = Math.sin(turned);
    forward += factor * (ahead * c - above * s);
    up += factor * (ahead * s + above * c);
    noseUp += factor * moment;
  }

  /** Forward [N]. */
  double forward() {
    return forward;
  }

  /** Up [N]. */
  double up() {
    return up;
  }

  /** Nose up, about the datum [N·m]. */
  double noseUp() {
    return noseUp;
  }

  /** Rate of {@link CraftMotion#WASH} [rad/s]. */
  double washRate() {
    return washRate;
  }

  /** Drag of the air on the rider [N]. */
  double air() {
    return air;
  }

  /** What a handle pulls [N]. */
  double pull() {
    return pull;
  }
}
