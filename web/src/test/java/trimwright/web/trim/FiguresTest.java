package trimwright.web.trim;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FiguresTest {

  @ParameterizedTest
  @CsvSource({"1.25,1,1.3", "-1.25,1,−1.3", "-0.04,1,0.0", "0,0,0", "1500,0,1500"})
  void fixed(double value, int decimals, String text) {
    assertThat(Figures.fixed(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"1.25,1,+1.3", "-1.25,1,−1.3", "0.04,1,0.0", "-0.04,1,0.0"})
  void signed(double value, int decimals, String text) {
    assertThat(Figures.signed(value, decimals)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"22.0,22", "22.5,22.5", "24.999999999999996,25", "0,0", "100,100"})
  void shortest(double value, String text) {
    assertThat(Figures.shortest(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"999.4,999", "1234.4,1\u202f234", "-1500,−1\u202f500"})
  void grouped(double value, String text) {
    assertThat(Figures.grouped(value)).isEqualTo(text);
  }
}
