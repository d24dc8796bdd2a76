package trimwright.reference.second;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.WingShape;

/**
 * The lattice goes over into lifting line as the wing grows long, and a tail behind a wing moves
 * the neutral point as the textbook says.
 */
class LatticeAgainstLiftingLineTest {
  private static final Section SECTION = Sections.naca("0012");
  private static final double ANGLE = 2e-3;

  /** Half a percent of lift at this length; a square tip keeps more than an elliptic one. */
  private static final double LONG = 0.01;

  @Test
  void theLongerTheWingTheCloserLiftingLine() {
    DoubleUnaryOperator ellipse = e -> Math.sqrt(Math.max(1e-6, 1 - e * e));
    double before = 1;
    for (double aspectRatio : new double[] {5, 10, 20, 40}) {
      double line = LiftingLine.of(aspectRatio, ellipse, 2 * Math.PI, 100).liftSlope();
      double away = Math.abs(slope(wing(aspectRatio, ellipse), true) / line - 1);
      assertThat(away).as("at aspect ratio %s", aspectRatio).isLessThan(0.6 * before);
      before = away;
    }
  }

  @Test
  void aLongWingOfRealSectionsAnswersWithTheirSlope() {
    DoubleUnaryOperator taper = e -> 1 - 0.5 * e;
    double line = LiftingLine.of(60, taper, SECTION.liftSlope(), 200).liftSlope();
    assertThat(slope(wing(60, taper), false) / line).isCloseTo(1, within(LONG));
  }

  /**
   * Neutral point of wing and tail by moments of the coupled lattice, against the textbook's
   * formula fed with the same lattice's slopes of wing and tail alone and its downwash (B. Etkin,
   * L. D. Reid, Dynamics of Flight, chapter 2, from memory). The formula leaves out what the tail
   * does to the wing.
   */
  @Test
  void neutralPointOfWingAndTail() {
    double arm = 6;
    WingShape wing = wing(8, e -> 1 - 0.4 * e);
    WingShape tail = wing(3, e -> 1);
    LatticeSize size = new LatticeSize(24, 4);
    PlacedWing front = new PlacedWing(wing, 0, 0, 0, size);
    PlacedWing rear = new PlacedWing(tail, -arm, 0.4, 0, size);
    SurfaceFlow wingAlone = flows(List.of(front)).get(0);
    SurfaceFlow tailAlone = flows(List.of(rear)).get(0);
    List<SurfaceFlow> both = flows(List.of(front, rear));

    double share = both.get(1).force().up() / tailAlone.force().up();
    assertThat(share).as("share of the stream's turn that the tail feels").isBetween(0.3, 0.8);
    double wingLift = wingAlone.force().up();
    double tailLift = tailAlone.force().up() * share;
    double wingCentre = -wingAlone.force().noseUp() / wingLift;
    double tailCentre = -tailAlone.force().noseUp() / tailAlone.force().up();
    double byFormula = wingCentre + tailLift / (wingLift + tailLift) * (tailCentre - wingCentre);

    double lift = both.get(0).force().up() + both.get(1).force().up();
    double moment = both.get(0).force().noseUp() + both.get(1).force().noseUp();
    assertThat(-moment / lift).isCloseTo(byFormula, within(0.01 * arm));
    // The tail must matter for this to say anything.
    assertThat(byFormula - wingCentre).isGreaterThan(0.05 * arm);
  }

  private static WingShape wing(double aspectRatio, DoubleUnaryOperator outline) {
    int n = 64;
    List<Station> stations = new ArrayList<>();
    double area = 0;
    for (int i = 0; i <= n; i++) {
      double e = i == n ? 1 : Math.sin(0.5 * Math.PI * i / n);
      stations.add(new Station(e, outline.applyAsDouble(e), 0, 0, 0, SECTION));
      if (i > 0) {
        Station a = stations.get(i - 1);
        Station b = stations.get(i);
        area += 0.5 * (a.chord() + b.chord()) * (b.fraction() - a.fraction());
      }
    }
    return new WingShape(aspectRatio * area, stations);
  }

  private static double slope(WingShape wing, boolean inviscid) {
    Lattice lattice =
        new Lattice(List.of(new PlacedWing(wing, 0, 0, 0, new LatticeSize(40, 4))), inviscid);
    lattice.solve(ANGLE, OptionalDouble.empty());
    return lattice.flows().get(0).force().up() / wing.area() / ANGLE;
  }

  private static List<SurfaceFlow> flows(List<PlacedWing> wings) {
    Lattice lattice = new Lattice(wings, true);
    lattice.solve(ANGLE, OptionalDouble.empty());
    return lattice.flows();
  }
}
