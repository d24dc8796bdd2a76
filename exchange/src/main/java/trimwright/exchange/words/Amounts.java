package trimwright.exchange.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.ShownUnit;
import trimwright.exchange.unit.Unit;

/**
 * Amounts as text for people who read one family of measures.
 *
 * <p>A value is converted first and rounded in the unit shown. Differences that a reader can check
 * are taken between rounded values. What the words advise lands on the trade's step of that family:
 * 5 mm or a quarter of an inch, 1 km/h or 1 mph, half a degree.
 */
public final class Amounts {
  private static final BigDecimal ANGLE_STEP = new BigDecimal("0.5");
  private static final BigDecimal SPEED_STEP = BigDecimal.ONE;

  /** Speeds are shown to a tenth. */
  private static final BigDecimal REACH_STEP = new BigDecimal("0.1");

  private static final Amounts METRIC = new Amounts(Measures.METRIC, new BigDecimal("5"));
  private static final Amounts IMPERIAL = new Amounts(Measures.IMPERIAL, new BigDecimal("0.25"));

  /** Exact, so that sums in decimal numbers stay exact. */
  private static final BigDecimal MILLIMETRES_PER_INCH =
      BigDecimal.valueOf(Unit.MILLIMETRE.fromSi(Unit.INCH.toSi(1)));

  /** What binary fractions add to a whole number of the smallest steps shown. */
  private static final double ROUNDING = 1e-6;

  private final Measures measures;
  private final Quantity speed;
  private final Quantity length;
  private final Quantity mass;
  private final Quantity force;
  private final BigDecimal lengthStep;

  private Amounts(Measures measures, BigDecimal lengthStep) {
    this.measures = measures;
    speed = new Quantity(measures, Unit.KILOMETRE_PER_HOUR);
    length = new Quantity(measures, Unit.MILLIMETRE);
    mass = new Quantity(measures, Unit.KILOGRAM);
    force = new Quantity(measures, Unit.NEWTON);
    this.lengthStep = lengthStep;
  }

  /**
   * The amounts of a family.
   *
   * @param measures metric or imperial
   * @return one shared instance
   */
  public static Amounts of(Measures measures) {
    return measures == Measures.METRIC ? METRIC : IMPERIAL;
  }

  /** The family that these amounts are of. */
  public Measures measures() {
    return measures;
  }

  /** One quantity's unit. */
  private record Quantity(Unit unit, String symbol, int decimals) {
    Quantity(Measures measures, Unit carried) {
      this(measures.unit(carried), measures.shown(carried));
    }

    private Quantity(Unit unit, ShownUnit shown) {
      this(unit, shown.symbol(), shown.decimals());
    }

    BigDecimal rounded(double si) {
      return Shown.rounded(unit.fromSi(si), decimals);
    }

    String text(double si) {
      return text(rounded(si));
    }

    String text(BigDecimal shown) {
      return plain(shown) + " " + symbol;
    }
  }

