package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.Mounting;
import trimwright.exchange.words.ShimWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.Station;

/**
 * The stabilizer on its seat from the side, bow to the right: which way the shim lies and which
 * edge it lifts. Fuselage and section are to scale; a shim too thin to be seen is drawn steeper, a
 * whole number of times, and {@link #scaleWords} says so.
 */
public final class ShimPicture {
  /** A wedge from this angle on is plain to see on paper [degrees]. Chosen. */
  private static final double PLAIN_DEGREES = 5;

  /** Bolts and bearing surface reach so far either way of the quarter chord, in chords. */
  private static final double SEAT = 0.34;

  private static final double QUARTER = 0.25;
  private static final double MARGIN = 4;
  private static final double ARROW = 7;

  private final PictureStyle style;
  private final Palette palette;
  private final boolean above;
  private final double shim;
  private final double drawnShim;
  private final long times;
  private final FittedWing wing;
  private final Station root;
  private final double radius;
  private final double scale;
  private final double axisY;
  private final Svg svg;

  private ShimPicture(CaseFile caseFile, PictureStyle style) {
    Setup setup = caseFile.rideCase().setup();
    this.style = style;
    this.palette = style.palette();
    this.above = caseFile.notes().stabilizerMounting() == Mounting.ABOVE;
    this.shim = ShimWords.isShim(setup.shim()) ? setup.shim() : 0;
    this.times = times(shim);
    this.drawnShim = shim * times;
    this.wing = setup.stabilizer();
    this.root = wing.shape().stations().get(0);
    this.radius = setup.fuselage().diameter() / 2;
    double rows = 2.6 * style.fontSize();
    double high = 2 * radius + 0.34 * root.chord();
    this.scale =
        Math.min(
            (style.width() - 2 * MARGIN) / (1.9 * root.chord()),
            (style.height() - 2 * MARGIN - rows) / high);
    double room = style.height() - rows;
    double middle = room / 2 + 1.3 * style.fontSize();
    double offCentre = (high / 2 - radius) * scale;
    this.axisY = above ? middle + offCentre : middle - offCentre;
    ShimWords words = ShimWords.of(setup.shim(), caseFile.notes().stabilizerMounting());
    this.svg =
        new Svg(
            style,
            "The stabilizer on the fuselage from the side, bow to the right",
            words.headline() + " " + words.fitting() + " " + scaleWords(caseFile),
            "data-pixels-per-metre",
            Double.toString(scale),
            "data-times-steeper",
            Long.toString(times));
  }

  /**
   * The picture.
   *
   * @param caseFile the case
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(CaseFile caseFile, PictureStyle style) {
    return new ShimPicture(caseFile, style).draw();
  }

  private static long times(double shim) {
    double degrees = Math.abs(Shown.degrees(shim));
    return degrees == 0 || degrees >= PLAIN_DEGREES
        ? 1
        : Math.round(Math.ceil(PLAIN_DEGREES / degrees));
  }

  /**
   * What to know of the picture's scale.
   *
   * @param caseFile the case
   * @return one sentence
   */
  public static String scaleWords(CaseFile caseFile) {
    double shim = caseFile.rideCase().setup().shim();
    long times = times(ShimWords.isShim(shim) ? shim : 0);
    return times == 1
        ? "Drawn to scale."
        : "Drawn to scale, but for the wedge: " + times + " times as steep as it is.";
  }

  private String draw() {
    tube();
    // The seat's front and back ends, ahead of the quarter chord, and how thick the wedge is there
    double half = SEAT * root.chord();
    double slope = Math.tan(Math.abs(drawnShim));
    boolean thickFront = ShimWords.thickEndInFront(shim, above ? Mounting.ABOVE : Mounting.BELOW);
    double front = shim != 0 && thickFront ? 2 * half * slope : 0;
    double back = shim != 0 && !thickFront ? 2 * half * slope : 0;
    wing(half, (front + back) / 2);
    if (shim != 0) {
      svg.polygon(List.of(out(half, 0), out(half, front), out(-half, back), out(-half, 0)), "shim")
          .with("fill", palette.action())
          .with("stroke", palette.action())
          .with("stroke-width", 1)
          .with("stroke-linejoin", "round")
          .end();
    }
    bolts(half);
    words(thickFront, half, Math.max(front, back));
    return svg.text();
  }

