package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;

class ShimPictureTest {
  /** Coordinates carry two decimals [px]. */
  private static final double ROUNDED = 0.02;

  private static final PictureStyle STYLE = PictureStyle.light(280, 180);

  private static CaseFile with(String mounted, double degrees) {
    String text =
        DemoCases.find("nose-up-mismatch")
            .orElseThrow()
            .text()
            .replace("mounted: above", "mounted: " + mounted)
            .replace("angle_deg: 0.5", "angle_deg: " + degrees);
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "above, 0.5, true",
    "above, -0.5, false",
    "below, 0.5, false",
    "below, -0.5, true",
  })
  void theThickEndLiesWhereTheWordsPutIt(String mounted, double degrees, boolean front) {
    Drawn drawn = Drawn.of(ShimPicture.svg(with(mounted, degrees), STYLE));
    // Bow to the right: the wedge's front side is the one further right
    List<Dot> wedge = drawn.points("shim");
    assertThat(wedge).hasSize(4);
    double atFront = Math.abs(wedge.get(0).y() - wedge.get(1).y());
    double atBack = Math.abs(wedge.get(2).y() - wedge.get(3).y());
    assertThat(wedge.get(0).x()).isGreaterThan(wedge.get(3).x());
    assertThat(front ? atFront : atBack).isGreaterThan(2);
    assertThat(front ? atBack : atFront).isLessThan(ROUNDED);
    assertThat(drawn.root().getTextContent())
        .contains("leading edge " + (degrees > 0 ? "up" : "down"))
        .contains("thick end goes to the " + (front ? "front" : "back"));
  }

  @ParameterizedTest
  @CsvSource({"above, 1", "below, -1"})
  void theStabilizerSitsOutsideTheFuselage(String mounted, int side) {
    Drawn drawn = Drawn.of(ShimPicture.svg(with(mounted, 1), STYLE));
    double skin =
        drawn.kind("fuselage-skin").stream()
            .mapToDouble(line -> Drawn.number(line, "y1"))
            .map(y -> -side * y)
            .max()
            .orElseThrow();
    assertThat(drawn.points("stabilizer")).allMatch(dot -> -side * dot.y() > skin - ROUNDED);
  }

  @Test
  void aWedgeDrawnSteeperSaysHowManyTimes() {
    assertThat(ShimPicture.scaleWords(with("above", 0.5))).contains("10 times");
    assertThat(ShimPicture.scaleWords(with("above", -6))).isEqualTo("Drawn to scale.");
    assertThat(ShimPicture.scaleWords(with("above", 0))).isEqualTo("Drawn to scale.");
    Drawn drawn = Drawn.of(ShimPicture.svg(with("above", 0.5), STYLE));
    assertThat(drawn.root().getAttribute("data-times-steeper")).isEqualTo("10");
  }

  @Test
  void withoutAShimThereIsNone() {
    Drawn drawn = Drawn.of(ShimPicture.svg(with("above", 0), STYLE));
    assertThat(drawn.kind("shim")).isEmpty();
    assertThat(drawn.root().getTextContent()).contains("no shim");
  }
}
