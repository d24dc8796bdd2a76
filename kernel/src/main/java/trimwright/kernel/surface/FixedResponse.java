package trimwright.kernel.surface;

import java.util.List;
import java.util.function.Supplier;

/** A response at the one pitch it was made for; shifts are worked out when first asked for. */
final class FixedResponse implements SurfaceResponse {
  private final double pitch;
  private final List<SurfaceFlow> flows;
  private final Supplier<LoadShifts> later;
  private LoadShifts shifts;

  FixedResponse(double pitch, List<SurfaceFlow> flows, Supplier<LoadShifts> later) {
    this.pitch = pitch;
    this.flows = flows;
    this.later = later;
  }

  @Override
  public SurfaceFlow at(int wing, double there) {
    return flows.get(wing);
  }

  @Override
  public LoadShifts shifts(double there) {
    if (shifts == null) {
      shifts = later.get();
    }
    return shifts;
  }

  @Override
  public double from() {
    return pitch;
  }

  @Override
  public double to() {
    return pitch;
  }

  @Override
  public Loads loads(Object sections, Couplings couplings) {
    return speed -> new SolvedLoads(this, couplings.at(speed));
  }
}
