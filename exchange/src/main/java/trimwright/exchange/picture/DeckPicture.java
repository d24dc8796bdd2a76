package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.kernel.rig.Board;
import trimwright.kernel.rig.Mast;
import trimwright.kernel.rig.Rider;

/**
 * The deck from above, to scale, bow to the right: where the mast stands in its track and where the
 * feet go, each measured from the mast's axis.
 *
 * <p>A case gives the board's length and width but neither its outline nor where its middle is: the
 * outline is a plain one, and the middle is taken at the board's mass centre, as the side view
 * does. So nothing here is measured from the tail.
 */
public final class DeckPicture {
  /** A foot's length over the body's height: 0.152 (from memory, anthropometry of adults). */
  private static final double FOOT_OF_HEIGHT = 0.152;

  /** Half of a foot's width [m]. Chosen. */
  private static final double HALF_FOOT = 0.05;

  /** Half the distance of the track's two rails, and how far they are drawn either way [m]. */
  private static final double HALF_GAUGE = 0.045;

  private static final double RAIL = 0.2;

  private static final int OUTLINE_STEPS = 28;
  private static final double MARGIN = 4;
  private static final double HEAD = 7;
  private static final double THIN = 1;

  /** From one row of distances to the next, in letters' heights. */
  private static final double ROW = 1.9;

  private final PictureStyle style;
  private final Palette palette;
  private final Measures measures;
  private final Board board;
  private final Mast mast;
  private final Rider rider;
  private final double scale;
  private final double tail;
  private final double middleY;
  private final Svg svg;

  private DeckPicture(CaseFile caseFile, Measures measures, PictureStyle style) {
    this.style = style;
    this.palette = style.palette();
    this.measures = measures;
    this.board = caseFile.rideCase().setup().board();
    this.mast = caseFile.rideCase().setup().mast();
    this.rider = caseFile.rideCase().rider();
    double room = style.height() - 2 * MARGIN - rows();
    double from = Math.min(boardTail(), backFoot() - HALF_FOOT);
    double to = Math.max(boardTail() + board.length(), frontFoot() + HALF_FOOT);
    this.scale = Math.min((style.width() - 2 * MARGIN) / (to - from), room / widest());
    double drawn = (to - from) * scale;
    this.tail = (style.width() - drawn) / 2 - from * scale;
    this.middleY = MARGIN + Math.max(widest() * scale, room) / 2;
    this.svg =
        new Svg(
            style,
            "The deck from above, bow to the right",
            description(),
            "data-pixels-per-metre",
            Double.toString(scale));
  }

  /**
   * The picture.
   *
   * @param caseFile the case
   * @param measures units of its numbers
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(CaseFile caseFile, Measures measures, PictureStyle style) {
    return new DeckPicture(caseFile, measures, style).draw();
  }

  private String draw() {
    svg.polygon(outline(), "board")
        .with("fill", palette.surface())
        .with("stroke", palette.ink())
        .with("stroke-width", 1.5)
        .with("stroke-linejoin", "round")
        .end();
    track();
    foot(backFoot(), palette.back(), false);
    foot(frontFoot(), palette.front(), true);
    axis();
    double size = style.fontSize();
    double y = middleY + widest() * scale / 2 + 0.9 * size;
    dimension(frontFoot(), y, palette.front());
    dimension(backFoot(), astride() ? y : y + ROW * size, palette.back());
    names();
    return svg.text();
  }

  /** Height of what stands below the board [px]: one or two rows of distances. */
  private double rows() {
    return (2.4 + (astride() ? 0 : ROW)) * style.fontSize();
  }

  /** Whether the feet stand on either side of the mast, so that their distances fit in one row. */
  private boolean astride() {
    return frontFoot() > 0 && backFoot() < 0;
  }

  private double widest() {
    return Math.max(board.width(), footLength() + 0.02);
  }

  private double footLength() {
    return FOOT_OF_HEIGHT * rider.height();
  }

  private double frontFoot() {
    return rider.frontFoot() - board.track();
  }

  private double backFoot() {
    return rider.backFoot() - board.track();
  }

  private double boardTail() {
    return board.massCentreAhead() - board.track() - board.length() / 2;
  }

  private double x(double ahead) {
    return tail + ahead * scale;
  }

  private Dot dot(double ahead, double across) {
    return new Dot(x(ahead), middleY - across * scale);
  }

  /** A plain outline: widest near the middle, a round nose, a square tail with round corners. */
  private List<Dot> outline() {
    List<Dot> port = new ArrayList<>();
    double half = board.length() / 2;
    double middle = boardTail() + half;
    for (int i = 0; i <= OUTLINE_STEPS; i++) {
      // Cosine spacing: the ends are round and need more points
      double t = -Math.cos(Math.PI * i / OUTLINE_STEPS);
      double width =
          t < 0
              ? (1 - 0.28 * t * t) * Math.min(1, Math.pow((1 + t) / 0.05, 0.3))
              : Math.pow(1 - Math.pow(t, 2.4), 0.6);
      port.add(dot(middle + t * half, width * board.width() / 2));
    }
    List<Dot> all = new ArrayList<>(port);
    for (int i = port.size() - 1; i >= 0; i--) {
      all.add(new Dot(port.get(i).x(), 2 * middleY - port.get(i).y()));
    }
    return all;
  }

