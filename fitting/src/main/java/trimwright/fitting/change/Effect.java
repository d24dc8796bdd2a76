package trimwright.fitting.change;

import java.util.List;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.LimitValues;
import trimwright.fitting.judge.RideAsked;

/**
 * A ride after some changes, as the full solution has it.
 *
 * @param changes made to the present setup, in order of effort; none for the present ride
 * @param asked what is asked of it: the same for all but those who ride faster or slower
 * @param judged the whole judgement
 * @param limits how near it comes to its limits
 * @param shortfall how far it falls short of all wishes; see {@link Enough#shortfall} [1]
 */
public record Effect(
    List<Change> changes, RideAsked asked, Judged judged, LimitValues limits, double shortfall) {
  /** Copies the list. */
  public Effect {
    changes = List.copyOf(changes);
  }

  static Effect of(List<Change> changes, RideAsked asked, Judged judged) {
    return new Effect(
        changes, asked, judged, LimitValues.of(judged), Enough.shortfall(asked.wishes(), judged));
  }

  /** Whether it breaks no hard limit. */
  public boolean passes() {
    return judged.passes();
  }

  /** Whether nothing more need be changed. */
  public boolean isEnough() {
    return Enough.is(asked.wishes(), judged);
  }
}
