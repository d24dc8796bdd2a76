package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** Limits of the case: shown at rest, as marks, as a turn and in words; gone with the next move. */
class BenchEnvelopeBrowserTest extends BenchBrowser {
  private static final String SHOWN =
      "return document.documentElement.dataset.envelope === 'shown'";

  private static final String MARKS =
      "return [...document.querySelectorAll('.pic-speed-mark')]"
          + ".filter((mark) => mark.checkVisibility()).length";

  /** Pairs of the marks' words that cover each other, and words outside the picture. */
  private static final String COLLISIONS =
      """
      const frame = document.querySelector('#curves-view svg').getBoundingClientRect();
      const labels = [...document.querySelectorAll('#curves-view [data-label=limit]')]
        .filter((label) => label.checkVisibility());
      const boxes = labels.map((label) => label.getBoundingClientRect());
      const words = [];
      boxes.forEach((a, i) => {
        if (a.left < frame.left || a.right > frame.right + 1 || a.bottom > frame.bottom + 1) {
          words.push('outside: ' + labels[i].textContent);
        }
        boxes.slice(i + 1).forEach((b, k) => {
          const sameRow = Math.abs(a.top - b.top) < 5;
          if (sameRow && a.left < b.right && b.left < a.right) {
            words.push(labels[i].textContent + ' on ' + labels[i + 1 + k].textContent);
          }
        });
      });
      return words;
      """;

  /** Moves a slider and tells what is left in the frame that shows the answer to it. */
  private static final String AFTER_A_MOVE =
      """
      const done = arguments[arguments.length - 1];
      const wait = () => {
        const { drawn, asked } = document.documentElement.dataset;
        if (drawn === asked) {
          const marks = [...document.querySelectorAll('.pic-speed-mark')]
            .filter((mark) => mark.checkVisibility()).length;
          done(marks + ' ' + getComputedStyle(document.getElementById('limits-body')).visibility);
        } else {
          requestAnimationFrame(wait);
        }
      };
      const mass = document.getElementById('slider-mass');
      mass.value = Number(mass.value) + Number(mass.step || 1);
      mass.dispatchEvent(new Event('input', { bubbles: true }));
      wait();
      """;

  static List<int[]> sizes() {
    return BenchOnScreen.SIZES;
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void marksComeAtRestAndGoWithTheNextMove(int[] size) {
    size(size);
    for (String name : List.of("light-carver", "nose-up-mismatch", "heavy-beginner")) {
      bench.openFresh("?case=" + name);
      bench.await(SHOWN);
      assertThat(bench.number(MARKS)).as(name).isGreaterThanOrEqualTo(4);
      assertThat((List<?>) bench.driver().executeScript(COLLISIONS)).as(name).isEmpty();
    }
    assertThat(bench.driver().executeAsyncScript(AFTER_A_MOVE)).isEqualTo("0 hidden");
    bench.awaitDrawn();
    bench.await(SHOWN);
    assertThat(bench.number(MARKS)).isPositive();
  }

  @Test
  void aMarksNumberBringsTheUprightLineThere() {
    size(BenchOnScreen.SIZES.get(0));
    bench.openFresh("?case=light-carver");
    bench.await(SHOWN);
    String script =
        "return [...document.querySelectorAll('#mark-rows tr')].find((row) =>"
            + " row.textContent.startsWith('Battery carries farthest')).querySelector('button')";
    String said = (String) bench.driver().executeScript(script + ".getAttribute('aria-label')");
    assertThat(said).contains("km/h");
    double speed =
        Double.parseDouble((String) bench.driver().executeScript(script + ".textContent"));
    bench.driver().executeScript(script + ".focus()");
    bench.press(Keys.ENTER);
    bench.awaitDrawn();
    double shown = Double.parseDouble(bench.text("[data-slider=speed] .number"));
    // The line stands on whole kilometres per hour, and on the wished speed.
    assertThat(shown).isBetween(speed - 0.5, speed + 0.5);
    assertThat(bench.driver().executeScript(SHOWN)).isEqualTo(true);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void theBankMovesByKeysAndByFinger(int[] size) {
    size(size);
    bench.openFresh("?case=light-carver");
    bench.await(SHOWN);
    bench.find("#turn-bank").sendKeys(Keys.HOME);
    assertThat(bench.text("#turn-number")).isEqualTo("0");
    assertThat(bench.find("#turn-less").isEnabled()).isFalse();
    assertThat(spokenBank()).contains("bank 0°, straight ahead");
    String level = tip();
    bench.click("#turn-more");
    bench.click("#turn-more");
    assertThat(bench.text("#turn-number")).isEqualTo("10");
    assertThat(spokenBank()).contains("bank 10°, radius", "load 1.0", "higher tip");
    assertThat(tip()).isNotEqualTo(level);
    bench.find("#turn-bank").sendKeys(Keys.END);
    assertThat(bench.find("#turn-more").isEnabled()).isFalse();
    assertThat(bench.text("#turn-verdict")).isNotBlank();
    assertThat(bench.text("#limit-notes")).contains("Take-off", "Loads", "no published source");
  }

  private static String spokenBank() {
    return bench.find("#turn-bank").getDomAttribute("aria-valuetext");
  }

  private static String tip() {
    return bench.find("#turn-view .pic-tip").getDomAttribute("cy");
  }
}
