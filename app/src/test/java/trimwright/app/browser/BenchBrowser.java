package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/** A running shop and a browser before it, for one class of tests. */
abstract class BenchBrowser {
  private static RunningShop shop;
  private static Browser browser;

  /** The page under test. */
  static BenchOnScreen bench;

  @BeforeAll
  static void openShop(@TempDir Path folder) {
    shop = ShopApplication.start(0, folder);
    browser = Browser.start();
    bench = new BenchOnScreen(browser, shop.address());
  }

  @AfterAll
  static void closeShop() {
    if (browser != null) {
      browser.close();
    }
    if (shop != null) {
      shop.close();
    }
  }

  /** Breaches of the page's own policy and errors of its scripts end up there. */
  @AfterEach
  void nothingWasComplainedOf() {
    assertThat(browser.complaints()).filteredOn(this::isFault).isEmpty();
  }

  /** Whether a line of the browser's log is a fault: an answer that says no is none. */
  boolean isFault(String line) {
    return !line.contains("status of 4");
  }

  static void size(int[] size) {
    browser.setSize(size[0], size[1]);
  }
}
