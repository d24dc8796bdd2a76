package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** How sure the numbers are: shown at rest, never beside numbers of another case. */
class BenchBandsBrowserTest extends BenchBrowser {
  private static final String SHOWN = "return document.documentElement.dataset.bands === 'shown'";

  /** What is drawn of bands now. */
  private static final String AREAS =
      "return [...document.querySelectorAll('.pic-band')].filter((b) => b.checkVisibility()"
          + " && b.getAttribute('points')).length";

  private static final String CURVES =
      "return [...document.querySelectorAll('.pic-curve')].map((c) => c.getAttribute('d')).join()";

  static List<int[]> sizes() {
    return BenchOnScreen.SIZES;
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void theyComeAtRestAndGoWithTheNextMove(int[] size) {
    size(size);
    bench.openFresh("?case=light-carver");
    bench.await(SHOWN);
    assertThat(bench.number(AREAS)).isPositive();
    assertThat(bench.text("[data-reading=pitch] .remark")).matches("±\\d\\.\\d°");
    assertThat(bench.text("[data-reading=front] .remark")).matches("\\d+ ±\\d+\u00a0%");
    assertThat(bench.text("[data-reading=power] .remark")).startsWith("±");
    assertThat(bench.text("[data-reading=level] .remark")).matches("±\\d+\\.\\d\u00a0km/h");
    assertThat(bench.text("#verdict-second")).contains("±");
    assertThat(bench.text("#sure-words")).contains("The pitch is sure to ±");

    // The answer to the next move has none, until it too has come to rest.
    String gone =
        """
        const done = arguments[arguments.length - 1];
        const wait = () => {
          const { drawn, asked } = document.documentElement.dataset;
          if (drawn === asked) {
            done(document.documentElement.dataset.bands + ' '
              + document.querySelector('[data-reading=pitch] .remark').textContent + ' '
              + getComputedStyle(document.getElementById('sure-words')).visibility + ' '
              + [...document.querySelectorAll('.pic-band')].filter((b) => b.checkVisibility()
                && b.getAttribute('points')).length);
          } else {
            requestAnimationFrame(wait);
          }
        };
        const mass = document.getElementById('slider-mass');
        mass.value = Number(mass.value) + Number(mass.step || 1);
        mass.dispatchEvent(new Event('input', { bubbles: true }));
        wait();
        """;
    assertThat(bench.driver().executeAsyncScript(gone)).isEqualTo("undefined  hidden 0");
    bench.await(SHOWN);
    assertThat(bench.number(AREAS)).isPositive();
  }

  @Test
  void theirComingMovesNoLine() {
    size(BenchOnScreen.SIZES.get(1));
    bench.openFresh("?case=light-carver");
    bench.await(SHOWN);
    String before = (String) bench.driver().executeScript(CURVES);
    bench.slider("track").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    String moved = (String) bench.driver().executeScript(CURVES);
    bench.await(SHOWN);
    assertThat(bench.driver().executeScript(CURVES)).isEqualTo(moved).isNotEqualTo(before);
  }

  @Test
  void alongTheCurveTheyStay() {
    size(BenchOnScreen.SIZES.get(2));
    bench.openFresh("?case=light-carver");
    bench.await(SHOWN);
    String here = bench.text("[data-reading=front] .remark");
    for (int i = 0; i < 5; i++) {
      bench.slider("speed").sendKeys(Keys.ARROW_RIGHT);
    }
    bench.awaitDrawn();
    assertThat(bench.text("[data-reading=front] .remark")).contains("±").isNotEqualTo(here);
    assertThat(bench.driver().executeScript(SHOWN)).isEqualTo(true);
  }

  @Test
  void aPinnedReferenceIsToldApartOrNot() {
    size(BenchOnScreen.SIZES.get(2));
    bench.openFresh("?case=light-carver");
    bench.click("#keep");
    bench.slider("wedge").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.await(SHOWN);
    assertThat(bench.text("#sure-words")).contains("in the pinned reference, sure to ±");
    bench.remove("A");
    assertThat(bench.text("#sure-words")).doesNotContain("pinned");
  }
}
