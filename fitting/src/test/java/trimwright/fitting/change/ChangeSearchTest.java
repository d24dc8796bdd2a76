package trimwright.fitting.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static trimwright.fitting.change.SampleRide.DEGREE;
import static trimwright.fitting.change.SampleRide.LEVEL;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import org.junit.jupiter.api.Test;
import trimwright.fitting.judge.Ground;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.wish.Wish;
import trimwright.fitting.wish.WishValues;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

/** What is advised, and in which order. */
class ChangeSearchTest {
  @Test
  void theNoseUpDeckIsCuredByTheWedge() {
    ChangeAdvice advice = LEVEL.withBase(1.5 * DEGREE).advice();
    assertThat(advice.present().isEnough()).isFalse();
    Effect first = advice.first().orElseThrow();
    assertThat(first.isEnough()).isTrue();
    assertThat(first.changes()).hasSize(1);
    assertThat(first.changes().get(0).kind()).isEqualTo(ChangeKind.WEDGE);
    assertThat(first.changes().get(0).amount()).isBetween(-5.01 * DEGREE, -3.99 * DEGREE);
    assertThat(advice.pairs().size()).isZero();
  }

  @Test
  void nothingIsAdvisedWhereNothingIsMissing() {
    Judged now = LEVEL.advice().present().judged();
    // The middle of the shares over the ride: no other place of the feet is nearer to it.
    double share =
        now.outcomes().stream()
            .mapToDouble(o -> o.findPoint().orElseThrow().footShare())
            .sorted()
            .skip(1)
            .limit(2)
            .average()
            .orElseThrow();
    double pitch = now.wished().findPoint().orElseThrow().pitch();
    SampleRide wishing = LEVEL.wishing(share, pitch);
    ChangeAdvice advice = wishing.advice(wishing.askedForTrimAlone());
    assertThat(advice.present().isEnough()).isTrue();
    assertThat(advice.first().isEmpty()).isTrue();
    assertThat(advice.pairs().size()).isZero();
    assertThat(advice.kinds())
        // Slower, the feet bear more alike over the ride: that is told, and not advised.
        .filteredOn(k -> k.kind() != ChangeKind.SPEED)
        .extracting(KindAdvice::verdict)
        .isNotEmpty()
        .doesNotContain(KindAdvice.Verdict.HELPS);
  }

  @Test
  void everyKindIsToldInItsOrder() {
    ChangeAdvice advice = LEVEL.withShim(2.5 * DEGREE).advice();
    assertThat(advice.kinds()).extracting(KindAdvice::kind).containsExactly(ChangeKind.values());
    Effect shim = advice.kinds().get(ChangeKind.SHIM.ordinal()).effect().orElseThrow();
    assertThat(shim.changes().get(0).amount()).isNegative();
  }

  @Test
  void whatIsEnoughWithLeastEffortComesFirst() {
    Effect present = effect(9 * DEGREE, 0);
    Effect slightly = effect(7 * DEGREE, 0);
    Effect enough = effect(0.5 * DEGREE, 0);
    Effect better = effect(0, 0);
    first(present, List.of(slightly, enough, better), List.of(), enough);
    first(better, List.of(), List.of(), null);
  }

  @Test
  void whereNothingIsEnoughLessEffortThatDoesMostComesFirst() {
    Effect present = effect(10 * DEGREE, 0);
    Effect little = effect(8 * DEGREE, 0);
    Effect most = effect(4.4 * DEGREE, 0);
    Effect all = effect(2 * DEGREE, 0);
    first(present, List.of(little, most, all), List.of(), most);
    first(present, List.of(little, all), List.of(), all);
    first(present, List.of(), List.of(all), all);
    first(present, List.of(), List.of(), null);
  }

  @Test
  void whatBreaksALimitIsMendedFirst() {
    Effect broken = effect(0, 0, Ground.STALL_MARGIN);
    Effect mends = effect(6 * DEGREE, 0);
    Effect better = effect(3 * DEGREE, 0);
    assertThat(broken.isEnough()).isFalse();
    assertThat(Enough.helps(broken, mends)).isTrue();
    assertThat(Enough.helps(mends, effect(0, 0, Ground.THRUST))).isFalse();
    first(broken, List.of(mends, better), List.of(), mends);
  }

  @Test
  void aRideWithoutValuesDoesNotLookBetterThanOneWithPoorOnes() {
    Judged none = judged(WishValues.none(), Ground.FEET);
    assertThat(Enough.shortfall(LEVEL.asked().wishes(), none))
        .isGreaterThan(effect(3.5 * DEGREE, 0.18, Ground.PITCH).shortfall());
  }

  @Test
  void aSearchThatIsStoppedSaysSo() {
    SetupChanger changer = new SetupChanger(LEVEL.ride(), OwnParts.NONE);
    int[] asked = {0};
    ChangeSearch search =
        new ChangeSearch(
            LEVEL.asked(),
            OwnParts.NONE,
            ChangedRide.computed(changer),
            SampleRide.TABLES,
            step -> {},
            () -> asked[0]++ > 20);
    assertThatThrownBy(search::find).isInstanceOf(CancellationException.class);
  }

  /** By identity: a ride that fails is too long to print. */
  private static void first(
      Effect present, List<Effect> helping, List<Effect> pairs, Effect expected) {
    boolean same = ChangeSearch.first(present, helping, pairs).orElse(null) == expected;
    assertThat(same).isTrue();
  }

  private static Effect effect(double offLevel, double offFeet, Ground... broken) {
    WishValues values = WishValues.none();
    for (Wish wish : Wish.values()) {
      values = values.with(wish, good(wish));
    }
    values = values.with(Wish.LEVEL, offLevel).with(Wish.FEET, offFeet);
    return Effect.of(List.of(), LEVEL.asked(), judged(values, broken));
  }

  private static double good(Wish wish) {
    double from = LEVEL.asked().wishes().grade(wish).from();
    return Double.isFinite(from) ? from : 0;
  }

  private static Judged judged(WishValues values, Ground... broken) {
    return new Judged(
        LEVEL.ride(),
        values,
        Set.copyOf(Arrays.asList(broken)),
        List.of(),
        new TrimOutcome.NoTrim(LEVEL.wishedSpeed(), NoTrimReason.TOO_SLOW, Optional.empty()),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }
}
