package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Amounts;
import trimwright.exchange.words.Shown;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.TrimPoint;

/**
 * A craft and its rider from the side, bow to the right, to scale and pitched as computed, with the
 * forces as arrows as long as they are strong.
 */
public final class SideView {
  private static final double THIN = 1.5;
  private static final double HEAD = 8;

  /** Half the width of a foot seen from its toes, and its height [m]. */
  private static final double HALF_FOOT = 0.055;

  private static final double FOOT_HEIGHT = 0.045;

  private final PictureStyle style;
  private final Measures measures;
  private final Amounts amounts;
  private final Palette palette;
  private final CaseFile caseFile;
  private final Optional<TrimPoint> trim;
  private final SideGeometry place;
  private final List<SideForce> forces;
  private final SideFrame frame;
  private final LabelPlacer placer;
  private final List<Label> labels = new ArrayList<>();
  private final Svg svg;

  private SideView(
      CaseFile caseFile, Optional<TrimPoint> trim, Measures measures, PictureStyle style) {
    RideCase rideCase = caseFile.rideCase();
    this.style = style;
    this.measures = measures;
    this.amounts = Amounts.of(measures);
    this.palette = style.palette();
    this.caseFile = caseFile;
    this.trim = trim;
    this.place = new SideGeometry(rideCase, trim.map(TrimPoint::pitch).orElse(0.0));
    this.forces =
        trim.map(point -> SideForces.of(rideCase, point, place, palette, measures))
            .orElse(List.of());
    this.frame = SideFrame.of(rideCase, place, forces, style);
    this.placer =
        new LabelPlacer(new Box(2, 2, style.width() - 4, style.height() - 4), style.fontSize());
    this.svg =
        new Svg(
            style,
            "Side view of " + caseFile.name() + trim.map(p -> " at " + speed(p)).orElse(""),
            trim.map(this::description).orElse("The craft with its deck level; no trim here."),
            "data-pixels-per-metre",
            Double.toString(frame.pixelsPerMetre()),
            "data-pixels-per-newton",
            Double.toString(frame.pixelsPerNewton()));
  }

  /**
   * The picture.
   *
   * @param caseFile the case
   * @param point where it trims
   * @param measures units of its numbers
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(
      CaseFile caseFile, TrimPoint point, Measures measures, PictureStyle style) {
    return new SideView(caseFile, Optional.of(point), measures, style).draw();
  }

  /**
   * The craft alone with its deck level, for a speed without a trim: no forces, no loads.
   *
   * @param caseFile the case
   * @param measures units of its numbers
   * @param style how to draw
   * @return SVG text
   */
  public static String withoutTrim(CaseFile caseFile, Measures measures, PictureStyle style) {
    return new SideView(caseFile, Optional.empty(), measures, style).draw();
  }

  private String draw() {
    water();
    craft();
    foot(place.frontFoot(), "front-foot", palette.front());
    foot(place.backFoot(), "back-foot", palette.back());
    trim.ifPresent(this::pressureCentre);
    forces.forEach(this::arrow);
    scales();
    trim.ifPresent(this::captions);
    labels.add(
        new Label(
            List.of("waterline", "water"),
            "",
            new Dot(style.width() - 4, frame.waterY()),
            palette.muted(),
            false,
            Label.Side.BELOW));
    for (Label label : labels) {
      placer
          .place(label)
          .ifPresent(
              placed -> {
                placer
                    .findLeader(placed)
                    .ifPresent(
                        l ->
                            svg.line(l.from(), l.to(), "leader")
                                .with("stroke", palette.muted())
                                .with("stroke-width", 1)
                                .end());
                svg.label(placed);
              });
    }
    return svg.text();
  }

  private void water() {
    double y = frame.waterY();
    svg.box(new Box(0, 0, style.width(), style.height()), "surface")
        .with("fill", palette.surface())
        .end();
    svg.box(new Box(0, y, style.width(), Math.max(0, style.height() - y)), "water")
        .with("fill", palette.edge())
        .with("fill-opacity", "0.1")
        .end();
    svg.line(new Dot(0, y), new Dot(style.width(), y), "waterline")
        .with("stroke", palette.edge())
        .with("stroke-width", style.line())
        .end();
    placer.avoid(List.of(new Stroke(new Dot(0, y), new Dot(style.width(), y))));
  }

