package trimwright.exchange.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import trimwright.exchange.unit.Measures;
import trimwright.exchange.write.Samples;
import trimwright.kernel.trim.Curve;

class SpeedRulerTest {
  /** Coordinates carry two decimals [px]. */
  private static final double ROUNDED = 0.02;

  private static final PictureStyle STYLE = new PictureStyle(Palette.LIGHT, 740, 58, "2", 11, "");

  @Test
  void everyMarkStandsAtItsSpeedAndNoWordsTouch() {
    Curve curve = Samples.curve();
    Drawn drawn =
        Drawn.of(
            SpeedRuler.svg(Samples.caseFile(), curve, 20 * Samples.KMH, Measures.METRIC, STYLE));
    List<Double> marks = drawn.kind("mark").stream().map(mark -> Drawn.number(mark, "x1")).toList();
    double first = curve.outcomes().get(0).speed();
    double last = curve.outcomes().get(curve.outcomes().size() - 1).speed();
    double at = 16 + (20 * Samples.KMH - first) / (last - first) * (740 - 32);
    assertThat(marks).anySatisfy(x -> assertThat(x).isCloseTo(at, within(ROUNDED)));
    assertThat(drawn.root().getTextContent()).contains("this sheet 20.0").contains("you wish");

    List<Box> boxes = new ArrayList<>();
    for (Element words : drawn.kind("words")) {
      double wide = TextSize.width(words.getTextContent(), 11);
      double x = Drawn.number(words, "x");
      double left =
          switch (words.getAttribute("text-anchor")) {
            case "end" -> x - wide;
            case "middle" -> x - wide / 2;
            default -> x;
          };
      Box box = new Box(left, Drawn.number(words, "y") - 9, wide, 9);
      assertThat(boxes).noneMatch(box::overlaps);
      boxes.add(box);
    }
  }

  @Test
  void marksAtOneSpeedAllHaveTheirWords() {
    Drawn drawn =
        Drawn.of(
            SpeedRuler.svg(
                Samples.caseFile(),
                Samples.curve(),
                Samples.caseFile().rideCase().rider().wishedSpeed(),
                Measures.IMPERIAL,
                STYLE));
    assertThat(drawn.root().getTextContent())
        .contains("you wish")
        .doesNotContain("this sheet")
        .contains("mph");
  }
}
