package trimwright.exchange.words;

import java.util.List;

/**
 * A plain fault to look for before a number is believed.
 *
 * @param what the fault
 * @param how how to look for it
 */
public record RuleOut(String what, String how) {

  /** Everything to rule out, the quickest and most frequent first. */
  public static final List<RuleOut> LIST =
      List.of(
          new RuleOut(
              "A loose bolt",
              "Hold the board still and rock each wing and the mast by hand: nothing may click or"
                  + " move. Tighten what does and look at the thread."),
          new RuleOut(
              "The shim the wrong way round",
              "Look from the side which end of the shim is thick, and compare it with what the"
                  + " setting says about its thick end."),
          new RuleOut(
              "The stabilizer upside down",
              "Compare its rounder face and its marks with the maker's drawing; on most, the"
                  + " rounder face of the stabilizer looks down."),
          new RuleOut(
              "Weed",
              "Lift the foil out and look at both leading edges, the mast and the propeller: one"
                  + " strand is enough to change the trim."),
          new RuleOut(
              "A nick",
              "Run a fingertip slowly behind, never along, the leading edges. Sand and fill what"
                  + " you feel before the next ride."),
          new RuleOut(
              "The battery in the wrong place",
              "Open the hatch and see whether the battery sits against the stop that the setting"
                  + " was made for, and cannot slide."));
}
