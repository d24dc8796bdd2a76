package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.water.Water;
import trimwright.kernel.water.WaterModel;

class StripCouplingPropertyTest {
  /** What is left out of lift where the turns change the velocities at the vortices [1]. */
  private static final double LIFT_ERROR = 2e-3;

  /** A thousandth of the stabilizer's area at a lift coefficient of 1 [m²]. */
  private static final double LITTLE = 3e-5;

  private static final double PER_METRE = 5e6;

  private static final Water WATER = WaterModel.at(288.15, 0);

  private static final double SPEED = 5;

  private static final Section STALLING = new FixedReynolds(Sections.naca("2412"), 6e5);

  private static WingShape tapered(double span, double root, double taper, Section section) {
    return new WingShape(
        span,
        List.of(
            new Station(0, root, 0, 0, 0, section),
            new Station(1, taper * root, -0.02, -0.02, 0, section)));
  }

  private static WingShape elliptical(double span, double root, Section section) {
    List<Station> stations = new ArrayList<>();
    int count = 80;
    for (int i = 0; i <= count; i++) {
      double e = i == count ? 1 : Math.sin(0.5 * Math.PI * i / count);
      double chord = root * Math.max(0.01, Math.cos(0.5 * Math.PI * i / count));
      stations.add(new Station(e, chord, 0, 0, 0, section));
    }
    return new WingShape(span, stations);
  }

  private static WingAlone alone(WingShape shape, int strips) {
    return WingAlone.of(
        shape, Finish.CLEAN, OptionalDouble.empty(), new LatticeSize(strips, 2), false);
  }

  /** Front wing and stabilizer with their lattice solved at one pitch. */
  private record Pair(List<PlacedWing> wings, SurfaceResponse response, double pitch) {
    static Pair of(Section front, Section tail, double pitch) {
      List<PlacedWing> wings =
          List.of(
              new PlacedWing(
                  tapered(0.9, 0.2, 0.4, front), 0.15, 0.02, 0.01, LatticeSize.FRONT_WING),
              new PlacedWing(
                  tapered(0.42, 0.1, 0.5, tail), -0.56, 0.03, -0.03, LatticeSize.STABILIZER));
      Lattice lattice = new Lattice(wings, false);
      lattice.solve(pitch, OptionalDouble.of(0.45));
      return new Pair(wings, new FixedResponse(pitch, lattice.flows(), lattice::shifts), pitch);
    }

    StripCoupling coupling() {
      return StripCoupling.of(
          wings.stream().map(w -> new ProfileForces(w, Finish.CLEAN).at(PER_METRE)).toList());
    }

    CoupledFlow solve() {
      return coupling().solve(response, pitch);
    }
  }

  /** Sections that follow their line change nothing: lattice, and section drag at the lift. */
  @ParameterizedTest
  @ValueSource(doubles = {-2, 0, 3, 6})
  void whereSectionsAreStraightTheLatticeStandsAndDragIsThatOfTheLift(double degrees) {
    Section front = Sections.naca("2412");
    Pair pair = Pair.of(front, Sections.naca("0009"), Math.toRadians(degrees));
    CoupledFlow flow = pair.solve();
    assertThat(flow.residual()).isZero();
    SurfaceFlow before = pair.response.at(0, 0);
    WingLoad load = flow.wings().get(0);
    assertThat(load.force().up()).isEqualTo(before.force().up());
    assertThat(load.stripLift()).isEqualTo(before.stripLift());
    Strips s = new Strips(pair.wings.get(0));
    double drag = 0;
    for (int k = 0; k < s.count; k++) {
      drag += s.area(k) * front.drag(before.stripLift()[k], PER_METRE * s.chord[k], Finish.CLEAN);
    }
    assertThat(load.profileDrag()).isCloseTo(drag, within(1e-14));
    assertThat(load.force().forward()).isCloseTo(before.force().forward() - drag, within(1e-14));
  }

