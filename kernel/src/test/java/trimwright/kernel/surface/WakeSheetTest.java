package trimwright.kernel.surface;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.kernel.section.Sections;

class WakeSheetTest {
  /** Half lines laid side by side for one strip's wake. */
  private static final int LINES = 4000;

  /** Of the rule of midpoints with that many, on lines much closer than the core is thick. */
  private static final double QUADRATURE = 1e-6;

  /** The core changes along either span, and strips are finite: 1.5 % at most with these. */
  private static final double ALIKE = 0.02;

  private static final WingShape FRONT =
      new WingSheet(0.15, 0.9, 0.215, 0.06, 0.04, 0.025, 0).shape(Sections.naca("2412"));
  private static final WingShape TAIL =
      new WingSheet(0.035, 0.42, 0.105, 0.045, 0.02, 0, 0).shape(Sections.naca("0009"));

  /** A front wing with a stabilizer behind it, turned, the first asked at the second. */
  private static final class Pair {
    final HalfLattice half;
    final Targets targets;
    final WakeSheet sheet;

    Pair(int front, int tail, double pitch, boolean thin) {
      half =
          new HalfLattice(
              new Strips[] {
                new Strips(new PlacedWing(FRONT, 0.15, 0, 0, new LatticeSize(front, 1))),
                new Strips(new PlacedWing(TAIL, -0.56, 0, 0, new LatticeSize(tail, 1)))
              },
              thin);
      targets = new Targets(half.panelSurface);
      sheet = new WakeSheet(half, targets);
      half.turnTo(pitch);
      targets.set(
          half.controlX,
          half.controlY,
          half.controlZ,
          half.normalX,
          half.normalY,
          half.normalZ,
          true,
          0);
      sheet.roll();
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {-6, -0.8, 0, 0.7, 5})
  void aSheetIsManyThickLinesSideBySide(double degrees) {
    Pair pair = new Pair(6, 4, Math.toRadians(degrees), false);
    HalfLattice h = pair.half;
    Strips s = h.surfaces[0];
    Targets p = pair.targets;
    for (int k = 1; k <= s.count; k++) {
      double[] vy = new double[p.all()];
      double[] vz = new double[p.all()];
      pair.sheet.addVelocity(0, k, 1, vy, vz);
      double inner = s.centreY[k - 1];
      double outer = k == s.count ? 2 * s.edgeY[k] - inner : s.centreY[k];
      double chord = 0.5 * (s.chord[k - 1] + s.chord[Math.min(k, s.count - 1)]);
      for (int t = 0; t < p.all(); t++) {
        if (p.surface[t % p.count] == 0) {
          assertThat(vz[t]).isZero();
          continue;
        }
        double z = p.z[t] - h.trailZ[k];
        double x = h.trailX[k] - p.x[t];
        // From the half width of NACA Report 651's wake.
        double half = 0.68 * chord * Math.sqrt(0.01 * (x / chord + 0.15));
        double core = (1 - 1 / Math.sqrt(8)) * half;
        double across = 0;
        double down = 0;
        for (int i = 0; i < LINES; i++) {
          double u = p.y[t] - (inner + (outer - inner) * (i + 0.5) / LINES);
          double square = u * u + z * z + core * core;
          double factor = 2 * line(square, x) - line(square + core * core, x);
          across += factor * z / LINES;
          down -= factor * u / LINES;
        }
        double scale = 2 / core;
        assertThat(vy[t]).isCloseTo(across, within(QUADRATURE * scale));
        assertThat(vz[t]).isCloseTo(down, within(QUADRATURE * scale));
      }
    }
  }

  /** What an endless half line does to a point beside it, over the distance. */
  private static double line(double square, double x) {
    return (1 + x / Math.sqrt(square + x * x)) / square;
  }

  @Test
  void inTheMiddleTheShearIsThatOfTheViscousWake() {
    for (double distance : new double[] {0, 0.3, 0.8}) {
      double half = 0.2 * WingWake.halfWidth(distance / 0.2, 0.01);
      double z = 1e-4 * half;
      double core = SheetCore.squared(0.2, distance);
      // Far from both seams the two sides differ by a whole turn; the profile is cos².
      double sideways = SheetCore.sideways(z, 1e6, -1e6, core, false) / Math.PI;
      double profile = z / half + Math.sin(Math.PI * z / half) / Math.PI;
      assertThat(sideways).isCloseTo(profile, within(1e-6 * profile));
    }
    assertThat(SheetCore.squared(0.2, -1)).isEqualTo(SheetCore.squared(0.2, 0));
  }

  /**
   * A spread that keeps its circulation: outside it the flow is that of the thin sheet, and the
   * nearer the farther out, with the fourth power of the distance.
   */
  @ParameterizedTest
  @ValueSource(doubles = {1.5, 2, 3, 5})
  void outsideTheSpreadTheFlowIsThatOfAThinSheet(double halfWidths) {
    double half = 0.2 * WingWake.halfWidth(2, 0.01);
    double core = SheetCore.squared(0.2, 0.4);
    double z = halfWidths * half;
    double left = 0.75 * Math.pow(core / (z * z), 2);
    double spread = SheetCore.sideways(z, 1e6, -1e6, core, false) / Math.PI;
    assertThat(spread).isLessThan(1).isCloseTo(1, within(1.05 * left));
    for (double begin : new double[] {-0.1, 0.01, 0.03, 0.2}) {
      double width = 0.04;
      double thin = SheetCore.thin(width);
      double straight = SheetCore.downwards(z, begin, begin - width, thin, true);
      double spreadDown = SheetCore.downwards(z, begin, begin - width, core, false);
      // Of the flow of a line at the nearer seam, as the sideways flow.
      assertThat(spreadDown).isCloseTo(straight, within(1.1 * Math.pow(core / (z * z), 2)));
    }
  }

  /** Each of two wings takes from the far plane what the other gives it (M. M. Munk). */
  @ParameterizedTest
  @ValueSource(doubles = {-4, 0, 0.5, 4})
  void twoWingsDragEachOtherAlikeFarBehind(double degrees) {
    Pair pair = new Pair(64, 32, Math.toRadians(degrees), false);
    HalfLattice h = pair.half;
    double[] form = FarField.form(h, true, 0);
    int n = h.strips();
    int front = h.surfaces[0].count;
    double[] lift = new double[n];
    for (int k = 0; k < n; k++) {
      Strips s = h.surfaces[k < front ? 0 : 1];
      int i = k < front ? k : k - front;
      double e = s.centreY[i] / s.edgeY[s.count];
      lift[k] = Math.sqrt(1 - e * e) / s.chord[i];
    }
    double onTail = 0;
    double onFront = 0;
    for (int k = 0; k < front; k++) {
      for (int l = front; l < n; l++) {
        onFront += lift[k] * form[l * n + k] * lift[l];
        onTail += lift[l] * form[k * n + l] * lift[k];
      }
    }
    assertThat(onFront).isCloseTo(onTail, within(ALIKE * Math.abs(onTail)));
  }
}
