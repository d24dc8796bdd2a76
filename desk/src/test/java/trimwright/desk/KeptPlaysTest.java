package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.kernel.motion.MotionMoment;
import trimwright.kernel.play.Play;

class KeptPlaysTest {
  private static CaseFile demo(int which) {
    return CaseReader.read(DemoCases.list().get(which).text(), SectionFiles.NONE)
        .findValue()
        .orElseThrow();
  }

  @Test
  void whatIsKeptIsTheCaseAskedForAndNoOther() {
    KeptPlays kept = new KeptPlays();
    for (int which : new int[] {0, 0, 1, 0}) {
      BenchMotion again = kept.find(demo(which), Play.BREACH, 6, () -> false).orElseThrow();
      BenchMotion anew =
          new KeptPlays().find(demo(which), Play.BREACH, 6, () -> false).orElseThrow();
      assertThat(again.trace()).isEqualTo(anew.trace());
    }
  }

  /** The page draws the body as the case says: it is computed so too. */
  @Test
  void whoLiesFallsAsWhoLies() {
    KeptPlays kept = new KeptPlays();
    String text = DemoCases.list().get(0).text();
    CaseFile lying =
        CaseReader.read(text.replaceFirst("skill:", "posture: prone\n  skill:"), SectionFiles.NONE)
            .findValue()
            .orElseThrow();
    double standing = length(kept, demo(0));
    assertThat(length(kept, lying)).isGreaterThan(standing);
    assertThat(length(kept, demo(0))).isEqualTo(standing);
  }

  private static double length(KeptPlays kept, CaseFile caseFile) {
    return kept.find(caseFile, Play.BREACH, 6, () -> false)
        .orElseThrow()
        .trace()
        .orElseThrow()
        .last()
        .time();
  }

  @Test
  void itStopsWhenItIsTold() {
    assertThat(new KeptPlays().find(demo(0), Play.CHOP, 6, () -> true)).isEmpty();
  }

  /** Nobody presses where there is no deck: every play of every demo case ends before that. */
  @Test
  void feetStayOnTheBoard() {
    for (int which = 0; which < DemoCases.list().size(); which++) {
      CaseFile caseFile = demo(which);
      var board = caseFile.rideCase().setup().board();
      KeptPlays kept = new KeptPlays();
      for (Play play : Play.values()) {
        BenchMotion motion =
            kept.find(caseFile, play, caseFile.rideCase().rider().wishedSpeed(), () -> false)
                .orElseThrow();
        for (MotionMoment m : motion.trace().orElseThrow().moments()) {
          double place = m.footPressure() - board.massCentreAhead() + board.track();
          if (play != Play.NOSE_DROP && play != Play.BREACH) {
            assertThat(Math.abs(place)).isLessThan(0.5 * board.length() + 1e-3);
          }
        }
      }
    }
  }
}
