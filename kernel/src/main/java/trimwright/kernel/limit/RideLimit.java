package trimwright.kernel.limit;

/**
 * One limit. None of their figures has a published source: they are chosen by judgement, and a shop
 * may tighten them but not loosen them.
 */
public enum RideLimit {
  /** Least nose-up change of pitch to the first stalled strip [rad]. */
  STALL_MARGIN(
      Math.toRadians(2),
      Tighter.ABOVE,
      Math.toRadians(10),
      "Chop of 10 cm adds about one degree of angle of attack at 20 km/h and usual depths (small"
          + " waves on deep water, 1.5 s); the other is for the rider's own movements."),
  /** Least part of the load on the front foot [1]. */
  LEAST_FOOT_SHARE(
      0.1, Tighter.ABOVE, 0.45, "Behind it hardly anything is left to lean back with."),
  /** Largest part of the load on the front foot [1]. */
  MOST_FOOT_SHARE(
      0.9,
      Tighter.BELOW,
      0.55,
      "Beyond it hardly anything is left to lean forward with: the nose could not be held down."),
  /** Least static margin of the foil by itself, without the deck's lever [m]. */
  STATIC_MARGIN(
      0,
      Tighter.ABOVE,
      0.2,
      "Below nothing the pitch of the foil runs away without a rider to balance it."),
  /** Largest tilt of the deck either way [rad]. */
  PITCH(
      Math.toRadians(10),
      Tighter.BELOW,
      Math.toRadians(2),
      "Beyond ten degrees people slide on a wet deck."),
  /** Least height of the board's underside above the crests of the chop [m]. */
  BOARD_CLEARANCE(0, Tighter.ABOVE, 0.3, "Below it the board touches the chop's crests."),
  /** Least depth of a wing's tip below the troughs of the chop [m]. */
  TIP_DEPTH(
      0.03,
      Tighter.ABOVE,
      0.3,
      "A tip that comes near the surface draws air; three centimetres are about half of a tip's"
          + " chord."),
  /** Least depth of the propeller's upper blade tip below the troughs of the chop [m]. */
  PROPELLER_DEPTH(
      0.03,
      Tighter.ABOVE,
      0.3,
      "A propeller near the surface draws air and its thrust goes at once."),
  /** Least speed at which cavitation begins over the speed ridden [1]. */
  CAVITATION_SPEED_RATIO(
      1.1,
      Tighter.ABOVE,
      2,
      "Scuffs, nuclei and chop begin it earlier than a smooth section in smooth water."),
  /** Largest load over what the maker rates the part for [1]. */
  RATING_SHARE(1, Tighter.BELOW, 0.2, "The maker's rating is the maker's word."),
  /** Least thrust over drag at the hump of a take-off [1]. */
  TAKE_OFF_THRUST_RATIO(
      1.1,
      Tighter.ABOVE,
      2,
      "With a tenth to spare the board still gathers speed; with less the figures' own uncertainty"
          + " decides."),
  /** Least trim of the board on the way to take-off, bow up [rad]. */
  TAKE_OFF_LEAST_TRIM(0, Tighter.ABOVE, Math.toRadians(3), "Below it a flat bow digs in."),
  /** Largest trim of the board on the way to take-off [rad]. */
  TAKE_OFF_MOST_TRIM(
      Math.toRadians(10),
      Tighter.BELOW,
      Math.toRadians(4),
      "On a steeper board people do not keep standing."),
  /** Fastest speed at which the board may leave the water [m/s]. */
  TAKE_OFF_SPEED(
      10,
      Tighter.BELOW,
      4,
      "Faster nobody should still be planing: a fall there is a fall on hard water."),
  /** Largest acceleration of a take-off [m/s²]. */
  TAKE_OFF_ACCELERATION(
      1.5,
      Tighter.BELOW,
      0.3,
      "A rider without a handle does not ride out more on the feet; more thrust is not given."),
  /** Least time in which the throttle comes up in a take-off [s]. */
  TAKE_OFF_RAMP(
      4,
      Tighter.ABOVE,
      15,
      "Full thrust at once throws people off: riders bring it up over some seconds."),
  /** Largest bank at which turns are looked at [rad]. */
  BANK(
      Math.toRadians(60),
      Tighter.BELOW,
      Math.toRadians(10),
      "Steeper turns carry twice the weight and more: nobody rides them."),
  /** Load of a landing on mast and wings over the steady ride's [1]. */
  LANDING_LOAD(
      3,
      Tighter.ABOVE,
      8,
      "A drop of some 0.3 m that the water stops within 0.15 m; whoever jumps lands harder."),
  /** Least part of the usable energy left on arrival [1]. */
  BATTERY_RESERVE(
      0.2,
      Tighter.ABOVE,
      0.8,
      "A fifth is for a second start, a wind that freshens and a battery older than its label."),
  /** Least time that the bow stays clear of the water in a nose-drop, first flights [s]. */
  BOW_CLEAR_TIME(
      1,
      Tighter.ABOVE,
      2,
      "A rider who leans forward and lets go has this long before the board stops and the rider"
          + " does not; until rides have told better."),
  /** Least time until a wing or the propeller comes out on leaning back, first flights [s]. */
  BREACH_TIME(
      1.5,
      Tighter.ABOVE,
      3,
      "A rider who falls back at full throttle has this long to let go before the foil comes out and"
          + " drops; until rides have told better.");

  /** On which side of a limit's figure a stricter one lies. */
  public enum Tighter {
    /** The limit is a least value: stricter figures are larger. */
    ABOVE,
    /** The limit is a largest value: stricter figures are smaller. */
    BELOW
  }

  private final double chosen;
  private final Tighter tighter;
  private final double strictest;
  private final String reason;

  RideLimit(double chosen, Tighter tighter, double strictest, String reason) {
    this.chosen = chosen;
    this.tighter = tighter;
    this.strictest = strictest;
    this.reason = reason;
  }

  /** The figure chosen for everybody, in the unit that the constant names. */
  public double chosen() {
    return chosen;
  }

  /** On which side a stricter figure lies. */
  public Tighter tighter() {
    return tighter;
  }

  /** The strictest figure that is accepted; beyond it hardly any ride would be left. */
  public double strictest() {
    return strictest;
  }

  /** Why it stands, in a sentence or two. */
  public String reason() {
    return reason;
  }

  /**
   * Whether a figure is permitted: as strict as the chosen one or stricter.
   *
   * @param value in the limit's unit
   * @return true between the chosen figure and the strictest
   */
  public boolean permits(double value) {
    return tighter == Tighter.ABOVE
        ? value >= chosen && value <= strictest
        : value <= chosen && value >= strictest;
  }

  /**
   * Whether a quantity breaks the limit.
   *
   * @param value what was computed, in the limit's unit
   * @param limit the limit's figure
   */
  boolean isBroken(double value, double limit) {
    return tighter == Tighter.ABOVE ? value < limit : value > limit;
  }
}
