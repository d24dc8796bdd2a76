package trimwright.fitting.stock;

import java.util.OptionalDouble;
import trimwright.kernel.propel.Cells;
import trimwright.kernel.rig.Battery;

/**
 * A battery, whose cells are as warm as the water unless something else is known.
 *
 * @param battery the battery; the temperature of its cells stands beside
 * @param cellTemperature of the cells, where it is not the water's [K]
 */
public record StockBattery(Battery battery, OptionalDouble cellTemperature) {
  /**
   * The battery on the water.
   *
   * @param waterTemperature [K]
   */
  public Battery in(double waterTemperature) {
    Cells cells = battery.cells();
    return new Battery(
        battery.mass(),
        battery.energy(),
        battery.usableShare(),
        battery.massCentreAhead(),
        battery.massCentreBelowDeck(),
        new Cells(
            cellTemperature.orElse(waterTemperature),
            cells.voltage(),
            cells.resistance(),
            cells.maximumCurrent()));
  }
}
