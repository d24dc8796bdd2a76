package trimwright.kernel.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static trimwright.kernel.motion.MotionCases.KMH;
import static trimwright.kernel.motion.MotionCases.LARGE;
import static trimwright.kernel.motion.MotionCases.PLAIN;
import static trimwright.kernel.motion.MotionCases.PULLED;
import static trimwright.kernel.motion.MotionCases.SMALL;
import static trimwright.kernel.motion.MotionCases.SPEEDS;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import trimwright.kernel.frame.Attitude;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.Evolution;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;
import trimwright.kernel.water.Water;

class CraftMotionPropertyTest {
  /** Tables of motion against those of the trim: the contract's figures for a table. */
  private static final Offset<Double> TABLE_PITCH = Offset.offset(Math.toRadians(0.02));

  private static final Offset<Double> TABLE_PLACE = Offset.offset(1e-3);

  @Test
  void aTrimRestsWhicheverWayTheBodyStands() {
    for (MotionModel model : List.of(SMALL, LARGE, MotionModel.large(PULLED))) {
      for (double speed : SPEEDS) {
        MotionTrim trim = model.findTrim(speed).orElseThrow();
        for (boolean free : new boolean[] {false, true}) {
          CraftMotion motion = MotionCases.held(model, trim, free);
          for (double rate : MotionCases.rates(motion, motion.start())) {
            assertThat(rate).isCloseTo(0, Offset.offset(1e-6));
          }
        }
      }
    }
  }

  @Test
  void theTrimIsThatOfTheCase() {
    for (MotionModel model : List.of(SMALL, LARGE)) {
      for (double speed : SPEEDS) {
        MotionTrim trim = model.findTrim(speed).orElseThrow();
        TrimPoint point = point(PLAIN, speed);
        double deck = trim.pitch() + model.craft().deck().baseAngle();
        assertThat(deck).isCloseTo(point.pitch(), TABLE_PITCH);
        assertThat(trim.footPressure()).isCloseTo(point.footPressureAheadOfMast(), TABLE_PLACE);
        assertThat(trim.thrust()).isCloseTo(point.thrust(), Offset.offset(0.2));
      }
    }
  }

  @Test
  void forcesAtAnotherDepthAreThoseOfATrimThere() {
    for (double depth : new double[] {0.15, 0.3, 0.7}) {
      CaseSolver there = CaseSolver.of(ExampleCase.PLAIN.withImmersion(depth).build());
      for (double speed : SPEEDS) {
        if (there.trim(speed) instanceof TrimOutcome.Trimmed trimmed) {
          double pitch = trimmed.point().pitch() - there.craft().deck().baseAngle();
          double[] read = new double[WingTable.NUMBERS];
          LARGE.table().read(pitch, 0, speed, depth, read);
          for (int wing = 0; wing < 2; wing++) {
            PlaneForce force = there.wings(speed).force(wing, pitch);
            double all = Math.hypot(force.up(), force.forward());
            // 1 % of the lift, the contract's figure for screening tables.
            assertThat(read[3 * wing + 1]).isCloseTo(force.up(), Offset.offset(0.01 * all + 1e-4));
          }
        }
      }
    }
  }

  @Test
  void staticMarginIsThatOfTheTrim() {
    double step = 1e-3;
    for (double speed : SPEEDS) {
      MotionTrim trim = SMALL.findTrim(speed).orElseThrow();
      Craft craft = SMALL.craft();
      Deck deck = craft.deck();
      double body = craft.rideCase().rider().allMass();
      double deckPitch = trim.pitch() + deck.baseAngle();
      double s = trim.footPressure();
      double footAhead = deck.footingAhead(trim.pitch()) + s * Math.cos(deckPitch);
      double footAbove = deck.footingAbove(trim.pitch()) + s * Math.sin(deckPitch);
      Attitude at = Attitude.of(trim.pitch());
      double mass = body + craft.partsMass();
      double ahead = (body * footAhead + craft.partsMass() * craft.partsAhead(at)) / mass;
      double above = (body * footAbove + craft.partsMass() * craft.partsAbove(at)) / mass;
      double[] up = new double[2];
      double[] moment = new double[2];
      for (int side = 0; side < 2; side++) {
        double pitch = trim.pitch() + (side == 0 ? -step : step);
        CraftMotion motion = MotionCases.held(SMALL, trim, false);
        double[] state = motion.start();
        state[CraftMotion.PITCH] = pitch;
        state[CraftMotion.WASH] = pitch;
        state[CraftMotion.DEPTH] = craft.datumDepth(pitch);
        double[] left = motion.steady(state);
        up[side] = left[1];
        moment[side] = left[2] - left[1] * ahead + left[0] * above;
      }
      double margin = -(moment[1] - moment[0]) / (up[1] - up[0]);
      // What the body leans against the air, a millimetre or two, turns with the deck here.
      assertThat(margin).isCloseTo(point(PLAIN, speed).staticMargin(), Offset.offset(3e-3));
    }
  }

