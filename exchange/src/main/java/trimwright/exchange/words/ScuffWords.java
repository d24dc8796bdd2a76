package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.rig.FittedWing;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.section.Finish;
import trimwright.kernel.section.ViscousSection;

/**
 * What the computation leaves out of a scuffed wing's lift limit, in a sentence. Sections on
 * boundary layers know a scuffed wing as one whose flow is tripped; a rough nose thickens the
 * layers besides and stalls earlier. Said and not computed: the losses were measured on other
 * sections at larger Reynolds numbers.
 */
final class ScuffWords {
  /**
   * Least and most loss of the largest lift by a rough nose that a summary in hand gives [1]: 14 %
   * on NACA 23015 at a Reynolds number of 2.6 million (Selig, Maughmer and Somers, Natural-laminar-
   * flow airfoil for general-aviation applications, J. Aircraft 32 (4), 1995); 18 to 20 % on
   * sections of the 63- and 64-series (Timmer, An overview of NACA 6-digit airfoil series
   * characteristics, AIAA 2009-268).
   */
  private static final double LEAST_LOSS = 0.14;

  private static final double MOST_LOSS = 0.20;

  private static final String FRONT_WING = "front wing";

  private ScuffWords() {}

  /**
   * The sentence on a case's scuffed wings.
   *
   * @param caseFile the case
   * @return it; empty where no wing is scuffed, or where fitted sections stand in whose scuffed
   *     state is a rough nose
   */
  static Optional<String> find(CaseFile caseFile) {
    Setup setup = caseFile.rideCase().setup();
    List<String> names = new ArrayList<>();
    if (isTrippedOnly(setup.frontWing())) {
      names.add(FRONT_WING);
    }
    if (isTrippedOnly(setup.stabilizer())) {
      names.add("stabilizer");
    }
    if (names.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        "The scuffed "
            + String.join(" and ", names)
            + (names.size() == 1 ? " is" : " are")
            + " computed with fine scratches that trip the flow and no more. A rough nose (dents,"
            + " deep scratches) stalls earlier: tunnels measured "
            + percent(LEAST_LOSS)
            + " to "
            + percent(MOST_LOSS)
            + " % less of the largest lift, on other sections at larger Reynolds numbers"
            + (names.contains(FRONT_WING)
                ? "; the front wing would stall at a speed "
                    + percent(faster(LEAST_LOSS))
                    + " to "
                    + percent(faster(MOST_LOSS))
                    + " % higher."
                : "."));
  }

  private static boolean isTrippedOnly(FittedWing wing) {
    return wing.finish() == Finish.SCUFFED
        && wing.shape().stations().stream().anyMatch(s -> s.section() instanceof ViscousSection);
  }

  /** The same weight carried by less lift coefficient: speed grows with its root [1]. */
  private static double faster(double loss) {
    return 1 / Math.sqrt(1 - loss) - 1;
  }

  private static String percent(double share) {
    return Shown.decimals(100 * share, 0);
  }
}
