package trimwright.fitting.match;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.stock.StockPart;
import trimwright.fitting.stock.StockSetup;
import trimwright.fitting.wish.Grade;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.Wishes;
import trimwright.kernel.band.BandSolver;
import trimwright.kernel.band.Input;
import trimwright.kernel.band.Knowledge;
import trimwright.kernel.band.KnownBy;
import trimwright.kernel.band.Origin;
import trimwright.kernel.band.PointBand;
import trimwright.kernel.band.Quantity;
import trimwright.kernel.band.SharedInputs;
import trimwright.kernel.band.Spread;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.SurfaceTables;

/**
 * What tolerances do to a row: through the deck's pitch and the foot share at the wished speed,
 * which all of them reach. The other wishes are taken as computed.
 *
 * @param rideCase the row's ride
 * @param knowledge how its parts are known
 * @param pitch of the deck [rad], where there is a band
 * @param share on the front foot [1], likewise
 */
record RowBand(
    RideCase rideCase, Knowledge knowledge, Optional<Spread> pitch, Optional<Spread> share) {

  /** The band of a row; empty where it was stopped. */
  static Optional<RowBand> find(
      StockSetup setup, RideCase rideCase, SurfaceTables tables, BooleanSupplier isStopped) {
    Knowledge knowledge = knowledge(setup);
    return BandSolver.find(
            rideCase, knowledge, List.of(rideCase.rider().wishedSpeed()), tables, isStopped)
        .map(
            bands -> {
              Optional<PointBand> point = bands.points().get(0);
              return new RowBand(
                  rideCase,
                  knowledge,
                  point.flatMap(p -> p.find(Quantity.PITCH)),
                  point.flatMap(p -> p.find(Quantity.FOOT_SHARE)));
            });
  }

  private static Knowledge knowledge(StockSetup setup) {
    Map<Origin, KnownBy> known = new EnumMap<>(Origin.class);
    put(known, Origin.BOARD, setup.upper().board());
    setup.upper().battery().ifPresent(part -> put(known, Origin.BATTERY, part));
    put(known, Origin.MAST, setup.upper().mast());
    setup.upper().drive().ifPresent(part -> put(known, Origin.DRIVE, part));
    put(known, Origin.FUSELAGE, setup.foil().fuselage());
    put(known, Origin.FRONT_WING, setup.foil().frontWing());
    put(known, Origin.STABILIZER, setup.foil().stabilizer());
    setup.foil().shim().ifPresent(part -> put(known, Origin.SHIM, part));
    return new Knowledge(known);
  }

  private static void put(Map<Origin, KnownBy> known, Origin origin, StockPart<?> part) {
    known.put(origin, part.holding().knownBy());
  }

  /** What the row's own band does to its shortfall, two standard deviations [1]. */
  double reach(Judged judged, Wishes wishes) {
    double level = pitch.map(s -> change(Wish.LEVEL, judged, wishes, s.reach())).orElse(0.0);
    double feet = share.map(s -> change(Wish.FEET, judged, wishes, s.reach())).orElse(0.0);
    return Math.hypot(level, feet);
  }

  /**
   * How far two rows' shortfalls must lie apart to be told apart [1]: what both have from the same
   * source cancels.
   */
  double apart(Judged mine, RowBand other, Judged others, Wishes wishes) {
    Set<Input> shared = SharedInputs.between(rideCase, knowledge, other.rideCase, other.knowledge);
    double level = apart(Wish.LEVEL, pitch, other.pitch, shared, mine, others, wishes);
    double feet = apart(Wish.FEET, share, other.share, shared, mine, others, wishes);
    return Math.hypot(level, feet);
  }

  private static double apart(
      Wish wish,
      Optional<Spread> one,
      Optional<Spread> other,
      Set<Input> shared,
      Judged mine,
      Judged others,
      Wishes wishes) {
    if (one.isEmpty() || other.isEmpty()) {
      return 0;
    }
    // Half of the difference's variance to each.
    double reach = one.get().minus(other.get(), shared).reach() / Math.sqrt(2);
    return Math.hypot(change(wish, mine, wishes, reach), change(wish, others, wishes, reach));
  }

  /** The most that a wish's part of the shortfall changes when its value is off. */
  private static double change(Wish wish, Judged judged, Wishes wishes, double reach) {
    Grade grade = wishes.grade(wish);
    double value = judged.values().of(wish);
    double here = grade.shortfall(value);
    double more = grade.shortfall(value + reach) - here;
    double less = here - grade.shortfall(Math.max(0, value - reach));
    return Math.max(more, less) * wishes.weight(wish) / Math.max(1, wishes.weight());
  }
}
