package trimwright.exchange.write;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.Shown;
import trimwright.kernel.trim.MomentTerms;
import trimwright.kernel.trim.TrimPoint;

/**
 * One number of a trim point under its published name. JSON and CSV are both written from this
 * list, so that they cannot drift apart.
 *
 * @param name with its unit
 * @param decimals that a live page is given: far finer than anything it shows
 * @param value in that unit, empty where the point has none
 * @param exact whether all digits are written (residuals lose their meaning when rounded)
 */
record PointColumn(
    String name, int decimals, Function<TrimPoint, OptionalDouble> value, boolean exact) {
  /** Decimals of a moment term where a live page reads it [N·m]. */
  private static final int TERM_DECIMALS = 3;

  /** In the published order. */
  static final List<PointColumn> ALL =
      List.of(
          of("pitch_deg", 4, p -> Shown.degrees(p.pitch())),
          of("front_wing_angle_of_attack_deg", 4, p -> Shown.degrees(p.frontWingAngleOfAttack())),
          of("foot_share", 5, TrimPoint::footShare),
          of("foot_pressure_ahead_of_mast_mm", 2, p -> Shown.mm(p.footPressureAheadOfMast())),
          of("front_leg_kg", 3, TrimPoint::frontLeg),
          of("back_leg_kg", 3, TrimPoint::backLeg),
          of("forward_reserve_mm", 2, p -> Shown.mm(p.forwardReserve())),
          of("thrust_n", 2, TrimPoint::thrust),
          of("drag_n", 2, TrimPoint::drag),
          new PointColumn("electric_power_w", 1, TrimPoint::electricPower, false),
          of("front_wing_lift_n", 2, TrimPoint::frontWingLift),
          of("stabilizer_lift_n", 2, TrimPoint::stabilizerLift),
          of("front_wing_cl", 5, TrimPoint::frontWingLiftCoefficient),
          of("reynolds_front_wing", 0, TrimPoint::frontWingReynolds),
          of("stall_margin_deg", 3, p -> Shown.degrees(p.stallMargin())),
          of("static_margin_mm", 2, p -> Shown.mm(p.staticMargin())),
          of("deck_lever_share_mm", 2, p -> Shown.mm(p.deckLeverShare())),
          // Per m/s becomes per km/h: one km/h is a smaller step, so the change is smaller too.
          of("foot_share_growth_per_kmh", 6, p -> p.footShareGrowth() / Shown.kmh(1)),
          new PointColumn("pitch_per_cm_deg", 4, PointColumn::pitchPerCentimetre, false),
          new PointColumn("trim_residual_n", 9, p -> some(p.forceResidual()), true),
          new PointColumn("trim_residual_nm", 9, p -> some(p.momentResidual()), true));

  /** What an impossible balance would need, in its order; names as in {@link #ALL}. */
  static final List<PointColumn> WOULD_NEED =
      List.of(
              "pitch_deg",
              "foot_share",
              "foot_pressure_ahead_of_mast_mm",
              "thrust_n",
              "electric_power_w")
          .stream()
          .map(PointColumn::get)
          .toList();

  /** An extra of this program, after the published names. */
  static final PointColumn MASS_CENTRE =
      of("rider_mass_centre_ahead_of_mast_mm", 2, p -> Shown.mm(p.massCentreAheadOfMast()));

  /**
   * One term of the moment balance.
   *
   * @param name inside {@code moment_terms_nm}
   * @param value [N·m]
   */
  record Term(String name, ToDoubleFunction<MomentTerms> value) {
    /** In the published order. */
    static final List<Term> ALL =
        List.of(
            new Term("front_wing", MomentTerms::frontWing),
            new Term("stabilizer", MomentTerms::stabilizer),
            new Term("thrust_line", MomentTerms::thrustLine),
            new Term("drags", MomentTerms::drags),
            new Term("masses", MomentTerms::masses),
            new Term("feet", MomentTerms::feet),
            new Term("deck_lever", MomentTerms::deckLever),
            new Term("air", MomentTerms::air),
            new Term("buoyancy", MomentTerms::buoyancy));
  }

  void write(JsonFields fields, TrimPoint point) {
    OptionalDouble number = value.apply(point);
    if (exact && number.isPresent()) {
      fields.exact(name, number.getAsDouble());
    } else {
      fields.number(name, number);
    }
  }

  void write(JsonStream json, TrimPoint point) {
    json.number(name, value.apply(point), decimals);
  }

  void writeItem(JsonStream json, TrimPoint point) {
    json.item(value.apply(point), decimals);
  }

  static void writeTermItems(JsonStream json, MomentTerms terms) {
    Term.ALL.forEach(term -> json.item(term.value().applyAsDouble(terms), TERM_DECIMALS));
  }

  static void writeTerms(JsonFields fields, MomentTerms terms) {
    // All digits: the terms of a trim point sum to zero, and rounding each would spoil that.
    Term.ALL.forEach(term -> fields.exact(term.name(), term.value().applyAsDouble(terms)));
  }

  private static OptionalDouble pitchPerCentimetre(TrimPoint point) {
    OptionalDouble perMetre = point.pitchPerShift();
    return perMetre.isPresent()
        ? some(Shown.degrees(perMetre.getAsDouble()) * Unit.CENTIMETRE.toSi(1))
        : OptionalDouble.empty();
  }

  private static PointColumn of(String name, int decimals, ToDoubleFunction<TrimPoint> value) {
    return new PointColumn(name, decimals, p -> some(value.applyAsDouble(p)), false);
  }

  private static PointColumn get(String name) {
    return ALL.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
  }

  private static OptionalDouble some(double value) {
    return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
  }
}
