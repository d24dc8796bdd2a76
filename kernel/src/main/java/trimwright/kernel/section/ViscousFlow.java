package trimwright.kernel.section;

import trimwright.kernel.layer.CoupledLayers;
import trimwright.kernel.layer.Disturbance;
import trimwright.kernel.layer.LayerGeometry;

/**
 * Viscous flow about a section at one Reynolds number, disturbance and finish: a potential flow
 * whose surface and wake carry the displacement of boundary layers that it drives.
 *
 * <p>Each solution starts from the last one, so that a polar is marched from small angles to large
 * ones. A workspace for one thread.
 */
public final class ViscousFlow {
  private static final int MOST_STEPS = 25;

  /** Newton's last step, after which the rest is about its square. */
  private static final double AGREED = 2e-3;

  /**
   * Largest shape factor that takes part in the wake's bend: chosen. In fuller separation the fluid
   * next to the surface stands still and follows no bend.
   */
  private static final double BENDING = 3;

  /** Weight of a changed speed of the wake's bend against a changed mass defect. */
  private static final double BEND_AGREED = 5;

  /** Speed in the wrong direction beside the stagnation point that is let pass [onset speeds]. */
  private static final double LINGER = 0.02;

  /** Stations on each side of a moved stagnation point that are begun anew. */
  private static final int NOSE = 4;

  private final ViscousSurface surface;
  private final double reynolds;
  private final double forcedAbove;
  private final double forcedBelow;
  private final CoupledLayers layers;
  private final double[] mass;
  private final double[] growth = new double[EdgeSpeeds.jumps()];
  private final double[] bent;
  private final double[] massNow;
  private final double[] massBefore;
  private double lastAngle = Double.NaN;
  private double angleBefore = Double.NaN;
  private boolean begun;
  private int stagnation = -1;
  private double[][] response;
  private double[][] ordered;
  private double[] signedSpeed;

  /**
   * A workspace.
   *
   * @param surface the section
   * @param reynolds Reynolds number on the chord [1]
   * @param disturbance disturbances of the stream
   * @param forcedAbove where the upper surface forces transition [chords behind the leading edge];
   *     1 or more for a clean one
   * @param forcedBelow the same below
   */
  public ViscousFlow(
      ViscousSurface surface,
      double reynolds,
      Disturbance disturbance,
      double forcedAbove,
      double forcedBelow) {
    this.surface = surface;
    this.reynolds = reynolds;
    this.forcedAbove = forcedAbove;
    this.forcedBelow = forcedBelow;
    layers = new CoupledLayers(reynolds, disturbance);
    mass = new double[surface.stations()];
    massNow = new double[mass.length];
    bent = new double[mass.length];
    massBefore = new double[mass.length];
  }

  /** Forgets the last solution: the next starts from plate layers. */
  public void restart() {
    begun = false;
    lastAngle = Double.NaN;
    angleBefore = Double.NaN;
    layers.cool();
  }

  /**
   * The flow at an angle of attack.
   *
   * @param angle angle of attack [rad]
   * @return its coefficients, marked where layers and outer flow did not agree
   */
  public ViscousPoint solve(double angle) {
    EdgeSpeeds speeds = surface.speeds(angle);
    signedSpeed = new double[surface.stations()];
    for (int i = 0; i < signedSpeed.length; i++) {
      bent[i] = begun ? speeds.fromJumps(i, growth) : 0;
      signedSpeed[i] = speeds.onset(i) + bent[i];
    }
    int before = stagnation;
    continueFrom(angle);
    stagnation = -1;
    divide(speeds);
    if (!begun) {
      firstMass();
      begun = true;
    } else if (before != stagnation) {
      startNose(speeds);
    }
    double change = Double.POSITIVE_INFINITY;
    int steps = 0;
    LayerGeometry geometry = null;
    while (steps < MOST_STEPS && !(change < AGREED)) {
      divide(speeds);
      flow(speeds);
      divide(speeds);
      geometry = geometry(speeds);
      double[] local = toLocal(mass);
      change = layers.step(geometry, local);
      fromLocal(local);
      change = Math.max(change, BEND_AGREED * bend(speeds));
      steps++;
      if (Double.isInfinite(change)) {
        break;
      }
    }
    flow(speeds);
    boolean converged = change < AGREED && layers.failures() == 0;
    ViscousPoint point = point(angle, geometry, converged, steps);
    if (converged) {
      remember(angle);
    } else if (!Double.isNaN(lastAngle)) {
      System.arraycopy(massNow, 0, mass, 0, mass.length);
      layers.cool();
    } else {
      restart();
    }
    return point;
  }

