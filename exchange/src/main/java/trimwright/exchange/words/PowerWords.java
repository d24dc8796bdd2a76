package trimwright.exchange.words;

import trimwright.kernel.propel.PowerBasis;

/** How far watts, minutes and kilometres are to be believed. */
public final class PowerWords {
  private PowerWords() {}

  /**
   * What power is computed from, and its doubt.
   *
   * @param basis as the drive has it
   * @return two sentences
   */
  public static String of(PowerBasis basis) {
    String from =
        switch (basis) {
          case ESTIMATED -> "Watts are estimated from the propeller's diameter alone";
          case GIVEN_EFFICIENCY -> "Watts come from the drive's efficiency as it was given";
          case SERIES ->
              "Watts come from a published propeller series of the same blades, pitch and area";
          case OPEN_WATER -> "Watts come from the propeller's own measured table";
        };
    return from
        + ", and no ride has measured them: the drive alone may be off by ±"
        + Shown.decimals(200 * basis.deviation(), 0)
        + " %, the drag comes on top. Minutes and kilometres are as uncertain.";
  }
}
