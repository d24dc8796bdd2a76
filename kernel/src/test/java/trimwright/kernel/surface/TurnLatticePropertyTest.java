package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.Sections;

/** The lattice of turns beside the symmetrical one, and against what must hold by symmetry. */
class TurnLatticePropertyTest {
  /** Of forces of some 0.05 m². */
  private static final double ROUNDING = 1e-12;

  private static final LatticeSize FRONT = new LatticeSize(8, 2);
  private static final LatticeSize TAIL = new LatticeSize(6, 2);

  private static final PlacedWing FRONT_WING =
      new PlacedWing(
          new WingShape(
              0.9,
              List.of(
                  new Station(0, 0.215, 0, 0, 0, Sections.naca("naca2412")),
                  new Station(0.5, 0.19, -0.01, -0.006, -0.005, Sections.naca("naca2412")),
                  new Station(1, 0.08, -0.04, -0.025, -0.017, Sections.naca("naca2412")))),
          0.15,
          0,
          0,
          FRONT);

  private static final PlacedWing STABILIZER =
      new PlacedWing(
          new WingShape(
              0.42,
              List.of(
                  new Station(0, 0.105, 0, 0, 0, Sections.naca("naca0009")),
                  new Station(1, 0.06, -0.02, 0, 0, Sections.naca("naca0009")))),
          -0.56,
          0.03,
          Math.toRadians(-1.5),
          TAIL);

  private static final List<PlacedWing> WINGS = List.of(FRONT_WING, STABILIZER);

  private static List<TurnWing> loads(
      TurnMotion motion, OptionalDouble depth, double mastChord, List<StripPolars> polars) {
    TurnLattice lattice = new TurnLattice(WINGS, mastChord, 0);
    return lattice.solve(motion, depth).loads(motion, polars);
  }

  private static List<TurnWing> loads(TurnMotion motion, OptionalDouble depth, double mastChord) {
    return loads(motion, depth, mastChord, List.of());
  }

  @Test
  void straightAndLevelItIsTheSymmetricalLattice() {
    for (double depth : new double[] {0.2, 0.45, Double.NaN}) {
      OptionalDouble below =
          Double.isNaN(depth) ? OptionalDouble.empty() : OptionalDouble.of(depth);
      for (double degrees : new double[] {-1, 3, 7}) {
        double pitch = Math.toRadians(degrees);
        Lattice lattice = new Lattice(WINGS, false);
        lattice.solve(pitch, below);
        List<SurfaceFlow> flows = lattice.flows();
        List<TurnWing> turn = loads(new TurnMotion(pitch, 0, 0, 0), below, 0);
        for (int s = 0; s < 2; s++) {
          SurfaceFlow flow = flows.get(s);
          // 3e-4 m² at the stabilizer are 3 mm of foot pressure: see below
          assertThat(-turn.get(s).force()[2])
              .isCloseTo(flow.force().up(), within(s == 0 ? 2e-4 : 3e-4));
          // The stabilizer meets a spread sheet there and lines with cores here: some 1 % of a
          // craft's drag area.
          assertThat(-turn.get(s).force()[0])
              .isCloseTo(flow.boundDrag(), within(s == 0 ? 1e-5 : 2e-5));
          assertThat(turn.get(s).force()[1]).isCloseTo(0, within(ROUNDING));
          assertThat(turn.get(s).moment()[0]).isCloseTo(0, within(ROUNDING));
          assertThat(turn.get(s).moment()[2]).isCloseTo(0, within(ROUNDING));
        }
      }
    }
  }

  @Test
  void toPortIsTheMirrorOfToStarboard() {
    TurnMotion right = new TurnMotion(0.05, 0.5, 0.04, 0.12);
    TurnMotion left = new TurnMotion(0.05, -0.5, -0.04, -0.12);
    List<TurnWing> a = loads(right, OptionalDouble.of(0.45), 0.12);
    List<TurnWing> b = loads(left, OptionalDouble.of(0.45), 0.12);
    double[] force = {1, -1, 1};
    for (int s = 0; s < 3; s++) {
      for (int c = 0; c < 3; c++) {
        assertThat(b.get(s).force()[c]).isCloseTo(force[c] * a.get(s).force()[c], within(ROUNDING));
        assertThat(b.get(s).moment()[c])
            .isCloseTo(-force[c] * a.get(s).moment()[c], within(ROUNDING));
      }
    }
  }

