package trimwright.exchange.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.kernel.band.Bands;
import trimwright.kernel.band.Spread;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.EvenFeetSpeed;
import trimwright.kernel.trim.SpeedInterval;
import trimwright.kernel.trim.TrimOutcome;

/** One quantity against speed, inside a box of a picture. */
final class CurvePanel {
  private static final double HATCH_STEP = 9;
  private static final double THIN = 1;
  private static final double DOT = 4.5;

  /** How strongly a band covers what lies behind it; its words stay legible on it [1]. */
  private static final double BAND_TINT = 0.14;

  /** Room that bands may take above and below the lines, as a share of the lines' own [1]. */
  private static final double BAND_ROOM = 0.4;

  private final Svg svg;
  private final PictureStyle style;
  private final Palette palette;
  private final Bands bands;
  private final Curve curve;
  private final CurveQuantity quantity;
  private final Measures measures;
  private final Unit speed;
  private final List<CurveQuantity.Line> lines;
  private final SpeedAxis axis;
  private final Box plot;
  private final double low;
  private final double high;
  private final LabelPlacer placer;

  /**
   * A panel.
   *
   * @param box where the curve is drawn; its title stands above, its numbers at the left
   * @param right end of the room for names [px]
   */
  CurvePanel(
      Svg svg,
      PictureStyle style,
      Bands bands,
      CurveQuantity quantity,
      Measures measures,
      SpeedAxis axis,
      Box box,
      double right) {
    this.svg = svg;
    this.style = style;
    this.palette = style.palette();
    this.bands = bands;
    this.curve = bands.curve();
    this.quantity = quantity;
    this.measures = measures;
    this.speed = measures.unit(Unit.KILOMETRE_PER_HOUR);
    this.lines = quantity.lines(measures);
    this.axis = axis;
    this.plot = box;
    double[] range = range(bands, quantity, measures);
    this.low = range[0];
    this.high = range[1];
    this.placer =
        new LabelPlacer(
            new Box(box.x() + 2, box.y() + 1, right - box.x() - 2, box.height() - 2),
            style.fontSize());
  }

  /** The ticks' numbers, for the room they need. */
  static List<String> numbers(
      Bands bands, CurveQuantity quantity, Measures measures, double height, double size) {
    double[] range = range(bands, quantity, measures);
    int steps = steps(height, size);
    int decimals = Ticks.decimals(Ticks.step(range[0], range[1], steps));
    return Ticks.between(range[0], range[1], steps).stream().map(t -> signed(t, decimals)).toList();
  }

  private static int steps(double height, double size) {
    return Math.max(2, Math.min(6, (int) (height / (2.4 * size))));
  }

  /** From the lines, and from their bands as far as these do not make the lines flat. */
  private static double[] range(Bands bands, CurveQuantity quantity, Measures measures) {
    List<CurveQuantity.Line> lines = quantity.lines(measures);
    double low = quantity.always()[0];
    double high = quantity.always()[1];
    double lowest = low;
    double highest = high;
    for (int i = 0; i < bands.points().size(); i++) {
      for (CurveQuantity.Line line : lines) {
        OptionalDouble value = value(line, bands.curve().outcomes().get(i));
        if (value.isPresent()) {
          low = Math.min(low, value.getAsDouble());
          high = Math.max(high, value.getAsDouble());
        }
        Optional<Spread> spread = bands.find(i, line.quantity());
        if (spread.isPresent()) {
          lowest = Math.min(lowest, line.unit().fromSi(spread.get().low()));
          highest = Math.max(highest, line.unit().fromSi(spread.get().high()));
        }
      }
    }
    double room = BAND_ROOM * (high - low);
    low = Math.min(low, Math.max(lowest, low - room));
    high = Math.max(high, Math.min(highest, high + room));
    double margin = 0.08 * (high - low);
    return new double[] {low < 0 ? low - margin : low, high + margin};
  }

  private static OptionalDouble value(CurveQuantity.Line line, TrimOutcome outcome) {
    return outcome.findPoint().map(line::value).orElseGet(OptionalDouble::empty);
  }

  void draw(double marked) {
    title();
    window();
    grid();
    List<Label> labels = new ArrayList<>();
    lines.forEach(this::band);
    for (CurveQuantity.Line line : lines) {
      line(line, labels);
    }
    mark(marked, labels);
    markers(labels);
    svg.box(plot, "plot")
        .with("fill", "none")
        .with("stroke", palette.edge())
        .with("stroke-width", THIN)
        .end();
    placer.avoid(
        List.of(new Stroke(new Dot(plot.right(), plot.y()), new Dot(plot.right(), plot.bottom()))));
    for (Label label : labels) {
      placer.place(label).ifPresent(this::draw);
    }
  }

  private void draw(PlacedLabel placed) {
    placer
        .findLeader(placed)
        .ifPresent(
            l ->
                svg.line(l.from(), l.to(), "leader")
                    .with("stroke", palette.muted())
                    .with("stroke-width", THIN)
                    .end());
    svg.label(placed);
  }

