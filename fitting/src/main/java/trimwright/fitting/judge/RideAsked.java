package trimwright.fitting.judge;

import java.util.Objects;
import java.util.Optional;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.rig.Setup;

/**
 * What is asked of every setup: a rider in a water, over some speeds.
 *
 * @param base rider, water and ride; its setup is set aside
 * @param span the speeds
 * @param wishes what is wished, and how much each weighs
 * @param feetReach how far both feet may be moved along the deck, either way [m]
 * @param posture how the rider rests on the board
 * @param firstFlights the remote's settings where the rules of first flights hold
 */
public record RideAsked(
    RideCase base,
    RideSpan span,
    Wishes wishes,
    double feetReach,
    Posture posture,
    Optional<FallDrive> firstFlights) {
  /** Step in which feet are moved: what people notice [m]. */
  public static final double NOTCH = 0.005;

  /** How far feet may be moved unless somebody says otherwise. Chosen: about a foot's width [m]. */
  public static final double USUAL_REACH = 0.1;

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if the reach is negative or infinite
   */
  public RideAsked {
    Objects.requireNonNull(base, "base");
    Objects.requireNonNull(span, "span");
    Objects.requireNonNull(wishes, "wishes");
    Objects.requireNonNull(posture, "posture");
    Objects.requireNonNull(firstFlights, "firstFlights");
    if (!(feetReach >= 0) || Double.isInfinite(feetReach)) {
      throw new IllegalArgumentException("the feet's reach must be at least 0, was " + feetReach);
    }
  }

  /** Whether the rules of first flights hold. */
  public boolean isFirstFlights() {
    return firstFlights.isPresent();
  }

  /** Steps by which the feet may be moved either way. */
  public int notches() {
    return (int) Math.floor(feetReach / NOTCH + 1e-9);
  }

  /**
   * The ride on a setup.
   *
   * @param setup the setup
   * @param feet how far both feet are moved forward [m]
   */
  public RideCase on(Setup setup, double feet) {
    Rider r = base.rider();
    Rider moved =
        new Rider(
            r.mass(),
            r.kitMass(),
            r.height(),
            r.airDragArea(),
            r.frontFoot() + feet,
            r.backFoot() + feet,
            r.wishedSpeed(),
            r.wishedFootShare(),
            r.wishedPitch());
    return new RideCase(
        base.water(),
        base.airDensity(),
        base.headWind(),
        base.chopHeight(),
        moved,
        setup,
        base.immersion(),
        base.pullAboveDeck(),
        base.limits());
  }

  /** The same asked of another rider, water or ride. */
  public RideAsked of(RideCase other) {
    return new RideAsked(other, span, wishes, feetReach, posture, firstFlights);
  }
}
