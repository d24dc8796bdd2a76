package trimwright.kernel.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trimwright.kernel.frame.PlaneForce;
import trimwright.kernel.numeric.LinearSystem;

/**
 * Several lifting surfaces together as one vortex lattice: horseshoe vortices with their bound part
 * on the quarter line of each panel and the flow held tangential at its three-quarter line, wakes
 * along the chord to the trailing edge and then along the stream. All surfaces induce on all
 * others. Surfaces are given from the front to the back; a surface behind another lies in its wake
 * as computed.
 *
 * <p><b>Sections</b> enter through their zero-lift angle (the line of no lift is what the flow is
 * held tangential to), their lift slope (each strip answers with its own slope instead of 2 pi) and
 * their moment at zero lift.
 *
 * <p><b>Free surface.</b> At high depth Froude numbers the surface acts as one of constant
 * pressure: the disturbance potential is odd about it, and the image has the same sense of
 * circulation, as in a biplane (K. L. Wadlin, C. L. Shuford, J. R. McGehee, NACA Report 1232, 1955;
 * relation recalled, report not in hand). That is the limit of high speed, valid above a depth
 * Froude number V / sqrt(g h) of about 3 and down to about half a chord of depth; what waves add
 * below it is {@link WaveWash}'s and comes in with the sections, see {@link
 * StripCoupling#withOnset}.
 *
 * <p><b>Method.</b> J. Katz, A. Plotkin, Low-Speed Aerodynamics, 2nd ed. 2001, chapter 12 (from
 * memory). The plane of symmetry halves the unknowns.
 *
 * <p>One object is one workspace: not for use by two threads.
 */
public final class Lattice {
  private final HalfLattice half;
  private final Targets controls;
  private final Influence atControls;
  private final Targets middles;
  private final Influence atMiddles;
  private final LinearSystem system;

  /** One column per panel. */
  private final double[] matrix;

  private final double[] rightSide;
  private final double[] strength;
  private final double[] shed;
  private final double[] velocityX;
  private final double[] velocityY;
  private final double[] velocityZ;

  /** What each strip's own section adds to the diagonal block, see {@link #addSectionSlopes}. */
  private final double[] slopeTerm;

  private double surfaceZ;
  private boolean deep;

  /**
   * A lattice for given wings.
   *
   * @param wings from the front to the back, in foil axes
   * @param inviscid whether every strip answers with 2 pi instead of its section's slope, and wakes
   *     are sheets without the thickness that friction gives them
   * @throws IllegalArgumentException if there is no wing
   */
  public Lattice(List<PlacedWing> wings, boolean inviscid) {
    if (wings.isEmpty()) {
      throw new IllegalArgumentException("a lattice needs at least 1 wing, was given none");
    }
    half = new HalfLattice(wings.stream().map(Strips::new).toArray(Strips[]::new), inviscid);
    half.turnTo(0);
    controls = new Targets(half.panelSurface);
    setControls(true, 0);
    atControls = new Influence(half, controls);
    middles = new Targets(half.panelSurface);
    setMiddles(true, 0);
    atMiddles = new Influence(half, middles);
    int n = half.panels;
    system = new LinearSystem(n);
    matrix = new double[n * n];
    rightSide = new double[n];
    strength = new double[n];
    shed = new double[half.edges];
    velocityX = new double[n];
    velocityY = new double[n];
    velocityZ = new double[n];
    slopeTerm = new double[n];
    if (!inviscid) {
      for (int p = 0; p < n; p++) {
        Strips s = half.surfaces[half.panelSurface[p]];
        int k = half.panelStrip[p];
        slopeTerm[p] = (2 * Math.PI / s.liftSlope(k) - 1) / (Math.PI * s.chord[k]);
      }
    }
  }

  /** Number of unknowns: panels on one half of all wings. */
  public int unknowns() {
    return half.panels;
  }

  /** The system last built, one column per unknown; a copy, for solving it in other ways. */
  public double[] system() {
    return matrix.clone();
  }

  /**
   * Builds and solves the system at one pitch.
   *
   * @param pitch fuselage against the stream, nose up positive [rad], within about -0.5..0.5
   * @param datumDepth depth of the datum below the still surface [m]; empty for deep water
   * @throws ArithmeticException if the system is singular, which no lattice of separate panels is
   */
  public void solve(double pitch, OptionalDouble datumDepth) {
    assemble(pitch, datumDepth);
    system.refactorColumns(matrix);
    system.solve(rightSide, strength);
    sumShed();
  }

  /** Builds the system without solving it. */
  void assemble(double pitch, OptionalDouble datumDepth) {
    half.turnTo(pitch);
    deep = datumDepth.isEmpty();
    surfaceZ = -datumDepth.orElse(0);
    setControls(deep, surfaceZ);
    atControls.fillColumns(matrix);
    // The stream is (-1, 0, 0).
    System.arraycopy(half.normalX, 0, rightSide, 0, half.panels);
    addSectionSlopes();
  }

  private void setControls(boolean deep, double surfaceZ) {
    controls.set(
        half.controlX,
        half.controlY,
        half.controlZ,
        half.normalX,
        half.normalY,
        half.normalZ,
        deep,
        surfaceZ);
  }

