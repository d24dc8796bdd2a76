package trimwright.fitting.judge;

import trimwright.fitting.wish.Wish;

/**
 * A rig with one shim: balances at all the ride's speeds, before feet and track are placed. One
 * thread's.
 */
public final class QuickRide {
  private static final int WISHES = Wish.values().length;

  private final QuickRig rig;

  /** Grounds that neither track nor stance changes, as bits by their order. */
  final int grounds;

  /** Foot pressure at each speed with the mast in the middle [m], and its change per track [1]. */
  final double[] pressure;

  final double[] perTrack;

  /** Pitch of the fuselage at each speed [rad]. */
  final double[] pitch;

  /** Values of the wishes that neither track nor stance changes; NaN for the others. */
  final double[] values = new double[WISHES];

  QuickRide(QuickRig rig, int grounds, double[] pressure, double[] perTrack, double[] pitch) {
    this.rig = rig;
    this.grounds = grounds;
    this.pressure = pressure;
    this.perTrack = perTrack;
    this.pitch = pitch;
  }

  QuickRig rig() {
    return rig;
  }

  /** Whether it passes all limits that neither track nor stance changes. */
  public boolean passes() {
    return grounds == 0;
  }
}