  /** Newton's third law: what moves all masses together is what acts from outside. */
  @Test
  void momentumChangesByWhatActsFromOutside() {
    SplittableRandom random = new SplittableRandom(11);
    CaseSolver solver = CaseSolver.of(airless());
    MotionModel model = MotionModel.large(solver);
    MotionTrim trim = new MotionTrim(6, 0.05, 0, 0.2, 0, 0, 0.3);
    Craft craft = model.craft();
    double body = craft.rideCase().rider().allMass();
    for (int i = 0; i < 50; i++) {
      CraftMotion motion =
          new CraftMotion(
              model, trim, Controls.of(time -> 0.2, (time, v) -> 0), WaterMotion.STILL, true);
      double[] y = motion.start();
      y[CraftMotion.UP] = random.nextDouble(-1, 1);
      y[CraftMotion.RATE] = random.nextDouble(-1, 1);
      y[CraftMotion.PITCH] = random.nextDouble(-0.2, 0.2);
      y[CraftMotion.BODY] += random.nextDouble(-0.1, 0.1);
      y[CraftMotion.BODY_SPEED] += random.nextDouble(-0.5, 0.5);
      double[] rates = MotionCases.rates(motion, y);
      Energies e = new Energies(craft, y, rates, body, 0.2);
      assertThat(e.forward).isCloseTo(0, Offset.offset(1e-4));
      assertThat(e.up).isCloseTo(-(body + craft.partsMass()) * Craft.GRAVITY, Offset.offset(1e-3));
      // The legs alone give or take energy: the feet's push times how much faster the body goes.
      double push = body * rates[CraftMotion.BODY_SPEED];
      assertThat(e.power).isCloseTo(push * (y[CraftMotion.BODY_SPEED] - e.footSpeed), near(e));
    }
  }

  private static Offset<Double> near(Energies e) {
    return Offset.offset(1e-4 + 1e-6 * Math.abs(e.power));
  }

  /** No water to speak of and no wind. */
  private static RideCase airless() {
    RideCase c = ExampleCase.PLAIN.build();
    return new RideCase(
        new Water(1e-6, c.water().kinematicViscosity(), c.water().vapourPressure()),
        1e-9,
        0,
        0,
        c.rider(),
        c.setup(),
        c.immersion(),
        c.pullAboveDeck());
  }

  /** Momentum and energy of board, foil and body by textbook formulas. */
  private static final class Energies {
    final double forward;
    final double up;
    final double power;
    final double footSpeed;

