package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The strip that plays "what if", as the program itself answers it. */
class BenchMotionBrowserTest extends BenchBrowser {
  /** Keeps the last answer and its question where a test can read them. */
  private static final String KEEP_ANSWER =
      """
      const real = window.fetch;
      window.fetch = async (...given) => {
        const answer = await real(...given);
        if (String(given[0]).endsWith('/bench/motion')) {
          const text = await answer.clone().text();
          window.motionAsked = JSON.parse(given[1].body);
          window.motionSaid = JSON.parse(text);
        }
        return answer;
      };
      """;

  /** Numbers of the answer that each moment has. */
  private static final String RAGGED =
      """
      const { motionSaid: said } = window;
      const series = ['deck_pitch_deg', 'speed_kmh_at', 'immersion_mm',
        'foot_pressure_ahead_of_mast_mm', 'thrust_n', 'body_ahead_mm', 'bow_clearance_mm',
        'water_mm'];
      return series.filter((name) => said[name].length !== said.times_s.length
        || !said[name].every(Number.isFinite));
      """;

  /** The largest gap between the drawn water at the mast and the computed one [mm]. */
  private static final String WAVE_GAP =
      """
      const done = arguments[0];
      (async () => {
        const { componentsOf, waterAt } = await import('/bench/play-water.js');
        const { createPlay } = await import('/bench/play.js');
        const said = window.motionSaid;
        const waves = componentsOf(said.waves);
        const play = createPlay(said);
        done(Math.max(...said.times_s.map((s, i) => (
          Math.abs(1000 * waterAt(waves, play.at(s).travelled, s) - said.water_mm[i])))));
      })();
      """;

  /** The speeds' last digits and the way between two moments add up to little [mm]. */
  private static final double WAVES_AGREE = 5;

  @BeforeEach
  void open() {
    size(BenchOnScreen.SIZES.get(1));
    bench.openFresh("?case=light-carver");
    bench.driver().executeScript(KEEP_ANSWER);
    bench.unfold("#what-if-toggle");
    bench.await(BenchPlayBrowserTest.SHOWN);
  }

  @Test
  void everyPlayIsAnsweredAndDrawn() {
    for (String play : BenchPlayBrowserTest.PLAYS) {
      bench.choose("play", play);
      bench.await(BenchPlayBrowserTest.SHOWN);
      Map<?, ?> asked = (Map<?, ?>) bench.driver().executeScript("return window.motionAsked");
      assertThat(asked.get("play")).isEqualTo(play);
      assertThat(bench.text("#play-words")).as(play).isNotBlank();
      assertThat(bench.driver().executeScript("return window.motionSaid.outcome"))
          .as(play)
          .isEqualTo("played");
      assertThat((List<?>) bench.driver().executeScript(RAGGED)).as(play).isEmpty();
      bench.find(".time-handle").sendKeys(Keys.END);
      assertThat(
              (String)
                  bench
                      .driver()
                      .executeScript("return document.getElementById('play-result').innerHTML"))
          .as(play)
          .doesNotContain("NaN", "undefined", "Infinity");
      assertThat(
              bench.number(
                  "return [...document.querySelectorAll('.pic-trace')]"
                      + ".filter((path) => path.getAttribute('d').includes('L')).length"))
          .as(play)
          .isEqualTo(6);
    }
  }

  @Test
  void thePlayBeginsInThePoseOfTheSideView() {
    bench.find(".time-handle").sendKeys(Keys.HOME);
    double shown = Double.parseDouble(bench.find("#play-view svg").getDomAttribute("data-pitch"));
    String side = bench.find("#side-view .pic-craft").getDomAttribute("transform");
    double trimmed = -Double.parseDouble(side.replaceAll(".*rotate\\(|\\)", ""));
    assertThat(shown).isCloseTo(trimmed, within(0.1));
  }

  @Test
  void theCraftRidesThroughTheWavesThatWereComputed() {
    bench.choose("play", "chop");
    bench.await(BenchPlayBrowserTest.SHOWN);
    assertThat(bench.find("#play-view .pic-waves").isDisplayed()).isTrue();
    double gap = ((Number) bench.driver().executeAsyncScript(WAVE_GAP)).doubleValue();
    assertThat(gap).isLessThan(WAVES_AGREE);
  }

  @Test
  void anotherSpeedIsAskedForAnew() {
    bench.slider("speed").sendKeys(Keys.ARROW_LEFT);
    bench.awaitDrawn();
    bench.await(BenchPlayBrowserTest.SHOWN);
    String speed = bench.text("[data-slider=speed] .number");
    Map<?, ?> asked = (Map<?, ?>) bench.driver().executeScript("return window.motionAsked");
    assertThat(((Number) asked.get("speed_kmh")).doubleValue())
        .isCloseTo(Double.parseDouble(speed), within(0.51));
  }
}
