package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;

class ShimTablesTest {
  private static final int NOTCHES = 17;

  private static CaseFile demo(int place) {
    return CaseReader.read(DemoCases.list().get(place).text(), SectionFiles.NONE)
        .findValue()
        .orElseThrow();
  }

  private static List<Double> degrees(List<CaseFile> cases) {
    return cases.stream()
        .map(c -> Math.round(20 * Math.toDegrees(c.rideCase().setup().shim())) / 20.0)
        .toList();
  }

  @Test
  void everyNotchOfTheSliderComesOnceTheNearestFirst() {
    CaseFile caseFile = demo(0);
    double present = Math.toDegrees(caseFile.rideCase().setup().shim());
    List<Double> angles = degrees(ShimTables.shimmed(caseFile));
    assertThat(angles).hasSize(NOTCHES).doesNotHaveDuplicates().contains(-4.0, 0.0, 4.0);
    assertThat(angles)
        .isSortedAccordingTo(
            (a, b) -> Double.compare(Math.abs(a - present), Math.abs(b - present)));
  }

  @Test
  void theTablesAreMadeOnceItIsQuiet() throws Exception {
    List<Double> asked = Collections.synchronizedList(new ArrayList<>());
    CountDownLatch all = new CountDownLatch(NOTCHES);
    AtomicBoolean quiet = new AtomicBoolean();
    ShimTables shims =
        new ShimTables(
            craft -> {
              asked.add(craft.rideCase().setup().shim());
              all.countDown();
              return null;
            },
            time -> quiet.get(),
            UnaryOperator.identity());
    shims.prepare(demo(0));
    Thread.sleep(2 * ShimTables.QUIET.toMillis());
    assertThat(asked).isEmpty();
    quiet.set(true);
    assertThat(all.await(10, TimeUnit.SECONDS)).isTrue();
    assertThat(asked).hasSize(NOTCHES).doesNotHaveDuplicates();
  }

  @Test
  void anotherCaseTakesTheTurnOfTheOneBefore() throws Exception {
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch goOn = new CountDownLatch(1);
    List<Double> masses = Collections.synchronizedList(new ArrayList<>());
    ShimTables shims =
        new ShimTables(
            craft -> {
              masses.add(craft.rideCase().rider().mass());
              begun.countDown();
              await(goOn);
              return null;
            },
            time -> true,
            UnaryOperator.identity());
    shims.prepare(demo(0));
    begun.await();
    shims.prepare(demo(1));
    goOn.countDown();
    double second = demo(1).rideCase().rider().mass();
    for (int i = 0; i < 100 && Collections.frequency(masses, second) < NOTCHES; i++) {
      Thread.sleep(50);
    }
    assertThat(Collections.frequency(masses, second)).isEqualTo(NOTCHES);
    assertThat(masses).hasSizeLessThan(2 * NOTCHES);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
