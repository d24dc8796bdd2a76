package trimwright.exchange.picture;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import trimwright.exchange.words.Shown;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

/** What a curve picture shows against speed. */
public enum CurveQuantity {
  /** Deck pitch. */
  PITCH("Pitch, nose-up", "°", 1),
  /** Share of the load on the front foot. */
  FOOT_SHARE("Load on the front foot", "%", 0),
  /** Kilograms per leg. */
  LEGS("Load per leg", "kg", 0),
  /** Electric power; {@link #THRUST} stands in where there is no drive. */
  POWER("Electric power", "W", 0),
  /** Thrust. */
  THRUST("Thrust needed", "N", 0);

  private final String title;
  private final String unit;
  private final int decimals;

  CurveQuantity(String title, String unit, int decimals) {
    this.title = title;
    this.unit = unit;
    this.decimals = decimals;
  }

  /** What people call it. */
  public String title() {
    return title;
  }

  /** Symbol of the unit shown. */
  public String unit() {
    return unit;
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

  List<Line> lines() {
    return switch (this) {
      case PITCH -> List.of(line("pitch", Hue.INK, p -> some(Shown.degrees(p.pitch()))));
      case FOOT_SHARE -> List.of(line("front foot", Hue.FRONT, p -> some(100 * p.footShare())));
      case LEGS ->
          List.of(
              line("front leg", Hue.FRONT, p -> some(p.frontLeg())),
              line("back leg", Hue.BACK, p -> some(p.backLeg())));
      case POWER -> List.of(line("power", Hue.ACTION, TrimPoint::electricPower));
      case THRUST -> List.of(line("thrust", Hue.ACTION, p -> some(p.thrust())));
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

  private static Line line(String name, Hue hue, Function<TrimPoint, OptionalDouble> value) {
    return new Line(name, hue, value);
  }

  private static OptionalDouble some(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
