package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/**
 * The strip that plays "what if", with made-up answers in the server's place: a picture and traces
 * of one moment, moved by hand or by the clock.
 */
class BenchPlayBrowserTest extends BenchBrowser {
  static final String SHOWN = "return document.documentElement.dataset.play === 'shown'";

  static final List<String> PLAYS =
      List.of(
          "foot_forward",
          "lean_forward",
          "lean_back",
          "throttle_up",
          "throttle_cut",
          "gust",
          "chop",
          "touchdown",
          "nose_drop",
          "breach");

  /** Times that a drag may be begun: the driver now and then drops one. */
  private static final int HOLDS = 4;

  /** Times are written with three decimals. */
  private static final double WRITTEN_S = 0.0006;

  /** Places are written with two decimals, a path's and a dot's alike [px]. */
  private static final double WRITTEN_PX = 0.05;

  static List<int[]> sizes() {
    return BenchOnScreen.SIZES;
  }

  /** Opens the strip over a case, with made-up answers. */
  private static void open(String query) {
    bench.openFresh(query);
    bench.driver().executeScript(stub());
    bench.unfold("#what-if-toggle");
    bench.await(SHOWN);
    stop();
  }

  /** Puts made-up answers in the server's place. */
  static String stub() {
    try (InputStream in = BenchPlayBrowserTest.class.getResourceAsStream("motion-stub.js")) {
      return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  /** Stands still at the beginning. */
  private static void stop() {
    handle().sendKeys(Keys.HOME);
    assertThat(shownS()).isZero();
  }

  private static void choose(String play) {
    bench.choose("play", play);
    bench.await(SHOWN);
  }

  private static WebElement handle() {
    return bench.find(".time-handle");
  }

  /** The moment that picture and traces show; they agree or it is a fault [s]. */
  private static double shownS() {
    String script =
        "return ['play', 'traces'].map((id) =>"
            + " document.querySelector(`#${id}-view svg`).dataset.time)";
    List<?> both = (List<?>) bench.driver().executeScript(script);
    assertThat(both.get(0)).isEqualTo(both.get(1));
    return Double.parseDouble((String) both.get(0));
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void eachPlayHasAPictureAndTraces(int[] size) {
    size(size);
    open("?case=light-carver");
    for (String play : PLAYS) {
      choose(play);
      stop();
      handle().sendKeys(Keys.PAGE_UP);
      assertThat(bench.number("return document.querySelectorAll('.pic-trace').length"))
          .as(play)
          .isEqualTo(6);
      String html =
          (String)
              bench
                  .driver()
                  .executeScript("return document.getElementById('play-result').innerHTML");
      assertThat(html).as(play).doesNotContain("NaN", "undefined", "Infinity");
      assertThat(bench.text("#play-words")).as(play).isNotBlank();
      assertThat(bench.find("#play-view .pic-craft").isDisplayed()).as(play).isTrue();
    }
  }

  @Test
  void nothingIsAskedForWhileTheStripIsClosed() {
    size(BenchOnScreen.SIZES.get(1));
    bench.openFresh("?case=light-carver");
    bench
        .driver()
        .executeScript(
            stub()
                + "; window.motions = 0; const before = window.fetch; window.fetch = (...given) => {"
                + " motions += String(given[0]).endsWith('motion'); return before(...given); };");
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.await("return document.documentElement.dataset.envelope === 'shown'");
    assertThat(bench.number("return motions")).isZero();
    bench.unfold("#what-if-toggle");
    bench.await(SHOWN);
    assertThat(bench.number("return motions")).isEqualTo(1);
    bench.click("#what-if-toggle");
    bench.slider("speed").sendKeys(Keys.ARROW_RIGHT);
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.await("return document.documentElement.dataset.envelope === 'shown'");
    assertThat(bench.number("return motions")).isEqualTo(1);
  }

  @Test
  void keysMoveTheMomentByTheirSteps() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    assertThat(handle().getDomAttribute("role")).isEqualTo("slider");
    assertThat(afterKey(Keys.ARROW_RIGHT)).isCloseTo(0.02, within(WRITTEN_S));
    assertThat(afterKey(Keys.PAGE_UP)).isCloseTo(0.22, within(WRITTEN_S));
    assertThat(afterKey(Keys.ARROW_DOWN)).isCloseTo(0.2, within(WRITTEN_S));
    assertThat(afterKey(Keys.PAGE_DOWN)).isZero();
    assertThat(afterKey(Keys.END)).isCloseTo(3, within(WRITTEN_S));
    assertThat(handle().getDomAttribute("aria-valuenow"))
        .isEqualTo(handle().getDomAttribute("aria-valuemax"));
    assertThat(handle().getDomAttribute("aria-valuetext"))
        .contains("3.00 seconds", "nose-up", "over water", "under water", "km/h");
    bench.click("#play-back");
    assertThat(shownS()).isCloseTo(2.9, within(WRITTEN_S));
  }

  private static double afterKey(Keys key) {
    handle().sendKeys(key);
    return shownS();
  }

  @Test
  void aPointerDragsTheMoment() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    WebElement handle = handle();
    bench.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", handle);
    int width = handle.getSize().width;
    Actions hand = new Actions(bench.driver());
    boolean dragged = false;
    for (int hold = 0; hold < HOLDS && !dragged; hold++) {
      hand.release().moveToElement(handle).clickAndHold().moveByOffset(width / 4, 3).perform();
      dragged = Math.abs(shownS() - 2.25) < 0.02;
    }
    assertThat(dragged).isTrue();
    hand.release().moveByOffset(-width / 4, 0).perform();
    assertThat(shownS()).isCloseTo(2.25, within(0.02));
  }

  @Test
  void theDotsLieOnTheirTracesAndThePictureIsInTheSamePose() {
    size(BenchOnScreen.SIZES.get(2));
    open("?case=light-carver");
    handle().sendKeys(Keys.PAGE_UP, Keys.PAGE_UP, Keys.PAGE_UP);
    assertThat(
            bench.number(
                """
                const svg = document.querySelector('#traces-view svg');
                const x = Number(svg.querySelector('.pic-mark').getAttribute('x1'));
                const dots = [...svg.querySelectorAll('circle')];
                const traces = [...svg.querySelectorAll('.pic-trace')];
                return Math.max(...traces.map((trace, i) => {
                  const at = trace.getAttribute('d').slice(1).split('L')
                    .map((pair) => pair.split(' ').map(Number))
                    .find((pair) => Math.abs(pair[0] - x) < 0.1);
                  const away = Math.abs(dots[i].getAttribute('cx') - x);
                  return Math.max(away, Math.abs(dots[i].getAttribute('cy') - at[1]));
                }));
                """))
        .isLessThan(WRITTEN_PX);
    double pitch = Double.parseDouble(bench.find("#play-view svg").getDomAttribute("data-pitch"));
    String said = bench.text("#traces-view [data-label='value deck_pitch_deg']");
    assertThat(Double.parseDouble(said.replace("°", "").replace('\u2212', '-')))
        .isCloseTo(pitch, within(0.051));
    assertThat(bench.find("#play-view .pic-craft").getDomAttribute("transform"))
        .endsWith("rotate(" + Math.round(-pitch * 1000) / 1000.0 + ")");
  }

  @Test
  void theClockPlaysToTheEndAndStops() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    String name = "#play-word";
    assertThat(bench.text(name)).isEqualTo("Play");
    bench.click("#play-toggle");
    bench.await("return document.querySelector('#play-view svg').dataset.time === '3.000'");
    bench.await("return document.getElementById('play-word').textContent === 'Play'");
    bench.choose("play-rate", "0.25");
    bench.click("#play-toggle");
    bench.await("return document.querySelector('#play-view svg').dataset.time > 0.1");
    bench.click("#play-toggle");
    double stopped = shownS();
    assertThat(stopped).isLessThan(3);
    assertThat(bench.text(name)).isEqualTo("Play");
    // Twenty frames on nothing has moved.
    bench
        .driver()
        .executeAsyncScript(
            "const done = arguments[0]; let left = 20; const frame = () =>"
                + " (left-- ? requestAnimationFrame(frame) : done()); frame();");
    assertThat(shownS()).isEqualTo(stopped);
  }

