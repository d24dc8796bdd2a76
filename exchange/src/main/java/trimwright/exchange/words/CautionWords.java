package trimwright.exchange.words;

import java.util.ArrayList;
import java.util.List;
import trimwright.exchange.read.CaseFile;
import trimwright.kernel.rig.Setup;

/** What comes before any number wherever people can get hurt, short enough to be read. */
public final class CautionWords {
  private static final String FIRST =
      "First flights go with a licensed instructor. Local rules and the makers' limits come before"
          + " any number here.";

  private CautionWords() {}

  /** What no answer says, whatever it recommends. */
  private static final String NEVER_SAFE = "Nothing here says that a setup is safe.";

  /**
   * The cautions of an answer that recommends setups, one line each, for a terminal.
   *
   * @param caseFile a case of it
   */
  public static String lines(CaseFile caseFile) {
    return String.join("\n", listFor(caseFile)) + "\n" + NEVER_SAFE + "\n";
  }

  /** The caution that stands before all others. */
  public static String first() {
    return FIRST;
  }

  /**
   * The cautions that a case calls for; nothing about parts that it does not have.
   *
   * @param caseFile the case
   * @return sentences, one caution each
   */
  public static List<String> listFor(CaseFile caseFile) {
    Setup setup = caseFile.rideCase().setup();
    List<String> all = new ArrayList<>();
    all.add(FIRST);
    all.add("Wear a helmet and an impact vest. Keep well away from people, boats and the shore.");
    all.add(
        setup.drive().isPresent()
            ? "The wings are sharp and the propeller does not stop at once: keep clear of both, in the"
                + " water and on the stand."
            : "The wings are sharp: keep clear of them, in the water and on the stand.");
    if (setup.battery().isPresent()) {
      all.add(
          "Lithium batteries: charge, carry and store them as their maker says; never use one that"
              + " was dropped or is wet inside.");
    }
    all.add("No computation knows the bolt that is loose today: check before every ride.");
    return List.copyOf(all);
  }
}
