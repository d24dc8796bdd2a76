package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.rig.Setup;

/**
 * A plain fault to look for before a number is believed.
 *
 * @param what the fault
 * @param how how to look for it
 */
public record RuleOut(String what, String how) {

  /**
   * What to rule out on a case, the quickest and most frequent first; nothing about parts that it
   * does not have.
   *
   * @param caseFile the case
   * @return the list
   */
  public static List<RuleOut> listFor(CaseFile caseFile) {
    Setup setup = caseFile.rideCase().setup();
    List<RuleOut> list = new ArrayList<>();
    list.add(LOOSE_BOLT);
    if (ShimWords.isShim(setup.shim())) {
      list.add(SHIM);
    }
    list.add(STABILIZER);
    list.add(setup.drive().isPresent() ? WEED_AND_PROPELLER : WEED);
    list.add(NICK);
    if (setup.battery().isPresent()) {
      list.add(BATTERY);
    }
    return list;
  }

  private static final RuleOut LOOSE_BOLT =
      new RuleOut(
          "A loose bolt",
          "Hold the board still and rock each wing and the mast by hand: nothing may click or"
              + " move. Tighten what does and look at the thread.");

  private static final RuleOut SHIM =
      new RuleOut(
          "The shim the wrong way round",
          "Look from the side which end of the shim is thick, and compare it with what the"
              + " setting says about its thick end.");

  private static final RuleOut STABILIZER =
      new RuleOut(
          "The stabilizer upside down",
          "Compare its rounder face and its marks with the maker's drawing; on most, the"
              + " rounder face of the stabilizer looks down.");

  private static final RuleOut WEED_AND_PROPELLER = weed(true);

  private static final RuleOut WEED = weed(false);

  private static RuleOut weed(boolean powered) {
    return new RuleOut(
        "Weed",
        "Lift the foil out and look at both leading edges"
            + (powered ? ", the mast and the propeller" : " and the mast")
            + ": one strand is enough to change the trim.");
  }

  private static final RuleOut NICK =
      new RuleOut(
          "A nick",
          "Run a fingertip slowly behind, never along, the leading edges. Sand and fill what"
              + " you feel before the next ride.");

  private static final RuleOut BATTERY =
      new RuleOut(
          "The battery in the wrong place",
          "Open the hatch and see whether the battery sits against the stop that the setting"
              + " was made for, and cannot slide.");
}
