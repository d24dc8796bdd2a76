package trimwright.fitting.change;

import trimwright.fitting.judge.Judged;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;

/** The one place that says which ride is good enough, and which change is worth its effort. */
public final class Enough {
  /**
   * Level and feet are good enough up to this shortfall [1]. Chosen: with the chosen grades a deck
   * 1.1 degrees off and feet 0.045 of the load off, which few riders feel.
   */
  public static final double NEARLY = 0.25;

  /** No wish that counts may be worse than poor [1]. */
  public static final double POOR = 1;

  /**
   * A change that lowers the shortfall by less helps nothing [1]. Chosen: a wish of middling weight
   * moved by a tenth of the way from good to poor.
   */
  public static final double NOTICED = 0.01;

  /**
   * Where no change is enough, the first to do takes at least this part of what the best one takes
   * [1]. Chosen: a change of less effort that does most of it is tried first.
   */
  public static final double MOST_OF_IT = 0.6;

  private Enough() {}

  /**
   * Whether a ride needs no change: inside all limits, level and feet nearly as wished, no wish
   * that counts worse than poor.
   *
   * @param wishes what is wished
   * @param judged the ride
   */
  static boolean is(Wishes wishes, Judged judged) {
    if (!judged.passes()) {
      return false;
    }
    for (Wish wish : Wish.values()) {
      double most = wish == Wish.LEVEL || wish == Wish.FEET ? NEARLY : POOR;
      if (wishes.weight(wish) > 0 && wishes.shortfall(wish, judged.values().of(wish)) > most) {
        return false;
      }
    }
    return true;
  }

  /**
   * How far a ride falls short of all wishes. Where it breaks a limit, what it has no value of
   * counts as poor, so that no ride looks better for not being one.
   *
   * @param wishes what is wished
   * @param judged the ride
   * @return the mean by weights [1]
   */
  static double shortfall(Wishes wishes, Judged judged) {
    double all = wishes.shortfall(judged.values());
    if (judged.passes()) {
      return all;
    }
    double missing = 0;
    for (Wish wish : Wish.values()) {
      // A ride may have no battery, and its manners need not have been asked for.
      boolean may = wish == Wish.RANGE || wish == Wish.MANNERS;
      missing += !may && !judged.values().has(wish) ? wishes.weight(wish) : 0;
    }
    return wishes.weight() == 0 ? 0 : all + POOR * missing / wishes.weight();
  }

  /** Whether one ride is better than another by as much as counts. */
  static boolean helps(Effect before, Effect after) {
    return after.passes()
        && (!before.passes() || before.shortfall() - after.shortfall() >= NOTICED);
  }
}
