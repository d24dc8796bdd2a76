package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trimwright.exchange.words.Shown;
import trimwright.kernel.surface.Station;
import trimwright.kernel.surface.WingShape;

/** A wing from above, leading edge up, drawn from its own geometry: the icon of the part. */
public final class PlanformPicture {
  private static final double MARGIN = 6;

  /** Which of the two hues a wing takes. */
  public enum Role {
    /** A front wing. */
    FRONT,
    /** A stabilizer. */
    BACK
  }

  private PlanformPicture() {}

  /**
   * The wing as large as the picture lets it be.
   *
   * @param name of the wing
   * @param shape its geometry
   * @param role hue
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(String name, WingShape shape, Role role, PictureStyle style) {
    return svg(name, shape, role, 0, style);
  }

  /**
   * The wing on a shelf: every icon with the same width shown is to the same scale.
   *
   * @param name of the wing
   * @param shape its geometry
   * @param role hue
   * @param widthShown what the picture's width stands for [m]; a smaller one than the wing's own
   *     span is raised to the span
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(
      String name, WingShape shape, Role role, double widthShown, PictureStyle style) {
    List<Spot> outline = outline(shape);
    double fore = outline.stream().mapToDouble(Spot::above).max().orElseThrow();
    double aft = outline.stream().mapToDouble(Spot::above).min().orElseThrow();
    double scale =
        Math.min(
            (style.width() - 2 * MARGIN) / Math.max(widthShown, shape.span()),
            (style.height() - 2 * MARGIN) / (fore - aft));
    List<Dot> dots =
        outline.stream()
            .map(
                s ->
                    new Dot(
                        style.width() / 2 + s.ahead() * scale,
                        style.height() / 2 - (s.above() - (fore + aft) / 2) * scale))
            .toList();
    String hue = role == Role.FRONT ? style.palette().front() : style.palette().back();
    Svg svg =
        new Svg(
            style,
            name,
            "Planform, span " + Shown.decimals(Shown.mm(shape.span()), 0) + " mm, leading edge up.",
            "data-pixels-per-metre",
            Double.toString(scale));
    svg.polygon(dots, "planform")
        .with("fill", hue)
        .with("fill-opacity", "0.2")
        .with("stroke", hue)
        .with("stroke-width", style.line())
        .with("stroke-linejoin", "round");
    if (role == Role.BACK) {
      svg.with("stroke-dasharray", "8 5");
    }
    svg.end();
    return svg.text();
  }

  /** Across and forward: the leading edge from port to starboard, then back along the trailing. */
  static List<Spot> outline(WingShape shape) {
    List<Spot> leading = new ArrayList<>();
    List<Spot> trailing = new ArrayList<>();
    for (Station station : shape.stations()) {
      double across = station.fraction() * shape.span() / 2;
      leading.add(new Spot(across, station.ahead() + station.chord() / 4));
      trailing.add(new Spot(across, station.ahead() - 3 * station.chord() / 4));
    }
    List<Spot> all = new ArrayList<>(mirrored(leading));
    all.addAll(leading);
    Collections.reverse(trailing);
    all.addAll(trailing);
    Collections.reverse(trailing);
    List<Spot> port = new ArrayList<>();
    for (Spot spot : trailing) {
      port.add(new Spot(-spot.ahead(), spot.above()));
    }
    all.addAll(port);
    return all;
  }

  private static List<Spot> mirrored(List<Spot> half) {
    List<Spot> other = new ArrayList<>();
    for (Spot spot : half) {
      other.add(0, new Spot(-spot.ahead(), spot.above()));
    }
    return other;
  }
}
