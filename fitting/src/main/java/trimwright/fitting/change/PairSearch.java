package trimwright.fitting.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Looks for two changes that do together what none does alone. Amounts of two kinds are found in
 * turns, each for the last found amount of the other, until neither moves; that is far fewer rides
 * than all pairs, and finds the best pair where the shortfall has one valley.
 */
final class PairSearch {
  /** Turns after which the search of a pair ends. Chosen: two settle nearly all. */
  private static final int TURNS = 3;

  /** Of longer lists only every so manieth is looked at before the neighbours. */
  private static final int LONG = 16;

  private static final int STRIDE = 4;

  /** Parts of a kind that are tried with a second change: the best by themselves. Chosen. */
  private static final int MOST_PARTS = 3;

  /** Pairs of each sort that are judged by everything. Chosen. */
  private static final int MOST_JUDGED = 6;

  /** Changes of amounts that are tried together; feet and track are one cure, never two. */
  private static final List<List<ChangeKind>> AMOUNTS =
      List.of(
          List.of(ChangeKind.SPEED, ChangeKind.STANCE),
          List.of(ChangeKind.SPEED, ChangeKind.SHIM),
          List.of(ChangeKind.SPEED, ChangeKind.WEDGE),
          List.of(ChangeKind.STANCE, ChangeKind.SHIM),
          List.of(ChangeKind.STANCE, ChangeKind.WEDGE),
          List.of(ChangeKind.TRACK, ChangeKind.SHIM),
          List.of(ChangeKind.TRACK, ChangeKind.WEDGE),
          List.of(ChangeKind.SHIM, ChangeKind.WEDGE));

  /** What goes with another part. */
  private static final List<ChangeKind> BESIDE_PARTS =
      List.of(ChangeKind.STANCE, ChangeKind.SHIM, ChangeKind.WEDGE);

  private final ChangeSpace space;
  private final ChangeJudge judge;

  PairSearch(ChangeSpace space, ChangeJudge judge) {
    this.space = space;
    this.judge = judge;
  }

  /**
   * The pairs worth telling.
   *
   * @param present the ride as it is
   * @param helping single changes that help; a pair has to be better than each
   */
  List<Effect> find(Effect present, List<Effect> helping) {
    List<ChangeJudge.Trial> found = new ArrayList<>();
    for (List<ChangeKind> kinds : AMOUNTS) {
      amounts(space.list(kinds.get(0)), space.list(kinds.get(1))).ifPresent(found::add);
    }
    for (ChangeKind kind : ChangeKind.values()) {
      if (kind.isPart()) {
        found.addAll(withParts(kind));
      }
    }
    found.sort(ChangeJudge.Trial::compare);
    List<Effect> pairs =
        found.stream()
            .limit(MOST_JUDGED)
            .filter(trial -> trial.broken() == 0 && judge.mayFall(trial.changes()))
            .map(trial -> judge.effect(trial.changes()))
            .flatMap(Optional::stream)
            .filter(pair -> Enough.helps(present, pair))
            .filter(pair -> helping.stream().allMatch(single -> Enough.helps(single, pair)))
            .toList();
    return told(pairs);
  }

  private static List<Effect> told(List<Effect> pairs) {
    Comparator<Effect> byEffort =
        Comparator.<Effect, ChangeKind>comparing(e -> kind(e, 1)).thenComparing(e -> kind(e, 0));
    Stream<Effect> enough = pairs.stream().filter(Effect::isEnough).sorted(byEffort);
    Stream<Effect> others =
        pairs.stream()
            .filter(e -> !e.isEnough())
            .sorted(Comparator.comparingDouble(Effect::shortfall));
    return Stream.concat(enough, others).limit(ChangeAdvice.MOST_PAIRS).toList();
  }

  private static ChangeKind kind(Effect effect, int index) {
    return effect.changes().get(index).kind();
  }

  private List<ChangeJudge.Trial> withParts(ChangeKind kind) {
    List<ChangeJudge.Trial> parts =
        space.list(kind).stream()
            .map(part -> judge.trial(List.of(part)))
            .flatMap(Optional::stream)
            .sorted(ChangeJudge.Trial::compare)
            .limit(MOST_PARTS)
            .toList();
    List<ChangeJudge.Trial> found = new ArrayList<>();
    for (ChangeKind beside : BESIDE_PARTS) {
      parts.stream()
          .map(part -> part.changes().get(0))
          .map(part -> line(space.listBeside(part, beside), part))
          .flatMap(Optional::stream)
          .min(ChangeJudge.Trial::compare)
          .ifPresent(found::add);
    }
    return found;
  }

  /** The best of two lists together, from either side. */
  private Optional<ChangeJudge.Trial> amounts(List<Change> one, List<Change> other) {
    Optional<ChangeJudge.Trial> a = turns(one, other);
    Optional<ChangeJudge.Trial> b = turns(other, one);
    return Stream.of(a, b).flatMap(Optional::stream).min(ChangeJudge.Trial::compare);
  }

  private Optional<ChangeJudge.Trial> turns(List<Change> first, List<Change> second) {
    Optional<Change> start =
        first.stream()
            .map(change -> judge.trial(List.of(change)))
            .flatMap(Optional::stream)
            .min(ChangeJudge.Trial::compare)
            .map(trial -> trial.changes().get(0));
    if (start.isEmpty()) {
      return Optional.empty();
    }
    Change fixed = start.get();
    Optional<ChangeJudge.Trial> best = Optional.empty();
    for (int turn = 0; turn < 2 * TURNS; turn++) {
      Optional<ChangeJudge.Trial> found = line(turn % 2 == 0 ? second : first, fixed);
      if (found.isEmpty()
          || best.isPresent() && ChangeJudge.Trial.compare(found.get(), best.get()) >= 0) {
        break;
      }
      best = found;
      Change now = fixed;
      fixed = found.get().changes().stream().filter(c -> !c.equals(now)).findFirst().orElseThrow();
    }
    return best;
  }

  /** The best of a list beside a change. */
  private Optional<ChangeJudge.Trial> line(List<Change> list, Change beside) {
    List<Change> sorted = list.stream().sorted(Comparator.comparingDouble(Change::amount)).toList();
    if (sorted.size() <= LONG) {
      return best(sorted, beside);
    }
    List<Change> some = new ArrayList<>();
    for (int i = 0; i < sorted.size(); i += STRIDE) {
      some.add(sorted.get(i));
    }
    Optional<ChangeJudge.Trial> coarse = best(some, beside);
    if (coarse.isEmpty()) {
      return coarse;
    }
    int at =
        sorted.indexOf(
            coarse.get().changes().stream()
                .filter(c -> !c.equals(beside))
                .findFirst()
                .orElseThrow());
    return best(
        sorted.subList(Math.max(0, at - STRIDE + 1), Math.min(sorted.size(), at + STRIDE)), beside);
  }

  private Optional<ChangeJudge.Trial> best(List<Change> list, Change beside) {
    return list.stream()
        .map(change -> judge.trial(pair(change, beside)))
        .flatMap(Optional::stream)
        .min(ChangeJudge.Trial::compare);
  }

  /** Both in order of effort. */
  private static List<Change> pair(Change a, Change b) {
    return a.kind().compareTo(b.kind()) < 0 ? List.of(a, b) : List.of(b, a);
  }
}