    Energies(Craft craft, double[] y, double[] rates, double body, double press) {
      Attitude at = Attitude.of(y[CraftMotion.PITCH]);
      double x = craft.partsAhead(at);
      double z = craft.partsAbove(at);
      double q = y[CraftMotion.RATE];
      double turn = rates[CraftMotion.RATE];
      double m = craft.partsMass();
      double vx = y[CraftMotion.FORWARD] - q * z;
      double vz = y[CraftMotion.UP] + q * x;
      double ax = rates[CraftMotion.FORWARD] - turn * z - q * q * x;
      double az = rates[CraftMotion.UP] + turn * x - q * q * z;
      double inertia = craft.partsInertia() - m * (x * x + z * z);
      Deck deck = craft.deck();
      double deckPitch = y[CraftMotion.PITCH] + deck.baseAngle();
      double px = deck.footingAhead(y[CraftMotion.PITCH]) + press * Math.cos(deckPitch);
      double pz = deck.footingAbove(y[CraftMotion.PITCH]) + press * Math.sin(deckPitch);
      footSpeed = y[CraftMotion.FORWARD] - q * pz;
      double bodyUp = y[CraftMotion.UP] + q * px;
      double bodyRise = rates[CraftMotion.UP] + turn * px - q * q * pz;
      forward = m * ax + body * rates[CraftMotion.BODY_SPEED];
      up = m * az + body * bodyRise;
      power =
          m * (vx * ax + vz * az)
              + inertia * q * turn
              + m * Craft.GRAVITY * vz
              + body * (y[CraftMotion.BODY_SPEED] * rates[CraftMotion.BODY_SPEED])
              + body * bodyUp * (bodyRise + Craft.GRAVITY);
    }
  }

  /** A second way through time: the classical rule of fourth order with short even steps. */
  @Test
  void aPlainRuleOfSmallStepsGivesTheSameMotion() {
    MotionTrim trim = LARGE.findTrim(24 * KMH).orElseThrow();
    Controls lean =
        Controls.of(
            time -> trim.footPressure() + 0.2 * Ramp.share(time, 0, 0.3),
            (time, v) -> LARGE.heldThrust(trim, v));
    for (boolean free : new boolean[] {false, true}) {
      CraftMotion motion = new CraftMotion(LARGE, trim, lean, WaterMotion.STILL, free);
      double[] y = motion.start();
      int n = y.length;
      double h = 2e-3;
      for (int step = 0; step < 150; step++) {
        double t = step * h;
        double[][] k = new double[4][n];
        motion.rates(t, 0, y, k[0]);
        motion.rates(t + h / 2, 0, plus(y, k[0], h / 2), k[1]);
        motion.rates(t + h / 2, 0, plus(y, k[1], h / 2), k[2]);
        motion.rates(t + h, 0, plus(y, k[2], h), k[3]);
        for (int i = 0; i < n; i++) {
          y[i] += h / 6 * (k[0][i] + 2 * k[1][i] + 2 * k[2][i] + k[3][i]);
        }
      }
      Evolution.End end =
          Evolution.follow(
              (t, state, rates) -> motion.rates(t, 0, state, rates),
              motion.start(),
              0.3,
              0.05,
              0.03,
              List.of(),
              (t, state) -> {});
      for (int i = 0; i < n; i++) {
        assertThat(end.state()[i]).isCloseTo(y[i], Offset.offset(1e-6));
      }
    }
  }

  private static double[] plus(double[] y, double[] k, double h) {
    double[] sum = y.clone();
    for (int i = 0; i < sum.length; i++) {
      sum[i] += h * k[i];
    }
    return sum;
  }

  @Test
  void aSmallStepMovesAsTheModesSay() {
    double step = 1e-4;
    for (double speed : SPEEDS) {
      MotionTrim trim = SMALL.findTrim(speed).orElseThrow();
      SmallMotion small = new SmallMotion(SMALL, trim, false);
      Controls moved =
          Controls.of(time -> trim.footPressure() + step, (time, v) -> SMALL.heldThrust(trim, v));
      CraftMotion motion = new CraftMotion(SMALL, trim, moved, WaterMotion.STILL, false);
      double[] start = motion.start();
      List<double[]> states = new ArrayList<>();
      Evolution.follow(
          (t, state, rates) -> motion.rates(t, 0, state, rates),
          start,
          1,
          0.05,
          0.03,
          List.of(),
          (t, state) -> states.add(state.clone()));
      double[] push = small.press().clone();
      for (int i = 0; i < push.length; i++) {
        push[i] *= step;
      }
      int[] at = {0};
      double[] most = new double[push.length];
      double[] apart = new double[push.length];
      small
          .motion()
          .fromRest(
              push,
              0.05,
              20,
              (time, x) -> {
                double[] state = states.get(at[0]++);
                for (int i = 0; i < push.length; i++) {
                  most[i] = Math.max(most[i], Math.abs(x[i]));
                  apart[i] = Math.max(apart[i], Math.abs(state[i] - start[i] - x[i]));
                }
                return true;
              });
      for (int i = 0; i < push.length; i++) {
        assertThat(apart[i]).isLessThan(0.01 * most[i]);
      }
    }
  }