  /**
   * A lattice built with one straight line, whose sections have another, is the lattice built with
   * the other.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-2, 3, 8})
  void sectionsOfAnotherStraightLineGiveTheLatticeOfThatLine(double degrees) {
    double pitch = Math.toRadians(degrees);
    Pair other =
        Pair.of(new BentSection(6.1, 0.0, 5.6, -0.03), new BentSection(6, 0, 5.7, 0.01), pitch);
    Pair own =
        Pair.of(
            new BentSection(5.6, -0.03, 5.6, -0.03), new BentSection(5.7, 0.01, 5.7, 0.01), pitch);
    CoupledFlow there = other.solve();
    CoupledFlow here = own.solve();
    assertThat(here.steps()).isZero();
    assertThat(there.converged()).isTrue();
    double farThere = 0;
    double farHere = 0;
    double forwardThere = 0;
    double forwardHere = 0;
    for (int w = 0; w < 2; w++) {
      WingLoad a = there.wings().get(w);
      WingLoad b = here.wings().get(w);
      double lift = Math.abs(b.force().up());
      assertThat(a.force().up()).isCloseTo(b.force().up(), within(LIFT_ERROR * lift + LITTLE));
      assertThat(a.force().noseUp())
          .isCloseTo(
              b.force().noseUp(), within(LIFT_ERROR * Math.abs(b.force().noseUp()) + LITTLE));
      assertThat(a.boundDrag()).isCloseTo(b.boundDrag(), within(0.01 * b.boundDrag() + LITTLE));
      for (int k = 0; k < a.stripLift().length; k++) {
        assertThat(a.stripLift()[k]).isCloseTo(b.stripLift()[k], within(LIFT_ERROR));
        assertThat(a.stripAngle()[k]).isCloseTo(b.stripAngle()[k], within(1e-3));
      }
      farThere += a.farFieldDrag();
      farHere += b.farFieldDrag();
      forwardThere += a.force().forward();
      forwardHere += b.force().forward();
    }
    assertThat(farThere).isCloseTo(farHere, within(0.01 * farHere));
    assertThat(-forwardThere).isCloseTo(farThere, within(1e-9));
    assertThat(-forwardHere).isCloseTo(farHere, within(1e-9));
  }

  /** The reason for the coupling: an endless wing is its section, stall and all. */
  @Test
  void theLargestLiftOfAVeryLongWingIsItsSections() {
    WingAlone wing = alone(tapered(12, 0.15, 1, STALLING), 32);
    double most = 0;
    for (double degrees = 8; degrees < 20; degrees += 0.25) {
      most = Math.max(most, wing.at(Math.toRadians(degrees), SPEED, WATER).lift());
    }
    double section = STALLING.maximumLift(6e5, Finish.CLEAN);
    assertThat(most).isBetween(0.96 * section, section);
  }

  /**
   * The largest lift of ordinary wings lies about a tenth below their sections' (Anderson, NACA
   * Report 572, from memory), and an elliptical wing without twist stalls nearly everywhere at
   * once.
   */
  @Test
  void ordinaryWingsReachNineTenthsOfTheirSectionsLift() {
    double section = STALLING.maximumLift(6e5, Finish.CLEAN);
    for (double taper : new double[] {0.3, 0.6, 1}) {
      WingAlone wing = alone(tapered(0.9, 0.15, taper, STALLING), 24);
      assertThat(atFirstStall(wing).lift()).isBetween(0.8 * section, 0.97 * section);
    }
    WingCoefficients elliptical = atFirstStall(alone(elliptical(0.9, 0.15, STALLING), 24));
    assertThat(elliptical.lift()).isBetween(0.93 * section, section);
  }

  private static WingCoefficients atFirstStall(WingAlone wing) {
    double attached = 0;
    double stalled = Math.toRadians(30);
    for (int i = 0; i < 20; i++) {
      double middle = 0.5 * (attached + stalled);
      if (wing.at(middle, SPEED, WATER).stalled()) {
        stalled = middle;
      } else {
        attached = middle;
      }
    }
    return wing.at(attached, SPEED, WATER);
  }

  /** Common knowledge of stall patterns: the narrower the tip, the further out stall begins. */
  @Test
  void taperMovesTheFirstStallOutboard() {
    double before = -1;
    for (double taper : new double[] {1, 0.6, 0.4, 0.2}) {
      double place = firstStall(tapered(0.9, 0.2, taper, STALLING));
      assertThat(place).isGreaterThan(before);
      before = place;
    }
    assertThat(firstStall(tapered(0.9, 0.2, 1, STALLING))).isLessThan(0.1);
    assertThat(before).isGreaterThan(0.6);
  }

