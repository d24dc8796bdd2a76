package trimwright.app.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/**
 * Draws the Bench and the match for the documents at three widths in three themes. Its name keeps
 * it out of the ordinary test run; {@code docs/pictures/README.md} says how to run it.
 */
class PagePictures {
  private static final String CASE = "?case=nose-up-mismatch&theme=";
  private static final int[] PHONE = BenchOnScreen.SIZES.get(0);
  private static final int[] TABLET = BenchOnScreen.SIZES.get(1);
  private static final int[] DESK = BenchOnScreen.SIZES.get(2);
  private static final Duration LONGEST_LOOK = Duration.ofMinutes(15);
  private final Path folder = Path.of("..", "docs", "pictures");

  @Test
  void drawAll(@TempDir Path shopFolder) throws IOException {
    Files.createDirectories(folder);
    try (RunningShop shop = ShopApplication.start(0, shopFolder);
        Browser browser = Browser.start()) {
      BenchOnScreen bench = new BenchOnScreen(browser, shop.address());
      for (int[] size : BenchOnScreen.SIZES) {
        for (String theme : BenchOnScreen.THEMES) {
          open(bench, size, theme);
          draw(bench, "bench-" + size[0] + "-" + theme);
          bench.driver().executeScript("document.getElementById('limits').scrollIntoView()");
          draw(bench, "limits-" + size[0] + "-" + theme);
          play(bench);
          draw(bench, "play-" + size[0] + "-" + theme);
        }
      }
      open(bench, PHONE, "light");
      bench.driver().executeScript("window.scrollTo(0, 700)");
      draw(bench, "bench-390-light-below");
      for (int[] size : BenchOnScreen.SIZES) {
        for (String theme : BenchOnScreen.THEMES) {
          open(bench, size, theme);
          keep(bench);
          draw(bench, "kept-" + size[0] + "-" + theme);
        }
      }
      open(bench, TABLET, "light");
      bench.choose("measures", "imperial");
      bench.awaitDrawn();
      awaitRest(bench);
      bench.driver().executeScript("window.scrollTo(0, 0)");
      draw(bench, "imperial-820-light");
      open(bench, DESK, "dark");
      bench.click("[data-group='setup.front_wing'] > summary");
      WebElement area = bench.find("#field-setup-front_wing-area_cm2");
      area.sendKeys(Keys.chord(Keys.CONTROL, "a"), "4000");
      draw(bench, "wrong-1280-dark");
      open(bench, TABLET, "sun");
      bench.click("#sheet");
      draw(bench, "print-820-sun");
    }
  }

  private static void open(BenchOnScreen bench, int[] size, String theme) {
    bench.browser().setSize(size[0], size[1]);
    bench.openFresh(CASE + theme);
    awaitRest(bench);
  }

  /** Keeps three setups beside the sliders, and brings their table onto the screen. */
  private static void keep(BenchOnScreen bench) {
    bench.click("#keep");
    bench.slider("shim").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.click("#keep");
    bench.slider("wedge").sendKeys(Keys.ARROW_LEFT, Keys.ARROW_LEFT, Keys.ARROW_LEFT);
    bench.awaitDrawn();
    bench.click("#keep");
    bench.slider("track").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.driver().executeScript("document.getElementById('kept-fold').open = true");
    awaitRest(bench);
    bench.await("return document.querySelectorAll('#kept-heads th').length === 5");
    bench.await("return document.documentElement.dataset.apart === 'shown'");
    bench
        .driver()
        .executeScript(
            "document.activeElement.blur(); document.querySelector('.curves').scrollIntoView()");
  }

  /** The match over the made-up stock: its tables take some minutes the first time. */
  @Test
  void drawTheMatch(@TempDir Path shopFolder) throws IOException {
    Files.createDirectories(folder);
    try (RunningShop shop = ShopApplication.start(0, shopFolder);
        Browser browser = Browser.start()) {
      match(new BenchOnScreen(browser, shop.address()));
    }
  }

  private void match(BenchOnScreen bench) throws IOException {
    bench.browser().setSize(DESK[0], DESK[1]);
    bench.openFresh("match?case=light-carver");
    bench.click("#look");
    new WebDriverWait(bench.driver(), LONGEST_LOOK)
        .until(
            d ->
                "shown"
                    .equals(
                        bench
                            .driver()
                            .executeScript("return document.documentElement.dataset.match")));
    for (int[] size : BenchOnScreen.SIZES) {
      bench.browser().setSize(size[0], size[1]);
      for (String theme : BenchOnScreen.THEMES) {
        bench.choose("theme", theme);
        for (String part : List.of("result", "front")) {
          bench
              .driver()
              .executeScript(
                  "document.activeElement.blur(); window.scrollTo(0, 0);"
                      + " if (arguments[0] === 'front' || innerWidth < 1200)"
                      + " document.getElementById(arguments[0]).scrollIntoView({behavior: 'instant'})",
                  part);
          String name = part.equals("result") ? "match-" : "trade-off-";
          draw(bench, name + size[0] + "-" + theme);
        }
      }
    }
  }

  /** Opens the strip that plays what if, a moment after the throttle was let go. */
  private static void play(BenchOnScreen bench) {
    bench.unfold("#what-if-toggle");
    bench.choose("play", "throttle_cut");
    bench.await(BenchPlayBrowserTest.SHOWN);
    bench.find(".time-handle").sendKeys(Keys.HOME, Keys.PAGE_UP, Keys.PAGE_UP, Keys.PAGE_UP);
    bench
        .driver()
        .executeScript(
            "document.activeElement.blur();"
                + " document.getElementById('what-if').scrollIntoView({behavior: 'instant'})");
  }

  /** Waits for what comes once nothing moves: bands and limits. */
  private static void awaitRest(BenchOnScreen bench) {
    bench.await(
        "const { bands, envelope } = document.documentElement.dataset;"
            + " return bands === 'shown' && envelope === 'shown'");
  }

  /** What stands on the screen, without the parts further down. */
  private void draw(BenchOnScreen bench, String name) throws IOException {
    bench.awaitDrawn();
    Map<String, Object> shot =
        bench.driver().executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
    SmallPng.write(
        Base64.getDecoder().decode((String) shot.get("data")), folder.resolve(name + ".png"));
  }
}
