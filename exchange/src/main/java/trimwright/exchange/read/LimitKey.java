package trimwright.exchange.read;

import java.util.Optional;
import trimwright.exchange.read.internal.KeyUnits;
import trimwright.exchange.unit.Unit;
import trimwright.kernel.limit.RideLimit;

/** A limit's key in a limits file, with its unit at the edge. */
public enum LimitKey {
  /** Of {@link RideLimit#STALL_MARGIN}. */
  STALL_MARGIN(RideLimit.STALL_MARGIN, "least_stall_margin_deg"),
  /** Of {@link RideLimit#LEAST_FOOT_SHARE}. */
  LEAST_FOOT_SHARE(RideLimit.LEAST_FOOT_SHARE, "least_foot_share"),
  /** Of {@link RideLimit#MOST_FOOT_SHARE}. */
  MOST_FOOT_SHARE(RideLimit.MOST_FOOT_SHARE, "most_foot_share"),
  /** Of {@link RideLimit#STATIC_MARGIN}. */
  STATIC_MARGIN(RideLimit.STATIC_MARGIN, "least_static_margin_mm"),
  /** Of {@link RideLimit#PITCH}. */
  PITCH(RideLimit.PITCH, "most_deck_tilt_deg"),
  /** Of {@link RideLimit#BOARD_CLEARANCE}. */
  BOARD_CLEARANCE(RideLimit.BOARD_CLEARANCE, "least_board_clearance_mm"),
  /** Of {@link RideLimit#TIP_DEPTH}. */
  TIP_DEPTH(RideLimit.TIP_DEPTH, "least_tip_depth_mm"),
  /** Of {@link RideLimit#PROPELLER_DEPTH}. */
  PROPELLER_DEPTH(RideLimit.PROPELLER_DEPTH, "least_propeller_depth_mm"),
  /** Of {@link RideLimit#CAVITATION_SPEED_RATIO}. */
  CAVITATION_SPEED_RATIO(RideLimit.CAVITATION_SPEED_RATIO, "least_cavitation_speed_ratio"),
  /** Of {@link RideLimit#RATING_SHARE}. */
  RATING_SHARE(RideLimit.RATING_SHARE, "most_rating_share"),
  /** Of {@link RideLimit#TAKE_OFF_THRUST_RATIO}. */
  TAKE_OFF_THRUST_RATIO(RideLimit.TAKE_OFF_THRUST_RATIO, "least_take_off_thrust_ratio"),
  /** Of {@link RideLimit#TAKE_OFF_LEAST_TRIM}. */
  TAKE_OFF_LEAST_TRIM(RideLimit.TAKE_OFF_LEAST_TRIM, "least_take_off_trim_deg"),
  /** Of {@link RideLimit#TAKE_OFF_MOST_TRIM}. */
  TAKE_OFF_MOST_TRIM(RideLimit.TAKE_OFF_MOST_TRIM, "most_take_off_trim_deg"),
  /** Of {@link RideLimit#TAKE_OFF_SPEED}. */
  TAKE_OFF_SPEED(RideLimit.TAKE_OFF_SPEED, "most_take_off_speed_kmh"),
  /** Of {@link RideLimit#TAKE_OFF_ACCELERATION}. */
  TAKE_OFF_ACCELERATION(RideLimit.TAKE_OFF_ACCELERATION, "most_take_off_acceleration_m_s2"),
  /** Of {@link RideLimit#TAKE_OFF_RAMP}. */
  TAKE_OFF_RAMP(RideLimit.TAKE_OFF_RAMP, "least_take_off_ramp_s"),
  /** Of {@link RideLimit#BANK}. */
  BANK(RideLimit.BANK, "most_bank_deg"),
  /** Of {@link RideLimit#LANDING_LOAD}. */
  LANDING_LOAD(RideLimit.LANDING_LOAD, "least_landing_load"),
  /** Of {@link RideLimit#BATTERY_RESERVE}. */
  BATTERY_RESERVE(RideLimit.BATTERY_RESERVE, "least_battery_reserve"),
  /** Of {@link RideLimit#BOW_CLEAR_TIME}. */
  BOW_CLEAR_TIME(RideLimit.BOW_CLEAR_TIME, "least_bow_clear_time_s"),
  /** Of {@link RideLimit#BREACH_TIME}. */
  BREACH_TIME(RideLimit.BREACH_TIME, "least_breach_time_s");

  private final RideLimit limit;
  private final String key;

  LimitKey(RideLimit limit, String key) {
    this.limit = limit;
    this.key = key;
  }

  /** The limit. */
  public RideLimit limit() {
    return limit;
  }

  /** The key, ending in its unit where it has one. */
  public String key() {
    return key;
  }

  /** The symbol of its unit; empty for a plain ratio. */
  public String unit() {
    return find().map(Unit::symbol).orElse("");
  }

  /**
   * A figure in the key's unit.
   *
   * @param value in the limit's own unit
   */
  public double shown(double value) {
    double shown = find().map(unit -> unit.fromSi(value)).orElse(value);
    // Degrees come out of radians with a last bit too many
    return Math.rint(shown * 1e9) / 1e9;
  }

  /** Which side is stricter, in a word. */
  public String least() {
    return limit.tighter() == RideLimit.Tighter.ABOVE ? "at least" : "at most";
  }

  private Optional<Unit> find() {
    return KeyUnits.find(key);
  }
}
