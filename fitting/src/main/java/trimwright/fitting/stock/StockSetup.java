package trimwright.fitting.stock;

import java.util.stream.Stream;
import trimwright.kernel.rig.RideCase;
import trimwright.kernel.rig.Setup;

/**
 * A setup of parts of a stock, with its settings.
 *
 * @param upper all down to the mast's foot
 * @param foil fuselage, wings and shim
 * @param track the mast forward of its track's middle [m]
 */
public record StockSetup(BoardSet upper, FoilSet foil, double track) {
  /** Its parts from the board down. */
  public Stream<StockPart<?>> parts() {
    return Stream.concat(upper.parts(), foil.parts());
  }

  /**
   * The setup as the computation reads it.
   *
   * @param waterTemperature for batteries that are as warm as the water [K]
   */
  public Setup setup(double waterTemperature) {
    return new Setup(
        upper.board().piece().at(track),
        upper.battery().map(part -> part.piece().in(waterTemperature)),
        upper.mast().piece(),
        upper.drive().map(StockPart::piece),
        foil.fuselage().piece(),
        foil.frontWing().piece(),
        foil.stabilizer().piece(),
        foil.shimAngle());
  }

  /**
   * A rider's case on this setup. Whether the ride is possible on it (a mast long enough for the
   * depth, a drive under water) is not looked at here.
   *
   * @param base rider, water and ride; its own setup is set aside
   * @param waterTemperature of the base's water [K]
   */
  public RideCase rideCase(RideCase base, double waterTemperature) {
    return new RideCase(
        base.water(),
        base.airDensity(),
        base.headWind(),
        base.chopHeight(),
        base.rider(),
        setup(waterTemperature),
        base.immersion(),
        base.pullAboveDeck(),
        base.limits());
  }
}
