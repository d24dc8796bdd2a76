package trimwright.kernel.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class WaterModelTest {

  @Test
  void refusesATemperatureOutsideTheRangeByNameValueUnitAndRange() {
    assertThatThrownBy(() -> WaterModel.at(271.0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("water temperature must be 271.15 to 313.15 K, was 271.0 K");
    assertThatThrownBy(() -> WaterModel.at(320, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WaterModel.at(Double.NaN, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesASalinityOutsideTheRangeByNameValueUnitAndRange() {
    assertThatThrownBy(() -> WaterModel.at(290, 0.05))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("salinity must be 0.0 to 0.042 kg/kg, was 0.05 kg/kg");
    assertThatThrownBy(() -> WaterModel.at(290, -1e-9))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> WaterModel.at(290, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void takesTheEndsOfBothRanges() {
    assertThat(WaterModel.at(271.15, 0.042).density()).isBetween(1033.0, 1035.0);
    assertThat(WaterModel.at(313.15, 0).density()).isBetween(992.0, 993.0);
  }
}