  /** Goes on from the last two solutions in a straight line, station by station. */
  private void continueFrom(double angle) {
    double ratio = (angle - lastAngle) / (lastAngle - angleBefore);
    if (!begun || !(Math.abs(ratio) <= 2)) {
      return;
    }
    for (int i = 0; i < mass.length; i++) {
      double grown = mass[i] + ratio * (mass[i] - massBefore[i]);
      massNow[i] = mass[i];
      mass[i] = Math.max(0.5 * mass[i], Math.min(2 * mass[i], grown));
    }
  }

  private void remember(double angle) {
    angleBefore = lastAngle;
    lastAngle = angle;
    System.arraycopy(massNow, 0, massBefore, 0, mass.length);
    System.arraycopy(mass, 0, massNow, 0, mass.length);
  }

  /**
   * What the wake's bend does: pressure is higher on the outside of the bend than the flow outside
   * would have it, because the wake's own fluid is slower. The flow outside feels it as a jump of
   * speed across the wake of its curvature times momentum and displacement thickness (R. C. Lock
   * and M. C. P. Firmin, RAE TM Aero 1900, 1981, from memory), that is as vortices along it.
   *
   * @return largest change of a speed
   */
  private double bend(EdgeSpeeds speeds) {
    for (int k = 0; k < growth.length; k++) {
      double thickness = layers.wakeMomentum(k) * (1 + Math.min(BENDING, layers.wakeShape(k)));
      growth[k] = -speeds.turn(k) * layers.wakeSpeed(k) * thickness;
    }
    double most = 0;
    for (int i = 0; i < bent.length; i++) {
      double now = speeds.fromJumps(i, growth);
      most = Math.max(most, Math.abs(now - bent[i]));
      bent[i] = now;
    }
    return most;
  }

  /** Finds the panel on which the flow divides. */
  private void divide(EdgeSpeeds speeds) {
    int n = surface.panels();
    int best = -1;
    if (stagnation > 0
        && signedSpeed[stagnation] < LINGER
        && signedSpeed[stagnation + 1] > -LINGER) {
      return;
    }
    for (int p = 1; p < n - 1; p++) {
      if (signedSpeed[p] < 0 && signedSpeed[p + 1] >= 0) {
        if (best < 0 || Math.abs(p - n / 2) < Math.abs(best - n / 2)) {
          best = p;
        }
      }
    }
    if (best < 0) {
      best = stagnation < 0 ? n / 2 : stagnation;
    }
    if (best != stagnation) {
      stagnation = best;
      response = speeds.byMassDefect(stagnation);
      ordered = null;
    }
  }

  /** Speeds of the onset flow and the present displacement. */
  private void flow(EdgeSpeeds speeds) {
    for (int i = 0; i < signedSpeed.length; i++) {
      double[] row = response[i];
      double sum = 0;
      for (int j = 0; j < row.length; j++) {
        sum += row[j] * mass[j];
      }
      signedSpeed[i] = speeds.onset(i) + bent[i] + (i <= stagnation ? -sum : sum);
    }
  }

  private void firstMass() {
    int n = surface.panels();
    for (int i = 0; i < mass.length; i++) {
      double length = i <= n ? Math.abs(surface.arc(i) - surface.arc(stagnation)) + 1e-4 : 1.1;
      double plate = 1.72 * Math.sqrt(length / reynolds) + 0.002 * length;
      mass[i] = Math.max(0.05, Math.abs(signedSpeed[i])) * plate;
    }
  }