  @Test
  void aChosenPlayStartsByItself() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    choose("nose_drop");
    bench.await("return document.querySelector('#play-view svg').dataset.time === '1.240'");
    assertThat(bench.text("#play-marks")).contains("0.90 s", "The bow touches the water.");
    bench.click("#play-marks button");
    assertThat(shownS()).isCloseTo(0.9, within(WRITTEN_S));
  }

  @Test
  void aPlayThatIsOverAtOnceStartsAtQuarterSpeedUnlessAPersonChose() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    choose("throttle_up");
    assertThat(rate()).isEqualTo("0.25");
    choose("gust");
    assertThat(rate()).isEqualTo("1");
    bench.choose("play-rate", "0.25");
    bench.choose("play-rate", "1");
    choose("throttle_up");
    assertThat(rate()).isEqualTo("1");
  }

  private static String rate() {
    return bench.find("input[name=play-rate]:checked").getDomAttribute("value");
  }

  @ParameterizedTest
  @CsvSource({"speed", "mass"})
  void aPlayGoesWithWhatItBelongsTo(String slider) {
    size(BenchOnScreen.SIZES.get(2));
    open("?case=light-carver");
    handle().sendKeys(Keys.PAGE_UP);
    bench.slider(slider).sendKeys(Keys.ARROW_LEFT);
    assertThat(
            bench
                .driver()
                .executeScript(
                    "return getComputedStyle(document.getElementById('play-shown')).visibility"))
        .isEqualTo("hidden");
    bench.awaitDrawn();
    bench.await(SHOWN);
    assertThat(shownS()).as("no play of its own accord").isCloseTo(0.2, within(WRITTEN_S));
  }

  @Test
  void withoutATrimThereAreOnlyWords() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    bench
        .driver()
        .executeScript(
            "window.motionAnswer = {outcome: 'no_trim', words: ['Too slow to fly at this speed.']}");
    choose("gust");
    assertThat(bench.find("#play-shown").isDisplayed()).isFalse();
    assertThat(bench.text("#play-words")).isEqualTo("Too slow to fly at this speed.");
    bench.driver().executeScript("window.motionAnswer = null");
    choose("chop");
    assertThat(bench.find("#play-shown").isDisplayed()).isTrue();
    assertThat(bench.find("#play-view .pic-waves").isDisplayed()).isTrue();
  }

  @Test
  void theShownMomentIsSavedAsAPictureThatStandsAlone() {
    size(BenchOnScreen.SIZES.get(1));
    open("?case=light-carver");
    handle().sendKeys(Keys.PAGE_UP);
    for (String id : List.of("play", "traces")) {
      String text =
          (String)
              bench
                  .driver()
                  .executeAsyncScript(
                      "const done = arguments[1]; import('/bench/save-picture.js').then((m) => done("
                          + "m.pictureText(document.querySelector(`#${arguments[0]}-view svg`))))",
                      id);
      assertThat(text)
          .startsWith("<?xml")
          .contains("Lean 1 cm forward", "0.20 s")
          .doesNotContain("var(", "class=", "style=", "url(", "NaN", "undefined");
    }
  }
}
