package trimwright.exchange.write;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import trimwright.exchange.words.Shown;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.Spread;

/**
 * One number's band under its published name: that of the number itself with {@code _band} behind
 * it, lowest and highest value.
 *
 * @param name of the number, with its unit
 * @param decimals that a live page is given
 * @param quantity the number
 * @param shown from SI to that unit
 */
record BandColumn(String name, int decimals, Quantity quantity, DoubleUnaryOperator shown) {
  private static final DoubleUnaryOperator AS_IT_IS = DoubleUnaryOperator.identity();

  /** What the names of the numbers are followed by. */
  static final String BAND = "_band";

  /** In the order of the numbers. */
  static final List<BandColumn> ALL =
      List.of(
          new BandColumn("pitch_deg", 3, Quantity.PITCH, Shown::degrees),
          new BandColumn("foot_share", 4, Quantity.FOOT_SHARE, AS_IT_IS),
          new BandColumn("foot_pressure_ahead_of_mast_mm", 1, Quantity.FOOT_PRESSURE, Shown::mm),
          new BandColumn("front_leg_kg", 2, Quantity.FRONT_LEG, AS_IT_IS),
          new BandColumn("back_leg_kg", 2, Quantity.BACK_LEG, AS_IT_IS),
          new BandColumn("thrust_n", 1, Quantity.THRUST, AS_IT_IS),
          new BandColumn("electric_power_w", 0, Quantity.ELECTRIC_POWER, AS_IT_IS),
          new BandColumn("stabilizer_lift_n", 1, Quantity.STABILIZER_LIFT, AS_IT_IS),
          new BandColumn("stall_margin_deg", 2, Quantity.STALL_MARGIN, Shown::degrees));

  /** The numbers whose bands are split into what makes them: pitch, foot share, electric power. */
  static final List<BandColumn> EXPLAINED = List.of(ALL.get(0), ALL.get(1), ALL.get(6));

  Optional<Spread> find(Optional<PointBand> band) {
    return band.flatMap(b -> b.find(quantity));
  }

  void write(JsonFields fields, Optional<PointBand> band) {
    write(fields, name + BAND, find(band), shown);
  }

  /** Lowest and highest value under a name, or null. */
  static void write(
      JsonFields fields, String name, Optional<Spread> spread, DoubleUnaryOperator shown) {
    spread.ifPresentOrElse(
        s -> fields.numbers(name, shown.applyAsDouble(s.low()), shown.applyAsDouble(s.high())),
        () -> fields.none(name));
  }

  /** Two cells, lowest and highest. */
  List<String> cells(Optional<PointBand> band) {
    Optional<Spread> spread = find(band);
    return spread
        .map(
            s ->
                List.of(
                    Csv.cell(shown.applyAsDouble(s.low())),
                    Csv.cell(shown.applyAsDouble(s.high()))))
        .orElseGet(() -> Arrays.asList(null, null));
  }

  /** Two numbers of a list, lowest and highest; nulls where there is no band. */
  void writeItems(JsonStream json, Optional<PointBand> band) {
    Optional<Spread> spread = find(band);
    json.item(at(spread.map(Spread::low)), decimals).item(at(spread.map(Spread::high)), decimals);
  }

  private OptionalDouble at(Optional<Double> si) {
    return si.isPresent()
        ? OptionalDouble.of(shown.applyAsDouble(si.get()))
        : OptionalDouble.empty();
  }
}
