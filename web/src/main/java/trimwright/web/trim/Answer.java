package trimwright.web.trim;

import java.util.List;
import java.util.Optional;
import trimwright.exchange.words.RuleOut;

/**
 * What the page says about a case at a speed, all of it in words, figures and pictures ready to be
 * shown.
 *
 * @param verdict the first words
 * @param sideView to scale; empty where nothing is balanced
 * @param curves pitch, foot share and power on one speed axis
 * @param legs kilograms per leg; empty where nothing is balanced
 * @param cause why it rides so
 * @param points the numbers behind the curves
 * @param moments the moment terms at the speeds compared; empty where neither has a balance
 */
public record Answer(
    Verdict verdict,
    Optional<Picture> sideView,
    Picture curves,
    Optional<Legs> legs,
    Cause cause,
    Table points,
    Optional<Table> moments) {

  /**
   * Two lines.
   *
   * @param tone how it stands
   * @param first what it is or what to do
   * @param second the numbers behind it
   */
  public record Verdict(Tone tone, String first, String second) {}

  /**
   * A picture as SVG markup, drawn once for each kind of screen: letters keep their size, so that a
   * small screen needs another drawing and not a smaller one. The style sheet shows the one that
   * fits.
   *
   * @param phone for up to 719 px
   * @param tablet for up to 1199 px
   * @param desk for wider ones
   */
  public record Picture(String phone, String tablet, String desk) {}

  /** How a verdict stands. It never says that something is safe. */
  public enum Tone {
    /** Inside the limits that were computed. */
    GOOD,
    /** Balanced, with a limit broken. */
    WARN,
    /** Nothing that could be ridden. */
    BAD
  }

  /**
   * Vertical load on each foot.
   *
   * @param front kilograms
   * @param back kilograms
   * @param footShare percent on the front foot
   * @param forwardReserve millimetres
   * @param frontWidth share of a bar 100 wide, from 0 to 100
   */
  public record Legs(
      String front, String back, String footShare, String forwardReserve, int frontWidth) {
    /**
     * The rest of the bar.
     *
     * @return from 0 to 100
     */
    public int backWidth() {
      return WHOLE_BAR - frontWidth;
    }

    private static final int WHOLE_BAR = 100;
  }

  /**
   * The split.
   *
   * @param headline in a few words
   * @param sentences in plain words
   * @param split how the parts add up; empty where there is no split
   * @param ruleOut what to look at before any part is blamed
   */
  public record Cause(
      String headline, List<String> sentences, Optional<Table> split, List<RuleOut> ruleOut) {
    /** Copies the lists. */
    public Cause {
      sentences = List.copyOf(sentences);
      ruleOut = List.copyOf(ruleOut);
    }
  }
}
