package trimwright.kernel.motion;

import trimwright.kernel.frame.Attitude;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.numeric.Elimination;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.Rider;

/**
 * The equations of motion of a craft with its rider in the plane of symmetry: surge, heave and
 * pitch of the datum, the downwash on its way to the stabilizer, and the rider's mass centre.
 *
 * <p><b>Water.</b> Each wing's force is that of the steady flow ({@link WingTable}) at the angle
 * under which its three-quarter chord meets the water (T. Theodorsen, NACA Report 496, 1935, from
 * memory), turned into the direction from which the water comes. The downwash at the stabilizer is
 * that of the front wing's angle when the water passed it, as a first-order lag of the distance
 * over the speed (after B. M. Jones and L. W. Bryant, ARC R&amp;M 1092, 1926, from memory: the same
 * to first order). Added mass as {@link MovedWater} says. Left out: the lag of a wing's own
 * circulation (at one swing per second on these chords some 2 % in size and 5 degrees on wings of
 * finite span, R. T. Jones, NACA Report 681, 1940, from memory; 15 % in two dimensions), the waves
 * that the motion itself makes, the water that a touching board throws, drag of mast and bodies
 * across their axes.
 *
 * <p><b>Rider.</b> A mass at its height above the deck, whose height follows the deck under the
 * feet. Nothing turns it at the ankle but the place where the feet press: the force of the feet
 * goes through the mass centre, as in the linear inverted pendulum (S. Kajita and others, IROS
 * 2001, from memory; for standing people D. A. Winter, Gait and Posture 3, 1995, from memory). A
 * <em>free</em> body sways as this force moves it. A body that <em>follows</em> keeps upright over
 * one place of the deck, its feet pressing wherever that takes them: behind the place while the
 * board gathers speed.
 *
 * <p>One object is one workspace: not for use by two threads.
 */
final class CraftMotion {
  /** State: speed of the datum forward and upward [m/s]. */
  static final int FORWARD = 0;

  static final int UP = 1;

  /** State: pitch rate, nose up [rad/s], and pitch of the fuselage [rad]. */
  static final int RATE = 2;

  static final int PITCH = 3;

  /** State: depth of the datum below still water [m]. */
  static final int DEPTH = 4;

  /** State: the front wing's angle whose downwash is at the stabilizer now [rad]. */
  static final int WASH = 5;

  /** States of a craft whose rider follows, place apart. */
  static final int FOLLOWING = 6;

  /** State: a free body's mass centre ahead of the datum [m], and its own speed forward [m/s]. */
  static final int BODY = 6;

  static final int BODY_SPEED = 7;

  /** States with a free body, place apart. */
  static final int FREE = 8;

  private final Craft craft;
  private final MovedWater moved;
  private final double inertia;
  private final double riderMass;
  private final double bodyHeight;
  private final double airHeight;
  private final double pullHeight;
  private final MotionTrim trim;
  private final Controls controls;
  private final boolean free;
  private final OuterForces outer;
  private final double[][] matrix = new double[3][3];
  private final double[] right = new double[3];
  private final double[] column = new double[3];

  // Of the moment worked on: what the accelerations are solved from.
  private double sin;
  private double cos;
  private double rate;
  private double along;
  private double centreAhead;
  private double centreAbove;
  private double bodyAhead;
  private double pressAhead;
  private double pressAbove;
  private double restAhead;
  private double restAbove;
  private double air;
  private double pull;
  private double load;
  private double push;

  CraftMotion(
      MotionModel model, MotionTrim trim, Controls controls, WaterMotion water, boolean free) {
    craft = model.craft();
    moved = model.moved();
    inertia = craft.partsInertia();
    Rider rider = craft.rideCase().rider();
    riderMass = rider.allMass();
    bodyHeight = model.posture().massCentreHeight(rider.height());
    airHeight =
        model.posture() == Posture.STANDING
            ? rider.airDragHeight()
            : bodyHeight; // Lower bodies are as wide there as elsewhere.
    pullHeight = craft.rideCase().pullAboveDeck().orElse(0);
    this.trim = trim;
    this.controls = controls;
    this.free = free;
    outer = new OuterForces(model, trim, controls, water);
  }

  /** States in all, place apart. */
  int states() {
    return free ? FREE : FOLLOWING;
  }

  /** The state of the trim. */
  double[] start() {
    double[] state = new double[states()];
    state[FORWARD] = trim.speed();
    state[PITCH] = trim.pitch();
    state[DEPTH] = craft.datumDepth(trim.pitch());
    state[WASH] = trim.pitch();
    if (free) {
      state[BODY] = ahead(trim.pitch(), trim.footPressure()) + lean();
      state[BODY_SPEED] = trim.speed();
    }
    return state;
  }

  /** How far the body's mass centre is ahead of where the feet press in the trim [m]. */
  double lean() {
    return (trim.air() * airHeight - trim.pull() * pullHeight) / (riderMass * Craft.GRAVITY);
  }

