package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.kernel.rig.Rider;

class DeckPictureTest {
  /** Coordinates carry two decimals [px]. */
  private static final double ROUNDED = 0.02;

  private static final PictureStyle STYLE = PictureStyle.light(480, 220);

  private static CaseFile withTrack(int millimetres) {
    String text =
        DemoCases.find("light-carver")
            .orElseThrow()
            .text()
            .replace("track_mm: 0", "track_mm: " + millimetres);
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 85, -120})
  void feetAndTrackStandToScaleFromTheMast(int track) {
    CaseFile caseFile = withTrack(track);
    Drawn drawn = Drawn.of(DeckPicture.svg(caseFile, Measures.METRIC, STYLE));
    double scale = Double.parseDouble(drawn.root().getAttribute("data-pixels-per-metre"));
    double mast = Drawn.number(drawn.one("mast-axis"), "x1");
    Rider rider = caseFile.rideCase().rider();
    double[] feet = {rider.backFoot(), rider.frontFoot()};
    for (int i = 0; i < feet.length; i++) {
      Element middle = drawn.kind("foot-middle").get(i);
      assertThat(Drawn.number(middle, "cx") - mast)
          .isCloseTo((feet[i] - track / 1000.0) * scale, within(2 * ROUNDED));
    }
    assertThat(Drawn.number(drawn.one("track-middle"), "x1") - mast)
        .isCloseTo(-track / 1000.0 * scale, within(2 * ROUNDED));
  }

  @Test
  void theBoardIsAsLongAndWideAsItsFigures() {
    Drawn drawn = Drawn.of(DeckPicture.svg(withTrack(0), Measures.METRIC, STYLE));
    double scale = Double.parseDouble(drawn.root().getAttribute("data-pixels-per-metre"));
    var outline = drawn.points("board");
    double length =
        outline.stream().mapToDouble(Dot::x).max().orElseThrow()
            - outline.stream().mapToDouble(Dot::x).min().orElseThrow();
    double width =
        outline.stream().mapToDouble(Dot::y).max().orElseThrow()
            - outline.stream().mapToDouble(Dot::y).min().orElseThrow();
    assertThat(length).isCloseTo(1.38 * scale, within(2 * ROUNDED));
    assertThat(width).isCloseTo(0.56 * scale, within(0.01 * 0.56 * scale));
  }

  @Test
  void distancesAreInTheReadersUnits() {
    assertThat(DeckPicture.svg(withTrack(0), Measures.METRIC, STYLE))
        .contains(">390 mm<")
        .contains(">60 mm<")
        .contains("60 mm behind the mast");
    assertThat(DeckPicture.svg(withTrack(0), Measures.IMPERIAL, STYLE))
        .contains(">15.4 in<")
        .contains(">2.4 in<");
    assertThat(DeckPicture.svg(withTrack(85), Measures.METRIC, STYLE))
        .contains("85 mm forward from the middle of its track");
  }
}
