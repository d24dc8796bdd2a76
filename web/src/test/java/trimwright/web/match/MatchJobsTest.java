package trimwright.web.match;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import trimwright.fitting.match.Progress;

@Timeout(60)
class MatchJobsTest {
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  /** Long enough that nobody is held to want the job any more. */
  private static final Duration OVER_A_MINUTE = Duration.ofSeconds(61);

  private final AtomicLong clock = new AtomicLong();
  private final MatchJobs jobs = new MatchJobs(clock::get);
  private final CountDownLatch begun = new CountDownLatch(1);
  private final CountDownLatch mayEnd = new CountDownLatch(1);

  @AfterEach
  void close() {
    mayEnd.countDown();
    jobs.stop();
  }

  /** Work that looks up, as the search does, until it may end. */
  private MatchWork patient(String answer) {
    return watch -> {
      begun.countDown();
      while (mayEnd.getCount() > 0) {
        if (watch.isStopped()) {
          throw new CancellationException("stopped");
        }
        Thread.onSpinWait();
      }
      return answer;
    };
  }

  private static void await(BooleanSupplier condition) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!condition.getAsBoolean()) {
      assertThat(System.nanoTime()).as("patience").isLessThan(end);
      Thread.sleep(5);
    }
  }

  private MatchJob.State state(String id) {
    return jobs.find(id).orElseThrow().state();
  }

  @Test
  void whatIsFoundCanBeTakenAlongMoreThanOnce() throws Exception {
    String id = jobs.start("one", watch -> "{\"found\":1}").orElseThrow();
    await(() -> state(id) == MatchJob.State.DONE);
    assertThat(jobs.find(id).orElseThrow().findAnswer()).contains("{\"found\":1}");
    assertThat(jobs.find(id).orElseThrow().findAnswer()).isPresent();
    assertThat(jobs.find(id).orElseThrow().share()).isEqualTo(1);
  }

  @Test
  void itSaysHowFarItIs() throws Exception {
    String id =
        jobs.start(
                "one",
                watch -> {
                  watch.at(Progress.Stage.SCREEN, 412, 1160);
                  watch.at(Progress.Stage.SCREEN, 411, 1160);
                  return patient("x").run(watch);
                })
            .orElseThrow();
    begun.await();
    MatchJob job = jobs.find(id).orElseThrow();
    assertThat(job.words(0)).isEqualTo("412 of 1,160 pairs of wings");
    job.at(Progress.Stage.SCREEN, 1160, 1160);
    job.at(Progress.Stage.CONFIRM, 3, 12);
    assertThat(job.words(0))
        .isEqualTo("all 1,160 pairs of wings; 3 of at most 12 setups confirmed");
    assertThat(job.share()).isBetween(0.6, 0.9);
    job.at(Progress.Stage.ROBUST, 2, 8);
    assertThat(job.words(0)).endsWith("2 of 8 shown ones tried in other conditions");
    job.atSection("naca3412", 0.4);
    assertThat(job.words(0)).contains("naca3412", "40 %");
  }

  @Test
  void whatIsStoppedEndsSoonAndLeavesNoAnswer() throws Exception {
    String id = jobs.start("one", patient("late")).orElseThrow();
    begun.await();
    jobs.stop(id);
    assertThat(state(id)).isEqualTo(MatchJob.State.STOPPED);
    String next = jobs.start("two", watch -> "next").orElseThrow();
    await(() -> state(next) == MatchJob.State.DONE);
    assertThat(jobs.find(id).orElseThrow().findAnswer()).isEmpty();
  }

  @Test
  void anAnswerThatComesAfterTheStopIsDropped() throws Exception {
    AtomicBoolean ended = new AtomicBoolean();
    String id =
        jobs.start(
                "one",
                watch -> {
                  begun.countDown();
                  while (mayEnd.getCount() > 0) {
                    Thread.onSpinWait(); // Deaf to being stopped.
                  }
                  ended.set(true);
                  return "late";
                })
            .orElseThrow();
    begun.await();
    jobs.stop(id);
    mayEnd.countDown();
    await(ended::get);
    String next = jobs.start("two", watch -> "next").orElseThrow();
    await(() -> state(next) == MatchJob.State.DONE);
    assertThat(state(id)).isEqualTo(MatchJob.State.STOPPED);
    assertThat(jobs.find(id).orElseThrow().findAnswer()).isEmpty();
  }

  @Test
  void whatNobodyAsksForForAMinuteEnds() throws Exception {
    AtomicInteger ends = new AtomicInteger();
    jobs.start(
            "one",
            watch -> {
              try {
                return patient("x").run(watch);
              } catch (CancellationException e) {
                ends.incrementAndGet();
                throw e;
              }
            })
        .orElseThrow();
    begun.await();
    clock.addAndGet(OVER_A_MINUTE.toNanos());
    await(() -> ends.get() == 1);
  }

  @Test
  void whatIsAskedForGoesOn() throws Exception {
    String id = jobs.start("one", patient("found")).orElseThrow();
    begun.await();
    for (int i = 0; i < 5; i++) {
      clock.addAndGet(Duration.ofSeconds(40).toNanos());
      assertThat(state(id)).isEqualTo(MatchJob.State.RUNNING);
    }
    mayEnd.countDown();
    await(() -> state(id) == MatchJob.State.DONE);
    clock.addAndGet(Duration.ofMinutes(9).toNanos());
    assertThat(jobs.find(id)).as("an answer waits for a lost connection").isPresent();
    clock.addAndGet(Duration.ofMinutes(11).toNanos());
    assertThat(jobs.find(id)).as("and not for ever").isEmpty();
  }

  @Test
  void whatWaitedForNobodyIsNotBegun() throws Exception {
    AtomicBoolean ran = new AtomicBoolean();
    String first = jobs.start("one", patient("found")).orElseThrow();
    begun.await();
    jobs.start(
            "two",
            watch -> {
              ran.set(true);
              return "";
            })
        .orElseThrow();
    clock.addAndGet(Duration.ofSeconds(40).toNanos());
    assertThat(state(first)).isEqualTo(MatchJob.State.RUNNING);
    clock.addAndGet(Duration.ofSeconds(40).toNanos());
    assertThat(state(first)).isEqualTo(MatchJob.State.RUNNING);
    mayEnd.countDown();
    String last = jobs.start("three", watch -> "last").orElseThrow();
    await(() -> state(last) == MatchJob.State.DONE);
    assertThat(ran).isFalse();
  }

  @Test
  void aVisitorHasOneAndANewOneEndsTheOld() throws Exception {
    String old = jobs.start("one", patient("old")).orElseThrow();
    begun.await();
    String fresh = jobs.start("one", watch -> "fresh").orElseThrow();
    await(() -> state(fresh) == MatchJob.State.DONE);
    assertThat(jobs.find(old)).isEmpty();
  }

  @Test
  void twoVisitorsGoOneAfterTheOther() throws Exception {
    String first = jobs.start("one", patient("first")).orElseThrow();
    begun.await();
    String second = jobs.start("two", watch -> "second").orElseThrow();
    MatchJob waiting = jobs.find(second).orElseThrow();
    assertThat(waiting.state()).isEqualTo(MatchJob.State.WAITING);
    assertThat(jobs.ahead(waiting)).isEqualTo(1);
    assertThat(waiting.words(1)).contains("come");
    assertThat(state(first)).isEqualTo(MatchJob.State.RUNNING);
    mayEnd.countDown();
    await(() -> state(second) == MatchJob.State.DONE);
    assertThat(state(first)).isEqualTo(MatchJob.State.DONE);
  }

  @Test
  void aFullShopTurnsAwayUntilSomebodyHasGone() throws Exception {
    jobs.start("at work", patient("x")).orElseThrow();
    begun.await();
    String waiting = jobs.start("first", watch -> "x").orElseThrow();
    jobs.start("second", watch -> "x").orElseThrow();
    jobs.start("third", watch -> "x").orElseThrow();
    assertThat(jobs.start("fourth", watch -> "x")).isEmpty();
    jobs.stop(waiting);
    assertThat(jobs.start("fourth", watch -> "x")).isPresent();
  }

  @Test
  void manyAnswersAreNotKeptForEver() throws Exception {
    String first = "";
    for (int i = 0; i < 30; i++) {
      String id = jobs.start("visitor " + i, watch -> "found").orElseThrow();
      await(() -> state(id) == MatchJob.State.DONE);
      first = first.isEmpty() ? id : first;
    }
    assertThat(jobs.find(first)).isEmpty();
  }

  @Test
  void aFaultGivesAReferenceAndNothingOfItsCause() throws Exception {
    String id =
        jobs.start(
                "one",
                watch -> {
                  throw new IllegalStateException("a secret at Some.java:12");
                })
            .orElseThrow();
    await(() -> state(id) == MatchJob.State.FAILED);
    assertThat(jobs.find(id).orElseThrow().words(0))
        .contains("Reference number")
        .doesNotContain("secret", "java");
    assertThat(jobs.find(id).flatMap(MatchJob::findAnswer)).isEqualTo(Optional.empty());
    String next = jobs.start("one", watch -> "next").orElseThrow();
    await(() -> state(next) == MatchJob.State.DONE);
  }

  @Test
  void workHappensBehindEverybodyElse() throws Exception {
    AtomicInteger priority = new AtomicInteger();
    String id =
        jobs.start(
                "one",
                watch -> {
                  priority.set(Thread.currentThread().getPriority());
                  return "";
                })
            .orElseThrow();
    await(() -> state(id) == MatchJob.State.DONE);
    assertThat(priority).hasValue(Thread.MIN_PRIORITY);
  }
}
