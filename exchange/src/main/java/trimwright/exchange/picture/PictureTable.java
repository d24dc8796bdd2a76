package trimwright.exchange.picture;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.ReasonWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.Limit;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/** The numbers behind a picture as an HTML table, for those who listen. */
public final class PictureTable {
  private PictureTable() {}

  /**
   * The numbers of a curve picture.
   *
   * @param caseFile the case
   * @param curve its curve
   * @return one {@code table} element
   */
  public static String curve(CaseFile caseFile, Curve curve) {
    CurveQuantity effort = CurveQuantity.POWER.on(curve);
    StringBuilder out = start(caseFile.name() + " against speed");
    out.append("<thead><tr>");
    for (String head :
        List.of(
            "Speed, km/h",
            "Pitch, degrees nose-up",
            "Front foot, %",
            "Front leg, kg",
            "Back leg, kg",
            effort.title() + ", " + effort.unit(),
            "Remark")) {
      out.append("<th scope=\"col\">").append(Svg.escaped(head)).append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    for (TrimOutcome outcome : curve.outcomes()) {
      out.append("<tr><th scope=\"row\">");
      out.append(Shown.decimals(Shown.kmh(outcome.speed()), 1)).append("</th>");
      if (outcome instanceof TrimOutcome.NoTrim none) {
        out.append("<td>-</td>".repeat(5));
        cell(out, ReasonWords.brief(none.reason()));
      } else {
        point(out, outcome.findPoint().orElseThrow(), effort);
      }
      out.append("</tr>\n");
    }
    return out.append("</tbody>\n</table>\n").toString();
  }

  private static void point(StringBuilder out, TrimPoint point, CurveQuantity effort) {
    cell(out, CurvePanel.signed(Shown.degrees(point.pitch()), 1));
    cell(out, CurvePanel.signed(point.footShare() * 100, 0));
    cell(out, CurvePanel.signed(point.frontLeg(), 0));
    cell(out, CurvePanel.signed(point.backLeg(), 0));
    var value = effort.lines().get(0).value().apply(point);
    cell(out, value.isPresent() ? CurvePanel.signed(value.getAsDouble(), 0) : "-");
    cell(out, remark(point.brokenLimits()));
  }

  private static String remark(Set<Limit> broken) {
    return broken.isEmpty()
        ? "rideable"
        : broken.stream().sorted().map(ReasonWords::brief).collect(Collectors.joining(", "));
  }

  /**
   * The numbers of a side view.
   *
   * @param caseFile the case
   * @param point where it trims
   * @return one {@code table} element
   */
  public static String sideView(CaseFile caseFile, TrimPoint point) {
    StringBuilder out =
        start(
            caseFile.name()
                + " at "
                + Shown.decimals(Shown.kmh(point.speed()), 1)
                + " km/h, from the side");
    out.append("<tbody>\n");
    row(out, "Deck", Shown.nose(Shown.degrees(point.pitch())));
    row(out, "Front foot", number(point.frontLeg()) + " kg");
    row(out, "Back foot", number(point.backLeg()) + " kg");
    row(
        out,
        "Pressure centre ahead of the mast",
        number(Shown.mm(point.footPressureAheadOfMast())) + " mm");
    row(out, "Front wing, up", number(point.frontWingLift()) + " N");
    row(out, "Stabilizer, up", number(point.stabilizerLift()) + " N");
    row(out, "Thrust", number(point.thrust()) + " N");
    row(out, "Drag", number(point.drag()) + " N");
    row(out, "Depth of the front wing", number(Shown.mm(caseFile.rideCase().immersion())) + " mm");
    return out.append("</tbody>\n</table>\n").toString();
  }

  private static StringBuilder start(String caption) {
    return new StringBuilder("<table class=\"picture-table\">\n<caption>")
        .append(Svg.escaped(caption))
        .append("</caption>\n");
  }

  private static void row(StringBuilder out, String name, String value) {
    out.append("<tr><th scope=\"row\">").append(Svg.escaped(name)).append("</th>");
    cell(out, value);
    out.append("</tr>\n");
  }

  private static void cell(StringBuilder out, String value) {
    out.append("<td>").append(Svg.escaped(value)).append("</td>");
  }

  private static String number(double value) {
    return CurvePanel.signed(value, 0);
  }
}
