package trimwright.app.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.By;
import trimwright.exchange.demo.DemoCases;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/**
 * Draws the pages for the documents at three widths in three themes. Its name keeps it out of the
 * ordinary test run; {@code docs/pictures/README.md} says how to run it.
 */
class PagePictures {
  private static final List<Integer> WIDTHS = List.of(390, 820, 1280);
  private static final List<String> THEMES = List.of("light", "dark", "sun");
  private static final int MIDDLE = 820;
  private static final String CASE = "?case=nose-up-mismatch&speed=20&theme=";
  private static final int FIRST_HEIGHT = 800;

  @Test
  void drawAll() throws IOException {
    Path folder = Files.createDirectories(Path.of("..", "docs", "pictures"));
    try (RunningShop shop = ShopApplication.start(0, folder.resolve("no-shop"));
        Browser browser = Browser.start()) {
      for (int width : WIDTHS) {
        for (String theme : THEMES) {
          Path file = folder.resolve("case-" + width + "-" + theme + ".png");
          open(browser, width, shop.address() + CASE + theme);
          draw(browser, width, file);
        }
      }
      for (String theme : THEMES) {
        open(browser, MIDDLE, shop.address() + "?theme=" + theme);
        draw(browser, MIDDLE, folder.resolve("start-" + MIDDLE + "-" + theme + ".png"));
      }
      for (int width : List.of(WIDTHS.get(0), WIDTHS.get(2))) {
        open(browser, width, shop.address() + "?theme=light");
        draw(browser, width, folder.resolve("start-" + width + "-light.png"));
      }
      open(browser, MIDDLE, shop.address() + "?theme=light");
      handInBadFile(browser);
      draw(browser, MIDDLE, folder.resolve("refused-" + MIDDLE + "-light.png"));
    }
  }

  private static void handInBadFile(Browser browser) throws IOException {
    String good = DemoCases.find("light-carver").orElseThrow().text();
    Path file = Files.createTempDirectory("trimwright-pictures-").resolve("my-case.yaml");
    try {
      Files.writeString(
          file,
          good.replaceAll("salinity_g_kg: *[0-9.]+", "salinity_g_kg: 80")
              .replaceAll("mass_kg: 58", "mass_kg: -3"));
      browser.driver().findElement(By.id("file")).sendKeys(file.toString());
      browser.driver().findElement(By.cssSelector("#hand-in button")).click();
      browser.driver().findElement(By.className("problem-list"));
    } finally {
      Files.deleteIfExists(file);
      Files.delete(file.getParent());
    }
  }

  private static void open(Browser browser, int width, String address) {
    browser.setSize(width, FIRST_HEIGHT);
    browser.driver().get(address);
  }

  /** The whole page, however long it is. */
  private static void draw(Browser browser, int width, Path file) throws IOException {
    Number height =
        (Number) browser.driver().executeScript("return document.documentElement.scrollHeight");
    browser.setSize(width, Math.max(FIRST_HEIGHT, height.intValue()));
    Map<String, Object> shot =
        browser.driver().executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
    SmallPng.write(Base64.getDecoder().decode((String) shot.get("data")), file);
  }
}
