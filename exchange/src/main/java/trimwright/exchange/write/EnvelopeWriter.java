package trimwright.exchange.write;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.LimitKey;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.unit.Unit;
import trimwright.exchange.words.CautionWords;
import trimwright.exchange.words.EnvelopeWords;
import trimwright.exchange.words.Shown;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.envelope.Glide;
import trimwright.kernel.envelope.PartLoads;
import trimwright.kernel.envelope.SlowFlight;
import trimwright.kernel.hull.RampedRun;
import trimwright.kernel.hull.TakeOff;
import trimwright.kernel.hull.WaterState;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.range.HomeRide;
import trimwright.kernel.range.RangePoint;
import trimwright.kernel.range.RideRange;
import trimwright.kernel.turn.TurnPoint;
import trimwright.kernel.turn.TurnStudy;

/** The envelope of a case as JSON and as text. */
public final class EnvelopeWriter {
  /** Name and number of the JSON document. */
  public static final String FORMAT = "trimwright-envelope/1";

  private EnvelopeWriter() {}

  /**
   * The JSON document.
   *
   * @param caseFile the case
   * @param envelope its limits
   * @return text that satisfies {@code envelope.schema.json}
   */
  public static String json(CaseFile caseFile, Envelope envelope) {
    RideLimits limits = caseFile.rideCase().limits();
    JsonDocument document = JsonDocument.start(FORMAT, caseFile.digest());
    JsonFields fields =
        document
            .fields()
            .text("name", caseFile.name())
            .text("sections", SectionCode.of(caseFile))
            .number("wished_speed_kmh", Shown.kmh(envelope.speed()));
    JsonFields start = fields.object("take_off");
    takeOff(start, envelope.takeOff());
    envelope
        .ramped()
        .ifPresentOrElse(r -> ramped(start.object("ramped"), r), () -> start.none("ramped"));
    takeOff(fields.object("other_take_off"), envelope.otherTakeOff());
    envelope
        .slowFlight()
        .ifPresentOrElse(
            s -> slow(fields.object("slow_flight"), s), () -> fields.none("slow_flight"));
    envelope
        .turns()
        .ifPresentOrElse(t -> turns(fields.object("turns"), t), () -> fields.none("turns"));
    fields
        .object("margins")
        .number("tip_depth_mm", mm(envelope.tipDepth()))
        .number("propeller_depth_mm", mm(envelope.propellerDepth()))
        .number(
            "cavitation_speed_ratio",
            number(envelope.straight().map(TurnPoint::cavitationSpeedRatio)))
        .texts("limits", keys(envelope.broken(limits)));
    JsonFields loads = fields.object("loads");
    loads(loads, "mast", envelope.mast(), limits);
    loads(loads, "front_wing", envelope.frontWing(), limits);
    loads(loads, "stabilizer", envelope.stabilizer(), limits);
    envelope
        .glide()
        .ifPresentOrElse(g -> glide(fields.object("glide"), g), () -> fields.none("glide"));
    envelope
        .range()
        .ifPresentOrElse(r -> range(fields.object("range"), r), () -> fields.none("range"));
    fields.texts("words", EnvelopeWords.of(caseFile, envelope, Measures.METRIC));
    fields.texts("cautions", CautionWords.listFor(caseFile));
    return document.text();
  }

  private static List<String> keys(Set<RideLimit> broken) {
    return Arrays.stream(LimitKey.values())
        .filter(key -> broken.contains(key.limit()))
        .map(LimitKey::key)
        .toList();
  }

  private static void ramped(JsonFields fields, RampedRun run) {
    fields
        .number("throttle_s", run.ramp())
        .number("length_m", run.length())
        .number("seconds", run.time());
  }

  private static void takeOff(JsonFields fields, TakeOff t) {
    double ratio = t.leastThrustRatio();
    fields
        .text("verdict", Codes.of(t.verdict()))
        .text("posture", Codes.of(t.posture()))
        .number("lift_off_kmh", number(t.liftOff().map(WaterState::speed).map(Shown::kmh)))
        .number("length_m", t.length())
        .number("shortest_m", t.shortest())
        .number("longest_m", t.longest())
        .number("seconds", t.time())
        .number("most_needed_n", t.mostNeeded())
        .number(
            "least_thrust_ratio",
            Double.isNaN(ratio) ? OptionalDouble.empty() : OptionalDouble.of(ratio))
        .number("drag_band_share", t.dragBand());
    point(fields, "hump", t.hump());
    point(fields, "shortage", t.shortage());
    t.standing()
        .ifPresentOrElse(
            r ->
                fields
                    .object("feet_may_press_mm")
                    .number("from", Shown.mm(r.from()))
                    .number("to", Shown.mm(r.to())),
            () -> fields.none("feet_may_press_mm"));
  }

