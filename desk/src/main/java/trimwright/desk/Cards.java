package trimwright.desk;

import java.util.List;
import java.util.Optional;
import trimwright.exchange.read.StockCases;
import trimwright.fitting.judge.Placement;
import trimwright.fitting.judge.RideAsked;
import trimwright.fitting.match.Candidate;
import trimwright.fitting.match.Finds;
import trimwright.fitting.stock.BoardSet;
import trimwright.fitting.stock.FoilSet;
import trimwright.fitting.stock.StockSetup;

/** One rider's best card on each hardware set, by tables. */
final class Cards {
  private final StockCases cases;
  private final RideAsked asked;
  private final StockSetup[] setups;
  private final double[] feet;
  private final double[] shortfalls;

  private Cards(StockCases cases, RideAsked asked, Candidate[] best) {
    this.cases = cases;
    this.asked = asked;
    setups = new StockSetup[best.length];
    feet = new double[best.length];
    shortfalls = new double[best.length];
    for (int set = 0; set < best.length; set++) {
      shortfalls[set] = Double.NaN;
      if (best[set] != null) {
        setups[set] = best[set].setup();
        feet[set] = best[set].placement().feet();
        shortfalls[set] = best[set].placement().shortfall();
      }
    }
  }

  StockCases cases() {
    return cases;
  }

  RideAsked asked() {
    return asked;
  }

  /** The card's hardware, shim and track; empty where no card passes. */
  Optional<StockSetup> setup(int set) {
    return Optional.ofNullable(setups[set]);
  }

  /** How far both feet are moved forward [m]. */
  double feet(int set) {
    return feet[set];
  }

  /** Shortfalls of all sets; NaN where no card passes [1]. */
  double[] shortfalls() {
    return shortfalls.clone();
  }

  /** Keeps the best candidate of each hardware set. One thread's. */
  static final class Best implements Finds {
    private final HardwareList hardware;
    private final Candidate[] best;

    Best(HardwareList hardware) {
      this.hardware = hardware;
      best = new Candidate[hardware.sets().size()];
    }

    @Override
    public void take(BoardSet upper, FoilSet foil, List<Placement> placements) {
      int set = -1;
      for (Placement placement : placements) {
        if (placement.passes()) {
          set = set < 0 ? hardware.placeOf(upper, foil) : set;
          keep(set, new Candidate(upper, foil, placement, 0));
        }
      }
    }

    private void keep(int set, Candidate candidate) {
      if (best[set] == null || Candidate.ORDER.compare(candidate, best[set]) < 0) {
        best[set] = candidate;
      }
    }

    /** What several threads have kept, together. */
    static Cards together(StockCases cases, RideAsked asked, List<Best> parts) {
      Best all = parts.get(0);
      for (Best part : parts.subList(1, parts.size())) {
        for (int set = 0; set < all.best.length; set++) {
          if (part.best[set] != null) {
            all.keep(set, part.best[set]);
          }
        }
      }
      return new Cards(cases, asked, all.best);
    }
  }
}