  @Test
  void inDeepWaterABankOnlyTurnsTheForces() {
    // No pitch, so that the bank's axis lies along the stream.
    List<TurnWing> level = loads(new TurnMotion(0, 0, 0, 0), OptionalDouble.empty(), 0);
    double bank = 0.6;
    List<TurnWing> banked = loads(new TurnMotion(0, bank, 0, 0), OptionalDouble.empty(), 0);
    for (int s = 0; s < 2; s++) {
      double up = -level.get(s).force()[2];
      assertThat(-banked.get(s).force()[2]).isCloseTo(up * Math.cos(bank), within(ROUNDING));
      assertThat(banked.get(s).force()[1]).isCloseTo(up * Math.sin(bank), within(ROUNDING));
      assertThat(banked.get(s).force()[0]).isCloseTo(level.get(s).force()[0], within(ROUNDING));
    }
  }

  @Test
  void aCurvedPathTurnsTheStabilizersFlow() {
    // A turn with the wings upright across the path: the tail's flow rises by arm times curvature.
    double curvature = 0.1;
    TurnMotion straight = new TurnMotion(0, Math.PI / 2, 0, 0);
    TurnMotion curved = new TurnMotion(0, Math.PI / 2, 0, curvature);
    TurnLattice lattice = new TurnLattice(List.of(STABILIZER), 0, 0);
    double before =
        lattice
            .solve(straight, OptionalDouble.empty())
            .loads(straight, List.of())
            .get(0)
            .force()[1];
    double after =
        lattice.solve(curved, OptionalDouble.empty()).loads(curved, List.of()).get(0).force()[1];
    // The same by pitching the wing: about its control points, half a chord behind its quarter.
    TurnLattice pitched =
        new TurnLattice(
            List.of(
                new PlacedWing(
                    STABILIZER.shape(),
                    STABILIZER.ahead(),
                    STABILIZER.above(),
                    STABILIZER.incidence() + curvature * (0.56 + 0.045),
                    TAIL)),
            0,
            0);
    double turned =
        pitched
            .solve(straight, OptionalDouble.empty())
            .loads(straight, List.of())
            .get(0)
            .force()[1];
    assertThat(after - before).isCloseTo(turned - before, within(0.05 * Math.abs(turned - before)));
  }

  @Test
  void theOuterHalfCarriesMoreInATurn() {
    TurnWing front = loads(new TurnMotion(0.05, 0, 0, 0.2), OptionalDouble.empty(), 0).get(0);
    // To starboard the port half is outside and faster: it lifts more, which rolls to starboard.
    assertThat(front.moment()[0]).isPositive();
  }

  @Test
  void aMastThatSlipsIsPushedAgainstItsSlip() {
    // Nose to port of the path: the water comes from starboard and pushes to port.
    TurnWing mast = loads(new TurnMotion(0, 0, -0.05, 0), OptionalDouble.of(0.45), 0.12).get(2);
    assertThat(mast.force()[1]).isNegative();
    double plate = 6.0 * 0.05 * 0.12 * 0.45;
    // A low aspect ratio and the free surface leave less than half of a section's.
    assertThat(-mast.force()[1]).isBetween(0.2 * plate, 0.8 * plate);
  }

  @Test
  void finerLatticesAgree() {
    TurnMotion motion = new TurnMotion(0.05, 0.5, 0.02, 0.15);
    List<TurnWing> standard = loads(motion, OptionalDouble.of(0.45), 0.12);
    TurnLattice fine =
        new TurnLattice(List.of(resized(FRONT_WING, 16, 3), resized(STABILIZER, 12, 3)), 0.12, 0);
    List<TurnWing> finer = fine.solve(motion, OptionalDouble.of(0.45)).loads(motion, List.of());
    for (int s = 0; s < 2; s++) {
      // The stabilizer carries next to nothing here: half of its area counts instead.
      double lift = Math.max(0.015, Math.hypot(finer.get(s).force()[1], finer.get(s).force()[2]));
      for (int c = 1; c < 3; c++) {
        assertThat(standard.get(s).force()[c])
            .isCloseTo(finer.get(s).force()[c], within(0.02 * lift));
      }
    }
  }

  private static PlacedWing resized(PlacedWing wing, int strips, int panels) {
    return new PlacedWing(
        wing.shape(),
        wing.ahead(),
        wing.above(),
        wing.incidence(),
        new LatticeSize(strips, panels));
  }

  @Test
  void dragOfTheSectionsComesInOnce() {
    TurnMotion motion = new TurnMotion(0.04, 0.3, 0, 0.1);
    List<StripPolars> polars =
        WINGS.stream().map(w -> new ProfileForces(w, Finish.CLEAN).at(5e6)).toList();
    TurnWing with = loads(motion, OptionalDouble.of(0.45), 0, polars).get(0);
    TurnWing without = loads(motion, OptionalDouble.of(0.45), 0).get(0);
    double area = 0.16;
    double coefficient = (without.force()[0] - with.force()[0]) / area;
    assertThat(coefficient).isBetween(0.004, 0.02);
    assertThat(with.stallMargin()).isBetween(0.05, 0.4);
  }
}
