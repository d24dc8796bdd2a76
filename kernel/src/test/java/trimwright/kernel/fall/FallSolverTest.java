package trimwright.kernel.fall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.limit.RideLimits;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionModel;
import trimwright.kernel.motion.MotionTrim;
import trimwright.kernel.motion.ThrottleCut;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.ExampleCase;

class FallSolverTest {
  private static final double KMH = 1 / 3.6;
  private static final CaseSolver PLAIN = CaseSolver.of(ExampleCase.PLAIN.build());
  private static final FallSolver FALLS = new FallSolver(MotionModel.large(PLAIN));
  private static final List<Double> SPEEDS = List.of(16 * KMH, 22 * KMH, 30 * KMH);

  /** The contract prints whole millimetres of a simpler model of the wings' flow: 5 %. */
  private static final Offset<Double> REFERENCE_MODEL = Offset.offset(4e-3);

  private static FallDrive drive(double ramp) {
    return new FallDrive(ramp, OptionalDouble.empty());
  }

  private static FallDrive capped(double power) {
    return new FallDrive(0.3, OptionalDouble.of(power));
  }

  private static MotionTrim trim(double speed) {
    return FALLS.findTrim(speed).orElseThrow();
  }

  @Test
  void aNoseDropEndsAtTheFirstContactOrAfterASecond() {
    for (double speed : SPEEDS) {
      for (Posture posture : Posture.values()) {
        NoseDrop drop = FALLS.noseDrop(trim(speed), posture, drive(0.3));
        if (drop.contact().isPresent()) {
          assertThat(drop.contact().getAsDouble()).isLessThanOrEqualTo(1);
          if (drop.bowFirst()) {
            assertThat(drop.bowClearance()).isZero();
            assertThat(drop.bowClearFor()).isEqualTo(drop.contact().getAsDouble());
          }
        } else {
          assertThat(drop.trace().last().time()).isCloseTo(1, Offset.offset(1e-9));
          assertThat(drop.bowClearance()).isPositive();
        }
        assertThat(drop.lowestPitch()).isLessThanOrEqualTo(drop.trace().first().pitch());
      }
    }
  }

  /** Letting go more slowly and leaning less far leaves the bow clear for longer. */
  @Test
  void aSlowerRampAndALowerPostureAreGentler() {
    for (double speed : SPEEDS) {
      MotionTrim t = trim(speed);
      assertThat(FALLS.noseDrop(t, Posture.STANDING, drive(2)).bowClearFor())
          .isGreaterThan(FALLS.noseDrop(t, Posture.STANDING, drive(0.3)).bowClearFor());
      double standing = FALLS.noseDrop(t, Posture.STANDING, drive(0.3)).bowClearFor();
      double kneeling = FALLS.noseDrop(t, Posture.KNEELING, drive(0.3)).bowClearFor();
      double prone = FALLS.noseDrop(t, Posture.PRONE, drive(0.3)).bowClearFor();
      assertThat(kneeling).isGreaterThan(standing);
      assertThat(prone).isGreaterThanOrEqualTo(kneeling);
    }
  }

  @Test
  void lessPowerBreachesLaterAndNoneIsNeverReached() {
    for (double speed : SPEEDS) {
      MotionTrim t = trim(speed);
      double last = 0;
      for (double power : new double[] {5000, 2500, 1500}) {
        double margin = FALLS.breach(t, Posture.STANDING, capped(power)).margin();
        assertThat(margin).isGreaterThanOrEqualTo(last);
        last = margin;
      }
    }
  }

  @Test
  void thePermittedPowerIsWhatTheThrustTakes() {
    var drive = FALLS.model().findPowertrain().orElseThrow();
    for (double speed : SPEEDS) {
      double thrust = capped(2000).greatestThrust(drive, speed);
      assertThat(drive.electricPower(thrust, speed)).isCloseTo(2000, Offset.offset(1.0));
      assertThat(capped(1e6).greatestThrust(drive, speed))
          .isEqualTo(drive.greatestThrust(speed).thrust());
    }
  }

  /** Feet that are where the weight rests already, and a pull that nobody lets go of: no fall. */
  @Test
  void whoShiftsNothingAndKeepsThePullDoesNotFall() {
    CaseSolver pulled =
        CaseSolver.of(ExampleCase.PLAIN.withoutDrive(OptionalDouble.of(1.2)).build());
    FallSolver falls = new FallSolver(MotionModel.large(pulled));
    MotionTrim t = falls.findTrim(22 * KMH).orElseThrow();
    Breach breach = falls.breach(t, Posture.PRONE, drive(0.3));
    double shift = falls.shift(t, Posture.PRONE, false);
    assertThat(shift).isBetween(-0.06, 0.0);
    assertThat(breach.end()).isIn((Object[]) MotionEnd.values());
    assertThat(falls.shift(t, Posture.STANDING, true))
        .isCloseTo(0.520 - t.footPressure(), Offset.offset(1e-9));
    assertThat(falls.shift(t, Posture.STANDING, false))
        .isCloseTo(0.040 - t.footPressure(), Offset.offset(1e-9));
  }

  /**
   * The contract's own figures for a throttle cut, 65 and 88 mm at 20 and 28 km/h, and its sign:
   * the feet must go back, a body that does nothing presses forward.
   */
  @Test
  void aThrottleCutAsksForWhatTheContractSays() {
    ThrottleCut slow = ThrottleCut.of(FALLS.model(), trim(20 * KMH));
    ThrottleCut fast = ThrottleCut.of(FALLS.model(), trim(28 * KMH));
    assertThat(slow.needed()).isNegative();
    assertThat(slow.passive()).isPositive();
    assertThat(-slow.needed()).isCloseTo(0.065, REFERENCE_MODEL);
    assertThat(-fast.needed()).isCloseTo(0.088, REFERENCE_MODEL);
  }

  @Test
  void aStudyLooksAtEveryPostureOverTheRideableSpeeds() {
    FallStudy study = FallStudy.find(FALLS, drive(0.5), () -> false).orElseThrow();
    RideLimits limits = PLAIN.rideCase().limits();
    for (Posture posture : Posture.values()) {
      List<FallPoint> points = study.of(posture);
      assertThat(points).hasSameSizeAs(study.speeds());
      study
          .findCaps(posture)
          .ifPresent(
              caps -> {
                // A cap that is named holds at every speed up to it.
                for (FallPoint p : points) {
                  if (p.speed() <= caps.speed() + 1e-9) {
                    FallDrive within = new FallDrive(caps.ramp(), caps.power());
                    assertThat(FALLS.at(trim(p.speed()), posture, within).inside(limits)).isTrue();
                  }
                }
              });
    }
    assertThat(FallStudy.find(FALLS, drive(0.5), () -> true)).isEmpty();
  }
}
