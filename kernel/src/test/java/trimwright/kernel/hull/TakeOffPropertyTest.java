package trimwright.kernel.hull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.quick.RandomSetup;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.Deck;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.surface.LatticeSize;
import trimwright.seed.RunSeed;

class TakeOffPropertyTest {
  /** The depth is found far below a micrometre; a deep root ends by its slope. */
  private static final double VERTICAL = 0.1;

  /** Every force and every moment is in the balance, whoever the rider and whatever the parts. */
  @Property(tries = 40, seed = RunSeed.VALUE)
  void forcesAndMomentsVanish(@ForAll long seed) {
    RideCase c = RandomSetup.of(seed);
    SplittableRandom random = new SplittableRandom(seed);
    Posture posture = Posture.values()[random.nextInt(3)];
    TakeOffSolver solver = TakeOffSolver.of(c, posture);
    Craft craft = new Craft(c);
    Deck deck = craft.deck();
    double weight = c.rider().allMass() * Craft.GRAVITY;
    for (int i = 0; i < 5; i++) {
      WaterState s = solver.at(6 * random.nextDouble(), Math.toRadians(10 * random.nextDouble()));
      PlaneForce all = s.withoutFeet();
      if (s.sternDepth() > 0) {
        assertThat(all.up() + s.bodyBuoyancy() - weight).isCloseTo(0, within(VERTICAL));
      } else {
        assertThat(all.up() - weight).isGreaterThanOrEqualTo(0);
      }
      assertThat(all.forward() - s.friction()).isCloseTo(0, within(1e-8));
      // The feet: their load down and their friction aft at one point of the deck.
      double pitch = s.trim() - deck.baseAngle();
      double ahead = deck.footingAhead(pitch) + s.footPressure() * Math.cos(s.trim());
      double above = deck.footingAbove(pitch) + s.footPressure() * Math.sin(s.trim());
      PlaneForce feet =
          PlaneForce.at(
              -s.friction(), -Math.max(0.02 * weight, weight - s.bodyBuoyancy()), ahead, above);
      assertThat(all.noseUp() + feet.noseUp()).isCloseTo(0, within(1e-7 * (1 + weight)));
    }
  }

  /** Nothing throws and nothing is NaN; the verdict fits what else is said. */
  @Property(tries = 60, seed = RunSeed.VALUE)
  void everySetupHasAnAnswer(@ForAll long seed) {
    RideCase c = RandomSetup.of(seed);
    for (Posture posture : Posture.values()) {
      TakeOff t = TakeOffSolver.of(c, posture).solve();
      boolean driven = c.setup().drive().isPresent();
      assertThat(t.length().isPresent()).isEqualTo(t.verdict() == TakeOffVerdict.LIFTS);
      assertThat(t.shortage().isPresent()).isEqualTo(t.verdict() == TakeOffVerdict.THRUST_SHORT);
      if (!driven) {
        assertThat(t.verdict()).isNotIn(TakeOffVerdict.LIFTS, TakeOffVerdict.THRUST_SHORT);
      }
      double before = -1;
      for (RunPoint p : t.run()) {
        WaterState s = p.state();
        assertThat(s.speed()).isGreaterThan(before);
        before = s.speed();
        assertThat(s.drag()).isFinite();
        assertThat(s.footPressure()).isFinite();
        assertThat(s.acceleration()).isFinite();
        assertThat(s.hull().lift()).isFinite();
        assertThat(p.distance()).isNotNaN();
        assertThat(s.wettedMast()).isBetween(0.0, c.setup().mast().length());
        p.feet().ifPresent(f -> assertThat(f.from()).isLessThanOrEqualTo(f.to()));
      }
    }
  }

  /** Twice the intervals: the length moves by less than a percent. */
  @Test
  void theRunConverges() {
    TakeOffSolver solver = solver(1400);
    double coarse = solver.solve(24).length().orElseThrow();
    double middle = solver.solve(48).length().orElseThrow();
    double fine = solver.solve(192).length().orElseThrow();
    assertThat(coarse).isCloseTo(fine, within(0.02 * fine));
    assertThat(middle).isCloseTo(fine, within(0.01 * fine));
  }

  /** A second way: small steps of time, the trim chosen anew at each. */
  @Test
  void smallStepsOfTimeGoAsFar() {
    TakeOffSolver solver = solver(1400);
    TakeOff sums = solver.solve(192);
    double end = sums.liftOff().orElseThrow().speed();
    double step = 0.01;
    double v = 0;
    double x = 0;
    double t = 0;
    while (v < end) {
      double a = solver.acceleration(v);
      double half = v + 0.5 * step * a;
      double middle = solver.acceleration(half);
      double next = v + step * middle;
      if (next >= end) {
        double part = (end - v) / (next - v);
        x += part * step * 0.5 * (v + end);
        t += part * step;
        break;
      }
      x += step * half;
      t += step;
      v = next;
    }
    assertThat(sums.time().orElseThrow()).isCloseTo(t, within(0.01 * t));
    assertThat(sums.length().orElseThrow()).isCloseTo(x, within(0.01 * x));
  }

  /** With so little power that its own thrust, and not the rider's balance, sets the pace. */
  private static TakeOffSolver solver(double power) {
    return TakeOffSolver.of(
        TakeOffCases.withPower(TakeOffCases.example(), power), Posture.STANDING);
  }

  /** How much what the wings' table leaves out would change: the board's own depth. */
  @Test
  void aHandDeeperTheWingsLiftAlmostTheSame() {
    RideCase c = TakeOffCases.example();
    Craft shallow = new Craft(TakeOffCases.withImmersion(c, 0.60));
    Craft deep = new Craft(TakeOffCases.withImmersion(c, 0.70));
    double from = Math.toRadians(2.5);
    double to = Math.toRadians(12.5);
    DeepWings a = new DeepWings(shallow, shallow::datumDepth, from, to);
    DeepWings b = new DeepWings(deep, deep::datumDepth, from, to);
    for (double v = 1.5; v < 6; v += 0.5) {
      PlaneForce one = a.at(v).force(Math.toRadians(7));
      PlaneForce other = b.at(v).force(Math.toRadians(7));
      assertThat(other.up()).isCloseTo(one.up(), within(0.02 * one.up()));
    }
  }

  /** Half the strips of the standard lattice are enough here. */
  @Test
  void halfTheStripsLiftAndDragTheSame() {
    RideCase c = TakeOffCases.withImmersion(TakeOffCases.example(), 0.65);
    Craft whole = new Craft(c);
    Craft half = new Craft(c, new LatticeSize(8, 2), new LatticeSize(5, 2));
    double from = Math.toRadians(2.5);
    double to = Math.toRadians(12.5);
    DeepWings a = new DeepWings(whole, whole::datumDepth, from, to);
    DeepWings b = new DeepWings(half, half::datumDepth, from, to);
    for (double v = 1.5; v < 6; v += 0.5) {
      for (double degrees = 3; degrees < 11; degrees += 2) {
        PlaneForce one = a.at(v).force(Math.toRadians(degrees));
        PlaneForce other = b.at(v).force(Math.toRadians(degrees));
        assertThat(other.up()).isCloseTo(one.up(), within(0.005 * one.up()));
        assertThat(other.forward())
            .isCloseTo(one.forward(), within(0.02 * Math.abs(one.forward()) + 0.0005));
      }
    }
  }
}
