package trimwright.desk;

import java.util.Locale;
import trimwright.exchange.read.Digest;
import trimwright.exchange.write.WaterTable;
import trimwright.kernel.water.WaterModel;

/** What the computation knows of a water. */
public final class WaterStudy {
  private WaterStudy() {}

  /**
   * The properties of a water at one atmosphere.
   *
   * @param temperature [K], within the range of {@link WaterModel}
   * @param salinity salt's share of the mass [kg/kg], within the same
   * @return what the water document holds
   * @throws IllegalArgumentException if either lies outside its range
   */
  public static WaterTable table(double temperature, double salinity) {
    String asked = String.format(Locale.ROOT, "water %s %s", temperature, salinity);
    return new WaterTable(
        Digest.of(asked), temperature, salinity, WaterModel.at(temperature, salinity));
  }
}
