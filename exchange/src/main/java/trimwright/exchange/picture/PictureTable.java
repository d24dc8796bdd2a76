package trimwright.exchange.picture;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Amounts;
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
   * @param measures units of its numbers
   * @return one {@code table} element
   */
  public static String curve(CaseFile caseFile, Curve curve, Measures measures) {
    Unit speed = measures.unit(Unit.KILOMETRE_PER_HOUR);
    Unit mass = measures.unit(Unit.KILOGRAM);
    CurveQuantity effort = CurveQuantity.POWER.on(curve);
    StringBuilder out = start(caseFile.name() + " against speed");
    out.append("<thead><tr>");
    for (String head :
        List.of(
            "Speed, " + speed.symbol(),
            "Pitch, degrees nose-up",
            "Front foot, %",
            "Front leg, " + mass.symbol(),
            "Back leg, " + mass.symbol(),
            effort.title() + ", " + effort.unit(measures),
            "Remark")) {
      out.append("<th scope=\"col\">").append(Svg.escaped(head)).append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    for (TrimOutcome outcome : curve.outcomes()) {
      out.append("<tr><th scope=\"row\">");
      out.append(Shown.decimals(speed.fromSi(outcome.speed()), 1)).append("</th>");
      if (outcome instanceof TrimOutcome.NoTrim none) {
        out.append("<td>-</td>".repeat(5));
        cell(out, ReasonWords.brief(none.reason()));
      } else {
        point(out, outcome.findPoint().orElseThrow(), effort, measures);
      }
      out.append("</tr>\n");
    }
    return out.append("</tbody>\n</table>\n").toString();
  }

  private static void point(
      StringBuilder out, TrimPoint point, CurveQuantity effort, Measures measures) {
    Unit mass = measures.unit(Unit.KILOGRAM);
    cell(out, CurvePanel.signed(Shown.degrees(point.pitch()), 1));
    cell(out, CurvePanel.signed(point.footShare() * 100, 0));
    cell(out, CurvePanel.signed(mass.fromSi(point.frontLeg()), 0));
    cell(out, CurvePanel.signed(mass.fromSi(point.backLeg()), 0));
    var value = effort.lines(measures).get(0).value(point);
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
   * @param measures units of its numbers
   * @return one {@code table} element
   */
  public static String sideView(CaseFile caseFile, TrimPoint point, Measures measures) {
    Amounts amounts = Amounts.of(measures);
    StringBuilder out =
        start(caseFile.name() + " at " + amounts.speed(point.speed()) + ", from the side");
    out.append("<tbody>\n");
    row(out, "Deck", Shown.nose(Shown.degrees(point.pitch())));
    row(out, "Front foot", amounts.mass(point.frontLeg()));
    row(out, "Back foot", amounts.mass(point.backLeg()));
    row(
        out,
        "Pressure centre ahead of the mast",
        minus(amounts.length(point.footPressureAheadOfMast())));
    row(out, "Front wing, up", minus(amounts.force(point.frontWingLift())));
    row(out, "Stabilizer, up", minus(amounts.force(point.stabilizerLift())));
    row(out, "Thrust", minus(amounts.force(point.thrust())));
    row(out, "Drag", minus(amounts.force(point.drag())));
    row(out, "Depth of the front wing", amounts.length(caseFile.rideCase().immersion()));
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

  private static String minus(String amount) {
    return amount.replace('-', '\u2212');
  }
}