  private static void point(JsonFields fields, String name, Optional<TakeOff.Point> found) {
    found.ifPresentOrElse(
        p ->
            fields
                .object(name)
                .number("speed_kmh", Shown.kmh(p.speed()))
                .number("drag_n", p.drag())
                .number("thrust_n", p.thrust()),
        () -> fields.none(name));
  }

  private static void slow(JsonFields fields, SlowFlight slow) {
    fields.number("stall_speed_kmh", Shown.kmh(slow.stallSpeed()));
    slow.warning()
        .ifPresentOrElse(
            w ->
                fields
                    .object("warning")
                    .number("pitch_rise_deg", Shown.degrees(w.pitchRise()))
                    .number("foot_share_change", w.footShareChange())
                    .number("foot_pressure_move_mm", Shown.mm(w.footPressureMove())),
            () -> fields.none("warning"));
    fields.list(
        "banked",
        slow.banked(),
        (item, b) ->
            item.number("bank_deg", Shown.degrees(b.bank()))
                .number("lowest_speed_kmh", Shown.kmh(b.speed()))
                .text("ended_by", b.circle() ? "no_circle" : "stall"));
  }

  private static void turns(JsonFields fields, TurnStudy turns) {
    fields.text("ended_by", Codes.of(turns.limit()));
    turns
        .tightest()
        .ifPresentOrElse(t -> turn(fields.object("tightest"), t), () -> fields.none("tightest"));
    fields.list("points", turns.points(), EnvelopeWriter::turn);
  }

  private static void turn(JsonFields fields, TurnPoint t) {
    fields
        .number("bank_deg", Shown.degrees(t.bank()))
        .number("radius_m", t.radius())
        .number("rider_radius_m", t.riderRadius())
        .number("load_factor", t.loadFactor())
        .number("pitch_deg", Shown.degrees(t.pitch()))
        .number("slip_deg", Shown.degrees(t.slip()))
        .number("thrust_n", t.thrust())
        .number("drag_n", t.drag())
        .number("electric_power_w", t.electricPower())
        .number("foot_share", t.footShare())
        .number("foot_pressure_ahead_of_mast_mm", Shown.mm(t.footPressureAheadOfMast()))
        .number("foot_pressure_inside_mm", Shown.mm(t.footPressureInside()))
        .number("foot_twist_nm", t.footTwist())
        .number("mast_side_force_n", t.mastSideForce())
        .number("tip_depth_mm", Shown.mm(t.tipDepth()))
        .number("strip_stall_margin_deg", Shown.degrees(t.stripMargin()))
        .number("cavitation_speed_ratio", t.cavitationSpeedRatio());
  }

  private static void loads(
      JsonFields fields, String name, Optional<PartLoads> found, RideLimits limits) {
    if (found.isEmpty()) {
      fields.none(name);
      return;
    }
    PartLoads loads = found.get();
    JsonFields part =
        fields
            .object(name)
            .number("straight_nm", loads.straight())
            .number("turn_nm", loads.turn())
            .number("landing_nm", loads.landing())
            .number("fall_nm", loads.fall())
            .number("rating_nm", loads.rating());
    loads
        .exceeds(limits)
        .ifPresentOrElse(e -> part.flag("exceeds_rating", e), () -> part.none("exceeds_rating"));
  }

  private static void glide(JsonFields fields, Glide g) {
    fields
        .number("best_ratio", g.bestRatio())
        .number("best_ratio_speed_kmh", Shown.kmh(g.bestRatioSpeed()))
        .number("least_power_w", g.leastPower())
        .number("least_power_speed_kmh", Shown.kmh(g.leastPowerSpeed()))
        .number("seconds_to_stall", g.secondsToStall())
        .number("metres_to_stall", g.metresToStall());
  }

