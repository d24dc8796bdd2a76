package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimOutcome;

/** The speeds that matter along one line: rideable window, even feet, level deck, wished speed. */
public final class SpeedRuler {
  private static final double SIDE = 16;
  private static final double BAR = 12;
  private static final double TICK_ROOM = 5;

  /** Rows of words above the line, and from one to the next in letters' heights. */
  private static final int ROWS = 2;

  private static final double ROW = 1.2;

  /** From the line up to the lowest words [px], and from a mark to words beside it [px]. */
  private static final double STEM = 4;

  private static final double BESIDE = 4;

  private static final List<String> ANCHORS = List.of("middle", "end", "start");

  private final PictureStyle style;
  private final Palette palette;
  private final Unit unit;
  private final Curve curve;
  private final double from;
  private final double to;
  private final double top;
  private final Svg svg;
  private List<Placed> best = List.of();
  private int least = Integer.MAX_VALUE;

  private SpeedRuler(CaseFile caseFile, Curve curve, Measures measures, PictureStyle style) {
    this.style = style;
    this.palette = style.palette();
    this.unit = measures.unit(Unit.KILOMETRE_PER_HOUR);
    this.curve = curve;
    this.from =
        unit.fromSi(curve.outcomes().stream().mapToDouble(TrimOutcome::speed).min().orElseThrow());
    this.to =
        unit.fromSi(curve.outcomes().stream().mapToDouble(TrimOutcome::speed).max().orElseThrow());
    this.top = style.height() - BAR - 1.35 * style.fontSize();
    this.svg =
        new Svg(
            style,
            "The speeds of " + caseFile.name(),
            "A line of speeds from "
                + shown(from, 0)
                + " to "
                + shown(to, 0)
                + " "
                + unit.symbol()
                + ".");
  }

  /**
   * The picture.
   *
   * @param caseFile the case
   * @param curve its curve over at least two speeds; its ends are those of the line
   * @param speed the speed that the picture is about [m/s]
   * @param measures units of its numbers
   * @param style how to draw
   * @return SVG text
   */
  public static String svg(
      CaseFile caseFile, Curve curve, double speed, Measures measures, PictureStyle style) {
    return new SpeedRuler(caseFile, curve, measures, style)
        .draw(speed, caseFile.rideCase().rider().wishedSpeed());
  }

  private record Mark(double speed, String name, String colour, boolean leads) {}

  private String draw(double speed, double wished) {
    Box bar = new Box(x(from), top, x(to) - x(from), BAR);
    svg.box(bar, "speeds").with("fill", palette.edge()).with("fill-opacity", "0.18").end();
    for (SpeedInterval stretch : curve.rideableIntervals()) {
      double left = x(Math.max(from, unit.fromSi(stretch.from())));
      double right = x(Math.min(to, unit.fromSi(stretch.to())));
      if (right <= left) {
        continue;
      }
      svg.box(new Box(left, top, right - left, BAR), "rideable")
          .with("fill", palette.window())
          .with("stroke", palette.good())
          .with("stroke-width", 1.2)
          .end();
    }
    ticks();
    List<Mark> marks = marks(speed, wished);
    // The last ones are named in the sheet's figures too: they go where all find no room
    for (int most = marks.size(); best.isEmpty() && most > 0; most--) {
      place(marks.subList(0, most), 0, new ArrayList<>(), 0);
    }
    best.forEach(this::mark);
    return svg.text();
  }

  /**
   * A mark with a place for its words.
   *
   * @param mark which one
   * @param box of its words
   * @param stem from the line up to them
   * @param anchor how the words hang on the mark
   * @param cost less is better
   */
  private record Placed(Mark mark, Box box, Box stem, String anchor, int cost) {}

  /** Tries every row and side for every mark, and keeps the lowest arrangement without a clash. */
  private void place(List<Mark> marks, int next, List<Placed> so, int cost) {
    if (cost >= least) {
      return;
    }
    if (next == marks.size()) {
      best = List.copyOf(so);
      least = cost;
      return;
    }
    for (Placed placed : places(marks.get(next))) {
      if (so.stream().noneMatch(other -> clash(placed, other))) {
        so.add(placed);
        place(marks, next + 1, so, cost + placed.cost());
        so.remove(so.size() - 1);
      }
    }
  }