  private void title() {
    double height = TextSize.LINE * style.fontSize();
    Box box =
        new Box(
            plot.x(),
            plot.y() - height - 3,
            placer.width(quantity.title(), quantity.unit(measures)),
            height);
    svg.text(quantity.title(), quantity.unit(measures), box, palette.ink());
  }

  /** The rideable stretches as tint, everything else hatched. */
  private void window() {
    double at = axis.from();
    for (SpeedInterval interval : curve.rideableIntervals()) {
      double from = axis.clamped(speed.fromSi(interval.from()));
      double to = axis.clamped(speed.fromSi(interval.to()));
      if (to > from) {
        hatch(axis.x(at), axis.x(from));
        svg.box(new Box(axis.x(from), plot.y(), axis.x(to) - axis.x(from), plot.height()), "window")
            .with("fill", palette.window())
            .end();
        at = to;
      }
    }
    hatch(axis.x(at), axis.x(axis.to()));
  }

  /** Slanting lines between two upright ones; drawn one by one, as a pattern would need an id. */
  private void hatch(double left, double right) {
    StringBuilder path = new StringBuilder();
    double height = plot.height();
    // All hatches of a panel hang on one grid, so that neighbours meet.
    double first = plot.x() + Math.ceil((left - plot.x()) / HATCH_STEP) * HATCH_STEP;
    for (double x = first; x < right + height; x += HATCH_STEP) {
      // The line runs from (x, top) down to (x - height, bottom).
      double start = Math.max(0, x - right);
      double end = Math.min(height, x - left);
      if (end > start) {
        path.append('M').append(Svg.number(x - start)).append(' ');
        path.append(Svg.number(plot.y() + start)).append('L').append(Svg.number(x - end));
        path.append(' ').append(Svg.number(plot.y() + end));
      }
    }
    if (!path.isEmpty()) {
      svg.element("path", "hatch")
          .with("d", path.toString())
          .with("stroke", palette.edge())
          .with("stroke-width", THIN)
          .with("stroke-opacity", "0.45")
          .with("fill", "none")
          .end();
    }
  }

  private void grid() {
    int steps = steps(plot.height(), style.fontSize());
    int decimals = Ticks.decimals(Ticks.step(low, high, steps));
    double height = TextSize.LINE * style.fontSize();
    for (double tick : Ticks.between(low, high, steps)) {
      double y = y(tick);
      boolean zero = Math.abs(tick) < 1e-9;
      svg.line(new Dot(plot.x(), y), new Dot(plot.right(), y), zero ? "zero" : "tick")
          .with("stroke", palette.edge())
          .with("stroke-width", zero ? 1.5 : 0.5)
          .end();
      String text = signed(tick, decimals);
      double width = placer.width(text, "");
      Box box = new Box(plot.x() - width - 5, y - height / 2, width, height);
      svg.text(text, "", box, palette.muted());
    }
  }

  /** The band as a pale area behind its line, cut at the panel's edges. */
  private void band(CurveQuantity.Line line) {
    List<Dot> upper = new ArrayList<>();
    List<Dot> lower = new ArrayList<>();
    for (int i = 0; i < bands.points().size(); i++) {
      Optional<Spread> spread = bands.find(i, line.quantity());
      if (spread.isEmpty()) {
        area(line, upper, lower);
        upper.clear();
        lower.clear();
        continue;
      }
      double x = axis.x(speed.fromSi(curve.outcomes().get(i).speed()));
      upper.add(new Dot(x, within(y(line.unit().fromSi(spread.get().high())))));
      lower.add(0, new Dot(x, within(y(line.unit().fromSi(spread.get().low())))));
    }
    area(line, upper, lower);
  }

  private void area(CurveQuantity.Line line, List<Dot> upper, List<Dot> lower) {
    if (upper.size() < 2) {
      return;
    }
    List<Dot> around = new ArrayList<>(upper);
    around.addAll(lower);
    svg.polygon(around, "band")
        .with("fill", paint(line.hue()))
        .with("fill-opacity", BAND_TINT)
        .end();
  }

  private double within(double y) {
    return Math.max(plot.y(), Math.min(plot.bottom(), y));
  }

  private void line(CurveQuantity.Line line, List<Label> labels) {
    List<Dot> run = new ArrayList<>();
    Dot last = null;
    for (TrimOutcome outcome : curve.outcomes()) {
      OptionalDouble value =
          outcome.findPoint().map(p -> line.value(p)).orElseGet(OptionalDouble::empty);
      if (value.isPresent()) {
        last = new Dot(axis.x(speed.fromSi(outcome.speed())), y(value.getAsDouble()));
        run.add(last);
      } else {
        run(line, run);
        run.clear();
      }
    }
    run(line, run);
    if (last != null) {
      labels.add(
          new Label(List.of(line.name()), "", last, paint(line.hue()), true, Label.Side.RIGHT));
    }
  }

