package trimwright.app.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/**
 * Draws the pages for the documents at three widths in three themes. {@code
 * docs/pictures/README.md} says how to run it.
 */
final class PagePictures {
  private static final List<Integer> WIDTHS = List.of(390, 820, 1280);
  private static final List<String> THEMES = List.of("light", "dark", "sun");
  private static final int FIRST_HEIGHT = 800;

  private PagePictures() {}

  /**
   * Writes the pictures.
   *
   * @param args the folder to write to
   * @throws IOException if a picture cannot be written
   */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    try (RunningShop shop = ShopApplication.start(0);
        Browser browser = Browser.start()) {
      for (int width : WIDTHS) {
        for (String theme : THEMES) {
          draw(browser, shop.address() + "?theme=" + theme, folder, "start", width, theme);
          draw(
              browser,
              shop.address() + "?case=nose-up-mismatch&speed=20&theme=" + theme,
              folder,
              "case",
              width,
              theme);
        }
      }
    }
  }

  private static void draw(
      Browser browser, String address, Path folder, String name, int width, String theme)
      throws IOException {
    browser.setSize(width, FIRST_HEIGHT);
    browser.driver().get(address);
    Number height =
        (Number) browser.driver().executeScript("return document.documentElement.scrollHeight");
    browser.setSize(width, Math.max(FIRST_HEIGHT, height.intValue()));
    Map<String, Object> shot =
        browser.driver().executeCdpCommand("Page.captureScreenshot", Map.of("format", "png"));
    SmallPng.write(
        Base64.getDecoder().decode((String) shot.get("data")),
        folder.resolve(name + "-" + width + "-" + theme + ".png"));
  }
}
