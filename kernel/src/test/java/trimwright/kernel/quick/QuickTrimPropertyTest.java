package trimwright.kernel.quick;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.trim.CaseSolver;
import trimwright.kernel.trim.NoTrimReason;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.TrimOutcome;
import trimwright.kernel.trim.TrimPoint;

/**
 * Trims from tables beside the full coupled solution: a lattice with the stabilizer really turned,
 * built and brought together with its sections anew at every pitch that the search asks for.
 */
class QuickTrimPropertyTest {
  /** What is wanted of tables: lift [1], pitch [degrees], foot pressure [mm]. */
  private static final double LIFT = 0.01;

  private static final double PITCH = 0.1;
  private static final double FEET = 3;

  /**
   * Outcomes change at sharp bounds: share of the speeds at which one of the two may just have
   * passed one [1]. Of 800 speeds it were two.
   */
  private static final double OTHER_OUTCOMES = 0.01;

  private static final int SPEEDS = 8;

  @Test
  void someRandomSetupsTrimAsInTheFullSolution(TestReporter reporter) {
    compare(0, 24, reporter);
  }

  @Test
  @Tag("long")
  void manyRandomSetupsTrimAsInTheFullSolution(TestReporter reporter) {
    compare(1_000, 1_300, reporter);
  }

  private static void compare(int from, int to, TestReporter reporter) {
    Errors errors = new Errors();
    for (int seed = from; seed < to; seed++) {
      RideCase rideCase = RandomSetup.of(seed);
      Craft craft = new Craft(rideCase);
      CaseSolver full = CaseSolver.of(craft, Responses.unfrozen(craft));
      PairTable table = PairTable.of(craft);
      QuickCase quick = new QuickCase(craft);
      SplittableRandom random = new SplittableRandom(seed);
      for (int i = 0; i < SPEEDS; i++) {
        double speed = 2.5 + 10 * random.nextDouble();
        PairLoads loads = table.at(speed, rideCase.setup().shim());
        errors.add(craft, full.trim(speed), loads, quick.at(speed).trim(loads));
      }
    }
    reporter.publishEntry("setups " + (to - from), errors.text());
    assertThat(errors.compared).isGreaterThan(7 * (to - from));
    assertThat(errors.most(errors.lift)).as(errors.text()).isLessThan(LIFT);
    assertThat(errors.most(errors.pitch)).as(errors.text()).isLessThan(PITCH);
    assertThat(errors.most(errors.feet)).as(errors.text()).isLessThan(FEET);
    assertThat(errors.otherOutcomes).isLessThanOrEqualTo((int) (OTHER_OUTCOMES * errors.speeds));
  }

  /** Errors of all balances that both have. */
  private static final class Errors {
    final List<Double> lift = new ArrayList<>();
    final List<Double> pitch = new ArrayList<>();
    final List<Double> feet = new ArrayList<>();
    final List<Double> thrust = new ArrayList<>();
    final List<Double> margin = new ArrayList<>();
    int speeds;
    int compared;
    int otherOutcomes;

    void add(Craft craft, TrimOutcome full, PairLoads loads, QuickTrim quick) {
      speeds++;
      Optional<NoTrimReason> reason = Optional.empty();
      Optional<TrimPoint> point = full.findPoint();
      if (full instanceof TrimOutcome.NoTrim none) {
        reason = Optional.of(none.reason());
        point = none.wouldNeed();
      }
      otherOutcomes += reason.equals(quick.reason()) ? 0 : 1;
      if (point.isEmpty() || quick.balance().isEmpty()) {
        return;
      }
      compared++;
      TrimPoint exact = point.get();
      QuickBalance b = quick.balance().get();
      double at = exact.pitch() - craft.deck().baseAngle();
      double pressure = 0.5 * craft.rideCase().water().density() * full.speed() * full.speed();
      double lifted = exact.frontWingLift() + exact.stabilizerLift();
      lift.add(Math.abs(pressure * loads.up(at) / lifted - 1));
      pitch.add(Math.toDegrees(Math.abs(b.pitch() - at)));
      feet.add(1000 * Math.abs(b.footPressure() - exact.footPressureAheadOfMast()));
      thrust.add(Math.abs(b.thrust() / exact.thrust() - 1));
      margin.add(Math.toDegrees(Math.abs(b.stallMargin() - exact.stallMargin())));
    }

    double most(List<Double> errors) {
      return errors.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
    }

    String text() {
      return String.format(
          Locale.ROOT,
          "%d of %d speeds compared, %d other outcomes; median, 95 %%, 99 %%, most: "
              + "lift %s, pitch [deg] %s, feet [mm] %s, thrust %s, stall margin [deg] %s",
          compared,
          speeds,
          otherOutcomes,
          spread(lift),
          spread(pitch),
          spread(feet),
          spread(thrust),
          spread(margin));
    }

    private static String spread(List<Double> errors) {
      double[] sorted = errors.stream().mapToDouble(Double::doubleValue).sorted().toArray();
      double[] at =
          Arrays.stream(new double[] {0.5, 0.95, 0.99, 1})
              .map(share -> sorted[(int) Math.round(share * (sorted.length - 1))])
              .toArray();
      return String.format(Locale.ROOT, "%.4f %.4f %.4f %.4f", at[0], at[1], at[2], at[3]);
    }
  }
}
