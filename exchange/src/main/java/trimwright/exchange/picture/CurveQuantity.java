package trimwright.exchange.picture;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

/** What a curve picture shows against speed. */
public enum CurveQuantity {
  /** Deck pitch. */
  PITCH("Pitch, nose-up", Unit.DEGREE, 1),
  /** Share of the load on the front foot. */
  FOOT_SHARE("Load on the front foot", Unit.PERCENT, 0),
  /** Load per leg, as kilograms or pounds. */
  LEGS("Load per leg", Unit.KILOGRAM, 0),
  /** Electric power; {@link #THRUST} stands in where there is no drive. */
  POWER("Electric power", Unit.WATT, 0),
  /** Thrust. */
  THRUST("Thrust needed", Unit.NEWTON, 0);

  private final String title;
  private final Unit unit;
  private final int decimals;

  CurveQuantity(String title, Unit unit, int decimals) {
    this.title = title;
    this.unit = unit;
    this.decimals = decimals;
  }

  /** What people call it. */
  public String title() {
    return title;
  }

  /**
   * The unit shown.
   *
   * @param measures that the reader reads
   * @return its symbol
   */
  public String unit(Measures measures) {
    return measures.unit(unit).symbol();
  }

  /** Decimals of a value read off the curve. */
  int decimals() {
    return decimals;
  }

  /** This quantity, or what stands in for it on a curve that does not have it. */
  CurveQuantity on(Curve curve) {
    boolean powered =
        curve.outcomes().stream()
            .anyMatch(o -> o.findPoint().filter(p -> p.electricPower().isPresent()).isPresent());
    return this == POWER && !powered ? THRUST : this;
  }

  /**
   * One line of a panel.
   *
   * @param name at the line's end
   * @param hue its colour, and for the back its dash
   * @param value of a point in the unit shown
   */
  record Line(String name, Hue hue, Function<TrimPoint, OptionalDouble> value) {}

  /** The hue of a line. */
  enum Hue {
    FRONT,
    BACK,
    INK,
    ACTION
  }

  List<Line> lines(Measures measures) {
    Unit shown = measures.unit(unit);
    return switch (this) {
      case PITCH -> List.of(line("pitch", Hue.INK, shown, TrimPoint::pitch));
      case FOOT_SHARE -> List.of(line("front foot", Hue.FRONT, shown, TrimPoint::footShare));
      case LEGS ->
          List.of(
              line("front leg", Hue.FRONT, shown, TrimPoint::frontLeg),
              line("back leg", Hue.BACK, shown, TrimPoint::backLeg));
      case POWER -> List.of(new Line("power", Hue.ACTION, TrimPoint::electricPower));
      case THRUST -> List.of(line("thrust", Hue.ACTION, shown, TrimPoint::thrust));
    };
  }

  /** A range that is always shown, in the unit shown. */
  double[] always() {
    return switch (this) {
      case PITCH -> new double[] {-1, 1};
      case FOOT_SHARE -> new double[] {0, 100};
      case LEGS, THRUST -> new double[] {0, 10};
      case POWER -> new double[] {0, 100};
    };
  }

  private static Line line(String name, Hue hue, Unit shown, ToDoubleFunction<TrimPoint> value) {
    return new Line(
        name,
        hue,
        point -> {
          double si = value.applyAsDouble(point);
          return Double.isFinite(si) ? OptionalDouble.of(shown.fromSi(si)) : OptionalDouble.empty();
        });
  }
}