  private void run(CurveQuantity.Line line, List<Dot> run) {
    if (run.isEmpty()) {
      return;
    }
    if (run.size() == 1) {
      svg.circle(run.get(0), 2.5, "curve").with("fill", paint(line.hue())).end();
      return;
    }
    svg.polyline(run, "curve")
        .with("stroke", paint(line.hue()))
        .with("stroke-width", style.line())
        .with("stroke-linejoin", "round");
    if (line.hue() == CurveQuantity.Hue.BACK) {
      svg.with("stroke-dasharray", "8 5");
    }
    svg.end();
    List<Stroke> strokes = new ArrayList<>();
    for (int i = 1; i < run.size(); i++) {
      strokes.add(new Stroke(run.get(i - 1), run.get(i)));
    }
    placer.avoid(strokes);
  }

  /** The upright line at the chosen speed, with what each curve has there. */
  private void mark(double at, List<Label> labels) {
    if (!axis.holds(at)) {
      return;
    }
    Dot top = new Dot(axis.x(at), plot.y());
    Dot bottom = new Dot(axis.x(at), plot.bottom());
    svg.line(top, bottom, "mark").with("stroke", palette.action()).with("stroke-width", 2).end();
    placer.avoid(List.of(new Stroke(top, bottom)));
    boolean any = false;
    for (CurveQuantity.Line line : lines) {
      OptionalDouble value = findValue(line, at);
      if (value.isPresent()) {
        any = true;
        Dot dot = new Dot(axis.x(at), y(value.getAsDouble()));
        svg.circle(dot, DOT, "mark-dot")
            .with("fill", paint(line.hue()))
            .with("stroke", palette.surface())
            .with("stroke-width", 1.5)
            .end();
        String text = signed(value.getAsDouble(), quantity.decimals());
        labels.add(
            0,
            new Label(
                List.of(text),
                quantity.unit(measures),
                dot,
                palette.ink(),
                true,
                Label.Side.RIGHT));
        placer.keepFree(dotBox(dot));
      }
    }
    if (!any) {
      Dot middle = new Dot(axis.x(at), plot.y() + plot.height() / 2);
      labels.add(0, Label.of("no trim", middle, palette.muted()));
    }
  }

  /** A line's value between the two speeds computed next to a speed; none beside a gap. */
  private OptionalDouble findValue(CurveQuantity.Line line, double at) {
    List<TrimOutcome> all = curve.outcomes();
    for (int i = 0; i < all.size(); i++) {
      double here = speed.fromSi(all.get(i).speed());
      OptionalDouble value =
          all.get(i).findPoint().map(p -> line.value(p)).orElseGet(OptionalDouble::empty);
      if (Math.abs(here - at) < 1e-6) {
        return value;
      }
      if (i + 1 < all.size() && here < at && at < speed.fromSi(all.get(i + 1).speed())) {
        double next = speed.fromSi(all.get(i + 1).speed());
        OptionalDouble after =
            all.get(i + 1).findPoint().map(p -> line.value(p)).orElseGet(OptionalDouble::empty);
        if (value.isEmpty() || after.isEmpty()) {
          return OptionalDouble.empty();
        }
        double share = (at - here) / (next - here);
        return OptionalDouble.of(
            value.getAsDouble() + share * (after.getAsDouble() - value.getAsDouble()));
      }
    }
    return OptionalDouble.empty();
  }

  /** Level speed on pitch, even-feet speeds on the feet. */
  private void markers(List<Label> labels) {
    if (quantity == CurveQuantity.PITCH && curve.levelSpeed().isPresent()) {
      marker("level", speed.fromSi(curve.levelSpeed().getAsDouble()), 0, labels);
    }
    if (quantity == CurveQuantity.FOOT_SHARE) {
      for (EvenFeetSpeed even : curve.evenFeetSpeeds()) {
        marker("even feet", speed.fromSi(even.speed()), 50, labels);
      }
    }
    if (quantity == CurveQuantity.LEGS) {
      for (EvenFeetSpeed even : curve.evenFeetSpeeds()) {
        OptionalDouble half = findValue(lines.get(0), speed.fromSi(even.speed()));
        if (half.isPresent()) {
          marker("even feet", speed.fromSi(even.speed()), half.getAsDouble(), labels);
        }
      }
    }
  }

  private void marker(String name, double at, double value, List<Label> labels) {
    if (!axis.holds(at)) {
      return;
    }
    Dot dot = new Dot(axis.x(at), y(value));
    svg.circle(dot, DOT, "marker")
        .with("fill", palette.surface())
        .with("stroke", palette.ink())
        .with("stroke-width", 2)
        .end();
    String number = Shown.decimals(at, 1);
    labels.add(
        new Label(
            List.of(name + " " + number, name), "", dot, palette.ink(), true, Label.Side.ABOVE));
    placer.keepFree(dotBox(dot));
  }

  private static Box dotBox(Dot dot) {
    return new Box(dot.x() - DOT, dot.y() - DOT, 2 * DOT, 2 * DOT);
  }

  private double y(double value) {
    return plot.bottom() - (value - low) / (high - low) * plot.height();
  }

  private String paint(CurveQuantity.Hue hue) {
    return switch (hue) {
      case FRONT -> palette.front();
      case BACK -> palette.back();
      case INK -> palette.ink();
      case ACTION -> palette.action();
    };
  }

  /** A number with a true minus. */
  static String signed(double value, int decimals) {
    return Shown.decimals(value, decimals).replace('-', '\u2212');
  }
}
