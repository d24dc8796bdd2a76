package trimwright.reference.topic;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.surface.Lattice;
import trimwright.kernel.surface.LatticeSize;
import trimwright.kernel.surface.PlacedWing;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.WingShape;

/** The wings that the published cases are about, and their flow in the shipped lattice. */
final class TestWings {
  /** A section without camber stands for the flat wings of theory. */
  private static final String FLAT = "0012";

  /** Stations along a curved outline; its area is then within 0.02 % of the smooth one. */
  private static final int CURVED_STATIONS = 64;

  /** Tip chord over root chord where theory has a tip of no chord, which a station may not have. */
  private static final double POINTED_TIP = 1e-3;

  /** Fine enough for 0.2 % of lift on every planform here, see the convergence tests. */
  static final LatticeSize FINE = new LatticeSize(32, 8);

  private TestWings() {}

  /** The lattice a row asks for, else the fine one. */
  static LatticeSize size(Conditions conditions) {
    int strips =
        conditions.has("strips") ? (int) conditions.number("strips") : FINE.stripsPerHalf();
    int panels =
        conditions.has("panels_along_chord")
            ? (int) conditions.number("panels_along_chord")
            : FINE.panelsAlongChord();
    boolean even = conditions.has("strip_widths") && conditions.text("strip_widths").equals("even");
    return new LatticeSize(strips, panels, even);
  }

  /** The wing a row states, root quarter chord at the origin. */
  static WingShape shape(Conditions conditions) {
    String planform = conditions.text("planform");
    double aspectRatio = conditions.number("aspect_ratio");
    return switch (planform) {
      case "straight" -> straight(conditions, aspectRatio);
      case "elliptic" -> elliptic(aspectRatio, 0);
      // A true ellipse (a circle at 4/pi): the middle of the chord is straight, not the quarter.
      case "ellipse about mid-chord" -> elliptic(aspectRatio, 0.25);
      default -> throw new IllegalStateException("no planform is called " + planform);
    };
  }

  private static WingShape straight(Conditions conditions, double aspectRatio) {
    double taper = conditions.number("taper");
    double root = conditions.has("root_chord") ? conditions.number("root_chord") : 1;
    double tip = root * taper;
    double span = aspectRatio * 0.5 * (root + tip);
    double behind;
    if (conditions.has("leading_edge_sweep_deg")) {
      double sweep = Math.toRadians(conditions.number("leading_edge_sweep_deg"));
      behind = 0.5 * span * Math.tan(sweep) + 0.25 * (tip - root);
    } else {
      behind = 0.5 * span * Math.tan(Math.toRadians(conditions.number("sweep_deg")));
    }
    Section section = section(conditions);
    return new WingShape(
        span,
        List.of(
            new Station(0, root, 0, 0, 0, section), new Station(1, tip, -behind, 0, 0, section)));
  }

  private static WingShape elliptic(double aspectRatio, double straightLineBehindQuarter) {
    Section section = Sections.naca(FLAT);
    double span = aspectRatio * Math.PI / 4;
    List<Station> stations = new ArrayList<>();
    for (int i = 0; i <= CURVED_STATIONS; i++) {
      double fraction = i == CURVED_STATIONS ? 1 : Math.sin(0.5 * Math.PI * i / CURVED_STATIONS);
      double chord = Math.max(POINTED_TIP, Math.sqrt(1 - fraction * fraction));
      double ahead = straightLineBehindQuarter * (chord - 1);
      stations.add(new Station(fraction, chord, ahead, 0, 0, section));
    }
    return new WingShape(span, stations);
  }

  private static Section section(Conditions conditions) {
    return Sections.naca(conditions.has("section") ? conditions.text("section") : FLAT);
  }

  /** The flow about one wing alone. */
  static SurfaceFlow flow(
      WingShape shape, LatticeSize size, double angle, OptionalDouble depth, boolean inviscid) {
    return flows(List.of(new PlacedWing(shape, 0, 0, 0, size)), angle, depth, inviscid).get(0);
  }

  /** The flow about several wings. */
  static List<SurfaceFlow> flows(
      List<PlacedWing> wings, double angle, OptionalDouble depth, boolean inviscid) {
    Lattice lattice = new Lattice(wings, inviscid);
    lattice.solve(angle, depth);
    return lattice.flows();
  }

  /** Lift coefficient on a wing's own area [1]. */
  static double liftCoefficient(SurfaceFlow flow, WingShape shape) {
    return flow.force().up() / shape.area();
  }
}
