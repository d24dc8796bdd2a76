package trimwright.exchange.picture;

import java.util.List;
import java.util.OptionalDouble;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.band.Quantity;
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
   * @param quantity what of a point it shows
   * @param unit in which it is shown
   */
  record Line(String name, Hue hue, Quantity quantity, Unit unit) {
    /** The value at a point, in the unit shown. */
    OptionalDouble value(TrimPoint point) {
      return shown(quantity.of(point));
    }

    /** A value in the unit shown. */
    OptionalDouble shown(double si) {
      return Double.isFinite(si) ? OptionalDouble.of(unit.fromSi(si)) : OptionalDouble.empty();
    }
  }

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
      case PITCH -> List.of(new Line("pitch", Hue.INK, Quantity.PITCH, shown));
      case FOOT_SHARE -> List.of(new Line("front foot", Hue.FRONT, Quantity.FOOT_SHARE, shown));
      case LEGS ->
          List.of(
              new Line("front leg", Hue.FRONT, Quantity.FRONT_LEG, shown),
              new Line("back leg", Hue.BACK, Quantity.BACK_LEG, shown));
      case POWER -> List.of(new Line("power", Hue.ACTION, Quantity.ELECTRIC_POWER, shown));
      case THRUST -> List.of(new Line("thrust", Hue.ACTION, Quantity.THRUST, shown));
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
}
