package trimwright.kernel.quick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;
import trimwright.kernel.surface.CoupledFlow;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.StallAngles;
import trimwright.kernel.surface.StripCoupling;
import trimwright.kernel.surface.SurfaceResponse;
import trimwright.kernel.surface.WingLoad;
import trimwright.kernel.trim.Responses;
import trimwright.kernel.trim.WingCouplings;

/**
 * Fills a {@link PairTable}. From the lowest pitch upwards each solution begins at the departures
 * of the one below: the attached branch is followed. One object per table.
 */
final class PairBuilder {
  /** How far past the first stall pitches are solved; beyond, the last loads stay [rad]. */
  private static final double PAST_STALL = Math.toRadians(5);

  private static final int STABILIZER = 1;

  private final Turned[] lattices;
  private final double[] pitches;
  private final double[] speeds = PairGrid.speeds();
  private final double[] shims = PairGrid.shims();
  private final int block;
  private final float[] values;

  /** A lattice with a shim of its own, and what goes with it. */
  private record Turned(double shim, SurfaceResponse response, Couplings couplings) {
    static Turned of(Craft craft, double shim, double[] pitches) {
      SurfaceResponse response = Responses.tabulated(craft, pitches);
      return new Turned(shim, response, WingCouplings.of(craft, response));
    }
  }

  PairBuilder(Craft craft) {
    double[] own = PairGrid.LATTICES;
    Craft[] turned = Arrays.stream(own).mapToObj(shim -> turned(craft, shim)).toArray(Craft[]::new);
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Craft c : turned) {
      SurfaceResponse response = Responses.unfrozen(c);
      from = Math.min(from, response.from());
      to = Math.max(to, response.to());
    }
    WakePassage passage =
        Arrays.stream(turned).map(WakePassage::of).reduce(WakePassage::with).orElseThrow();
    pitches = PairGrid.pitches(passage, from, to);
    lattices = new Turned[own.length];
    for (int i = 0; i < own.length; i++) {
      lattices[i] = Turned.of(turned[i], own[i], pitches);
    }
    block = PairTable.FUNCTIONS * pitches.length + PairTable.OTHERS;
    values = new float[speeds.length * shims.length * block];
  }

  private static Craft turned(Craft craft, double shim) {
    return new Craft(
        withShim(craft.rideCase(), shim), craft.wings().get(0).size(), craft.wings().get(1).size());
  }

  private static RideCase withShim(RideCase c, double shim) {
    Setup s = c.setup();
    Setup plain =
        new Setup(
            s.board(),
            s.battery(),
            s.mast(),
            s.drive(),
            s.fuselage(),
            s.frontWing(),
            s.stabilizer(),
            shim);
    return new RideCase(
        c.water(),
        c.airDensity(),
        c.headWind(),
        c.chopHeight(),
        c.rider(),
        plain,
        c.immersion(),
        c.pullAboveDeck());
  }

  PairTable build() {
    for (int lattice = 0; lattice < lattices.length; lattice++) {
      List<Line> lines = lines(lattice);
      for (int p = 0; p < pitches.length; p++) {
        Couplings.AtSpeed before = null;
        StripCoupling plain = null;
        for (Line line : lines) {
          if (pitches[p] - line.stalls.stalledFrom() > PAST_STALL) {
            keep(line.index, p);
            continue;
          }
          // Shims of one speed follow each other and share what flows there.
          if (line.couplings != before) {
            plain = line.couplings.at(pitches[p]);
            before = line.couplings;
          }
          solve(line, plain, lattices[lattice].response(), p);
        }
      }
      for (Line line : lines) {
        int others = line.index * block + PairTable.FUNCTIONS * pitches.length;
        values[others] = (float) line.stalls.highest();
        values[others + 1] = (float) line.stalls.lowest();
      }
    }
    return new PairTable(pitches, values);
  }

  /** One speed with one shim: a line over pitch. */
  private final class Line {
    final int index;
    final Couplings.AtSpeed couplings;
    final double turn;
    final StallSearch stalls = new StallSearch(pitches);
    double[] departure;

    Line(int index, Couplings.AtSpeed couplings, double turn) {
      this.index = index;
      this.couplings = couplings;
      this.turn = turn;
    }
  }

  /** All speeds with the shims that lie nearest to a lattice's. */
  private List<Line> lines(int lattice) {
    List<Line> lines = new ArrayList<>();
    for (int v = 0; v < speeds.length; v++) {
      Couplings.AtSpeed at = lattices[lattice].couplings().at(speeds[v]);
      for (int s = 0; s < shims.length; s++) {
        if (nearest(shims[s]) == lattice) {
          lines.add(new Line(v * shims.length + s, at, shims[s] - lattices[lattice].shim()));
        }
      }
    }
    return lines;
  }

  private int nearest(double shim) {
    int nearest = 0;
    for (int i = 1; i < lattices.length; i++) {
      if (Math.abs(lattices[i].shim() - shim) < Math.abs(lattices[nearest].shim() - shim)) {
        nearest = i;
      }
    }
    return nearest;
  }

  private void solve(Line line, StripCoupling plain, SurfaceResponse response, int p) {
    StripCoupling coupling = plain.withTurn(STABILIZER, line.turn);
    CoupledFlow flow = coupling.solve(response, pitches[p], line.departure);
    line.departure = flow.departure();
    write(flow, line.index, p);
    line.stalls.add(rooms(coupling, flow));
  }

  private void write(CoupledFlow flow, int line, int p) {
    double up = 0;
    double forward = 0;
    double noseUp = 0;
    for (WingLoad wing : flow.wings()) {
      up += wing.force().up();
      forward += wing.force().forward();
      noseUp += wing.force().noseUp();
    }
    int i = line * block + p;
    values[i] = (float) up;
    values[i + pitches.length] = (float) forward;
    values[i + 2 * pitches.length] = (float) noseUp;
  }

  private void keep(int line, int p) {
    for (int f = 0; f < PairTable.FUNCTIONS; f++) {
      int i = line * block + f * pitches.length + p;
      values[i] = values[i - 1];
    }
  }

  /** Angles to the stall nose up of either wing, then nose down. */
  private static double[] rooms(StripCoupling coupling, CoupledFlow flow) {
    List<WingLoad> loads = flow.wings();
    int count = loads.size();
    double[] rooms = new double[2 * count];
    for (int w = 0; w < count; w++) {
      StallAngles stall = coupling.wings().get(w).stall();
      double[] angles = loads.get(w).stripAngle();
      rooms[w] = stall.room(angles);
      rooms[count + w] = stall.roomBelow(angles);
    }
    return rooms;
  }
}
