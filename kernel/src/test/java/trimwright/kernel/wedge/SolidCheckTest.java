package trimwright.kernel.wedge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Surfaces that are bodies, and surfaces spoilt in one way each. */
class SolidCheckTest {
  private static final List<double[]> CORNERS =
      List.of(
          new double[] {0, 0, 0},
          new double[] {1, 0, 0},
          new double[] {0, 1, 0},
          new double[] {0, 0, 1});

  private static List<int[]> tetrahedron(int first) {
    return new ArrayList<>(
        List.of(
            new int[] {first, first + 2, first + 1},
            new int[] {first, first + 1, first + 3},
            new int[] {first + 1, first + 2, first + 3},
            new int[] {first, first + 3, first + 2}));
  }

  private static SolidCheck check(List<double[]> corners, List<int[]> triangles) {
    return SolidCheck.of(new Solid(corners, triangles));
  }

  @Test
  void aTetrahedronIsABodyWithoutHoles() {
    SolidCheck check = check(CORNERS, tetrahedron(0));
    assertThat(check.isSolid()).isTrue();
    assertThat(check.eulerCharacteristic()).isEqualTo(2);
    assertThat(check.holes()).isZero();
    assertThat(check.volume()).isCloseTo(1.0 / 6, within(1e-15));
  }

  @Test
  void aMissingTriangleLeavesItOpen() {
    List<int[]> triangles = tetrahedron(0);
    triangles.remove(2);
    SolidCheck check = check(CORNERS, triangles);
    assertThat(check.closed()).isFalse();
    assertThat(check.isSolid()).isFalse();
  }

  @Test
  void aTurnedTriangleDisagreesWithItsNeighbours() {
    List<int[]> triangles = tetrahedron(0);
    triangles.set(2, new int[] {2, 1, 3});
    SolidCheck check = check(CORNERS, triangles);
    assertThat(check.closed()).isTrue();
    assertThat(check.oriented()).isFalse();
    assertThat(check.isSolid()).isFalse();
  }

  @Test
  void allTurnedFacesInward() {
    SolidCheck check =
        check(CORNERS, tetrahedron(0).stream().map(t -> new int[] {t[2], t[1], t[0]}).toList());
    assertThat(check.oriented()).isTrue();
    assertThat(check.volume()).isNegative();
    assertThat(check.isSolid()).isFalse();
  }

  @Test
  void aTriangleTwiceIsNotClosed() {
    List<int[]> triangles = tetrahedron(0);
    triangles.add(triangles.get(1));
    assertThat(check(CORNERS, triangles).closed()).isFalse();
  }

  @Test
  void twoBodiesAreNotOne() {
    List<double[]> corners = new ArrayList<>(CORNERS);
    CORNERS.forEach(at -> corners.add(new double[] {at[0] + 3, at[1], at[2]}));
    List<int[]> triangles = tetrahedron(0);
    triangles.addAll(tetrahedron(4));
    SolidCheck check = check(corners, triangles);
    assertThat(check.closed() && check.oriented() && check.plain()).isTrue();
    assertThat(check.pieces()).isEqualTo(2);
    assertThat(check.isSolid()).isFalse();
  }

  @Test
  void twoBodiesOnOneCornerAreNotPlain() {
    List<double[]> corners = new ArrayList<>(CORNERS);
    CORNERS.subList(1, 4).forEach(at -> corners.add(new double[] {-at[0], -at[1], at[2]}));
    List<int[]> triangles = tetrahedron(0);
    tetrahedron(3)
        .forEach(
            t -> {
              int[] shared = new int[3];
              for (int k = 0; k < 3; k++) {
                shared[k] = t[k] == 3 ? 0 : t[k];
              }
              triangles.add(shared);
            });
    SolidCheck check = check(corners, triangles);
    assertThat(check.closed() && check.oriented()).isTrue();
    assertThat(check.pieces()).isEqualTo(1);
    assertThat(check.plain()).isFalse();
    assertThat(check.isSolid()).isFalse();
  }

  @Test
  void aFlatBodyIsNone() {
    List<double[]> corners = new ArrayList<>(CORNERS.subList(0, 3));
    corners.add(new double[] {0.5, 0, 0});
    SolidCheck check = check(corners, tetrahedron(0));
    assertThat(check.plain()).isFalse();
    assertThat(check.isSolid()).isFalse();
  }

  @Test
  void nothingIsNoBody() {
    assertThat(check(List.of(), List.of()).isSolid()).isFalse();
  }

  @Test
  void impossibleTrianglesAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Solid(CORNERS, List.of(new int[] {0, 1, 1})));
    assertThatThrownBy(() -> new Solid(CORNERS, List.of(new int[] {0, 1, 4})))
        .isInstanceOf(IndexOutOfBoundsException.class);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Solid(List.of(new double[] {0, Double.NaN, 0}), List.of()));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0.06, 0.0065, 0.08, 0.02, 0.0008, angle must be above 0 rad",
    "0.8, 0.06, 0.0065, 0.08, 0.02, 0.0008, angle must be below pi/4 rad",
    "0.02, 0.006, 0.0065, 0.08, 0.02, 0.0008, hole diameter must be below the bolt spacing",
    "0.02, 0.06, 0.0065, 0.066, 0.02, 0.0008, must lie inside",
    "0.02, 0.06, 0.0065, 0.08, 0.006, 0.0008, must lie inside",
    "0.02, 0.06, 0.0065, 0.08, 0.02, 0, least thickness must be above 0 m",
    "0.02, NaN, 0.0065, 0.08, 0.02, 0.0008, bolt spacing must be above 0 m",
    "0.02, 0.06, 0.0065, Infinity, 0.02, 0.0008, length must be above 0 m and finite",
  })
  void wedgesThatCannotBeAreRefused(
      double angle,
      double spacing,
      double hole,
      double length,
      double width,
      double least,
      String why) {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new ShimWedge(angle, spacing, hole, length, width, least))
        .withMessageContaining(why);
  }
}
