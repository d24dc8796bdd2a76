package trimwright.kernel.surface;

import java.util.List;
import trimwright.kernel.frame.PlaneForce;

/**
 * Loads at one speed, solved anew at every pitch from the straight lines. Not for use by two
 * threads: it remembers the last solution.
 */
public final class SolvedLoads implements SpeedLoads {
  private final SurfaceResponse response;
  private final Couplings.AtSpeed couplings;
  private double last = Double.NaN;
  private CoupledFlow flow;

  /**
   * Loads at a speed.
   *
   * @param response lattice
   * @param couplings sections at the speed
   */
  public SolvedLoads(SurfaceResponse response, Couplings.AtSpeed couplings) {
    this.response = response;
    this.couplings = couplings;
  }

  private CoupledFlow flow(double pitch) {
    if (pitch != last) {
      flow = couplings.at(pitch).solve(response, pitch);
      last = pitch;
    }
    return flow;
  }

  @Override
  public PlaneForce force(int wing, double pitch) {
    return load(wing, pitch).force();
  }

  @Override
  public double[] angles(int wing, double pitch) {
    return load(wing, pitch).stripAngle();
  }

  @Override
  public WingLoad load(int wing, double pitch) {
    return flow(pitch).wings().get(wing);
  }

  @Override
  public double residual(double pitch) {
    return flow(pitch).residual();
  }

  @Override
  public List<StallAngles> stall() {
    return couplings.at(0).wings().stream().map(StripPolars::stall).toList();
  }

  @Override
  public double from() {
    return response.from();
  }

  @Override
  public double to() {
    return response.to();
  }
}