  private static void range(JsonFields fields, RideRange range) {
    fields
        .text("power_basis", Codes.of(range.basis()))
        .number("power_deviation", range.basis().deviation())
        .number("usable_wh", Unit.WATT_HOUR.fromSi(range.usableEnergy()))
        .number("capacity_share", range.capacityShare());
    best(fields, "longest", range.longest());
    best(fields, "farthest", range.farthest());
    if (range.home().isEmpty()) {
      fields.none("home");
      return;
    }
    HomeRide home = range.home().get();
    OptionalDouble farthest = home.farthest();
    fields
        .object("home")
        .number("speed_kmh", Shown.kmh(home.speed()))
        .number("over_ground_kmh", Shown.kmh(home.overGround()))
        .number("minutes", home.duration() / 60)
        .number("energy_wh", Unit.WATT_HOUR.fromSi(home.energy()))
        .number("share_of_usable", home.shareOfUsable())
        .number("reserve", home.reserve())
        .flag("enough", home.enough())
        .number(
            "farthest_out_km",
            farthest.isPresent()
                ? OptionalDouble.of(farthest.getAsDouble() / 1000)
                : OptionalDouble.empty());
  }

  private static void best(JsonFields fields, String name, Optional<RangePoint> found) {
    found.ifPresentOrElse(
        p ->
            fields
                .object(name)
                .number("speed_kmh", Shown.kmh(p.speed()))
                .number("electric_power_w", p.power())
                .number("minutes", p.duration() / 60)
                .number("km", p.distance() / 1000),
        () -> fields.none(name));
  }

  private static OptionalDouble mm(OptionalDouble length) {
    return length.isPresent()
        ? OptionalDouble.of(Shown.mm(length.getAsDouble()))
        : OptionalDouble.empty();
  }

  private static OptionalDouble number(Optional<Double> value) {
    return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
  }

  /**
   * The envelope as text for a terminal.
   *
   * @param caseFile the case
   * @param envelope its limits
   * @return the text
   */
  public static String table(CaseFile caseFile, Envelope envelope) {
    StringBuilder text = new StringBuilder(caseFile.name()).append("\n\n");
    EnvelopeWords.of(caseFile, envelope, Measures.METRIC)
        .forEach(sentence -> text.append(sentence).append('\n'));
    List<TurnPoint> points = envelope.turns().map(TurnStudy::points).orElse(List.of());
    if (!points.isEmpty()) {
      TextTable table =
          new TextTable()
              .number("bank", "deg")
              .number("radius", "m")
              .number("load", "x")
              .number("front", "%")
              .number("power", "W")
              .number("tip", "mm deep")
              .number("to stall", "deg")
              .number("mast", "N aside");
      for (TurnPoint t : points) {
        table.row(
            List.of(
                Shown.decimals(Shown.degrees(t.bank()), 0),
                Shown.decimals(t.radius(), 1),
                Shown.decimals(t.loadFactor(), 2),
                Shown.decimals(100 * t.footShare(), 0),
                t.electricPower().isPresent()
                    ? Shown.decimals(t.electricPower().getAsDouble(), 0)
                    : "-",
                Shown.decimals(Shown.mm(t.tipDepth()), 0),
                Shown.decimals(Shown.degrees(t.stripMargin()), 1),
                Shown.decimals(t.mastSideForce(), 0)));
      }
      text.append("\nTurns at ")
          .append(Shown.decimals(Shown.kmh(envelope.speed()), 1))
          .append(" km/h:\n\n")
          .append(table.text());
    }
    text.append("\nBending at the root, N·m:\n\n")
        .append(
            new TextTable()
                .words("part")
                .number("straight", "")
                .number("turn", "")
                .number("landing", "")
                .number("fall", "")
                .number("maker's", "")
                .row(row("mast", envelope.mast()))
                .row(row("front wing", envelope.frontWing()))
                .row(row("stabilizer", envelope.stabilizer()))
                .text());
    return text.append(
            "\nLandings and falls are chosen cases with no source. None of this says that a ride is"
                + " safe.\n")
        .toString();
  }

  private static List<String> row(String name, Optional<PartLoads> loads) {
    return List.of(
        name,
        cell(loads.map(l -> OptionalDouble.of(l.straight())).orElse(OptionalDouble.empty())),
        cell(loads.map(PartLoads::turn).orElse(OptionalDouble.empty())),
        cell(loads.map(l -> OptionalDouble.of(l.landing())).orElse(OptionalDouble.empty())),
        cell(loads.map(PartLoads::fall).orElse(OptionalDouble.empty())),
        cell(loads.map(PartLoads::rating).orElse(OptionalDouble.empty())));
  }

  private static String cell(OptionalDouble value) {
    return value.isPresent() ? Shown.decimals(value.getAsDouble(), 0) : "-";
  }
}
