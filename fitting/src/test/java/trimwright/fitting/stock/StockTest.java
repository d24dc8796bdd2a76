package trimwright.fitting.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import trimwright.kernel.band.KnownBy;

class StockTest {
  private static final Holding ONE =
      new Holding(1, PartState.DEMO, OptionalDouble.empty(), KnownBy.SHEET);

  @Test
  void twoPartsOfOneNameAreRefused() {
    StockPart<Shim> shim = new StockPart<>("wedge", new Shim(0.01), new Mounts(Map.of()), ONE);
    assertThatThrownBy(
            () ->
                new Stock(
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(),
                    List.of(shim, shim)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("wedge");
  }

  @Test
  void aTrackTellsItsPlaces() {
    Track track = new Track(-0.06, 0.06, 0.02);
    assertThat(track.count()).isEqualTo(7);
    double[] places = track.places().toArray();
    assertThat(places).hasSize(7);
    assertThat(places[0]).isEqualTo(-0.06);
    assertThat(places[3]).isEqualTo(0);
    assertThat(places[6]).isCloseTo(0.06, within(1e-15));
    assertThat(Track.MIDDLE.places().toArray()).containsExactly(0);
  }

  @Test
  void aTrackOfBrokenStepsIsRefused() {
    assertThatThrownBy(() -> new Track(-0.06, 0.06, 0.05))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Track(0.06, -0.06, 0.02))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Track(-0.06, 0.06, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Track(Double.NaN, 0.06, 0.02))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void negativeNumbersOfPartsAreRefused() {
    assertThatThrownBy(() -> new Holding(-1, PartState.NEW, OptionalDouble.empty(), KnownBy.TAPE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Holding(1, PartState.NEW, OptionalDouble.of(-1), KnownBy.TAPE))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void partsFitByOneCommonStandard() {
    Mounts one = new Mounts(Map.of(Joint.BOARD_MAST, Set.of("a", "b")));
    Mounts other = new Mounts(Map.of(Joint.BOARD_MAST, Set.of("b", "c")));
    assertThat(one.fit(other, Joint.BOARD_MAST)).isTrue();
    assertThat(one.fit(other, Joint.MAST_DRIVE)).isFalse();
  }

  @Test
  void jointsMakeATree() {
    // One joint fewer than kinds, and each kind on at least one: sums and products count setups
    assertThat(Joint.values()).hasSize(PartKind.values().length - 1);
    assertThat(Stream.of(PartKind.values()))
        .allSatisfy(kind -> assertThat(Joint.of(kind)).isNotEmpty());
  }

  @Test
  void aJointHasTwoSides() {
    assertThat(Joint.BOARD_MAST.across(PartKind.MAST)).isEqualTo(PartKind.BOARD);
    assertThatThrownBy(() -> Joint.BOARD_MAST.across(PartKind.SHIM))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
