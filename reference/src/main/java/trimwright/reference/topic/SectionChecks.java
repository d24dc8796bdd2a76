package trimwright.reference.topic;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.PanelMethod;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;
import trimwright.kernel.section.SkinFriction;
import trimwright.kernel.section.ThinAirfoil;

/** Wing sections: mean lines, the panel method on real shapes, the fitted model, friction lines. */
public final class SectionChecks {
  /** Points of a Joukowski outline: many, so that their polygon is not what is tested. */
  private static final int JOUKOWSKI_POINTS = 400;

  private SectionChecks() {}

  /** The evaluations of this topic by name. */
  public static Map<String, Computation> computations() {
    Map<String, Computation> all = new HashMap<>();
    all.put("thin zero-lift angle", c -> Math.toDegrees(thin(c).zeroLiftAngle()));
    all.put("thin moment", c -> thin(c).quarterChordMoment());
    all.put(
        "panel zero-lift angle without thickness",
        c -> withoutThickness(c, flow -> Math.toDegrees(flow.zeroLiftAngle())));
    all.put(
        "panel moment without thickness", c -> withoutThickness(c, PanelMethod::momentAtZeroLift));
    all.put("panel lift without thickness", SectionChecks::panelLift);
    all.put("section zero-lift angle", c -> Math.toDegrees(section(c).zeroLiftAngle()));
    all.put("section moment", c -> section(c).momentAtZeroLift());
    all.put("section lift slope", c -> Math.toRadians(section(c).liftSlope()));
    all.put("section lift slope between angles", SectionChecks::slopeBetween);
    all.put("section aerodynamic centre", c -> section(c).aerodynamicCentre());
    all.put("section attached lift", SectionChecks::attachedLift);
    all.put("section largest lift", c -> section(c).maximumLift(c.number("reynolds"), finish(c)));
    all.put(
        "section drag", c -> section(c).drag(c.number("lift"), c.number("reynolds"), finish(c)));
    all.put("section minimum pressure", c -> section(c).minimumPressure(attachedLift(c)));
    all.put("joukowski lift", SectionChecks::joukowskiLift);
    all.put("joukowski zero-lift angle", c -> Math.toDegrees(joukowski(c).zeroLiftAngle()));
    all.put("laminar friction", c -> SkinFriction.laminar(c.number("reynolds")));
    all.put("ittc friction", c -> SkinFriction.ittc1957(c.number("reynolds")));
    all.put("prandtl-schlichting friction", c -> SkinFriction.turbulent(c.number("reynolds")));
    all.put("schoenherr friction", c -> SkinFriction.schoenherr(c.number("reynolds")));
    return all;
  }

  private static Section section(Conditions conditions) {
    return Sections.naca(conditions.text("section"));
  }

  private static Finish finish(Conditions conditions) {
    return Finish.valueOf(conditions.text("finish").toUpperCase(Locale.ROOT));
  }

  private static ThinAirfoil thin(Conditions conditions) {
    return ThinAirfoil.of(Sections.meanLine(conditions.text("mean_line") + "12"));
  }

  /** Two thin sections, and straight on from them to no thickness at all. */
  private static double withoutThickness(
      Conditions conditions, ToDoubleFunction<PanelMethod> quantity) {
    String line = conditions.text("mean_line");
    double thin = quantity.applyAsDouble(PanelMethod.of(Sections.naca(line + "03").shape()));
    double thick = quantity.applyAsDouble(PanelMethod.of(Sections.naca(line + "06").shape()));
    return 2 * thin - thick;
  }

  private static double panelLift(Conditions conditions) {
    double angle = Math.toRadians(conditions.number("alpha_deg"));
    return withoutThickness(conditions, flow -> flow.lift(angle));
  }

  private static double attachedLift(Conditions conditions) {
    return attachedLift(section(conditions), conditions.number("alpha_deg"));
  }

  private static double attachedLift(Section section, double degrees) {
    return section.liftSlope() * (Math.toRadians(degrees) - section.zeroLiftAngle());
  }

  private static double slopeBetween(Conditions conditions) {
    Section section = section(conditions);
    double from = conditions.number("from_deg");
    double to = conditions.number("to_deg");
    return (attachedLift(section, to) - attachedLift(section, from)) / (to - from);
  }

  private static double joukowskiLift(Conditions conditions) {
    PanelMethod flow = joukowski(conditions);
    double angle = Math.toRadians(conditions.number("alpha_from_zero_lift_deg"));
    return flow.lift(flow.zeroLiftAngle() + angle);
  }

  /**
   * The map z + 1/z of a circle through z = 1 whose centre lies behind and above the origin: its
   * outline has a cusp at the trailing edge. It is laid on its longest chord, from which the exact
   * zero-lift angle counts.
   */
  private static PanelMethod joukowski(Conditions conditions) {
    double back = conditions.number("circle_back");
    double up = conditions.number("circle_up");
    double nose = furthestFromEdge(back, up);
    double[] edge = joukowskiPoint(back, up, 0);
    double[] front = joukowskiPoint(back, up, nose);
    double chord = Math.hypot(edge[0] - front[0], edge[1] - front[1]);
    double cos = (edge[0] - front[0]) / chord;
    double sin = (edge[1] - front[1]) / chord;
    int half = JOUKOWSKI_POINTS / 2;
    double[] x = new double[2 * half + 1];
    double[] y = new double[2 * half + 1];
    for (int i = 0; i <= 2 * half; i++) {
      double angle =
          i <= half ? nose * i / half : nose + (2 * Math.PI - nose) * (i - half) / (double) half;
      double[] point = joukowskiPoint(back, up, angle);
      double dx = point[0] - front[0];
      double dy = point[1] - front[1];
      x[i] = dx * cos + dy * sin;
      y[i] = dy * cos - dx * sin;
    }
    return PanelMethod.of(Sections.fromOutline("joukowski", x, y).shape());
  }

  /** A point of the outline at an angle round the circle from the trailing edge. */
  private static double[] joukowskiPoint(double back, double up, double fromEdge) {
    double radius = Math.hypot(1 + back, up);
    double angle = fromEdge - Math.asin(up / radius);
    double re = -back + radius * Math.cos(angle);
    double im = up + radius * Math.sin(angle);
    double square = re * re + im * im;
    return new double[] {re + re / square, im - im / square};
  }

  /** Where the outline is furthest from its trailing edge, by thirds. */
  private static double furthestFromEdge(double back, double up) {
    double[] edge = joukowskiPoint(back, up, 0);
    double from = 0.7 * Math.PI;
    double to = 1.3 * Math.PI;
    for (int i = 0; i < 100; i++) {
      double one = from + (to - from) / 3;
      double other = to - (to - from) / 3;
      double[] p = joukowskiPoint(back, up, one);
      double[] q = joukowskiPoint(back, up, other);
      if (Math.hypot(p[0] - edge[0], p[1] - edge[1]) < Math.hypot(q[0] - edge[0], q[1] - edge[1])) {
        from = one;
      } else {
        to = other;
      }
    }
    return 0.5 * (from + to);
  }
}
