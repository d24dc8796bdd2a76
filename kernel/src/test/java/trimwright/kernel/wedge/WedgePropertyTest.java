package trimwright.kernel.wedge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import trimwright.seed.RunSeed;

/**
 * Random wedges: one closed body each, with the angle, the thicknesses and the volume asked for.
 */
class WedgePropertyTest {
  /** Sums over a thousand triangles in double precision. */
  private static final double ROUNDED = 1e-10;

  @Provide
  static Arbitrary<ShimWedge> wedges() {
    Arbitrary<Double> part = Arbitraries.doubles().between(0, 1).ofScale(9).withoutEdgeCases();
    return Combinators.combine(
            Arbitraries.doubles().between(0.001, 0.12).ofScale(9),
            Arbitraries.doubles().between(0.003, 0.013).ofScale(9),
            Arbitraries.doubles().between(0.0002, 0.01).ofScale(9),
            part,
            part,
            part)
        .as(
            (angle, hole, least, spacing, length, width) -> {
              // Down to walls of a tenth of a millimetre; wide and short ones among them
              double apart = hole + 0.0002 + 0.2 * spacing * spacing;
              return new ShimWedge(
                  angle,
                  apart,
                  hole,
                  apart + hole + 0.0002 + 0.1 * length * length,
                  hole + 0.0002 + 0.15 * width * width,
                  least);
            });
  }

  @Property(tries = 500, seed = RunSeed.VALUE)
  void isOneClosedBodyWithTwoHoles(@ForAll("wedges") ShimWedge wedge) {
    SolidCheck check = SolidCheck.of(wedge.solid());
    assertThat(check.isSolid()).as("%s", check).isTrue();
    assertThat(check.eulerCharacteristic()).isEqualTo(-2);
    assertThat(check.holes()).isEqualTo(2);
    // Of closed surfaces by triangles: three half edges each
    assertThat(2 * check.edges()).isEqualTo(3 * check.triangles());
  }

  @Property(tries = 500, seed = RunSeed.VALUE)
  void enclosesTheVolumeOfItsFormula(@ForAll("wedges") ShimWedge wedge) {
    double enclosed = wedge.solid().volume();
    // Between a circle and its chords lies at most its length times what a chord may be off
    double circles = 2 * Math.PI * (wedge.cornerRadius() + wedge.holeDiameter());
    double play = circles * ShimWedge.CHORD_ERROR * wedge.thickness(0);
    assertThat(enclosed).isCloseTo(wedge.volume(), within(play + ROUNDED * wedge.volume()));
    // By the plan's polygons: areas by the shoelace formula, the thickness in the middle is the
    // mean
    Plan plan = Plan.of(wedge.solid());
    assertThat(enclosed)
        .isCloseTo(plan.area() * wedge.thickness(0), within(ROUNDED * wedge.volume()));
  }

  @Property(tries = 300, seed = RunSeed.VALUE)
  void facesMeetAtTheAngleAndNowhereElse(@ForAll("wedges") ShimWedge wedge) {
    Solid solid = wedge.solid();
    double lower = 0;
    double upper = 0;
    for (int i = 0; i < solid.triangleCount(); i++) {
      double[] area = solid.area(i);
      double size = Math.sqrt(area[0] * area[0] + area[1] * area[1] + area[2] * area[2]);
      double up = area[2] / size;
      if (up < -0.5) {
        assertThat(up).isCloseTo(-1, within(1e-12));
        lower += size;
      } else if (up > 0.5) {
        // Tilted about the axis across: thick end, towards x, higher
        assertThat(Math.atan2(-area[0], area[2])).isCloseTo(wedge.angle(), within(1e-6));
        assertThat(area[1] / size).isCloseTo(0, within(1e-6));
        upper += size;
      } else {
        assertThat(up).as("walls are square to the fuselage's face").isCloseTo(0, within(1e-12));
      }
    }
    assertThat(upper * Math.cos(wedge.angle())).isCloseTo(lower, within(ROUNDED * lower));
  }

  @Property(tries = 300, seed = RunSeed.VALUE)
  void thicknessesDifferBySpacingTimesTangent(@ForAll("wedges") ShimWedge wedge) {
    assertThat(wedge.thickBoltThickness() - wedge.thinBoltThickness())
        .isCloseTo(wedge.boltSpacing() * Math.tan(wedge.angle()), within(1e-15));
    double[] low = {1, 1, 1};
    double[] high = {-1, -1, -1};
    double thin = 1;
    Solid solid = wedge.solid();
    for (int i = 0; i < solid.cornerCount(); i++) {
      double[] at = solid.corner(i);
      for (int k = 0; k < 3; k++) {
        low[k] = Math.min(low[k], at[k]);
        high[k] = Math.max(high[k], at[k]);
      }
      thin = at[2] > 0 ? Math.min(thin, at[2]) : thin;
    }
    assertThat(high[0] - low[0]).isCloseTo(wedge.length(), within(1e-6));
    assertThat(high[1] - low[1]).isCloseTo(wedge.width(), within(1e-6));
    assertThat(low[2]).isZero();
    assertThat(high[2]).isCloseTo(wedge.greatestThickness(), within(1e-6));
    assertThat(thin).isCloseTo(wedge.leastThickness(), within(1e-6));
  }

  /** The second way: rays, which know nothing of edges and fans. */
  @Property(tries = 60, seed = RunSeed.VALUE)
  void raysFindMaterialWhereTheSizesPutIt(
      @ForAll("wedges") ShimWedge wedge, @ForAll("seeds") long seed) {
    Solid solid = wedge.solid();
    Random random = new Random(seed);
    double[] box = {1.1 * wedge.length(), 1.1 * wedge.width(), 1.1 * wedge.greatestThickness()};
    for (int i = 0; i < 300; i++) {
      double[] at = {
        (random.nextDouble() - 0.5) * box[0],
        (random.nextDouble() - 0.5) * box[1],
        (random.nextDouble() - 0.05) * box[2]
      };
      if (Sizes.nearSkin(wedge, at)) {
        continue; // Chords and circles differ there
      }
      assertThat(Rays.inside(solid, at)).as("%s", at).isEqualTo(Sizes.inside(wedge, at));
    }
  }

  @Provide
  static Arbitrary<Long> seeds() {
    return Arbitraries.longs();
  }

  /**
   * The area that the walls bound; the lower face covers just that, so its triangles do not
   * overlap.
   */
  record Plan(double area) {
    static Plan of(Solid solid) {
      double faces =
          IntStream.range(0, solid.triangleCount())
              .mapToDouble(i -> Math.max(0, -solid.area(i)[2]))
              .sum();
      // Walls are what bounds the plan: Green's theorem on their lower edges
      double green = 0;
      for (int i = 0; i < solid.triangleCount(); i++) {
        int[] t = solid.triangle(i);
        for (int k = 0; k < 3; k++) {
          double[] a = solid.corner(t[k]);
          double[] b = solid.corner(t[(k + 1) % 3]);
          double[] c = solid.corner(t[(k + 2) % 3]);
          if (a[2] == 0 && b[2] == 0 && c[2] > 0) {
            green += (a[0] * b[1] - b[0] * a[1]) / 2;
          }
        }
      }
      assertThat(faces).isCloseTo(green, within(ROUNDED * green));
      return new Plan(green);
    }
  }
}