  private double ahead(double pitch, double footPressure) {
    Deck deck = craft.deck();
    return deck.footingAhead(pitch) + footPressure * Math.cos(pitch + deck.baseAngle());
  }

  private double above(double pitch, double footPressure) {
    Deck deck = craft.deck();
    return deck.footingAbove(pitch) + footPressure * Math.sin(pitch + deck.baseAngle());
  }

  /**
   * Rates of a state.
   *
   * @param time [s]
   * @param place of the datum along the travel [m]
   * @param state see the constants
   * @param rates receives its rates
   */
  void rates(double time, double place, double[] state, double[] rates) {
    gather(time, place, state, rates);
    residual(0, 0, 0, right);
    for (int k = 0; k < 3; k++) {
      residual(k == 0 ? 1 : 0, k == 1 ? 1 : 0, k == 2 ? 1 : 0, column);
      for (int i = 0; i < 3; i++) {
        matrix[i][k] = right[i] - column[i];
      }
    }
    Elimination.solve(matrix, right, 3);
    rates[FORWARD] = right[0];
    rates[UP] = right[1];
    rates[RATE] = right[2];
    rates[PITCH] = state[RATE];
    rates[DEPTH] = -state[UP];
    double acceleration = right[2];
    residual(right[0], right[1], acceleration, column);
    if (free) {
      rates[BODY] = state[BODY_SPEED] - state[FORWARD];
      rates[BODY_SPEED] = (push - air + pull) / riderMass;
    }
  }

  /** Forces and places of a state; writes the rate of the wash. */
  private void gather(double time, double place, double[] state, double[] rates) {
    rate = state[RATE];
    double pitch = state[PITCH];
    Attitude at = Attitude.of(pitch);
    sin = at.sin();
    cos = at.cos();
    along = state[FORWARD] * cos + state[UP] * sin;
    outer.gather(time, place, at, state);
    rates[WASH] = outer.washRate();
    air = outer.air();
    pull = outer.pull();

    centreAhead = craft.partsAhead(at);
    centreAbove = craft.partsAbove(at);
    double pressed = controls.footPressure(time);
    pressAhead = ahead(pitch, pressed);
    pressAbove = above(pitch, pressed);
    restAhead = free ? ahead(pitch, trim.footPressure()) : pressAhead;
    restAbove = free ? above(pitch, trim.footPressure()) : pressAbove;
    bodyAhead = free ? state[BODY] : pressAhead + lean();
  }

  /**
   * What of the forces is left with accelerations forward, upward [m/s²] and nose up [rad/s²];
   * leaves the load on the deck and the feet's push on the body.
   */
  private void residual(double forward, double up, double noseUp, double[] left) {
    double normal = up * cos - forward * sin;
    double water = -(moved.mass() * normal + moved.ahead() * noseUp) + rate * along * moved.mass();
    double waterMoment =
        -(moved.ahead() * normal + moved.square() * noseUp) + rate * along * moved.behind();
    double restForward = forward - noseUp * restAbove - rate * rate * restAhead;
    double restUp = up + noseUp * restAhead - rate * rate * restAbove;
    load = riderMass * (Craft.GRAVITY + restUp);
    double feet;
    if (free) {
      push =
          (load * (bodyAhead - pressAhead)
                  - air * (airHeight - bodyHeight)
                  + pull * (pullHeight - bodyHeight))
              / bodyHeight;
      feet = -load * pressAhead + push * pressAbove;
    } else {
      push = riderMass * restForward + air - pull;
      feet =
          -load * bodyAhead
              + riderMass * restForward * bodyHeight
              + air * airHeight
              - pull * pullHeight
              + push * pressAbove;
    }
    double mass = craft.partsMass();
    left[0] =
        outer.forward()
            - water * sin
            - push
            - mass * (forward - noseUp * centreAbove - rate * rate * centreAhead);
    left[1] =
        outer.up()
            + water * cos
            - load
            - mass * (up + noseUp * centreAhead - rate * rate * centreAbove);
    left[2] =
        outer.noseUp()
            + waterMoment
            + feet
            - inertia * noseUp
            - mass * (centreAhead * up - centreAbove * forward);
  }

  /** Load of the rider on the deck at the state last worked on [N]. */
  double load() {
    return load;
  }

  /** Where the feet press at the state last worked on, ahead of the datum [m]. */
  double pressAhead() {
    if (free) {
      return pressAhead;
    }
    // The body's moment balance: push, air and pull turn it, the feet's load holds it.
    return bodyAhead
        - (push * bodyHeight + air * (airHeight - bodyHeight) - pull * (pullHeight - bodyHeight))
            / load;
  }

  /** What is left of forces and moment of a steady state [N, N·m]. */
  double[] steady(double[] state) {
    gather(0, 0, state, new double[state.length]);
    double[] left = new double[3];
    residual(0, 0, 0, left);
    return left;
  }
}