  private void track() {
    for (int side = -1; side <= 1; side += 2) {
      double across = side * HALF_GAUGE;
      svg.line(dot(-board.track() - RAIL, across), dot(-board.track() + RAIL, across), "track")
          .with("stroke", palette.edge())
          .with("stroke-width", 2)
          .end();
    }
    svg.line(
            dot(-board.track(), HALF_GAUGE * 1.9),
            dot(-board.track(), -HALF_GAUGE * 1.9),
            "track-middle")
        .with("stroke", palette.muted())
        .with("stroke-width", 1.5)
        .with("stroke-dasharray", "3 2")
        .end();
  }

  /** The mast's foot on the deck, and its axis across the board and down to the distances. */
  private void axis() {
    double half = mast.chord() / 2;
    double thick = Math.max(mast.thickness() / 2, 1.5 / scale);
    svg.polygon(
            List.of(dot(-half, thick), dot(half, thick), dot(half, -thick), dot(-half, -thick)),
            "mast")
        .with("fill", palette.ink())
        .end();
    double edge = widest() * scale / 2;
    svg.line(
            new Dot(x(0), middleY - edge),
            new Dot(x(0), middleY + edge + rows() - 0.4 * style.fontSize()),
            "mast-axis")
        .with("stroke", palette.ink())
        .with("stroke-width", THIN)
        .with("stroke-dasharray", "9 3 2 3")
        .end();
  }

  private void foot(double ahead, String colour, boolean front) {
    double half = footLength() / 2;
    List<Dot> outline = new ArrayList<>();
    for (int i = 0; i < OUTLINE_STEPS; i++) {
      double turn = 2 * Math.PI * i / OUTLINE_STEPS;
      // A sole: toes broader than the heel
      double across = half * Math.sin(turn);
      double broad = HALF_FOOT * (0.82 + 0.18 * Math.sin(turn));
      outline.add(dot(ahead + broad * Math.cos(turn), across));
    }
    Svg sole =
        svg.polygon(outline, front ? "front-foot" : "back-foot")
            .with("fill", colour)
            .with("fill-opacity", "0.22")
            .with("stroke", colour)
            .with("stroke-width", style.line());
    if (!front) {
      sole.with("stroke-dasharray", "6 4");
    }
    sole.end();
    svg.circle(dot(ahead, 0), 2.5, "foot-middle").with("fill", colour).end();
  }

  /** From the mast's axis to the middle of a foot. */
  private void dimension(double ahead, double y, String colour) {
    svg.line(dot(ahead, 0), new Dot(x(ahead), y + 3), "extension")
        .with("stroke", colour)
        .with("stroke-width", THIN)
        .end();
    double size = style.fontSize();
    Dot from = new Dot(x(0), y);
    Dot to = new Dot(x(ahead), y);
    double length = to.x() - from.x();
    if (Math.abs(length) > HEAD) {
      svg.line(from, to, "distance").with("stroke", colour).with("stroke-width", 1.5).end();
      double back = Math.copySign(HEAD, length);
      svg.polygon(
              List.of(
                  to,
                  new Dot(to.x() - back, y - HEAD * 0.4),
                  new Dot(to.x() - back, y + HEAD * 0.4)),
              "distance-head")
          .with("fill", colour)
          .end();
    }
    String text = length(Math.abs(ahead));
    boolean narrow = Math.abs(length) < TextSize.width(text, size) + 2 * HEAD;
    double middle = (from.x() + to.x()) / 2;
    if (narrow) {
      // Beside the arrow, on the side away from the other foot where there is one
      boolean left = ahead < 0;
      double end = left ? Math.min(from.x(), to.x()) - 4 : Math.max(from.x(), to.x()) + 4;
      svg.words(text, new Dot(end, y + 0.35 * size), left ? "end" : "start", size, true, colour);
    } else {
      svg.words(text, new Dot(middle, y + 1.05 * size), "middle", size, true, colour);
    }
  }

  private void names() {
    double size = style.fontSize();
    double top = middleY - widest() * scale / 2;
    double level = middleY + 0.35 * size;
    svg.words(
        "nose",
        new Dot(x(boardTail() + board.length()) - 8, level),
        "end",
        size,
        false,
        palette.muted());
    svg.words("tail", new Dot(x(boardTail()) + 8, level), "start", size, false, palette.muted());
    svg.words("mast", new Dot(x(0) + 4, top + size), "start", size, false, palette.ink());
  }

  private String length(double metres) {
    Unit unit = measures.unit(Unit.MILLIMETRE);
    int decimals = measures.shown(Unit.MILLIMETRE).decimals();
    return Shown.decimals(unit.fromSi(metres), decimals) + " " + unit.symbol();
  }

  private String place(double ahead) {
    return length(Math.abs(ahead)) + (ahead < 0 ? " behind" : " ahead of") + " the mast's axis";
  }

  private String description() {
    double track = board.track();
    return "The middle of the front foot stands "
        + place(frontFoot())
        + ", that of the back foot "
        + place(backFoot())
        + "; the feet are "
        + length(rider.stance())
        + " apart. The mast stands "
        + (Math.abs(Shown.mm(track)) < 0.5
            ? "in the middle of its track"
            : length(Math.abs(track))
                + (track > 0 ? " forward" : " back")
                + " from the middle of its track")
        + ". The board is "
        + length(board.length())
        + " long and "
        + length(board.width())
        + " wide; its outline and where its middle is are drawn plainly, for the case does not say.";
  }
}
