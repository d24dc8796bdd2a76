package trimwright.app.browser;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.net.URI;
import java.time.Duration;
import java.util.List;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.WebDriverWait;

/** The Bench as a person's eyes and hands meet it, for the tests that drive it. */
final class BenchOnScreen {
  /** A phone, a tablet and a desk: widths and heights [px]. */
  static final List<int[]> SIZES =
      List.of(new int[] {390, 844}, new int[] {820, 1180}, new int[] {1280, 800});

  static final List<String> THEMES = List.of("light", "dark", "sun");

  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final int MOST_TABS = 250;

  private final Browser browser;
  private final URI address;

  BenchOnScreen(Browser browser, URI address) {
    this.browser = browser;
    this.address = address;
  }

  /** Opens a made-up case as somebody who has never been here. */
  void openFresh(String query) {
    driver().get(address + "no-such-page");
    driver().executeScript("sessionStorage.clear(); localStorage.clear()");
    open(query);
  }

  /** Opens a page with whatever the browser remembers. */
  void open(String query) {
    driver().get(address + query);
    awaitDrawn();
  }

  /** Waits until the page can be used and shows the answer to everything that was done. */
  void awaitDrawn() {
    await("return 'ready' in document.documentElement.dataset" + " && " + IS_DRAWN);
  }

  private static final String IS_DRAWN =
      "document.documentElement.dataset.drawn === document.documentElement.dataset.asked";

  /** Waits until a script answers true. */
  void await(String script) {
    new WebDriverWait(driver(), PATIENCE)
        .withMessage(script)
        .until(d -> Boolean.TRUE.equals(driver().executeScript(script)));
  }

  WebElement find(String selector) {
    return driver().findElement(By.cssSelector(selector));
  }

  /** Clicks in the middle of the screen, clear of what stays on top. */
  void click(String selector) {
    WebElement element = find(selector);
    driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", element);
    element.click();
  }

  /** Opens what a button opens: words that arrive above may move it from under the pointer. */
  void unfold(String selector) {
    for (int tries = 0; tries < 4; tries++) {
      click(selector);
      if ("true".equals(find(selector).getDomAttribute("aria-expanded"))) {
        return;
      }
    }
    throw new AssertionError(selector + " does not open");
  }

  /** Opens the tools of a kept setup. */
  void openKept(String letter) {
    driver().executeScript("document.getElementById('kept-fold').open = true");
    await("return document.querySelector('[data-kept=" + letter + "]') !== null");
    String name = "[data-kept=" + letter + "] .kept-name";
    if (!"true".equals(find(name).getDomAttribute("aria-expanded"))) {
      unfold(name);
    }
  }

  /** Does something with a kept setup: the first of its tools pins it, then take, then remove. */
  void useKept(String letter, int tool) {
    openKept(letter);
    click("[data-kept=" + letter + "] .tool:nth-child(" + tool + ")");
  }

  void remove(String letter) {
    useKept(letter, 3);
  }

  /** The native control of a slider. */
  WebElement slider(String name) {
    return find("#slider-" + name);
  }

  /** What a slider says of itself to somebody who cannot see it. */
  String spoken(String name) {
    return slider(name).getDomAttribute("aria-valuetext");
  }

  /** Presses keys on whatever has the focus. */
  void press(CharSequence... keys) {
    active().sendKeys(keys);
  }

  /** Goes on with the tab key until the focus is where it should be. */
  void tabTo(String selector) {
    for (int i = 0; i < MOST_TABS; i++) {
      press(Keys.TAB);
      if (hasFocus(selector)) {
        return;
      }
    }
    throw new AssertionError("the tab key does not reach " + selector);
  }

  boolean hasFocus(String selector) {
    return (Boolean)
        driver().executeScript("return document.activeElement.matches(arguments[0])", selector);
  }

  WebElement active() {
    return driver().switchTo().activeElement();
  }

  /** A reading's number, such as the pitch. */
  String reading(String name) {
    return text("[data-reading=" + name + "] .number");
  }

  /** Text of an element, hidden ones too. */
  String text(String selector) {
    return (String)
        driver().executeScript("return document.querySelector(arguments[0]).textContent", selector);
  }

  /** Everything that the side view and the curves are made of. */
  String pictures() {
    return (String)
        driver()
            .executeScript(
                "return ['side-view', 'curves-view']"
                    + ".map((id) => document.getElementById(id).innerHTML).join()");
  }

  void choose(String radio, String value) {
    WebElement input = find("input[name=" + radio + "][value='" + value + "']");
    driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", input);
    input.click();
  }

  void unfoldAll() {
    driver()
        .executeScript(
            "document.querySelectorAll('details').forEach((fold) => (fold.open = true))");
  }

  double number(String script) {
    return ((Number) driver().executeScript(script)).doubleValue();
  }

  /** Breaches of the accessibility rules, in words. */
  @SuppressWarnings("deprecation") // The other mode opens a second window, for frames we lack.
  List<String> violations() {
    return new AxeBuilder()
        .setLegacyMode(true).analyze(driver()).getViolations().stream()
            .map(BenchOnScreen::words)
            .toList();
  }

  private static String words(Rule rule) {
    return rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes().get(0).getHtml();
  }

  URI address() {
    return address;
  }

  ChromeDriver driver() {
    return browser.driver();
  }

  Browser browser() {
    return browser;
  }
}
