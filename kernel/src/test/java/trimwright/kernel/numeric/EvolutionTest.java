package trimwright.kernel.numeric;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class EvolutionTest {
  private static final Evolution.Visitor NOBODY = (time, state) -> {};

  /** x'' = -x from 1 at rest: the cosine, and the first zero at a quarter turn. */
  @Test
  void anOscillatorIsTheCosineAndItsEventTheQuarterTurn() {
    Evolution.Rates rates =
        (time, x, out) -> {
          out[0] = x[1];
          out[1] = -x[0];
        };
    List<Double> times = new ArrayList<>();
    Evolution.End end =
        Evolution.follow(
            rates,
            new double[] {1, 0},
            3,
            0.25,
            0.1,
            List.of((time, x) -> x[0]),
            (time, x) -> {
              times.add(time);
              assertThat(x[0]).isCloseTo(Math.cos(time), Offset.offset(1e-7));
            });
    assertThat(end.event()).isZero();
    assertThat(end.time()).isCloseTo(0.5 * Math.PI, Offset.offset(1e-6));
    assertThat(times.get(times.size() - 1)).isEqualTo(end.time());
    assertThat(times.get(1)).isCloseTo(0.25, Offset.offset(1e-12));
  }

  @Test
  void withoutAnEventTheTimeRunsOut() {
    Evolution.End end =
        Evolution.follow(
            (time, x, out) -> out[0] = 1, new double[] {0}, 1, 0.1, 0.05, List.of(), NOBODY);
    assertThat(end.event()).isEqualTo(-1);
    assertThat(end.state()[0]).isCloseTo(1, Offset.offset(1e-9));
  }

  @Test
  void anEventThatHasComeAlreadyEndsItAtOnce() {
    Evolution.End end =
        Evolution.follow(
            (time, x, out) -> out[0] = 1,
            new double[] {0},
            1,
            0.1,
            0.05,
            List.of((time, x) -> x[0] - 1),
            NOBODY);
    assertThat(end.event()).isZero();
    assertThat(end.time()).isZero();
  }

  /** x' = x² from 2 has no value beyond 0.5 s: it is followed as far as it goes, and said. */
  @Test
  void whatRunsAwayIsLostAndNotAFault() {
    Evolution.End end =
        Evolution.follow(
            (time, x, out) -> out[0] = x[0] * x[0],
            new double[] {2},
            1,
            0.05,
            0.05,
            List.of(),
            NOBODY);
    assertThat(end.event()).isEqualTo(Evolution.LOST);
    assertThat(end.time()).isBetween(0.35, 0.5);
  }

  /** Stiff and steep: a first try runs beyond all numbers, shorter steps do not. */
  @Test
  void aSteepSystemIsTriedWithShorterSteps() {
    Evolution.End end =
        Evolution.follow(
            (time, x, out) -> out[0] = -300 * x[0] * x[0] * x[0],
            new double[] {4},
            0.2,
            0.02,
            0.03,
            List.of(),
            NOBODY);
    // 1/x² = 1/16 + 600 t.
    assertThat(end.event()).isEqualTo(-1);
    assertThat(end.state()[0]).isCloseTo(1 / Math.sqrt(1 / 16.0 + 120), Offset.offset(1e-6));
  }
}
