package trimwright.kernel.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NacaShapeTest {
  /** 80 steps a side: how far the thickest pair may lie from the crown. */
  private static final double STEP = 1e-4;

  @ParameterizedTest
  @ValueSource(strings = {"2412", "naca2412", "NACA 2412", " Naca2412 "})
  void readsACodeHoweverItIsWritten(String code) {
    Section section = Sections.naca(code);
    assertThat(section.name()).isEqualTo("naca2412");
    assertThat(section.shape().thickness()).isCloseTo(0.12, within(STEP));
    assertThat(section.shape().camber()).isCloseTo(0.02, within(STEP));
    assertThat(section.shape().camberPosition()).isCloseTo(0.4, within(0.02));
  }

  @Test
  void fiveDigitsScaleTheMeanLineWithTheDesignLift() {
    MeanLine three = NacaShape.parse("23012").meanLine();
    MeanLine six = NacaShape.parse("43012").meanLine();
    assertThat(six.height(0.3)).isCloseTo(2 * three.height(0.3), within(1e-15));
    MeanLine reflexed = NacaShape.parse("23112").meanLine();
    assertThat(reflexed.slope(1)).isGreaterThan(reflexed.slope(0.3));
    assertThat(three.slope(1)).isEqualTo(three.slope(0.3));
  }

  @ParameterizedTest
  @ValueSource(strings = {"23012", "22112", "25112", "2412", "9930", "21015", "44110"})
  void meanLinesMeetTheChordLineAtBothEndsAndTheirSlopeIsTheirDerivative(String code) {
    MeanLine line = NacaShape.parse(code).meanLine();
    assertThat(line.height(0)).isCloseTo(0, within(1e-15));
    assertThat(line.height(1)).isCloseTo(0, within(1e-15));
    double h = 1e-6;
    for (double x = 0.01; x < 1; x += 0.037) {
      double difference = (line.height(x + h) - line.height(x - h)) / (2 * h);
      assertThat(line.slope(x)).isCloseTo(difference, within(1e-4));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "", "naca", "24", "241", "241200", "24a2", "0412", "2012", "20012", "26012", "21112",
        "23212", "03012", "63-415", "-2412"
      })
  void refusesWhatIsNoCodeOfTheFamily(String code) {
    assertThatThrownBy(() -> Sections.naca(code))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("section code");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "63-412",
        "NACA 63-012",
        "naca64a010",
        "65(1)-212",
        "63,1-412",
        "64-208 a=0.8",
        "naca 66A-006"
      })
  void refusesTheSixSeriesAndPointsToCoordinates(String code) {
    assertThatThrownBy(() -> Sections.naca(code))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("section code of the NACA 6-series")
        .hasMessageContaining("coordinates as a file")
        .hasMessageContaining(code);
  }

  @Test
  void fiveDigitsAloneStayAFiveDigitSection() {
    assertThat(Sections.naca("63012").name()).isEqualTo("naca63012");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0000", "2400", "0031", "2440", "23099"})
  void refusesThicknessOutOfRange(String code) {
    assertThatThrownBy(() -> Sections.naca(code))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("section thickness must be 0.01 to 0.3 chords");
  }

  @Test
  void thicknessAndCamberAloneGiveTheFourDigitSection() {
    Section alone = Sections.fromThicknessAndCamber(0.12, 0.02);
    Section coded = Sections.naca("2412");
    assertThat(alone.name()).isEqualTo("t12c2");
    assertThat(alone.shape()).isEqualTo(coded.shape());
    assertThat(alone.liftSlope()).isEqualTo(coded.liftSlope());
    assertThatThrownBy(() -> Sections.fromThicknessAndCamber(0.12, 0.2))
        .hasMessage("section camber must be -0.1 to 0.1 chords, was 0.2");
    assertThatThrownBy(() -> Sections.fromThicknessAndCamber(0.5, 0))
        .hasMessageContaining("section thickness must be 0.01 to 0.3 chords, was 0.5");
    assertThatThrownBy(() -> Sections.fromThicknessAndCamber(0.1, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void shapesCopyWhatTheyAreGivenAndRefuseWhatIsNoOutline() {
    SectionShape shape = NacaShape.parse("0012").outline(10);
    double[] x = shape.x();
    x[3] = 99;
    assertThat(shape.x()[3]).isLessThan(1);
    assertThat(new SectionShape(shape.x(), shape.y())).isEqualTo(shape).hasSameHashCodeAs(shape);
    assertThatThrownBy(() -> new SectionShape(x, new double[3]))
        .hasMessageContaining("as many x as y");
    double[] moved = shape.x();
    moved[0] = 1.1;
    assertThatThrownBy(() -> new SectionShape(moved, shape.y()))
        .hasMessageContaining("point 1 of a section outline must be at (1.0, 0)");
  }
}
