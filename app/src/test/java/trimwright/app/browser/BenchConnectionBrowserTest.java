package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The Bench over a slow line and over none at all. */
class BenchConnectionBrowserTest extends BenchBrowser {
  /**
   * Counts questions and how many are under way at once, without changing what they do. Bands and
   * limits are asked for whenever the page rests, and are not counted.
   */
  private static final String COUNT_QUESTIONS =
      """
      window.questions = { asked: 0, under: 0, most: 0 };
      const real = window.fetch;
      window.fetch = async (...given) => {
        if (/\\/(bands|envelope)$/.test(String(given[0]))) { return real(...given); }
        questions.asked += 1;
        questions.under += 1;
        questions.most = Math.max(questions.most, questions.under);
        try {
          return await real(...given);
        } finally {
          questions.under -= 1;
        }
      };
      """;

  /** Notes each pitch that is painted, frame by frame. */
  private static final String WATCH =
      """
      window.seen = [];
      window.said = [];
      const look = () => {
        const number = document.querySelector('[data-reading=front] .number').textContent;
        const knob = document.getElementById('slider-mass').value;
        const status = document.getElementById('status').textContent;
        if (seen.at(-1) !== number) { seen.push(number); }
        if (said.at(-1) !== status) { said.push(status); }
        requestAnimationFrame(look);
      };
      look();
      """;

  @AfterEach
  void quickAgain() {
    line(false, 0);
  }

  @Test
  void theSpeedSliderAsksNothingOfTheServer() {
    open();
    for (int i = 0; i < 10; i++) {
      bench.slider("speed").sendKeys(Keys.ARROW_RIGHT);
    }
    bench.awaitDrawn();
    assertThat(bench.number("return questions.asked")).isZero();
  }

  @Test
  void overASlowLineNothingJumpsBackAndThePageSaysThatItIsCatchingUp() {
    open();
    line(false, 100);
    for (int i = 0; i < 15; i++) {
      bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    }
    bench.awaitDrawn();
    List<Double> seen = new ArrayList<>();
    ((List<?>) bench.driver().executeScript("return seen"))
        .forEach(text -> seen.add(Double.parseDouble((String) text)));
    // Every kilogram of rider stands partly on the front foot: a smaller load is an older answer.
    assertThat(seen).hasSizeGreaterThan(2).isSorted();
    assertThat((String) bench.driver().executeScript("return said.join()")).contains("Catching up");
    assertThat(bench.text("#status")).isEmpty();
    assertThat(bench.number("return questions.most")).isEqualTo(1);
    String last = bench.reading("front");
    line(false, 0);
    bench.driver().navigate().refresh();
    bench.awaitDrawn();
    assertThat(bench.reading("front")).as("the newest input's own answer").isEqualTo(last);
  }

  @Test
  void aLostConnectionLosesNoInput() {
    open();
    String before = bench.reading("front");
    line(true, 0);
    for (int i = 0; i < 8; i++) {
      bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    }
    bench.await("return document.getElementById('status').textContent.includes('No connection')");
    String mass = bench.spoken("mass");
    assertThat(bench.reading("front")).isEqualTo(before);
    assertThat(bench.spoken("mass")).isEqualTo(mass);
    line(false, 0);
    bench.awaitDrawn();
    assertThat(bench.spoken("mass")).isEqualTo(mass);
    assertThat(Double.parseDouble(bench.reading("front")))
        .isGreaterThan(Double.parseDouble(before));
    assertThat(bench.text("#status")).isEmpty();
  }

  /** A request that could not be sent is what this test is about. */
  @Override
  boolean isFault(String line) {
    return super.isFault(line) && !line.contains("ERR_INTERNET_DISCONNECTED");
  }

  private static void open() {
    size(BenchOnScreen.SIZES.get(1));
    bench.openFresh("?case=light-carver");
    bench.driver().executeScript(COUNT_QUESTIONS);
    bench.driver().executeScript(WATCH);
  }

  /** The line to the server: gone, or with so much delay [ms]. */
  private static void line(boolean gone, int delay) {
    bench.driver().executeCdpCommand("Network.enable", Map.of());
    bench
        .driver()
        .executeCdpCommand(
            "Network.emulateNetworkConditions",
            Map.of(
                "offline",
                gone,
                "latency",
                delay,
                "downloadThroughput",
                -1,
                "uploadThroughput",
                -1));
  }
}
