package trimwright.kernel.section;

import java.util.Objects;

/**
 * Something that was put right in the points of an outline, or that its reader should know.
 *
 * @param kind what it was
 * @param points how many points it concerned [1]; 0 where it concerned the whole
 * @param size how large it was: an angle [rad] for {@link Kind#TURNED}, a length [chords] for all
 *     others; 0 where it has no size
 */
public record OutlineRepair(Kind kind, int points, double size) {

  /** What was put right. */
  public enum Kind {
    /** The lower surface came first. */
    LOWER_FIRST,
    /** Points stood where their neighbour stood already, and were left out. */
    REPEATED,
    /** Points stepped back towards the leading edge by no more than this, and were left out. */
    STEPPED_BACK,
    /** The trailing edge was open by this much and was closed by a wedge over the chord. */
    CLOSED,
    /** The outline lay at an angle and was turned onto its chord line. */
    TURNED,
    /** Points scatter about a smooth line by about this much; they were taken as they are. */
    ROUGH
  }

  /** Checks that there is a kind. */
  public OutlineRepair {
    Objects.requireNonNull(kind, "kind");
  }
}
