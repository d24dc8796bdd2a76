package trimwright.kernel.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.hummeling.if97.IF97;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import trimwright.kernel.PublishedRows;

/**
 * Water against published tables and against an independent implementation of the IAPWS
 * formulations.
 */
class WaterReferenceTest {
  private static final double ATMOSPHERE = 101325;

  /** IAPWS-IF97 states 0.001 % for the density of liquid water at one atmosphere: 0.01 kg/m³. */
  private static final double DENSITY_FORMULATIONS = 0.01;

  /**
   * The same formula with densities 0.003 kg/m³ apart, and the library's coefficients: rounding.
   */
  private static final double SAME_VISCOSITY = 1e-5;

  /** The same equation: rounding. */
  private static final double SAME_EQUATION = 1e-12;

  /**
   * Sea water's vapour pressure is about 2 % below fresh water's at 35 g/kg (1.8 to 2.1 in the
   * tables).
   */
  private static final double RAOULT_SCATTER = 0.002;

  static Stream<Map<String, String>> rows() {
    return PublishedRows.beside(WaterReferenceTest.class, "published-water.csv").stream();
  }

  @ParameterizedTest
  @MethodSource("rows")
  void agreesWithPublishedValues(Map<String, String> row) {
    double celsius = number(row, "temperature_celsius");
    double temperature = celsius + 273.15;
    double salinity = number(row, "salinity_g_kg") / 1000;
    double computed =
        switch (row.get("quantity")) {
          case "density" ->
              row.get("scale").equals("IPTS-68")
                  ? Density.ofPracticalSalinity(celsius, salinity == 0 ? 0 : 35)
                  : WaterModel.at(temperature, salinity).density();
          case "dynamic_viscosity" ->
              row.get("density").isEmpty()
                  ? dynamicViscosity(temperature, salinity)
                  : Viscosity.ofFreshWater(temperature, number(row, "density"));
          case "kinematic_viscosity" -> WaterModel.at(temperature, salinity).kinematicViscosity();
          case "vapour_pressure" -> WaterModel.at(temperature, salinity).vapourPressure();
          default -> throw new IllegalStateException("no such quantity: " + row);
        };
    assertThat(computed)
        .as(row.get("id"))
        .isCloseTo(number(row, "value"), within(number(row, "tolerance")));
  }

  private static double dynamicViscosity(double temperature, double salinity) {
    Water water = WaterModel.at(temperature, salinity);
    return water.kinematicViscosity() * water.density();
  }

  private static double number(Map<String, String> row, String column) {
    return Double.parseDouble(row.get(column));
  }

  @ParameterizedTest
  @ValueSource(doubles = {273.16, 278.15, 288.15, 298.15, 313.15})
  void agreesWithAnIndependentImplementationForFreshWater(double temperature) throws Exception {
    IF97 library = new IF97(IF97.UnitSystem.SI);
    Water water = WaterModel.at(temperature, 0);
    assertThat(water.density())
        .isCloseTo(library.densityPT(ATMOSPHERE, temperature), within(DENSITY_FORMULATIONS));
    double viscosity = library.dynamicViscosityPT(ATMOSPHERE, temperature);
    assertThat(water.kinematicViscosity() * water.density())
        .isCloseTo(viscosity, within(SAME_VISCOSITY * viscosity));
    double pressure = library.saturationPressureT(temperature);
    assertThat(water.vapourPressure()).isCloseTo(pressure, within(SAME_EQUATION * pressure));
  }

  @Test
  void standardSeaWaterBoilsTwoPerCentLower() {
    double ratio =
        WaterModel.at(288.15, 0.03516504).vapourPressure()
            / WaterModel.at(288.15, 0).vapourPressure();
    assertThat(1 - ratio).isCloseTo(0.02, within(RAOULT_SCATTER));
  }
}