  private void craft() {
    shape(place.mast(), "mast", palette.surface(), palette.ink());
    place.findDrive().ifPresent(d -> shape(d, "drive", palette.surface(), palette.ink()));
    place.findPropeller().ifPresent(this::propeller);
    shape(place.fuselage(), "fuselage", palette.surface(), palette.ink());
    shadow(place.frontWingShadow(), "front-wing-shadow", palette.front());
    shadow(place.stabilizerShadow(), "stabilizer-shadow", palette.back());
    shape(place.frontWing(), "front-wing", palette.front(), palette.front());
    shape(place.stabilizer(), "stabilizer", palette.back(), palette.back());
    shape(place.board(), "board", palette.surface(), palette.ink());
  }

  private void propeller(List<Spot> disc) {
    List<Dot> dots = frame.dots(disc);
    svg.line(dots.get(0), dots.get(1), "propeller")
        .with("stroke", palette.ink())
        .with("stroke-width", style.line())
        .with("stroke-linecap", "round")
        .end();
    avoid(dots, false);
  }

  private void shape(List<Spot> outline, String kind, String fill, String stroke) {
    List<Dot> dots = frame.dots(outline);
    svg.polygon(dots, kind)
        .with("fill", fill)
        .with("stroke", stroke)
        .with("stroke-width", THIN)
        .with("stroke-linejoin", "round")
        .end();
    avoid(dots, true);
  }

  private void shadow(List<Spot> outline, String kind, String fill) {
    svg.polygon(frame.dots(outline), kind).with("fill", fill).with("fill-opacity", "0.25").end();
  }

  private void pressureCentre(TrimPoint point) {
    Spot centre = place.deck(point.footPressureAheadOfMast(), 0);
    Dot at = frame.dot(centre);
    double size = 6;
    svg.polygon(
            List.of(
                at,
                new Dot(at.x() - size, at.y() + 1.7 * size),
                new Dot(at.x() + size, at.y() + 1.7 * size)),
            "foot-pressure")
        .with("fill", palette.ink())
        .with("stroke", palette.surface())
        .with("stroke-width", 1)
        .end();
  }

  private void foot(Spot foot, String kind, String colour) {
    double cos = Math.cos(place.deckPitch());
    double sin = Math.sin(place.deckPitch());
    double[][] outline = {
      {-1, 0}, {1, 0}, {1, 0.5}, {0.7, 0.9}, {0.3, 1}, {-0.3, 1}, {-0.7, 0.9}, {-1, 0.5}
    };
    List<Spot> spots = new ArrayList<>();
    for (double[] p : outline) {
      double ahead = p[0] * HALF_FOOT;
      double above = p[1] * FOOT_HEIGHT;
      spots.add(foot.plus(ahead * cos - above * sin, ahead * sin + above * cos));
    }
    shape(spots, kind, colour, colour);
  }

  private void arrow(SideForce force) {
    double scale = frame.metresPerNewton();
    Dot tail = frame.dot(force.tail(scale));
    Dot head = frame.dot(force.head(scale));
    double length = tail.distance(head);
    if (length > 0.5) {
      double size = Math.min(HEAD, length);
      double ux = (head.x() - tail.x()) / length;
      double uy = (head.y() - tail.y()) / length;
      Dot neck = new Dot(head.x() - ux * size, head.y() - uy * size);
      Svg shaft =
          svg.line(tail, neck, force.kind())
              .with("stroke", force.colour())
              .with("stroke-width", style.line());
      if (force.dashed()) {
        shaft.with("stroke-dasharray", "7 4");
      }
      shaft.end();
      double half = size * 0.55;
      svg.polygon(
              List.of(
                  head,
                  new Dot(neck.x() - uy * half, neck.y() + ux * half),
                  new Dot(neck.x() + uy * half, neck.y() - ux * half)),
              force.kind() + "-head")
          .with("fill", force.colour())
          .end();
      avoid(List.of(tail, head), false);
    }
    Dot named = force.towards() ? tail : head;
    labels.add(
        new Label(force.wordings(), force.unit(), named, force.colour(), true, force.rather()));
  }