  /** A number without needless zeros and never with a bare minus before zero. */
  static String plain(BigDecimal number) {
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  /**
   * A speed rounded as shown.
   *
   * @param speed [m/s]
   * @return in tenths of km/h or mph
   */
  public BigDecimal roundedSpeed(double speed) {
    return this.speed.rounded(speed);
  }

  /**
   * A speed.
   *
   * @param speed [m/s]
   * @return such as {@code 25 km/h} or {@code 15.5 mph}
   */
  public String speed(double speed) {
    return this.speed.text(speed);
  }

  /**
   * A speed that is rounded already.
   *
   * @param shown in km/h or mph
   * @return with its unit
   */
  String speed(BigDecimal shown) {
    return speed.text(shown);
  }

  /**
   * A speed's number alone.
   *
   * @param speed [m/s]
   * @return such as {@code 25} or {@code 15.5}
   */
  public String bareSpeed(double speed) {
    return plain(roundedSpeed(speed));
  }

  /**
   * How far off a speed may be, without its unit: never less than it is.
   *
   * @param reach [m/s]
   * @return such as {@code 2.1}, in the digits of a speed
   */
  String speedReach(double reach) {
    return plain(up(this.speed.unit().fromSi(reach), REACH_STEP));
  }

  /**
   * A speed that is enough, on the trade's step.
   *
   * @param speed [m/s], the least that does
   * @return the next whole km/h or mph
   */
  String speedUp(double speed) {
    return this.speed.text(up(this.speed.unit().fromSi(speed), SPEED_STEP));
  }

  /**
   * A change of speed to advise, on the trade's step.
   *
   * @param shown difference of speeds as shown, not 0
   * @return at least one step, with its unit, without a sign
   */
  String pace(BigDecimal shown) {
    return speed.text(onStep(shown, SPEED_STEP));
  }

  /**
   * A length.
   *
   * @param length [m]
   * @return in whole millimetres or tenths of an inch
   */
  public String length(double length) {
    return this.length.text(length);
  }

  /**
   * A length rounded as shown, for a document that carries millimetres.
   *
   * @param length [m]
   * @return whole millimetres, or tenths of an inch as millimetres
   */
  public BigDecimal roundedMillimetres(double length) {
    BigDecimal shown = this.length.rounded(length);
    return this == METRIC ? shown : shown.multiply(MILLIMETRES_PER_INCH);
  }

  /**
   * A length's size, rounded up where less would not do.
   *
   * @param length [m]
   * @return in whole millimetres or tenths of an inch, without a sign
   */
  String lengthUp(double length) {
    BigDecimal one = BigDecimal.ONE.movePointLeft(this.length.decimals());
    return this.length.text(up(this.length.unit().fromSi(length), one));
  }

  /**
   * How far to move something along the board.
   *
   * @param distance from where it is, forward positive [m]; its size is what is shown
   * @param text such as {@code 85 mm} or {@code 3.25 in}, without a sign
   */
  record Move(double distance, String text) {
    boolean forward() {
      return distance > 0;
    }
  }

  /**
   * The move to advise.
   *
   * @param distance that would be exact, forward positive [m]
   * @return the nearest of the trade's steps, at least one
   */
  Move move(double distance) {
    BigDecimal shown = BigDecimal.valueOf(length.unit().fromSi(distance));
    return move(distance, onStep(shown, lengthStep));
  }

  /**
   * The least move to advise.
   *
   * @param distance that just reaches, forward positive [m]
   * @return the next of the trade's steps outward
   */
  Move moveAtLeast(double distance) {
    return move(distance, up(length.unit().fromSi(distance), lengthStep));
  }

  private Move move(double distance, BigDecimal shown) {
    double advised = length.unit().toSi(shown.doubleValue());
    return new Move(Math.copySign(advised, distance), length.text(shown));
  }

  /**
   * An angle to advise.
   *
   * @param degrees as shown, not 0
   * @return the nearest half degree, at least one, without a sign
   */
  static BigDecimal angle(BigDecimal degrees) {
    return onStep(degrees, ANGLE_STEP);
  }

  /**
   * A mass.
   *
   * @param mass [kg]
   * @return whole kilograms or pounds
   */
  public String mass(double mass) {
    return this.mass.text(mass);
  }

  /**
   * A force.
   *
   * @param force [N]
   * @return whole newtons or pounds-force
   */
  public String force(double force) {
    return this.force.text(force);
  }

  /** The symbol of the unit of speed. */
  public String speedUnit() {
    return speed.symbol();
  }

  private static BigDecimal onStep(BigDecimal value, BigDecimal step) {
    BigDecimal steps = value.abs().divide(step, 0, RoundingMode.HALF_UP);
    return steps.max(BigDecimal.ONE).multiply(step);
  }

  private static BigDecimal up(double value, BigDecimal step) {
    double steps = Math.ceil(Math.abs(value) / step.doubleValue() - ROUNDING);
    return BigDecimal.valueOf((long) steps).multiply(step);
  }
}
