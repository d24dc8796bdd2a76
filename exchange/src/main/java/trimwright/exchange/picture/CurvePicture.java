package trimwright.exchange.picture;

import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.exchange.words.VerdictWords;
import trimwright.kernel.band.Bands;
import trimwright.kernel.trim.Curve;

/** Quantities against speed on one shared axis, with an upright line at the chosen speed. */
public final class CurvePicture {
  private static final List<CurveQuantity> SHEET =
      List.of(CurveQuantity.PITCH, CurveQuantity.FOOT_SHARE, CurveQuantity.POWER);

  /** From this width on there is a margin at the right for the lines' names [px]. */
  private static final double NAME_MARGIN_FROM = 500;

  private static final double EDGE = 6;

  private CurvePicture() {}

  /**
   * One quantity.
   *
   * @param caseFile the case
   * @param bands its curve with the bands
   * @param quantity what to show
   * @param markedSpeed the chosen speed [m/s]
   * @param measures units of its numbers
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(
      CaseFile caseFile,
      Bands bands,
      CurveQuantity quantity,
      double markedSpeed,
      Measures measures,
      PictureStyle style) {
    return draw(caseFile, bands, List.of(quantity), markedSpeed, measures, style);
  }

  /**
   * Pitch, foot share and power one above the other.
   *
   * @param caseFile the case
   * @param bands its curve with the bands
   * @param markedSpeed the chosen speed [m/s]
   * @param measures units of its numbers
   * @param style how to draw
   * @return SVG text
   */
  public static String sheet(
      CaseFile caseFile, Bands bands, double markedSpeed, Measures measures, PictureStyle style) {
    return draw(caseFile, bands, SHEET, markedSpeed, measures, style);
  }

  private static String draw(
      CaseFile caseFile,
      Bands bands,
      List<CurveQuantity> wanted,
      double markedSpeed,
      Measures measures,
      PictureStyle style) {
    Curve curve = bands.curve();
    List<CurveQuantity> quantities = wanted.stream().map(q -> q.on(curve)).toList();
    Unit speed = measures.unit(Unit.KILOMETRE_PER_HOUR);
    double size = style.fontSize();
    double line = TextSize.LINE * size;
    double title = line + 5;
    // Half a line for the lowest number of the upright axis, which stands lower than the plot.
    double foot = 1.5 * line + 2;
    double height = (style.height() - foot - EDGE) / quantities.size() - title - EDGE;
    double left = EDGE;
    double names = 0;
    for (CurveQuantity quantity : quantities) {
      for (String number : CurvePanel.numbers(bands, quantity, measures, height, size)) {
        left = Math.max(left, EDGE + 5 + TextSize.width(number, size));
      }
      for (CurveQuantity.Line one : quantity.lines(measures)) {
        names = Math.max(names, TextSize.width(one.name(), size) + 14);
      }
    }
    double right =
        style.width() - EDGE - (style.width() >= NAME_MARGIN_FROM && runsOut(curve) ? names : size);
    SpeedAxis axis = SpeedAxis.of(curve, speed, left, right);
    double marked = speed.fromSi(markedSpeed);
    Svg svg =
        new Svg(
            style,
            heading(quantities) + " of " + caseFile.name() + " against speed",
            VerdictWords.speeds(bands, measures)
                + " The upright line stands at "
                + Shown.decimals(marked, 1)
                + " "
                + speed.symbol()
                + ".",
            "data-speed-unit",
            speed.symbol(),
            "data-speed-from",
            Double.toString(axis.from()),
            "data-speed-to",
            Double.toString(axis.to()),
            "data-x-from",
            Svg.number(left),
            "data-x-to",
            Svg.number(right));
    svg.box(new Box(0, 0, style.width(), style.height()), "surface")
        .with("fill", style.palette().surface())
        .end();
    double y = EDGE;
    for (CurveQuantity quantity : quantities) {
      Box plot = new Box(left, y + title, right - left, Math.max(1, height));
      new CurvePanel(svg, style, bands, quantity, measures, axis, plot, style.width() - 2)
          .draw(marked);
      y += title + height + EDGE;
    }
    axisNumbers(svg, style, axis, speed.symbol(), marked, y - EDGE);
    return svg.text();
  }

  /** Whether a line may run up to the axis' end, where its name no longer fits inside. */
  private static boolean runsOut(Curve curve) {
    int count = curve.outcomes().size();
    return curve.outcomes().subList(count * 7 / 8, count).stream()
        .anyMatch(o -> o.findPoint().isPresent());
  }

  private static void axisNumbers(
      Svg svg, PictureStyle style, SpeedAxis axis, String unit, double marked, double bottom) {
    double size = style.fontSize();
    double height = TextSize.LINE * size;
    double y = bottom + height / 2 + 1;
    Palette palette = style.palette();
    Box chosen = null;
    if (axis.holds(marked)) {
      String text = Shown.decimals(marked, 1);
      double width = TextSize.width(text + " " + unit, size);
      double x = Math.max(2, Math.min(style.width() - 2 - width, axis.x(marked) - width / 2));
      chosen = new Box(x, y, width, height);
      svg.text(text, unit, chosen, palette.action());
    }
    double unitWidth = TextSize.width(unit, size);
    Box unitBox = new Box(style.width() - 2 - unitWidth, y, unitWidth, height);
    boolean unitShown = chosen == null;
    if (unitShown) {
      svg.text(unit, "", unitBox, palette.muted());
    }
    for (double tick : axis.ticks(size)) {
      String text = Shown.decimals(tick, 0);
      double width = TextSize.width(text, size);
      Box box = new Box(axis.x(tick) - width / 2, y, width, height);
      boolean free =
          (chosen == null || !box.grown(4).overlaps(chosen))
              && !(unitShown && box.grown(4).overlaps(unitBox));
      if (free) {
        svg.text(text, "", box, palette.muted());
      }
      svg.line(new Dot(axis.x(tick), bottom), new Dot(axis.x(tick), bottom + 4), "tick")
          .with("stroke", palette.edge())
          .with("stroke-width", 1)
          .end();
    }
  }

  private static String heading(List<CurveQuantity> quantities) {
    return String.join("; ", quantities.stream().map(CurveQuantity::title).toList());
  }
}