  private void avoid(List<Dot> dots, boolean closed) {
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 1; i < dots.size(); i++) {
      strokes.add(new Stroke(dots.get(i - 1), dots.get(i)));
    }
    if (closed) {
      strokes.add(new Stroke(dots.get(dots.size() - 1), dots.get(0)));
    }
    placer.avoid(strokes);
  }

  /** A bar of a round length, and an arrow of a round force, both as long as they say. */
  private void scales() {
    double room = 0.2 * style.width();
    Unit lengths = measures.unit(Unit.MILLIMETRE);
    Unit forces = measures.unit(Unit.NEWTON);
    double length = Ticks.roundBelow(lengths.fromSi(room / frame.pixelsPerMetre()));
    double force = Ticks.roundBelow(forces.fromSi(room / frame.pixelsPerNewton()));
    double y = style.height() - 8;
    double bar = lengths.toSi(length) * frame.pixelsPerMetre();
    scale(8, y, bar, "scale-length", Shown.decimals(length, 0), lengths.symbol());
    String text = Shown.decimals(force, 0);
    double arrow = forces.toSi(force) * frame.pixelsPerNewton();
    double width = Math.max(arrow, placer.width(text, forces.symbol()));
    scale(style.width() - 8 - width, y, arrow, "scale-force", text, forces.symbol());
  }

  private void scale(double x, double y, double length, String kind, String text, String unit) {
    svg.polyline(
            List.of(
                new Dot(x, y - 4),
                new Dot(x, y),
                new Dot(x + length, y),
                new Dot(x + length, y - 4)),
            kind)
        .with("stroke", palette.muted())
        .with("stroke-width", THIN)
        .end();
    double height = TextSize.LINE * style.fontSize();
    Box box = new Box(x + 3, y - 3 - height, placer.width(text, unit), height);
    svg.text(text, unit, box, palette.muted());
    placer.keepFree(box.grown(2));
    placer.keepFree(new Box(x, y - 5, length, 7));
  }

  private void captions(TrimPoint point) {
    List<Spot> board = place.board();
    Label pitch =
        new Label(
            List.of(Shown.nose(Shown.degrees(point.pitch()))),
            "",
            frame.dot(board.get(2)),
            palette.ink(),
            true,
            Label.Side.RIGHT);
    labels.add(2, pitch);
    Unit lengths = measures.unit(Unit.MILLIMETRE);
    String centre =
        Shown.decimals(
            lengths.fromSi(point.footPressureAheadOfMast()),
            measures.shown(Unit.MILLIMETRE).decimals());
    Dot below = frame.dot(place.deck(point.footPressureAheadOfMast(), 0));
    labels.add(
        3,
        new Label(
            List.of("pressure centre " + centre, "centre " + centre, centre),
            lengths.symbol(),
            new Dot(below.x(), below.y() + 11),
            palette.ink(),
            true,
            Label.Side.BELOW));
  }

  private String speed(TrimPoint point) {
    return amounts.speed(point.speed());
  }

  private String description(TrimPoint point) {
    return "The deck rides "
        + Shown.nose(Shown.degrees(point.pitch()))
        + " at "
        + speed(point)
        + ". Front foot "
        + amounts.mass(point.frontLeg())
        + ", back foot "
        + amounts.mass(point.backLeg())
        + ", pressure centre "
        + amounts.length(point.footPressureAheadOfMast())
        + " ahead of the mast. Front wing "
        + amounts.force(point.frontWingLift())
        + " up, stabilizer "
        + amounts.force(Math.abs(point.stabilizerLift()))
        + (point.stabilizerLift() < 0 ? " down" : " up")
        + ", thrust "
        + amounts.force(point.thrust())
        + ". The front wing runs "
        + amounts.length(caseFile.rideCase().immersion())
        + " deep.";
  }
}
