package trimwright.fitting.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import trimwright.fitting.judge.FullJudge;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.judge.RideSpan;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Rider;
import trimwright.kernel.trim.SurfaceTables;

/** Judges a ride after changes: trim alone for a search, everything for what is told. */
final class ChangeJudge {
  private final RideAsked asked;
  private final SetupChanger changer;
  private final ChangedRide confirmed;
  private final SurfaceTables tables;
  private final BooleanSupplier isStopped;
  private final Map<List<Change>, Optional<Trial>> trials = new HashMap<>();
  private final Map<List<Change>, Optional<Effect>> effects = new HashMap<>();
  private final Map<List<Change>, Boolean> falls = new HashMap<>();

  ChangeJudge(
      RideAsked asked,
      SetupChanger changer,
      ChangedRide confirmed,
      SurfaceTables tables,
      BooleanSupplier isStopped) {
    this.asked = asked;
    this.changer = changer;
    this.confirmed = confirmed;
    this.tables = tables;
    this.isStopped = isStopped;
  }

  /**
   * A ride by its trim alone. Loads, take-off, manners and falls can add broken limits and
   * shortfall, and take neither away.
   *
   * @param changes made
   * @param broken how many hard limits it breaks
   * @param shortfall of all wishes but manners [1]
   */
  record Trial(List<Change> changes, int broken, double shortfall) {
    /** Better first; what changes less, among equals. */
    static int compare(Trial a, Trial b) {
      if (a.broken != b.broken) {
        return Integer.compare(a.broken, b.broken);
      }
      return Math.abs(a.shortfall - b.shortfall) > EQUAL
          ? Double.compare(a.shortfall, b.shortfall)
          : Double.compare(size(a.changes), size(b.changes));
    }
  }

  /** Shortfalls nearer than this are equal [1]: rounding. */
  static final double EQUAL = 1e-9;

  /** How much amounts change, to tell less from more of the same kinds. */
  static double size(List<Change> changes) {
    return changes.stream().mapToDouble(c -> Math.abs(c.amount())).sum();
  }

  /** By trim alone; empty where there is no such ride. */
  Optional<Trial> trial(List<Change> changes) {
    stop();
    return trials.computeIfAbsent(
        changes,
        all ->
            changer
                .after(all)
                .map(
                    c -> {
                      RideAsked of = asked(all);
                      Judged judged = new FullJudge(of, tables).ride(c);
                      return new Trial(
                          all, judged.grounds().size(), Enough.shortfall(of.wishes(), judged));
                    }));
  }

  /** By everything, as the changed case file has it; empty where there is no such case. */
  Optional<Effect> effect(List<Change> changes) {
    stop();
    return effects.computeIfAbsent(
        changes,
        all ->
            confirmed
                .after(all)
                .map(
                    rated -> {
                      RideAsked of = asked(all);
                      Judged judged =
                          new FullJudge(of, tables)
                              .whole(rated.rideCase(), rated.ratings(), isStopped);
                      return Effect.of(all, of, judged);
                    }));
  }

  /**
   * Whether a ride could pass by its falls: one posture is looked at, and where that fails no more
   * need be.
   *
   * @param changes made
   * @return true too where the rules of first flights do not hold
   */
  boolean mayFall(List<Change> changes) {
    stop();
    return !asked.isFirstFlights()
        || falls.computeIfAbsent(
            changes,
            all ->
                changer
                    .after(all)
                    .map(c -> new FullJudge(asked(all), tables).mayFall(c, isStopped))
                    .orElse(false));
  }

  private void stop() {
    if (isStopped.getAsBoolean()) {
      throw new CancellationException("stopped");
    }
  }

  /** Whoever rides faster rides all of the ride faster: its speeds go along with the wished one. */
  private RideAsked asked(List<Change> changes) {
    double faster =
        changes.stream()
            .filter(c -> c.kind() == ChangeKind.SPEED)
            .mapToDouble(Change::amount)
            .sum();
    if (faster == 0) {
      return asked;
    }
    RideCase base = asked.base();
    Rider r = base.rider();
    Rider quicker =
        new Rider(
            r.mass(),
            r.kitMass(),
            r.height(),
            r.airDragArea(),
            r.frontFoot(),
            r.backFoot(),
            r.wishedSpeed() + faster,
            r.wishedFootShare(),
            r.wishedPitch());
    RideSpan span = asked.span();
    return new RideAsked(
        base.withRider(quicker),
        new RideSpan(span.from() + faster, span.to() + faster, span.count()),
        asked.wishes(),
        asked.feetReach(),
        asked.posture(),
        asked.firstFlights());
  }
}