  private void setMiddles(boolean deep, double surfaceZ) {
    middles.set(
        half.middleX,
        half.middleY,
        half.middleZ,
        half.normalX,
        half.normalY,
        half.normalZ,
        deep,
        surfaceZ);
  }

  /**
   * In two dimensions the three-quarter point sees its own strip's wash, circulation / (pi chord),
   * and answers with 2 pi. A section of slope a answers with a if the wash is multiplied by 2 pi /
   * a; what is added is the difference, on every panel of the strip, so that the loading along the
   * chord keeps its shape.
   */
  private void addSectionSlopes() {
    int n = half.panels;
    for (int i = 0; i < n; i++) {
      if (slopeTerm[i] == 0) {
        continue;
      }
      int s = half.panelSurface[i];
      int k = half.panelStrip[i];
      int first = half.firstRow(s);
      for (int m = 0; m < half.surfaces[s].along; m++) {
        matrix[(half.rowPanel[first + m] + k) * n + i] -= slopeTerm[i];
      }
    }
  }

  private void sumShed() {
    for (int row = 0; row < half.rows; row++) {
      int e0 = half.rowEdge[row];
      int p0 = half.rowPanel[row];
      int count = half.surfaces[half.rowSurface[row]].count;
      for (int k = 0; k <= count; k++) {
        double inner = k == 0 ? 0 : strength[p0 + k - 1];
        double outer = k == count ? 0 : strength[p0 + k];
        shed[e0 + k] = inner - outer;
      }
    }
  }

  /**
   * Forces of the last solution, by the law of Kutta and Joukowski on every bound vortex with the
   * velocity that really is there.
   *
   * <p>Lift, moment and each wing's own share of the drag come from the bound vortices. The sum of
   * the induced drag comes from the wake far behind: on a swept wing with one panel along the chord
   * the wash at the middle of a bound vortex depends on the strips' width (it grows with its
   * logarithm), the wake's energy does not. What the two differ by is given to the front wing, at
   * its root; on straight wings it is below 0.5 % and it vanishes as panels along the chord are
   * added.
   *
   * @return one per wing, in the order given
   */
  public List<SurfaceFlow> flows() {
    double[] far = FarField.drag(half, shed, strength, deep, surfaceZ);
    setMiddles(deep, surfaceZ);
    atMiddles.velocities(strength, shed, velocityX, velocityY, velocityZ);
    List<SurfaceFlow> flows = new ArrayList<>();
    double difference = 0;
    for (int s = 0; s < half.surfaces.length; s++) {
      SurfaceFlow flow = boundFlow(s, far[s]);
      difference += flow.boundDrag() - flow.farFieldDrag();
      flows.add(flow);
    }
    SurfaceFlow front = flows.get(0);
    PlaneForce correction = PlaneForce.at(difference, 0, half.middleX[0], -half.middleZ[0]);
    flows.set(
        0,
        new SurfaceFlow(
            front.force().plus(correction),
            front.boundDrag(),
            front.farFieldDrag(),
            front.stripLift()));
    return flows;
  }

  /**
   * How the loads answer to a turn of the flow that each strip sees, at the pitch last solved; to
   * be asked for after {@link #flows}, whose velocities it uses.
   *
   * @return the answers, per unit of dynamic pressure
   */
  public LoadShifts shifts() {
    return ShiftSolution.of(half, system, velocityX, velocityY, deep, surfaceZ);
  }

  private SurfaceFlow boundFlow(int s, double farFieldDrag) {
    Strips strips = half.surfaces[s];
    double[] lift = new double[strips.count];
    double forward = 0;
    double up = 0;
    double noseUp = 0;
    int first = half.firstRow(s);
    for (int m = 0; m < strips.along; m++) {
      for (int k = 0; k < strips.count; k++) {
        int p = half.rowPanel[first + m] + k;
        int e = half.rowEdge[first + m] + k;
        // The stream is (-1, 0, 0).
        double vx = velocityX[p] - 1;
        double vy = velocityY[p];
        double vz = velocityZ[p];
        double lx = half.startX[e + 1] - half.startX[e];
        double ly = half.startY[e + 1] - half.startY[e];
        double lz = half.startZ[e + 1] - half.startZ[e];
        // Force / (rho/2) = 2 circulation (velocity x length); two halves.
        double fx = 4 * strength[p] * (vy * lz - vz * ly);
        double fz = 4 * strength[p] * (vx * ly - vy * lx);
        PlaneForce f = PlaneForce.at(fx, -fz, half.middleX[p], -half.middleZ[p]);
        forward += f.forward();
        up += f.up();
        noseUp += f.noseUp();
        lift[k] += 2 * strength[p] / strips.chord[k];
      }
    }
    for (int k = 0; k < strips.count; k++) {
      noseUp +=
          2 * strips.momentAtZeroLift(k) * strips.chord[k] * strips.chord[k] * strips.width[k];
    }
    return new SurfaceFlow(new PlaneForce(forward, up, noseUp), -forward, farFieldDrag, lift);
  }
}
