package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.ChangeSamples;
import trimwright.fitting.change.ChangeAdvice;
import trimwright.fitting.change.ChangeKind;
import trimwright.fitting.change.Effect;
import trimwright.fitting.change.KindAdvice;
import trimwright.fitting.judge.FullJudge;
import trimwright.fitting.judge.Judged;
import trimwright.fitting.wish.Wish;
import trimwright.kernel.envelope.Envelope;
import trimwright.kernel.trim.SurfaceTables;
import trimwright.kernel.trim.TrimPoint;

/** Advice, checked by taking it. */
class ChangeAdviceTest {
  private static ChangeAnswer noseUp;
  private static ChangeAnswer shimmed;

  @BeforeAll
  static void search() {
    noseUp = ChangeSamples.noseUp();
    shimmed = ChangeSamples.shimmed();
  }

  private static List<Effect> told(ChangeAnswer answer) {
    List<Effect> all = new ArrayList<>();
    answer.advice().kinds().forEach(kind -> kind.effect().ifPresent(all::add));
    all.addAll(answer.advice().pairs());
    return all;
  }

  @Test
  void theChangedCaseFileGivesWhatWasPromisedToTheLastBit() {
    for (ChangeAnswer answer : List.of(noseUp, shimmed)) {
      for (Effect effect : told(answer)) {
        CaseFile after =
            CaseReader.read(answer.caseFile(effect).text(), SectionFiles.NONE)
                .findValue()
                .orElseThrow();
        Judged anew =
            new FullJudge(effect.asked(), SurfaceTables.ANEW)
                .whole(after.rideCase(), Envelope.Ratings.NONE, () -> false);
        assertThat(after.digest()).isEqualTo(answer.caseFile(effect).digest());
        assertThat(anew.grounds()).isEqualTo(effect.judged().grounds());
        for (Wish wish : Wish.values()) {
          assertThat(anew.values().of(wish)).isEqualTo(effect.judged().values().of(wish));
        }
        Optional<TrimPoint> point = anew.wished().findPoint();
        assertThat(point).isEqualTo(effect.judged().wished().findPoint());
      }
    }
  }

  @Test
  void theCureOfTheNoseUpDeckIsTheWedge() {
    assertThat(ChangeWords.of(noseUp, Measures.METRIC).get(0))
        .startsWith("Do this first: put a ")
        .endsWith("wedge under the mast's base, thick end to the back.");
    assertThat(ChangeWords.of(noseUp, Measures.METRIC).toString())
        .contains("Measured against the fuselage the deck then stands ");
    Effect first = noseUp.advice().first().orElseThrow();
    assertThat(first.isEnough()).isTrue();
    assertThat(first.judged().wished().findPoint().orElseThrow().footShare())
        .isCloseTo(
            noseUp.advice().present().judged().wished().findPoint().orElseThrow().footShare(),
            within(0.005));
  }

  @Test
  void whereNoSingleChangeIsEnoughPairsAreTold() {
    ChangeAdvice advice = shimmed.advice();
    assertThat(
            advice.kinds().stream().anyMatch(k -> k.effect().filter(Effect::isEnough).isPresent()))
        .isFalse();
    assertThat(advice.pairs().size()).isPositive();
    assertThat(advice.pairs().get(0).isEnough()).isTrue();
    assertThat(advice.pairs().stream().allMatch(Effect::passes)).isTrue();
    List<String> words = ChangeWords.of(shimmed, Measures.METRIC);
    assertThat(words).anyMatch(line -> line.startsWith("Enough together: "));
  }

  @Test
  void noShimStandsAsABareSign() {
    Effect shim = best(shimmed.advice(), ChangeKind.SHIM).effect().orElseThrow();
    ChangeOrders orders = new ChangeOrders(shimmed, Measures.METRIC);
    assertThat(orders.order(shim)).matches("Turn the stabilizer's leading edge down .* degrees?");
    String all = orders.order(shim) + orders.details(shim);
    assertThat(all).doesNotContain("+").doesNotContain("-0").doesNotContain("−");
    assertThat(ChangeOrders.command(shimmed.caseFile(shim)))
        .startsWith("./run shim --angle-deg ")
        .contains("--bolt-spacing-mm SPACING --mounted above --stl ");
  }

  @Test
  void amountsAreSaidInTheReadersMeasures() {
    ChangeOrders imperial = new ChangeOrders(shimmed, Measures.IMPERIAL);
    assertThat(imperial.order(best(shimmed.advice(), ChangeKind.STANCE).effect().orElseThrow()))
        .contains(" in ");
    assertThat(imperial.order(best(shimmed.advice(), ChangeKind.SPEED).effect().orElseThrow()))
        .contains(" mph");
  }

  @Test
  void aStockNeverMakesTheAdviceWorse() {
    // A board that the stock does not know: its track is then looked at as without a stock.
    String text = ChangeSamples.text("nose-up-mismatch").replace("volume_l: 95", "volume_l: 96");
    ChangeAdvice without = ChangeSamples.of(text, Optional.empty(), Optional.empty()).advice();
    ChangeAdvice with = ChangeSamples.of(text, noseUp.stock(), Optional.empty()).advice();
    for (ChangeKind kind : ChangeKind.values()) {
      best(without, kind)
          .effect()
          .filter(Effect::passes)
          .ifPresent(
              effect ->
                  assertThat(best(with, kind).effect().orElseThrow().shortfall())
                      .isLessThanOrEqualTo(effect.shortfall() + 1e-9));
    }
    assertThat(best(with, ChangeKind.FRONT_WING).verdict())
        .isNotEqualTo(KindAdvice.Verdict.NONE_THERE);
    assertThat(best(with, ChangeKind.BOARD).tried()).isPositive();
    assertThat(best(with, ChangeKind.MAST).verdict()).isEqualTo(KindAdvice.Verdict.NONE_THERE);
  }

  @Test
  void nothingEverSaysThatASetupIsSafe() {
    Stream.of(noseUp, shimmed)
        .flatMap(answer -> ChangeWords.of(answer, Measures.METRIC).stream())
        .forEach(line -> assertThat(line.toLowerCase(Locale.ROOT)).doesNotContain("safe"));
    assertThat(ChangeWords.cautions()).contains("Nothing here says that a setup is safe.");
  }

  private static KindAdvice best(ChangeAdvice advice, ChangeKind kind) {
    return advice.kinds().get(kind.ordinal());
  }
}
