package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SchemaCaseGenerator;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.BenchMotionWriter;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallSolver;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.ThrottleCut;
import trimwright.kernel.play.Play;
import trimwright.kernel.play.PlaySolver;
import trimwright.kernel.trim.CaseSolver;

/** Accepted cases, near to real ones and far from them, move without a fault. */
class RandomCaseMotionTest {
  private static final int CASES = 12;

  private static final double KMH = 1 / 3.6;

  private int trims;
  private int plays;

  @Test
  void whateverIsAcceptedMoves() {
    for (int seed = 0; seed < CASES; seed++) {
      CaseFile caseFile =
          CaseReader.read(SchemaCaseGenerator.text(seed), SectionFiles.NONE)
              .findValue()
              .orElseThrow();
      CaseSolver solver = CaseSolver.of(caseFile.rideCase());
      MotionModel small = MotionModel.small(solver);
      PlaySolver large = new PlaySolver(MotionModel.large(solver));
      for (int kmh = 10; kmh <= 46; kmh += 9) {
        small.findManners(kmh * KMH).ifPresent(this::checkManners);
        play(caseFile, large, kmh * KMH);
      }
      FallDrive drive = new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty());
      FallStudy study =
          FallStudy.find(new FallSolver(large.model()), drive, () -> false).orElseThrow();
      study.points().forEach(p -> assertThat(p.breach().margin()).isNotNaN().isNotNegative());
    }
    // Otherwise nothing was seen.
    assertThat(trims).isGreaterThan(10);
    assertThat(plays).isGreaterThan(100);
  }

  private void checkManners(Manners manners) {
    trims++;
    for (Mode mode : manners.modes()) {
      assertThat(mode.growth()).isFinite();
      assertThat(mode.frequency()).isFinite().isNotNegative();
    }
    assertThat(manners.peakPitchRate()).isFinite().isPositive();
    manners.chop().ifPresent(c -> assertThat(c.footCorrection()).isFinite());
  }

  private void play(CaseFile caseFile, PlaySolver solver, double speed) {
    Optional<MotionTrim> trim = solver.model().findTrim(speed);
    if (trim.isEmpty()) {
      return;
    }
    FallDrive drive = new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty());
    for (Play play : Play.values()) {
      MotionTrace trace = solver.play(play, trim.get(), drive);
      String json =
          BenchMotionWriter.accepted(
              1,
              Measures.IMPERIAL,
              caseFile,
              play,
              speed,
              Optional.of(trace),
              Optional.of(ThrottleCut.of(solver.model(), trim.get())),
              play == Play.CHOP ? solver.chop().waves() : List.of());
      assertThat(json).doesNotContain("NaN", "Infinity");
      plays++;
    }
  }
}
