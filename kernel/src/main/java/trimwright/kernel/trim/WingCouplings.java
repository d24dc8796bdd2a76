package trimwright.kernel.trim;

import java.util.ArrayList;
import java.util.List;
import trimwright.kernel.rig.Craft;
import trimwright.kernel.surface.Couplings;
import trimwright.kernel.surface.LoadShifts;
import trimwright.kernel.surface.Loads;
import trimwright.kernel.surface.SolvedLoads;
import trimwright.kernel.surface.SurfaceFlow;
import trimwright.kernel.surface.SurfaceResponse;

/** How lattice and sections of a craft's wings are brought together in every trim. */
public final class WingCouplings {
  private WingCouplings() {}

  /**
   * The couplings that a trim of this craft stands on, for whoever tabulates loads himself.
   *
   * @param craft the craft
   * @param response the flow about its wings
   * @return couplings at every speed and pitch
   */
  public static Couplings of(Craft craft, SurfaceResponse response) {
    Asked asked = new Asked(response);
    new BalanceModel(craft, asked);
    return asked.couplings.get(0);
  }

  /** Remembers the couplings that loads are asked for with. */
  private record Asked(SurfaceResponse response, List<Couplings> couplings)
      implements SurfaceResponse {
    Asked(SurfaceResponse response) {
      this(response, new ArrayList<>());
    }

    @Override
    public SurfaceFlow at(int wing, double pitch) {
      return response.at(wing, pitch);
    }

    @Override
    public LoadShifts shifts(double pitch) {
      return response.shifts(pitch);
    }

    @Override
    public double from() {
      return response.from();
    }

    @Override
    public double to() {
      return response.to();
    }

    @Override
    public Loads loads(Object sections, Couplings given) {
      couplings.add(given);
      return speed -> new SolvedLoads(this, given.at(speed));
    }
  }
}
