package trimwright.exchange.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import trimwright.exchange.unit.Unit;

/**
 * Values in the units that people see, and numbers as text that does not depend on the locale.
 *
 * <p>Every face rounds through this class, so that the same value never reads differently in two
 * places.
 */
public final class Shown {
  private static final double[] POWERS = {1, 10, 100, 1000};

  /** Below this a double tells a millionth of one from nothing. */
  private static final double LARGEST = 1e9;

  /** A half less a millionth: far more than the product's rounding below {@link #LARGEST}. */
  private static final double SURELY_NEARER = 0.5 - 1e-6;

  private Shown() {}

  /**
   * A speed in km/h.
   *
   * @param speed [m/s]
   * @return [km/h]
   */
  public static double kmh(double speed) {
    return Unit.KILOMETRE_PER_HOUR.fromSi(speed);
  }

  /**
   * A length in millimetres.
   *
   * @param length [m]
   * @return [mm]
   */
  public static double mm(double length) {
    return Unit.MILLIMETRE.fromSi(length);
  }

  /**
   * An angle in degrees.
   *
   * @param angle [rad]
   * @return [degrees]
   */
  public static double degrees(double angle) {
    return Unit.DEGREE.fromSi(angle);
  }

  /**
   * A number with fixed decimals, a point, no grouping and never a negative zero.
   *
   * @param value finite or not
   * @param decimals how many
   * @return the text; a dash for what is not finite
   */
  public static String decimals(double value, int decimals) {
    if (!Double.isFinite(value)) {
      return "-";
    }
    BigDecimal rounded = rounded(value, decimals);
    return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
  }

  /**
   * A number rounded half away from zero, with exactly that many decimals.
   *
   * @param value finite
   * @param decimals how many
   * @return the rounded number
   * @throws NumberFormatException if the value is not finite
   */
  public static BigDecimal rounded(double value, int decimals) {
    if (decimals < POWERS.length) {
      double scaled = value * POWERS[decimals];
      double whole = Math.rint(scaled);
      // Away from halves the nearest whole is beyond doubt, and the way over text is slow.
      if (Math.abs(scaled) < LARGEST && Math.abs(scaled - whole) < SURELY_NEARER) {
        return BigDecimal.valueOf((long) whole, decimals);
      }
    }
    return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
  }

  /**
   * An angle as riders say it.
   *
   * @param degrees nose up positive
   * @return such as {@code 2.4° nose-up} or {@code level}
   */
  public static String nose(double degrees) {
    BigDecimal shown = rounded(degrees, 1);
    if (shown.signum() == 0) {
      return "level";
    }
    return shown.abs().toPlainString() + "° " + noseWord(shown.doubleValue());
  }

  /**
   * The bare word of {@link #nose}.
   *
   * @param degrees nose up positive
   * @return {@code nose-up} or {@code nose-down}
   */
  public static String noseWord(double degrees) {
    return degrees < 0 ? "nose-down" : "nose-up";
  }
}
