package trimwright.exchange.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trimwright.exchange.read.Mounting;

class ShimWordsTest {

  @ParameterizedTest
  @CsvSource({
    "0.5, ABOVE, up, front",
    "0.5, BELOW, up, back",
    "-1, ABOVE, down, back",
    "-1, BELOW, down, front"
  })
  void saysWhichEdgeGoesUpAndWhereTheThickEndLies(
      double degrees, Mounting mounting, String edge, String thickEnd) {
    ShimWords words = ShimWords.of(Math.toRadians(degrees), mounting);
    assertThat(words.headline()).contains("leading edge").endsWith("° " + edge + ".");
    assertThat(words.fitting()).contains("thick end goes to the " + thickEnd);
    assertThat(words.warning()).contains("bolts");
    assertThat(String.join(" ", words.sentences())).doesNotContain("+", "-", "\u2212");
  }

  @ParameterizedTest
  @CsvSource({
    "true, ABOVE, front",
    "true, BELOW, back",
    "false, ABOVE, back",
    "false, BELOW, front"
  })
  void aTurnSaysWhereTheAddedWedgeGoesAndMindsTheBolts(boolean up, Mounting mounting, String end) {
    assertThat(String.join(" ", ShimWords.turn(up, mounting)))
        .contains("leading edge " + (up ? "up" : "down"))
        .contains("thick end of the added wedge goes to the " + end)
        .contains("bolts");
  }

  @ParameterizedTest
  @CsvSource({"0, ABOVE", "0.01, BELOW"})
  void noShimIsSaidSo(double degrees, Mounting mounting) {
    assertThat(ShimWords.of(Math.toRadians(degrees), mounting).headline()).isEqualTo("No shim.");
  }
}
