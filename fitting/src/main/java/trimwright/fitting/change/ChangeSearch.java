package trimwright.fitting.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import trimwright.fitting.judge.RideAsked;
import trimwright.kernel.trim.SurfaceTables;

/**
 * Looks for the smallest change. Amounts and parts are ranked by trim alone; the best of them are
 * judged by everything, and so is all that is told.
 *
 * <p>Not safe for several threads, and made for one search.
 */
public final class ChangeSearch {
  private final ChangeSpace space;
  private final ChangeJudge judge;
  private final BestOf best;
  private final Consumer<ChangeStep> progress;

  /**
   * A search.
   *
   * @param asked what is asked; its base is the present ride
   * @param parts where other parts come from
   * @param confirmed rides as their case files have them
   * @param tables where tables of lifting surfaces come from; should keep some dozens
   * @param progress told what has been looked at
   * @param isStopped asked again and again
   */
  public ChangeSearch(
      RideAsked asked,
      OwnParts parts,
      ChangedRide confirmed,
      SurfaceTables tables,
      Consumer<ChangeStep> progress,
      BooleanSupplier isStopped) {
    space = new ChangeSpace(asked, parts);
    judge =
        new ChangeJudge(asked, new SetupChanger(asked.base(), parts), confirmed, tables, isStopped);
    best = new BestOf(judge);
    this.progress = progress;
  }

  /**
   * What to change.
   *
   * @return the advice
   * @throws CancellationException if it was stopped
   * @throws IllegalArgumentException if the present ride has no case
   */
  public ChangeAdvice find() {
    Effect present =
        judge
            .effect(List.of())
            .orElseThrow(() -> new IllegalArgumentException("there is no such ride"));
    List<KindAdvice> kinds = new ArrayList<>();
    for (ChangeKind kind : ChangeKind.values()) {
      kinds.add(single(present, kind));
      progress.accept(new ChangeStep(Optional.of(kind), kinds.size(), steps()));
    }
    List<Effect> helping =
        kinds.stream()
            .filter(k -> k.verdict() == KindAdvice.Verdict.HELPS)
            .map(k -> k.effect().orElseThrow())
            .toList();
    boolean enough = present.isEnough() || helping.stream().anyMatch(Effect::isEnough);
    List<Effect> pairs = enough ? List.of() : new PairSearch(space, judge).find(present, helping);
    progress.accept(new ChangeStep(Optional.empty(), steps(), steps()));
    return new ChangeAdvice(present, kinds, pairs, first(present, helping, pairs));
  }

  private static int steps() {
    return ChangeKind.values().length + 1;
  }

  private KindAdvice single(Effect present, ChangeKind kind) {
    List<List<Change>> all = space.list(kind).stream().map(List::of).toList();
    Optional<Effect> found = best.of(all);
    if (found.isEmpty()) {
      return new KindAdvice(kind, KindAdvice.Verdict.NONE_THERE, found, 0);
    }
    KindAdvice.Verdict verdict =
        !found.get().passes()
            ? KindAdvice.Verdict.BREAKS_LIMITS
            : Enough.helps(present, found.get())
                ? KindAdvice.Verdict.HELPS
                : KindAdvice.Verdict.NO_HELP;
    return new KindAdvice(kind, verdict, found, all.size());
  }

  /**
   * What to do first: of the single changes that are enough the one of least effort; else that of
   * least effort that takes most of what the best takes; else the first pair.
   */
  static Optional<Effect> first(Effect present, List<Effect> helping, List<Effect> pairs) {
    if (present.isEnough()) {
      return Optional.empty();
    }
    Optional<Effect> enough = helping.stream().filter(Effect::isEnough).findFirst();
    if (enough.isPresent()) {
      return enough;
    }
    Optional<Effect> most = helping.stream().min(Comparator.comparingDouble(Effect::shortfall));
    if (most.isEmpty()) {
      return pairs.stream().findFirst();
    }
    if (!present.passes()) {
      // What is inside the limits again counts first; the least effort that does it.
      return helping.stream().findFirst();
    }
    double wanted =
        present.shortfall() - Enough.MOST_OF_IT * (present.shortfall() - most.get().shortfall());
    return helping.stream().filter(e -> e.shortfall() <= wanted).findFirst();
  }
}
