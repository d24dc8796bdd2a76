package trimwright.fitting.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the best of some changes by judging few of them by everything. */
final class BestOf {
  /** Rides that are judged by everything, inside the limits or not, before the best is taken. */
  private static final int MOST_JUDGED = 3;

  private final ChangeJudge judge;

  BestOf(ChangeJudge judge) {
    this.judge = judge;
  }

  /**
   * The best inside all limits; else the one that breaks fewest of them.
   *
   * <p>A ride's shortfall by trim alone is never above its whole one, so that none need be looked
   * at whose trim already falls shorter than the whole of the best so far. Of those that remain a
   * few are looked at, which can miss a ride whose manners alone are a little better. Where the
   * best by trim breaks a limit that trim does not see, the farthest amounts either way are tried,
   * and then what lies between.
   *
   * @param candidates changes to choose from
   * @return empty where none of them is possible
   */
  Optional<Effect> of(List<List<Change>> candidates) {
    List<ChangeJudge.Trial> trials = new ArrayList<>();
    candidates.forEach(changes -> judge.trial(changes).ifPresent(trials::add));
    trials.sort(ChangeJudge.Trial::compare);
    Effect best = null;
    int judged = 0;
    for (ChangeJudge.Trial trial : trials) {
      if (best != null && (judged >= MOST_JUDGED || cannotBeat(trial, best))) {
        break;
      }
      Optional<Effect> effect = judge.effect(trial.changes());
      if (effect.isPresent()) {
        judged++;
        best = best == null || isBetter(effect.get(), best) ? effect.get() : best;
        if (judged == 1 && !best.passes() && trial.broken() == 0) {
          return Optional.of(mended(best, trials));
        }
      }
    }
    return Optional.ofNullable(best);
  }

  private static boolean cannotBeat(ChangeJudge.Trial trial, Effect best) {
    int broken = best.judged().grounds().size();
    return trial.broken() > broken
        || trial.broken() == broken && trial.shortfall() >= best.shortfall() - ChangeJudge.EQUAL;
  }

  /** Looks either way for amounts that mend what the best by trim breaks. */
  private Effect mended(Effect broken, List<ChangeJudge.Trial> trials) {
    Effect best = broken;
    for (List<ChangeJudge.Trial> side : sides(broken, trials)) {
      Optional<Effect> far =
          side.isEmpty() ? Optional.empty() : effect(side.get(side.size() - 1).changes());
      if (far.isPresent() && isBetter(far.get(), best)) {
        best = far.get();
        best = far.get().passes() ? between(side, best) : best;
      }
    }
    return best;
  }

  private Optional<Effect> effect(List<Change> changes) {
    return judge.mayFall(changes) ? judge.effect(changes) : Optional.empty();
  }

  /** The least amount of a side that is inside the limits, where all larger ones are. */
  private Effect between(List<ChangeJudge.Trial> side, Effect inside) {
    Effect best = inside;
    int low = 0;
    int high = side.size() - 1;
    while (low < high) {
      int middle = (low + high) / 2;
      Optional<Effect> effect = judge.effect(side.get(middle).changes());
      if (effect.isPresent() && effect.get().passes()) {
        best = isBetter(effect.get(), best) ? effect.get() : best;
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return best;
  }

  /**
   * What lies beyond a ride's amount on either side, by its last change, the nearest first; parts
   * have no sides, and all others stand on one.
   */
  private static List<List<ChangeJudge.Trial>> sides(Effect of, List<ChangeJudge.Trial> trials) {
    List<ChangeJudge.Trial> inside = trials.stream().filter(t -> t.broken() == 0).toList();
    double at = last(of.changes()).amount();
    List<ChangeJudge.Trial> up =
        inside.stream()
            .filter(t -> last(t.changes()).amount() > at)
            .sorted(Comparator.comparingDouble(t -> last(t.changes()).amount()))
            .toList();
    List<ChangeJudge.Trial> down =
        inside.stream()
            .filter(t -> last(t.changes()).amount() < at)
            .sorted(Comparator.comparingDouble(t -> -last(t.changes()).amount()))
            .toList();
    if (!up.isEmpty() || !down.isEmpty()) {
      return List.of(up, down);
    }
    List<List<ChangeJudge.Trial>> parts = new ArrayList<>();
    inside.stream()
        .filter(t -> !t.changes().equals(of.changes()))
        .limit(MOST_JUDGED - 1)
        .forEach(t -> parts.add(List.of(t)));
    return parts;
  }

  private static Change last(List<Change> changes) {
    return changes.get(changes.size() - 1);
  }

  static boolean isBetter(Effect a, Effect b) {
    int broken = a.judged().grounds().size();
    int other = b.judged().grounds().size();
    return broken != other ? broken < other : a.shortfall() < b.shortfall() - ChangeJudge.EQUAL;
  }
}
