package trimwright.exchange.picture;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Writes SVG elements. Numbers carry two decimals and no locale. */
final class Svg {
  /** Gap between a number and its unit, over the size of the letters. */
  private static final double UNIT_GAP = 0.25;

  private final StringBuilder out = new StringBuilder();
  private final PictureStyle style;

  /**
   * A picture's beginning.
   *
   * @param style its style
   * @param title its name for a screen reader
   * @param description what it shows, in a sentence or two
   * @param data further attributes of the root, name and value in turn
   */
  Svg(PictureStyle style, String title, String description, String... data) {
    this.style = style;
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\"");
    attribute("width", number(style.width()));
    attribute("height", number(style.height()));
    attribute("viewBox", "0 0 " + number(style.width()) + " " + number(style.height()));
    if (!style.fontFamily().isEmpty()) {
      attribute("font-family", style.fontFamily());
    }
    attribute("font-size", number(style.fontSize()));
    for (int i = 0; i < data.length; i += 2) {
      attribute(data[i], data[i + 1]);
    }
    out.append(">\n<title>").append(escaped(title)).append("</title>\n<desc>");
    out.append(escaped(description)).append("</desc>\n");
  }

  /** Starts an element; attributes follow, then {@link #end}. */
  Svg element(String name, String kind) {
    out.append('<').append(name);
    // A prefix, so that no rule of a page that means its own labels or lines reaches in here.
    attribute("class", "pic-" + kind);
    return this;
  }

  Svg with(String name, String value) {
    attribute(name, value);
    return this;
  }

  Svg with(String name, double value) {
    attribute(name, number(value));
    return this;
  }

  /** Ends an element without content. */
  void end() {
    out.append("/>\n");
  }

  Svg box(Box box, String kind) {
    return element("rect", kind)
        .with("x", box.x())
        .with("y", box.y())
        .with("width", box.width())
        .with("height", box.height());
  }

  Svg line(Dot from, Dot to, String kind) {
    return element("line", kind)
        .with("x1", from.x())
        .with("y1", from.y())
        .with("x2", to.x())
        .with("y2", to.y());
  }

  Svg polygon(List<Dot> dots, String kind) {
    return element("polygon", kind).with("points", points(dots));
  }

  Svg polyline(List<Dot> dots, String kind) {
    return element("polyline", kind).with("points", points(dots)).with("fill", "none");
  }

  Svg circle(Dot centre, double radius, String kind) {
    return element("circle", kind).with("cx", centre.x()).with("cy", centre.y()).with("r", radius);
  }

  /** A label's text, its unit in muted ink, on a rim of the ground so that lines do not cut it. */
  void label(PlacedLabel placed) {
    text(placed.text(), placed.label().unit(), placed.box(), placed.label().colour());
  }

  /** A text in its box, from the left. */
  void text(String text, String unit, Box box, String colour) {
    element("text", "label")
        .with("x", box.x())
        .with("y", box.y() + TextSize.BASE * style.fontSize())
        .with("fill", colour)
        .with("stroke", style.palette().surface())
        .with("stroke-width", "3")
        .with("stroke-linejoin", "round")
        .with("paint-order", "stroke")
        .with("font-variant-numeric", "tabular-nums");
    out.append('>').append(escaped(text));
    if (!unit.isEmpty()) {
      out.append("<tspan");
      attribute("fill", style.palette().muted());
      // A shift and no space: some renderers drop a space at a span's start.
      attribute("dx", number(unit.equals("°") ? 0 : UNIT_GAP * style.fontSize()));
      out.append('>').append(escaped(unit)).append("</tspan>");
    }
    out.append("</text>\n");
  }

  /**
   * A text at a place, for pictures whose labels need no search for room.
   *
   * @param text what it says
   * @param at where its base line begins, has its middle, or ends
   * @param anchor {@code start}, {@code middle} or {@code end}
   * @param size of the letters [px]
   * @param bold whether it leads
   * @param colour paint
   */
  void words(String text, Dot at, String anchor, double size, boolean bold, String colour) {
    element("text", "words")
        .with("x", at.x())
        .with("y", at.y())
        .with("fill", colour)
        .with("font-size", size)
        .with("font-weight", bold ? "700" : "400")
        .with("text-anchor", anchor);
    out.append('>').append(escaped(text)).append("</text>\n");
  }

  /** The whole picture. */
  String text() {
    return out + "</svg>\n";
  }

  static String points(List<Dot> dots) {
    StringBuilder points = new StringBuilder();
    for (Dot dot : dots) {
      points.append(points.isEmpty() ? "" : " ");
      points.append(number(dot.x())).append(',').append(number(dot.y()));
    }
    return points.toString();
  }

  static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  static String escaped(String text) {
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isXml(c) ? c : '\uFFFD');
              }
            });
    return safe.toString();
  }

  private static boolean isXml(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"").append(escaped(value)).append('"');
  }
}
