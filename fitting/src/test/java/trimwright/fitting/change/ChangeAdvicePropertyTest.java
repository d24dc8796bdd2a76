package trimwright.fitting.change;

import static org.assertj.core.api.Assertions.assertThat;
import static trimwright.fitting.change.SampleRide.DEGREE;
import static trimwright.fitting.change.SampleRide.KMH;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import trimwright.fitting.judge.FullJudge;
import trimwright.fitting.judge.Judged;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.seed.RunSeed;

/** What holds of the advice to any rider. */
class ChangeAdvicePropertyTest {
  @Property(tries = 10, seed = RunSeed.VALUE)
  void adviceKeepsItsPromisesAndTheLimits(@ForAll long seed) {
    check(rider(seed));
  }

  @Tag("long")
  @Property(tries = 2000, seed = RunSeed.VALUE)
  void adviceToThousandsKeepsItsPromisesAndTheLimits(@ForAll long seed) {
    check(rider(seed));
  }

  private static SampleRide rider(long seed) {
    SplittableRandom chance = new SplittableRandom(seed);
    return new SampleRide(
        chance.nextDouble(50, 120),
        chance.nextDouble(0.25, 0.6),
        chance.nextDouble(16, 32) * KMH,
        chance.nextDouble(0.4, 0.6),
        0,
        chance.nextDouble(-6, 4) * DEGREE,
        0.5 * chance.nextInt(-4, 5) * DEGREE);
  }

  private static void check(SampleRide rider) {
    ChangeAdvice advice = rider.advice();
    Effect present = advice.present();
    advice
        .kinds()
        .forEach(
            kind -> {
              if (kind.verdict() == KindAdvice.Verdict.HELPS) {
                assertThat(Enough.helps(present, kind.effect().orElseThrow())).isTrue();
              }
            });
    Stream.concat(advice.first().stream(), advice.pairs().stream())
        .forEach(
            effect -> {
              Judged anew = anew(rider, effect);
              assertThat(anew.grounds()).isEmpty();
              assertThat(Enough.shortfall(effect.asked().wishes(), anew))
                  .isEqualTo(effect.shortfall());
              assertThat(effect.shortfall() < present.shortfall() || !present.passes()).isTrue();
            });
    List<Effect> helping =
        advice.kinds().stream()
            .filter(k -> k.verdict() == KindAdvice.Verdict.HELPS)
            .map(k -> k.effect().orElseThrow())
            .toList();
    if (present.isEnough()) {
      assertThat(advice.first().isEmpty()).isTrue();
    } else if (helping.stream().anyMatch(Effect::isEnough)) {
      assertThat(advice.first()).isEqualTo(helping.stream().filter(Effect::isEnough).findFirst());
    } else if (!helping.isEmpty()) {
      assertThat(helping.stream().map(Effect::changes))
          .contains(advice.first().orElseThrow().changes());
    }
  }

  /** The ride made and judged by itself, on tables of its own. */
  private static Judged anew(SampleRide rider, Effect effect) {
    RideCase ride =
        new SetupChanger(rider.ride(), OwnParts.NONE).after(effect.changes()).orElseThrow();
    return new FullJudge(effect.asked(), SurfaceTables.ANEW)
        .whole(ride, Envelope.Ratings.NONE, () -> false);
  }
}
