package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import trimwright.desk.LayeredCase;
import trimwright.desk.SectionPolars;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.write.SectionCode;
import trimwright.exchange.write.SectionState;

class SectionJobsTest {
  /** Another outline for the front wing than any that comes with the program. */
  private static final String NEW = "naca3413";

  /** A build takes 5 to 8 s of a processor that others may want too. */
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  @TempDir private Path folder;

  private static CaseFile of(String section) {
    return of(section, SectionFiles.NONE);
  }

  private static CaseFile of(String section, SectionFiles files) {
    String text = DemoCases.find("light-carver").orElseThrow().text();
    String written = text.replaceFirst("section: naca\\d+", "section: " + section);
    assertThat(written).contains(section);
    return CaseReader.read(written, files).findValue().orElseThrow();
  }

  /** Parabolas of 10 % thickness: the flow leaves such a nose at any angle. */
  private static String lens() {
    StringBuilder text = new StringBuilder();
    int steps = 60;
    for (int i = -steps; i <= steps; i++) {
      double x = 0.5 * (1 - Math.cos(Math.PI * i / steps));
      text.append(x).append(' ').append(-Math.signum(i) * 0.2 * x * (1 - x)).append('\n');
    }
    return text.toString();
  }

  private SectionPolars polars() {
    return new SectionPolars(Optional.of(folder));
  }

  @Test
  void usualSectionsAreThereAtOnce() {
    SectionJobs jobs = new SectionJobs(polars());
    CaseFile usual = of("naca2412");
    assertThat(jobs.state(usual)).isEqualTo(SectionState.READY);
    assertThat(SectionCode.of(jobs.of(usual))).isEqualTo(SectionCode.LAYERS);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  @Timeout(180)
  void aNewOutlineIsBuiltBesideTheAnswersAndKept() throws Exception {
    SectionJobs jobs = new SectionJobs(polars());
    CaseFile fresh = of(NEW);
    assertThat(jobs.of(fresh)).as("asking for a case begins nothing").isSameAs(fresh);
    List<String> said = new ArrayList<>();
    SectionState[] last = new SectionState[1];
    await(
        () -> {
          last[0] = jobs.state(fresh);
          if (!said.contains(last[0].words())) {
            said.add(last[0].words());
          }
          assertThat(last[0].isFinal()).isEqualTo(last[0].ready());
          return last[0].ready();
        });
    assertThat(last[0]).isEqualTo(SectionState.READY);
    assertThat(said.get(0)).contains(NEW, "0 %", "fit to measured sections");
    assertThat(said).as("it is told how far the build is").hasSizeGreaterThan(2).endsWith("");
    assertThat(SectionCode.of(jobs.of(fresh))).isEqualTo(SectionCode.LAYERS);
    assertThat(LayeredCase.find(fresh, polars())).as("the next program finds it").isPresent();
  }

  @Test
  @Timeout(180)
  void whatIsCalledOffLeavesNothingAndMayBeBegunAnew() throws Exception {
    Set<Thread> others = Thread.getAllStackTraces().keySet();
    SectionJobs jobs = new SectionJobs(polars());
    CaseFile fresh = of(NEW);
    await(() -> !jobs.state(fresh).words().contains("(0 %)"));
    jobs.stop();
    await(
        () ->
            Thread.getAllStackTraces().keySet().stream()
                .filter(thread -> !others.contains(thread))
                .noneMatch(thread -> thread.getName().equals("sections")));
    assertThat(LayeredCase.find(fresh, polars())).as("no half table").isEmpty();
    assertThat(SectionCode.of(jobs.of(fresh))).isEqualTo(SectionCode.FITTED);
    assertThat(jobs.state(fresh).words()).contains("(0 %)");
    jobs.stop();
  }

  @Test
  @Timeout(180)
  void anOutlineThatLayersCannotFollowStaysOnItsFitWithAWord() throws Exception {
    SectionJobs jobs = new SectionJobs(polars());
    CaseFile sharp = of("lens.dat", name -> Optional.of(lens()));
    await(() -> jobs.state(sharp).isFinal());
    SectionState state = jobs.state(sharp);
    assertThat(state.ready()).isFalse();
    assertThat(state.words()).contains("cannot be computed", "fit to measured sections");
    assertThat(SectionCode.of(jobs.of(sharp))).isEqualTo(SectionCode.FITTED);
  }

  private static void await(BooleanSupplier condition) throws InterruptedException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (!condition.getAsBoolean()) {
      assertThat(System.nanoTime()).as("patience").isLessThan(end);
      Thread.sleep(20);
    }
  }
}
