package trimwright.fitting.judge;

import java.util.Optional;
import trimwright.fitting.wish.WishValues;

/**
 * Where mast and feet stand, and what the ride gives of the wishes then, by tables.
 *
 * @param track the mast forward of its track's middle [m]
 * @param feet how far both feet are moved forward [m]
 * @param ground the first limit that it breaks wherever the feet stand; empty where it passes
 * @param values of the wishes but {@link trimwright.fitting.wish.Wish#MANNERS}; none where it falls
 * @param shortfall of them, a wish without a value counted as met: what the whole falls short by at
 *     least [1]
 */
public record Placement(
    double track, double feet, Optional<Ground> ground, WishValues values, double shortfall) {
  /** Whether it passes every limit that the tables know. */
  public boolean passes() {
    return ground.isEmpty();
  }
}
