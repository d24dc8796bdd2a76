package trimwright.exchange.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trimwright.exchange.words.FallAnswer;
import trimwright.exchange.words.MannersAt;
import trimwright.exchange.words.RampSource;
import trimwright.kernel.fall.Breach;
import trimwright.kernel.fall.FallCaps;
import trimwright.kernel.fall.FallDrive;
import trimwright.kernel.fall.FallPoint;
import trimwright.kernel.fall.FallStudy;
import trimwright.kernel.fall.NoseDrop;
import trimwright.kernel.hull.Posture;
import trimwright.kernel.motion.ChopAnswer;
import trimwright.kernel.motion.Hold;
import trimwright.kernel.motion.Manners;
import trimwright.kernel.motion.Mode;
import trimwright.kernel.motion.MotionEnd;
import trimwright.kernel.motion.MotionMoment;
import trimwright.kernel.motion.MotionTrace;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.TrimOutcome;

/** Made-up motions and falls, of every kind that a writer meets. */
public final class MotionSamples {
  private MotionSamples() {}

  /** One speed too slow, then one that nobody holds, one that a rider holds, one that stays. */
  public static List<MannersAt> manners() {
    TrimOutcome slow =
        new TrimOutcome.NoTrim(
            12 * Samples.KMH, NoTrimReason.TOO_SLOW, Optional.empty(), Optional.empty());
    return List.of(
        new MannersAt(slow, Optional.empty()),
        at(18, Hold.NOBODY, 6, Optional.empty()),
        at(24, Hold.RIDEABLE, 0.5, Optional.of(chop(0.8))),
        at(30, Hold.STEADY, -0.2, Optional.of(chop(3.4))));
  }

  /** The manners of a speed [km/h] with what grows fastest [1/s]. */
  public static MannersAt at(double kmh, Hold hold, double growth, Optional<ChopAnswer> chop) {
    return new MannersAt(
        new TrimOutcome.Trimmed(Samples.pointAt(kmh)),
        Optional.of(
            new Manners(
                kmh * Samples.KMH,
                List.of(
                    new Mode(growth, 0, Mode.Mainly.SPEED),
                    new Mode(-0.4, 3, Mode.Mainly.HEIGHT),
                    new Mode(-9, 0, Mode.Mainly.PITCH)),
                hold,
                Math.toRadians(60 / kmh),
                hold == Hold.STEADY ? OptionalDouble.empty() : OptionalDouble.of(1.7),
                chop)));
  }

  /** An answer to chop that comes so often [Hz]. */
  public static ChopAnswer chop(double frequency) {
    return new ChopAnswer(
        0.1,
        0.009,
        frequency,
        Math.toRadians(0.2),
        0.004,
        0.3,
        List.of(new ChopAnswer.WaveAnswer(2, 20, 0.1, 0.2, 30, 0.4)));
  }

  /** Falls outside the limits in every posture, ended in every way. */
  public static FallAnswer outside() {
    List<FallPoint> points = new ArrayList<>();
    List<FallAnswer.Nearest> nearest = new ArrayList<>();
    MotionEnd[] ends = {
      MotionEnd.WING_BREACHES,
      MotionEnd.PROPELLER_BREACHES,
      MotionEnd.RAN_OUT,
      MotionEnd.LIMIT_OF_MODEL
    };
    for (Posture posture : Posture.values()) {
      for (int i = 0; i < ends.length; i++) {
        MotionEnd down = i == 3 ? MotionEnd.LIMIT_OF_MODEL : MotionEnd.BOW_TOUCHES;
        points.add(fall(posture, 16 + 4 * i, down, 0.5, ends[i], 0.4));
      }
      nearest.add(
          new FallAnswer.Nearest(
              fall(posture, 20, MotionEnd.STERN_TOUCHES, 0.8, MotionEnd.WING_BREACHES, 0.7),
              new FallDrive(3, OptionalDouble.of(1400))));
    }
    return new FallAnswer(
        new FallStudy(speeds(points), usual(), points, List.of()), RampSource.USUAL, nearest);
  }

  /** Standing inside with caps, kneeling inside as it is, prone outside. */
  public static FallAnswer inside() {
    List<FallPoint> points =
        List.of(
            fall(Posture.STANDING, 20, MotionEnd.RAN_OUT, 1, MotionEnd.RAN_OUT, 3),
            fall(Posture.KNEELING, 20, MotionEnd.STERN_TOUCHES, 0.4, MotionEnd.RAN_OUT, 3),
            fall(Posture.PRONE, 20, MotionEnd.BOW_TOUCHES, 0.9, MotionEnd.WING_BREACHES, 2));
    FallCaps standing =
        new FallCaps(Posture.STANDING, 20 * Samples.KMH, false, 1.5, OptionalDouble.of(1800));
    FallCaps kneeling =
        new FallCaps(Posture.KNEELING, 30 * Samples.KMH, true, 0.8, OptionalDouble.empty());
    return new FallAnswer(
        new FallStudy(
            speeds(points),
            new FallDrive(0.8, OptionalDouble.empty()),
            points,
            List.of(standing, kneeling)),
        RampSource.CASE,
        List.of(new FallAnswer.Nearest(points.get(2), new FallDrive(3, OptionalDouble.of(1500)))));
  }

  /** Nothing rideable. */
  public static FallAnswer nothing() {
    return new FallAnswer(
        new FallStudy(List.of(), new FallDrive(1, OptionalDouble.of(900)), List.of(), List.of()),
        RampSource.ASKED,
        List.of());
  }

  private static FallDrive usual() {
    return new FallDrive(FallDrive.USUAL_RAMP, OptionalDouble.empty());
  }

  private static List<Double> speeds(List<FallPoint> points) {
    return points.stream().map(FallPoint::speed).distinct().toList();
  }

  private static FallPoint fall(
      Posture posture, double kmh, MotionEnd down, double when, MotionEnd up, double out) {
    boolean touched = down == MotionEnd.BOW_TOUCHES || down == MotionEnd.STERN_TOUCHES;
    boolean broke = up == MotionEnd.WING_BREACHES || up == MotionEnd.PROPELLER_BREACHES;
    return new FallPoint(
        kmh * Samples.KMH,
        posture,
        new NoseDrop(
            Math.toRadians(-6),
            down == MotionEnd.BOW_TOUCHES ? 0 : 0.05,
            touched ? OptionalDouble.of(when) : OptionalDouble.empty(),
            down == MotionEnd.BOW_TOUCHES,
            trace(when, down)),
        new Breach(broke ? OptionalDouble.of(out) : OptionalDouble.empty(), up, trace(out, up)));
  }

  private static MotionTrace trace(double time, MotionEnd end) {
    return new MotionTrace(List.of(moment(0), moment(time)), end);
  }

  private static MotionMoment moment(double time) {
    return new MotionMoment(time, 6, 0, 0, 0.45, 0.2, 100, 0, 0.1, 0.1, 0.3, 0.2, 0, 800);
  }
}