  /** A place ahead of the stabilizer's quarter chord and out from the fuselage's skin. */
  private Dot out(double ahead, double outward) {
    double up = above ? radius + outward : -radius - outward;
    return new Dot(style.width() / 2 + ahead * scale, axisY - up * scale);
  }

  /** A stretch of the fuselage, open at both ends as it goes on. */
  private void tube() {
    double x0 = MARGIN;
    double x1 = style.width() - MARGIN;
    double top = axisY - radius * scale;
    double bottom = axisY + radius * scale;
    svg.box(new Box(x0, top, x1 - x0, bottom - top), "fuselage")
        .with("fill", palette.edge())
        .with("fill-opacity", "0.18")
        .end();
    for (double y : new double[] {top, bottom}) {
      svg.line(new Dot(x0, y), new Dot(x1, y), "fuselage-skin")
          .with("stroke", palette.ink())
          .with("stroke-width", 1.5)
          .end();
    }
  }

  /** The root section, lifted off the skin until it rests on the wedge's middle. */
  private void wing(double half, double wedge) {
    double[] x = root.section().shape().x();
    double[] y = root.section().shape().y();
    double angle = wing.setting() + drawnShim;
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    List<double[]> turned = new ArrayList<>();
    double reach = Double.POSITIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      double ahead = (QUARTER - x[i]) * root.chord();
      double up = y[i] * root.chord();
      double[] at = {ahead * cos - up * sin, ahead * sin + up * cos};
      turned.add(at);
      if (Math.abs(at[0]) <= half) {
        reach = Math.min(reach, above ? at[1] - along(at[0], wedge) : -at[1] - along(at[0], wedge));
      }
    }
    double gap = Double.isFinite(reach) ? -reach : 0;
    List<Dot> dots = new ArrayList<>();
    for (double[] at : turned) {
      dots.add(out(at[0], (above ? at[1] : -at[1]) + gap));
    }
    svg.polygon(dots, "stabilizer")
        .with("fill", palette.back())
        .with("fill-opacity", "0.3")
        .with("stroke", palette.back())
        .with("stroke-width", style.line())
        .with("stroke-linejoin", "round")
        .end();
  }

  /** How far out the wedge's face lies at a place of the seat. */
  private double along(double ahead, double middle) {
    double slope = Math.tan(drawnShim);
    return middle + (above ? slope : -slope) * ahead;
  }

  private void bolts(double half) {
    for (double at : new double[] {-0.55 * half, 0.55 * half}) {
      Dot head = out(at, 0.26 * root.chord());
      Dot end = out(at, -1.6 * radius);
      svg.line(head, end, "bolt")
          .with("stroke", palette.ink())
          .with("stroke-width", 1.2)
          .with("stroke-dasharray", "4 2")
          .end();
    }
  }

  private void words(boolean thickFront, double half, double thickness) {
    double size = style.fontSize();
    double tubeMiddle = axisY + 0.35 * size;
    double right = style.width() - MARGIN - 4;
    svg.words("front", new Dot(right - ARROW - 3, tubeMiddle), "end", size, false, palette.muted());
    svg.polygon(
            List.of(
                new Dot(right, axisY),
                new Dot(right - ARROW, axisY - 0.5 * ARROW),
                new Dot(right - ARROW, axisY + 0.5 * ARROW)),
            "front-arrow")
        .with("fill", palette.muted())
        .end();
    svg.words("back", new Dot(MARGIN + 4, tubeMiddle), "start", size, false, palette.muted());
    double far = above ? MARGIN + size : style.height() - MARGIN - 2;
    svg.words(
        shim == 0 ? "no shim" : "leading edge " + (shim > 0 ? "up" : "down"),
        new Dot(right, far),
        "end",
        size,
        true,
        palette.back());
    if (shim != 0) {
      double x = thickFront ? right : MARGIN + 4;
      Dot at = new Dot(x, above ? far + 1.3 * size : far - 1.3 * size);
      Dot thick = out(thickFront ? half : -half, thickness / 2);
      svg.words("thick end", at, thickFront ? "end" : "start", size, true, palette.action());
      double tip =
          thickFront
              ? x - 0.5 * TextSize.width("thick end", size)
              : x + 0.4 * TextSize.width("thick end", size);
      svg.line(new Dot(tip, above ? at.y() + 4 : at.y() - size), thick, "leader")
          .with("stroke", palette.action())
          .with("stroke-width", 1)
          .end();
    }
  }
}