  private static boolean clash(Placed a, Placed b) {
    return a.box().overlaps(b.box()) || a.box().overlaps(b.stem()) || b.box().overlaps(a.stem());
  }

  private List<Placed> places(Mark mark) {
    double at = x(unit.fromSi(mark.speed()));
    double size = style.fontSize();
    double wide = TextSize.width(words(mark), size);
    List<Placed> all = new ArrayList<>();
    for (int row = 0; row < ROWS; row++) {
      double foot = top - STEM - row * ROW * size;
      double[] lefts = {at - wide / 2, at - wide - BESIDE, at + BESIDE};
      for (int side = 0; side < lefts.length; side++) {
        Box box = new Box(lefts[side], foot - size, wide, size);
        double high = side == 0 ? foot : foot - 0.8 * size;
        Box stem = new Box(at - 2, high, 4, top - high);
        if (box.x() >= 0 && box.right() <= style.width() && box.y() >= 0) {
          all.add(new Placed(mark, box, stem, ANCHORS.get(side), 2 * row + (side == 0 ? 0 : 1)));
        }
      }
    }
    return all;
  }

  private void mark(Placed placed) {
    Mark mark = placed.mark();
    double at = x(unit.fromSi(mark.speed()));
    svg.line(new Dot(at, placed.stem().y()), new Dot(at, top + BAR), "mark")
        .with("stroke", mark.colour())
        .with("stroke-width", mark.leads() ? 3 : 2)
        .end();
    double x =
        switch (placed.anchor()) {
          case "end" -> placed.box().right();
          case "start" -> placed.box().x();
          default -> at;
        };
    double size = style.fontSize();
    svg.words(
        words(mark),
        new Dot(x, placed.box().bottom() - 0.18 * size),
        placed.anchor(),
        size,
        mark.leads(),
        mark.colour());
  }

  private String words(Mark mark) {
    return mark.name() + " " + shown(unit.fromSi(mark.speed()), 1);
  }

  private List<Mark> marks(double speed, double wished) {
    List<Mark> marks = new ArrayList<>();
    boolean asWished = Math.abs(speed - wished) < Unit.KILOMETRE_PER_HOUR.toSi(0.05);
    marks.add(new Mark(speed, asWished ? "you wish" : "this sheet", palette.ink(), true));
    if (!asWished) {
      marks.add(new Mark(wished, "you wish", palette.ink(), false));
    }
    curve
        .rideableWindow()
        .ifPresent(
            window -> {
              marks.add(new Mark(window.from(), "slowest", palette.good(), false));
              marks.add(new Mark(window.to(), "fastest", palette.good(), false));
            });
    for (EvenFeetSpeed even : curve.evenFeetSpeeds()) {
      marks.add(new Mark(even.speed(), "even feet", palette.front(), false));
    }
    if (curve.levelSpeed().isPresent()) {
      marks.add(new Mark(curve.levelSpeed().getAsDouble(), "level", palette.action(), false));
    }
    marks.removeIf(mark -> unit.fromSi(mark.speed()) < from || unit.fromSi(mark.speed()) > to);
    return marks;
  }

  private void ticks() {
    double size = style.fontSize();
    int most = Math.max(2, (int) (style.width() / (TICK_ROOM * size)));
    List<Double> ticks = Ticks.between(from, to, most);
    for (int i = 0; i < ticks.size(); i++) {
      double at = x(ticks.get(i));
      svg.line(new Dot(at, top + BAR), new Dot(at, top + BAR + 3), "tick")
          .with("stroke", palette.edge())
          .with("stroke-width", 1)
          .end();
      String text = shown(ticks.get(i), 0) + (i == ticks.size() - 1 ? " " + unit.symbol() : "");
      svg.words(
          text,
          new Dot(at, top + BAR + 1.15 * size),
          i == ticks.size() - 1 ? "end" : "middle",
          size,
          false,
          palette.muted());
    }
  }

  private double x(double speed) {
    return SIDE + (speed - from) / (to - from) * (style.width() - 2 * SIDE);
  }

  private static String shown(double value, int decimals) {
    return Shown.decimals(value, decimals);
  }
}
