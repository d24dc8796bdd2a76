package trimwright.exchange.words;

import trimwright.exchange.read.CaseFile;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.rig.Craft;

/** Says below which speed the waves that the model leaves out make its lift less certain. */
public final class WaveWords {
  /**
   * Depth Froude number, speed over the root of gravity times depth, above which the surface acts
   * nearly as one of constant pressure without waves [1]. Chosen.
   */
  private static final double LEAST_DEPTH_FROUDE = 3;

  private WaveWords() {}

  /**
   * The speed below which waves count.
   *
   * @param caseFile the case; its front wing's depth decides
   * @return [m/s]
   */
  public static double speed(CaseFile caseFile) {
    return LEAST_DEPTH_FROUDE * Math.sqrt(Craft.GRAVITY * caseFile.rideCase().immersion());
  }

  /**
   * The warning for a list of speeds.
   *
   * @param caseFile the case
   * @param measures that the reader reads
   * @return one sentence
   */
  public static String of(CaseFile caseFile, Measures measures) {
    return "Below "
        + Amounts.of(measures).speed(speed(caseFile))
        + " the surface makes waves that this model leaves out: trust its numbers less there.";
  }
}
