package trimwright.fitting.judge;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import trimwright.fitting.match.ExampleStock;
import trimwright.fitting.wish.RidingKind;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.limit.RideLimit;
import trimwright.kernel.limit.RideLimits;
import trimwright.seed.RunSeed;

/** The best notch by halving against a look at every notch. */
class FeetPlacerPropertyTest {
  private static final RideAsked PLAIN =
      ExampleStock.asked(ExampleStock.rider(), RidingKind.LINKING);

  @Property(tries = 2000, seed = RunSeed.VALUE)
  void theNotchIsTheBestOfAll(@ForAll long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    RideAsked plain = PLAIN;
    RideAsked asked =
        new RideAsked(
            plain.base(),
            plain.span(),
            plain
                .wishes()
                .weighing(Wish.FEET, chance.nextInt(5))
                .weighing(Wish.FEET_MOVED, chance.nextInt(5)),
            0.3 * chance.nextDouble(),
            plain.posture(),
            plain.firstFlights());
    FeetPlacer placer = new FeetPlacer(asked);
    int speeds = 5;
    double[] shares = new double[speeds + 1];
    double middle = 2 * chance.nextDouble() - 0.5;
    for (int i = 0; i <= speeds; i++) {
      shares[i] = middle + 0.4 * (chance.nextDouble() - 0.5);
    }
    int best = FeetPlacer.NOWHERE;
    double least = Double.POSITIVE_INFINITY;
    for (int notch = -asked.notches(); notch <= asked.notches(); notch++) {
      double cost = placer.cost(shares, speeds, notch);
      boolean better =
          cost < least - 1e-11 || cost <= least + 1e-11 && Math.abs(notch) < Math.abs(best);
      if (inside(asked, shares, notch) && (best == FeetPlacer.NOWHERE || better)) {
        best = notch;
        least = cost;
      }
    }
    int placed = placer.place(shares, speeds);
    if (best == FeetPlacer.NOWHERE) {
      assertThat(placed).isEqualTo(FeetPlacer.NOWHERE);
    } else {
      assertThat(placed).isEqualTo(best);
    }
  }

  private static boolean inside(RideAsked asked, double[] shares, int notch) {
    RideLimits limits = asked.base().limits();
    for (double share : shares) {
      double moved = share - notch * RideAsked.NOTCH / asked.base().rider().stance();
      if (moved < limits.of(RideLimit.LEAST_FOOT_SHARE) - 1e-13
          || moved > limits.of(RideLimit.MOST_FOOT_SHARE) + 1e-13) {
        return false;
      }
    }
    return true;
  }
}
