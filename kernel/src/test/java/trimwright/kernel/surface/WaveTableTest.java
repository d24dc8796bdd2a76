package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trimwright.kernel.section.Section;
import trimwright.kernel.section.Sections;

class WaveTableTest {
  private static final Section SECTION = Sections.naca("2412");

  private static PlacedWing wing(double span, double ahead, double above, double drop) {
    WingShape shape =
        new WingShape(
            span,
            List.of(
                new Station(0, 0.2, 0, 0, 0, SECTION),
                new Station(1, 0.08, -0.04, -drop, 0, SECTION)));
    return new PlacedWing(shape, ahead, above, 0, LatticeSize.FRONT_WING);
  }

  /** The table stands for the waves themselves, inside its speeds and outside. */
  @Test
  void theTableStandsForTheWaves() {
    Random random = new Random(11);
    for (int n = 0; n < 10; n++) {
      double depth = 0.2 + 0.5 * random.nextDouble();
      double distance = 0.5 + 0.4 * random.nextDouble();
      WaveTable table =
          WaveTable.of(List.of(wing(0.9, distance, 0, 0), wing(0.42, 0, 0.02, 0)), depth);
      LiftingLine[] lines = {
        new LiftingLine(0.45, distance - 0.01, depth), new LiftingLine(0.21, -0.01, depth - 0.02)
      };
      for (double speed : new double[] {0.9, 2.05, 2.6, 3.3, 4.7, 7.1, 11.3, 20}) {
        WaveWash exact = WaveWash.of(lines, speed);
        WaveTable.Waves waves = table.at(speed);
        for (int i = 0; i < 2; i++) {
          for (int j = 0; j < 2; j++) {
            assertThat(waves.turn(i, j, 0)).isCloseTo(exact.turn(i, j), within(5e-4));
            assertThat(waves.speedUp(i, j)).isCloseTo(exact.speedUp(i, j), within(5e-4));
          }
        }
      }
    }
  }

  /** A stabilizer that the pitch has sunk: the table's slope with depth finds it. */
  @Test
  void depthIsFollowed() {
    WaveTable table = WaveTable.of(List.of(wing(0.9, 0.7, 0, 0), wing(0.42, 0, 0, 0)), 0.4);
    WaveTable sunk = WaveTable.of(List.of(wing(0.9, 0.7, 0, 0), wing(0.42, 0, -0.05, 0)), 0.4);
    for (double speed : new double[] {3, 4, 6}) {
      for (int[] pair : new int[][] {{0, 1}, {1, 0}, {1, 1}}) {
        double exact = sunk.at(speed).turn(pair[0], pair[1], 0);
        assertThat(table.at(speed).turn(pair[0], pair[1], 0.05))
            .isCloseTo(exact, within(0.06 * Math.abs(exact) + 1e-3));
      }
      assertThat(table.at(speed).turn(0, 0, 0.05)).isEqualTo(table.at(speed).turn(0, 0, 0));
    }
  }

  /** Dropped tips lie deeper and make less of a wave. */
  @Test
  void droppedTipsLieDeeper() {
    WaveTable level = WaveTable.of(List.of(wing(0.9, 0, 0, 0)), 0.3);
    WaveTable dropped = WaveTable.of(List.of(wing(0.9, 0, 0, 0.1)), 0.3);
    WaveTable deeper = WaveTable.of(List.of(wing(0.9, 0, 0, 0)), 0.325);
    assertThat(dropped.at(3).turn(0, 0, 0))
        .isCloseTo(deeper.at(3).turn(0, 0, 0), within(1e-12))
        .isGreaterThan(level.at(3).turn(0, 0, 0));
  }

  /** A wing that would stand out of the water is taken at the least depth. */
  @Test
  void nothingBreaksAboveTheSurface() {
    WaveTable table = WaveTable.of(List.of(wing(0.9, 0.7, 0, 0), wing(0.42, 0, 0.3, 0)), 0.2);
    assertThat(Double.isFinite(table.at(4).turn(1, 0, 0))).isTrue();
    assertThat(WaveTable.Waves.none(2).turn(1, 0, 0.1)).isZero();
  }
}
