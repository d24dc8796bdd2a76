package trimwright.sheet;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.kernel.band.Spread;

/**
 * Numbers as the sheet prints them, held to their units by a space that does not break.
 *
 * @param measures units
 */
record SheetNumbers(Measures measures) {
  private static final String HOLD = "\u00a0";

  /** A speed [m/s] without its unit, with one decimal where there is one. */
  String bareSpeed(double speed) {
    BigDecimal shown =
        Shown.rounded(measures.unit(Unit.KILOMETRE_PER_HOUR).fromSi(speed), 1).stripTrailingZeros();
    return shown.scale() < 0 ? shown.setScale(0).toPlainString() : shown.toPlainString();
  }

  String speed(double speed) {
    return bareSpeed(speed) + HOLD + speedUnit();
  }

  /** A speed [m/s] with how far off it may be, where that is known. */
  String speed(double speed, Optional<Spread> band) {
    Unit shown = measures.unit(Unit.KILOMETRE_PER_HOUR);
    return band.map(
            spread ->
                bareSpeed(speed)
                    + HOLD
                    + reach(shown.fromSi(spread.reach()), 1)
                    + HOLD
                    + speedUnit())
        .orElseGet(() -> speed(speed));
  }

  String speedUnit() {
    return measures.unit(Unit.KILOMETRE_PER_HOUR).symbol();
  }

  /** A length [m]. */
  String length(double length) {
    return bareLength(length) + HOLD + lengthUnit();
  }

  String bareLength(double length) {
    return bare(Unit.MILLIMETRE, length);
  }

  String lengthUnit() {
    return measures.unit(Unit.MILLIMETRE).symbol();
  }

  /** A mass [kg]. */
  String mass(double mass) {
    return with(Unit.KILOGRAM, mass);
  }

  /** A force [N]. */
  String force(double force) {
    return with(Unit.NEWTON, force);
  }

  /** A way that is ridden [m]. */
  String way(double length) {
    Unit unit = measures == Measures.METRIC ? Unit.KILOMETRE : Unit.MILE;
    return Shown.decimals(unit.fromSi(length), 0) + HOLD + unit.symbol();
  }

  /** A distance on the water [m]. */
  String distance(double length) {
    Unit unit = measures == Measures.METRIC ? Unit.METRE : Unit.FOOT;
    return Shown.decimals(unit.fromSi(length), 0) + HOLD + unit.symbol();
  }

  /** An area [m²]. */
  String area(double area) {
    return with(Unit.SQUARE_CENTIMETRE, area);
  }

  /** A volume [m³]. */
  String litres(double volume) {
    return Shown.decimals(Unit.LITRE.fromSi(volume), 0) + HOLD + "l";
  }

  String watts(double power) {
    return Shown.decimals(power, 0) + HOLD + "W";
  }

  /** A power [W] with how far off it may be, where that is known. */
  String watts(double power, Optional<Spread> band) {
    return band.map(
            spread -> Shown.decimals(power, 0) + HOLD + reach(spread.reach(), 0) + HOLD + "W")
        .orElseGet(() -> watts(power));
  }

  /** How far off a number may be: rounded up, so that the band printed is never too narrow. */
  static String reach(double reach, int decimals) {
    return "±" + BigDecimal.valueOf(reach).setScale(decimals, RoundingMode.UP).toPlainString();
  }

  /** An energy [J]. */
  String wattHours(double energy) {
    return Shown.decimals(Unit.WATT_HOUR.fromSi(energy), 0) + HOLD + "Wh";
  }

  private String with(Unit carried, double si) {
    return bare(carried, si) + HOLD + measures.unit(carried).symbol();
  }

  private String bare(Unit carried, double si) {
    return Shown.decimals(measures.unit(carried).fromSi(si), measures.shown(carried).decimals());
  }
}