  /** Mass defects close to a stagnation point that has moved: those of its own similar layer. */
  private void startNose(EdgeSpeeds speeds) {
    double stretch =
        (signedSpeed[stagnation + 1] - signedSpeed[stagnation]) / speeds.panelLength(stagnation);
    double thickness = layers.stagnationThickness(Math.max(0.1, stretch));
    int from = Math.max(1, stagnation - NOSE);
    int to = Math.min(surface.panels() - 1, stagnation + 1 + NOSE);
    for (int i = from; i <= to; i++) {
      mass[i] = Math.max(1e-3, Math.abs(signedSpeed[i])) * thickness;
    }
  }

  /** Position in the layers' order of stations. */
  private int global(int local) {
    int above = stagnation + 1;
    return local < above ? stagnation - local : local;
  }

  private double[] toLocal(double[] values) {
    double[] result = new double[values.length];
    for (int i = 0; i < result.length; i++) {
      result[i] = values[global(i)];
    }
    return result;
  }

  private void fromLocal(double[] local) {
    for (int i = 0; i < local.length; i++) {
      mass[global(i)] = local[i];
    }
  }

  private LayerGeometry geometry(EdgeSpeeds speeds) {
    int n = surface.panels();
    int above = stagnation + 1;
    int below = n - stagnation;
    int size = signedSpeed.length;
    double before = signedSpeed[stagnation];
    double after = signedSpeed[stagnation + 1];
    double length = speeds.panelLength(stagnation);
    double share = before < 0 && after > 0 ? -before / (after - before) : 0.5;
    share = Math.max(1e-4, Math.min(1 - 1e-4, share));
    double place = surface.arc(stagnation) + share * length;
    double stretch = Math.max(0.1, (after - before) / length);
    double[] first = new double[above];
    for (int i = 0; i < above; i++) {
      first[i] = place - surface.arc(stagnation - i);
    }
    double[] second = new double[below];
    for (int i = 0; i < below; i++) {
      second[i] = surface.arc(stagnation + 1 + i) - place;
    }
    double[] wake = new double[size - n - 1];
    double behind = 0;
    for (int i = 0; i < wake.length; i++) {
      behind += speeds.panelLength(n + i);
      wake[i] = behind;
    }
    if (ordered == null) {
      ordered = new double[size][];
      for (int i = 0; i < size; i++) {
        ordered[i] = toLocal(response[global(i)]);
      }
    }
    double[] onset = new double[size];
    for (int i = 0; i < size; i++) {
      int g = global(i);
      double base = speeds.onset(g) + bent[g];
      onset[i] = g <= stagnation ? -base : base;
    }
    return new LayerGeometry(
        first,
        second,
        wake,
        onset,
        ordered,
        stretch,
        forcedAbove >= 1 ? Double.POSITIVE_INFINITY : place - surface.arcAbove(forcedAbove),
        forcedBelow >= 1 ? Double.POSITIVE_INFINITY : surface.arcBelow(forcedBelow) - place);
  }

  private ViscousPoint point(double angle, LayerGeometry geometry, boolean converged, int steps) {
    int last = geometry.wake().length;
    double shape = layers.wakeShape(last);
    double drag =
        2
            * layers.wakeMomentum(last)
            * Math.pow(Math.max(0.1, layers.wakeSpeed(last)), 0.5 * (shape + 5));
    double[] force = surface.force(signedSpeed, angle);
    double fastest = 0;
    for (int i = 0; i <= surface.panels(); i++) {
      fastest = Math.max(fastest, Math.abs(signedSpeed[i]));
    }
    double place = geometry.first()[0] + surface.arc(stagnation);
    return new ViscousPoint(
        angle,
        force[0],
        drag,
        force[1],
        1 - fastest * fastest,
        surface.placeAt(place - layers.first().transition(), true),
        surface.placeAt(place + layers.second().transition(), false),
        surface.placeAt(place - layers.first().turbulentSeparation(), true),
        surface.placeAt(place + layers.second().turbulentSeparation(), false),
        converged,
        steps);
  }
}