  /** A single small wave: what swings with it in the linear answer goes on swinging in time. */
  @Test
  void aWaveSwingsTheCraftAsItsFrequencyAnswerSays() {
    MotionTrim trim = SMALL.findTrim(22 * KMH).orElseThrow();
    SmallMotion small = new SmallMotion(SMALL, trim, false);
    double frequency = 5;
    double wavenumber = frequency * frequency / Craft.GRAVITY;
    double encounter = frequency + wavenumber * trim.speed();
    double amplitude = 1e-3;
    var wave = new trimwright.kernel.water.ChopWave(amplitude, frequency, wavenumber, 0);
    Chop chop = new Chop(List.of(wave), 0.17);
    double[][] x = ChopStudy.swing(SMALL, trim, small, frequency, wavenumber, 0.17).orElseThrow();
    CraftMotion motion = new CraftMotion(SMALL, trim, SMALL.held(trim), chop, false);
    double[] rest = motion.start();
    int n = rest.length;
    double[] start = new double[n + 1];
    for (int i = 0; i < n; i++) {
      start[i] = rest[i] + amplitude * x[0][i];
    }
    double[] apart = new double[n];
    Evolution.follow(
        (t, state, rates) -> {
          double[] plain = java.util.Arrays.copyOf(state, n);
          double[] plainRates = new double[n];
          motion.rates(t, state[n], plain, plainRates);
          System.arraycopy(plainRates, 0, rates, 0, n);
          rates[n] = state[CraftMotion.FORWARD];
        },
        start,
        0.8,
        0.02,
        0.01,
        List.of(),
        (t, state) -> {
          for (int i = 0; i < n; i++) {
            double swing = x[0][i] * Math.cos(encounter * t) - x[1][i] * Math.sin(encounter * t);
            apart[i] = Math.max(apart[i], Math.abs(state[i] - rest[i] - amplitude * swing));
          }
        });
    for (int i = 0; i < n; i++) {
      double size = amplitude * Math.hypot(x[0][i], x[1][i]);
      assertThat(apart[i]).isLessThan(0.05 * size);
    }
  }

  /**
   * A body whose feet do nothing falls faster on a light board than on the ground, sqrt(g/h), and
   * the faster the less the water holds the board. Nothing held, it would be sqrt(g/h (1 + M/m)),
   * the textbook's pendulum on a cart, m being what a free board weighs against a push at the feet,
   * which also turns it: a slow ride comes near that.
   */
  @Test
  void aFreeBodyFallsFasterThanOnTheGround() {
    Craft craft = SMALL.craft();
    double body = craft.rideCase().rider().allMass();
    double ground = Math.sqrt(Craft.GRAVITY / (0.56 * 1.78));
    double last = Double.POSITIVE_INFINITY;
    for (double speed : SPEEDS) {
      MotionTrim trim = SMALL.findTrim(speed).orElseThrow();
      double growth = new SmallMotion(SMALL, trim, true).modes().get(0).growth();
      assertThat(growth).isBetween(ground, last);
      last = growth;
    }
    MotionTrim slow = SMALL.findTrim(SPEEDS.get(0)).orElseThrow();
    Attitude at = Attitude.of(slow.pitch());
    double x = craft.partsAhead(at);
    double z = craft.partsAbove(at);
    double inertia = craft.partsInertia() - craft.partsMass() * (x * x + z * z);
    double arm = craft.deck().footingAbove(slow.pitch()) - z;
    double felt = 1 / (1 / craft.partsMass() + arm * arm / inertia);
    double free = ground * Math.sqrt(1 + body / felt);
    double slowest = new SmallMotion(SMALL, slow, true).modes().get(0).growth();
    assertThat(slowest).isCloseTo(free, Offset.offset(0.05 * free));
  }

  private static TrimPoint point(CaseSolver solver, double speed) {
    return ((TrimOutcome.Trimmed) solver.trim(speed)).point();
  }
}
