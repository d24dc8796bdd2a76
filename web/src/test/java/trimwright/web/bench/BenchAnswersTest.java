package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;

class BenchAnswersTest {

  @Test
  void aThirdAtOnceIsToldThatTheShopIsBusyAndTheTurnIsGivenBack() throws Exception {
    BenchAnswers answers = new BenchAnswers(Duration.ofMillis(20));
    CountDownLatch underWay = new CountDownLatch(2);
    CountDownLatch goOn = new CountDownLatch(1);
    ExecutorService others = Executors.newFixedThreadPool(2);
    try {
      Future<?> first = others.submit(() -> answers.inTurn(() -> hold(underWay, goOn)));
      Future<?> second = others.submit(() -> answers.inTurn(() -> hold(underWay, goOn)));
      underWay.await();
      assertThatThrownBy(() -> answers.inTurn(() -> "never")).isInstanceOf(TooBusy.class);
      goOn.countDown();
      first.get();
      second.get();
      assertThat(answers.inTurn(() -> "now")).isEqualTo("now");
    } finally {
      others.shutdownNow();
    }
  }

  private static String hold(CountDownLatch underWay, CountDownLatch goOn) {
    underWay.countDown();
    try {
      goOn.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return "done";
  }

  @Test
  void aFaultGivesItsTurnBack() {
    BenchAnswers answers = new BenchAnswers(Duration.ofMillis(20));
    for (int i = 0; i < 5; i++) {
      assertThatThrownBy(
              () ->
                  answers.inTurn(
                      () -> {
                        throw new IllegalStateException("a fault");
                      }))
          .isInstanceOf(IllegalStateException.class);
    }
  }

  @Test
  void theFirstAnswerOfACaseIsKeptAndTheSameAsAnyOther() {
    BenchAnswers answers = new BenchAnswers();
    CaseFile caseFile =
        CaseReader.read(DemoCases.list().get(0).text(), SectionFiles.NONE)
            .findValue()
            .orElseThrow();
    String first = answers.first(Measures.METRIC, caseFile);
    assertThat(answers.first(Measures.METRIC, caseFile)).isSameAs(first);
    assertThat(answers.accepted(0, Measures.METRIC, caseFile)).isEqualTo(first);
    assertThat(answers.first(Measures.IMPERIAL, caseFile)).isNotEqualTo(first);
  }
}
