package trimwright.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.kernel.cause.CauseOutcome;
import trimwright.kernel.trim.Curve;
import trimwright.kernel.trim.TrimPoint;

class CaseStudyTest {
  private static final double KMH = 1 / 3.6;

  /** A curve and a single trim solve the same equations. */
  private static final double SAME = 1e-9;

  private static final CaseFile CASE =
      CaseReader.read(
              DemoCases.find("light-carver")
                  .orElseThrow()
                  .text()
                  .replace(
                      "ride: {mast_immersion_mm: 480",
                      "ride: {measured_pitch_deg: 3, mast_immersion_mm: 480"),
              SectionFiles.NONE)
          .findValue()
          .orElseThrow();

  private final CaseStudy study = CaseStudy.of(CASE);

  @Test
  void curveHasOneOutcomePerSpeed() {
    Curve curve = study.curve(SpeedRange.kmh(10, 40, 1));
    assertThat(curve.outcomes()).hasSize(31);
    for (int i = 0; i < 31; i++) {
      assertThat(curve.outcomes().get(i).speed()).isEqualTo((10.0 + i) * 1000 / 3600);
    }
  }

  @Test
  void trimIsAPointOfTheCurve() {
    double speed = SpeedRange.oneKmh(28);
    TrimPoint one = study.trim(speed).findPoint().orElseThrow();
    TrimPoint ofCurve =
        study.curve(SpeedRange.kmh(28, 28, 1)).outcomes().get(0).findPoint().orElseThrow();
    assertThat(one.pitch()).isCloseTo(ofCurve.pitch(), within(SAME));
    assertThat(one.footShare()).isCloseTo(ofCurve.footShare(), within(SAME));
  }

  @Test
  void causeUsesTheMeasuredPitchOfTheCase() {
    CauseOutcome outcome = study.cause(24 * KMH);
    assertThat(outcome).isInstanceOf(CauseOutcome.Split.class);
    CauseOutcome.Split split = (CauseOutcome.Split) outcome;
    assertThat(split.pitch().measured().orElseThrow()).isCloseTo(Math.toRadians(3), within(SAME));
    assertThat(split.ridden().speed()).isCloseTo(24 * KMH, within(SAME));
  }
}