  /** Share of the half span at which the first strip stalls. */
  private static double firstStall(WingShape shape) {
    PlacedWing placed = new PlacedWing(shape, 0, 0, 0, new LatticeSize(32, 1));
    Lattice lattice = new Lattice(List.of(placed), false);
    StripPolars polars = new ProfileForces(placed, Finish.CLEAN).at(PER_METRE);
    Strips strips = new Strips(placed);
    for (double pitch = 0.1; pitch < 0.5; pitch += 0.0005) {
      lattice.solve(pitch, OptionalDouble.empty());
      SurfaceResponse response = new FixedResponse(pitch, lattice.flows(), lattice::shifts);
      WingLoad load = StripCoupling.of(List.of(polars)).solve(response, pitch).wings().get(0);
      if (load.stalled() > 0) {
        int at = 0;
        double[] angle = load.stripAngle();
        for (int k = 0; k < angle.length; k++) {
          at = angle[k] > angle[at] ? k : at;
        }
        return strips.centreY[at] / (0.5 * shape.span());
      }
    }
    throw new AssertionError("never stalled");
  }

  /** The answer is the wing's and not the lattice's, past the stall as well. */
  @ParameterizedTest
  @ValueSource(doubles = {8, 12, 14, 16, 18, 20, 24})
  void liftAndDragThroughStallConvergeWithTheNumberOfStrips(double degrees) {
    WingShape shape = tapered(0.9, 0.2, 0.4, STALLING);
    double angle = Math.toRadians(degrees);
    WingCoefficients coarse = alone(shape, 8).at(angle, SPEED, WATER);
    WingCoefficients middle = alone(shape, 16).at(angle, SPEED, WATER);
    WingCoefficients fine = alone(shape, 48).at(angle, SPEED, WATER);
    assertThat(coarse.lift()).isCloseTo(fine.lift(), within(0.015));
    assertThat(middle.lift()).isCloseTo(fine.lift(), within(0.005));
    assertThat(middle.drag()).isCloseTo(fine.drag(), within(0.02 * fine.drag()));
  }

  /** Three thousand six hundred solutions of a hundred random wings. */
  @Test
  void latticeAndSectionsAgreeOnRandomWingsFromMinusTenToTwentyFiveDegrees() {
    Random random = new Random(20);
    int apart = 0;
    for (int w = 0; w < 100; w++) {
      WingAlone wing = alone(randomShape(random), 12);
      double speed = 2 + 8 * random.nextDouble();
      for (int degrees = -10; degrees <= 25; degrees++) {
        WingCoefficients c = wing.at(Math.toRadians(degrees), speed, WATER);
        assertThat(c.lift() + c.drag() + c.moment()).isFinite();
        apart += c.converged() ? 0 : 1;
      }
    }
    assertThat(apart).isZero();
  }

  private static WingShape randomShape(Random random) {
    Section root = randomSection(random);
    Section tip = random.nextBoolean() ? root : randomSection(random);
    double chord = 0.06 + 0.2 * random.nextDouble();
    double sweep = 0.25 * random.nextDouble() - 0.05;
    double drop = 0.15 * random.nextDouble() - 0.1;
    double twist = Math.toRadians(8 * random.nextDouble() - 5);
    double tipChord = chord * (0.1 + 0.9 * random.nextDouble());
    return new WingShape(
        0.3 + 1.2 * random.nextDouble(),
        List.of(
            new Station(0, chord, 0, 0, 0, root),
            new Station(1, tipChord, -sweep, drop, twist, tip)));
  }

  private static Section randomSection(Random random) {
    return Sections.fromThicknessAndCamber(
        0.05 + 0.13 * random.nextDouble(), 0.07 * random.nextDouble() - 0.01);
  }

