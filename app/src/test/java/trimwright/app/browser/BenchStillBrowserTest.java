package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/** For who asked the browser for less motion nothing moves by itself, and all of it by hand. */
class BenchStillBrowserTest {
  /** Counts the frames that the page asks for. */
  private static final String COUNT_FRAMES =
      """
      window.framesAsked = 0;
      const real = window.requestAnimationFrame;
      window.requestAnimationFrame = (step) => {
        framesAsked += 1;
        return real(step);
      };
      """;

  @Test
  void aPlayWaitsForTheHand(@TempDir Path folder) {
    try (RunningShop shop = ShopApplication.start(0, folder);
        Browser browser = Browser.start("--force-prefers-reduced-motion")) {
      browser.setSize(820, 1180);
      BenchOnScreen bench = new BenchOnScreen(browser, shop.address());
      bench.openFresh("?case=light-carver");
      bench.driver().executeScript(BenchPlayBrowserTest.stub());
      bench.driver().executeScript(COUNT_FRAMES);
      bench.unfold("#what-if-toggle");
      bench.await(BenchPlayBrowserTest.SHOWN);
      bench.choose("play", "lean_back");
      bench.await(BenchPlayBrowserTest.SHOWN);
      assertThat(shown(bench)).isEqualTo("0.000");
      assertThat(bench.number("return framesAsked")).isZero();
      bench.find(".time-handle").sendKeys(Keys.PAGE_UP);
      assertThat(shown(bench)).isEqualTo("0.200");
      assertThat(bench.number("return framesAsked")).isZero();
      bench.click("#play-toggle");
      bench.await("return document.querySelector('#play-view svg').dataset.time > 0.3");
      assertThat(bench.number("return framesAsked")).isPositive();
    }
  }

  private static String shown(BenchOnScreen bench) {
    return bench.find("#play-view svg").getDomAttribute("data-time");
  }
}