  /** A slower stream over the whole wing is another dynamic pressure and nothing else. */
  @ParameterizedTest
  @ValueSource(doubles = {4, 12, 18})
  void aSlowerStreamOverAllStripsScalesEveryForce(double degrees) {
    Pair pair = Pair.of(STALLING, STALLING, Math.toRadians(degrees));
    CoupledFlow whole = pair.solve();
    double[][] factor = {new double[16], new double[8]};
    for (double[] wing : factor) {
      Arrays.fill(wing, 0.8);
    }
    CoupledFlow slower = pair.coupling().withStreams(factor).solve(pair.response, pair.pitch);
    assertThat(slower.converged()).isTrue();
    for (int w = 0; w < 2; w++) {
      WingLoad a = slower.wings().get(w);
      WingLoad b = whole.wings().get(w);
      assertThat(a.stripLift()).containsExactly(b.stripLift(), within(1e-6));
      assertThat(a.stripAngle()).containsExactly(b.stripAngle(), within(1e-6));
      assertThat(a.profileDrag()).isCloseTo(0.8 * b.profileDrag(), within(1e-7));
      assertThat(a.force().up())
          .isCloseTo(0.8 * b.force().up(), within(LIFT_ERROR * b.force().up()));
    }
    double far = slower.wings().stream().mapToDouble(WingLoad::farFieldDrag).sum();
    double before = whole.wings().stream().mapToDouble(WingLoad::farFieldDrag).sum();
    assertThat(far).isCloseTo(0.8 * before, within(0.002 * before));
  }

  /** An onset that the lift makes: what goes in is what comes out, past the stall as well. */
  @ParameterizedTest
  @ValueSource(doubles = {3, 11, 17})
  void theOnsetIsWhatTheLiftMakesOfIt(double degrees) {
    Pair pair = Pair.of(STALLING, STALLING, Math.toRadians(degrees));
    double[][] perLift = {{-0.1, 0.02}, {0.3, -0.05}};
    double[] added = {0.002, -0.004};
    CoupledFlow flow = pair.coupling().withOnset(perLift, added).solve(pair.response, pair.pitch);
    assertThat(flow.converged()).isTrue();
    for (int i = 0; i < 2; i++) {
      double expected = added[i];
      for (int j = 0; j < 2; j++) {
        expected += perLift[i][j] * flow.wings().get(j).force().up();
      }
      assertThat(flow.wings().get(i).onset())
          .isCloseTo(expected, within(2 * LIFT_ERROR * Math.abs(expected)));
    }
  }

  /** The same angle whether the wing turns or the water comes from below. */
  @ParameterizedTest
  @ValueSource(doubles = {2, 9, 13})
  void anOnsetFromBelowActsAsATurnOfTheWing(double degrees) {
    double turn = 0.01;
    WingShape shape = tapered(0.9, 0.2, 0.4, STALLING);
    double pitch = Math.toRadians(degrees);
    WingLoad onset = load(shape, pitch, new double[] {turn});
    WingLoad turned = load(shape, pitch + turn, new double[] {0});
    assertThat(onset.force().up()).isCloseTo(turned.force().up(), within(0.002 * 0.1));
    // The lift turns forward with the flow.
    assertThat(onset.force().forward() - turn * onset.force().up())
        .isCloseTo(turned.force().forward(), within(0.001 * 0.1));
  }

  private static WingLoad load(WingShape shape, double pitch, double[] added) {
    PlacedWing placed = new PlacedWing(shape, 0, 0, 0, LatticeSize.FRONT_WING);
    Lattice lattice = new Lattice(List.of(placed), false);
    lattice.solve(pitch, OptionalDouble.empty());
    SurfaceResponse response = new FixedResponse(pitch, lattice.flows(), lattice::shifts);
    StripPolars polars = new ProfileForces(placed, Finish.CLEAN).at(PER_METRE);
    return StripCoupling.of(List.of(polars))
        .withOnset(new double[1][1], added)
        .solve(response, pitch)
        .wings()
        .get(0);
  }

  /** Moments of the sections count, with their aerodynamic centres. */
  @Test
  void theWingsMomentIsItsSectionsOnAVeryLongStraightWing() {
    WingShape shape =
        new WingShape(
            12,
            List.of(
                new Station(0, 0.15, 0, 0, 0, STALLING), new Station(1, 0.15, 0, 0, 0, STALLING)));
    WingAlone wing = alone(shape, 32);
    for (double degrees : new double[] {0, 6, 12}) {
      WingCoefficients c = wing.at(Math.toRadians(degrees), SPEED, WATER);
      double cl = c.lift();
      Section s = STALLING;
      double straight = s.momentAtZeroLift() + cl * (0.25 - s.aerodynamicCentre());
      assertThat(c.moment()).isCloseTo(straight, within(0.004));
    }
  }
}
