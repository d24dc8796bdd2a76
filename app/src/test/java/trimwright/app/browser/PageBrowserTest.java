package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.results.Rule;
import com.deque.html.axecore.selenium.AxeBuilder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.support.ui.ExpectedConditions;
import org.openqa.selenium.support.ui.WebDriverWait;
import trimwright.exchange.demo.DemoCases;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/**
 * The first page as a person meets it: in Chromium, at three widths, in three themes, by keyboard
 * and by file.
 */
class PageBrowserTest {
  private static final List<Integer> WIDTHS = List.of(390, 820, 1280);
  private static final List<String> THEMES = List.of("light", "dark", "sun");
  private static final int HEIGHT = 800;
  private static final int MOST_TABS = 60;
  private static final Duration PATIENCE = Duration.ofSeconds(15);

  /** Smallest target for a finger, in px; rounding of the layout may take away less than one. */
  private static final int TARGET = 48;

  private static final int TARGET_IN_SUN = 56;
  private static final double LAYOUT_ROUNDING = 0.5;

  /**
   * Names every visible control that is smaller than asked. Words inside a sentence are no controls
   * of ours.
   */
  private static final String SMALL_TARGETS =
      """
      const least = arguments[0];
      const small = [];
      document.querySelectorAll('a[href], button, summary, textarea, input:not([type=hidden])')
        .forEach(element => {
          const box = element.getBoundingClientRect();
          const shown = element.checkVisibility() && !element.matches('.hidden, .skip');
          if (shown && (box.width < least || box.height < least)) {
            small.push(element.outerHTML.slice(0, 90) + ' ' + box.width + ' x ' + box.height);
          }
        });
      return small;
      """;

  private static final String SMALLEST_TEXT =
      """
      let smallest = 1000;
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) {
        const parent = walker.currentNode.parentElement;
        if (walker.currentNode.textContent.trim() && parent.checkVisibility()
            && !parent.closest('.hidden, svg title, svg desc')) {
          smallest = Math.min(smallest, parseFloat(getComputedStyle(parent).fontSize));
        }
      }
      return smallest;
      """;

  private static RunningShop shop;
  private static Browser browser;
  @TempDir private Path folder;

  @BeforeAll
  static void open(@TempDir Path shopFolder) {
    shop = ShopApplication.start(0, shopFolder);
    browser = Browser.start();
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
    if (shop != null) {
      shop.close();
    }
  }

  @BeforeEach
  void tablet() {
    browser.setSize(820, HEIGHT);
    driver().get(shop.address().toString());
    driver().executeScript("localStorage.clear()");
  }

  @AfterEach
  void nothingWasComplainedOf() {
    // An answer that says no is logged by the browser like a fault of the page; it is none.
    assertThat(browser.complaints()).allMatch(line -> line.contains("status of 4"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "?case=nose-up-mismatch&speed=20", "?case=light-carver&speed=6", "404"})
  void everyPageFitsAndIsAccessibleAtEveryWidthInEveryTheme(String page) {
    driver().get(shop.address() + page);
    driver()
        .executeScript("document.querySelectorAll('details').forEach(fold => fold.open = true)");
    for (String theme : THEMES) {
      choose(theme);
      for (int width : WIDTHS) {
        browser.setSize(width, HEIGHT);
        String where = "'" + page + "' at " + width + " px, " + theme;
        assertThat(number("return document.documentElement.scrollWidth"))
            .as("width of %s", where)
            .isLessThanOrEqualTo(width);
        int target = theme.equals("sun") ? TARGET_IN_SUN : TARGET;
        assertThat(list(SMALL_TARGETS, target - LAYOUT_ROUNDING))
            .as("targets on %s", where)
            .isEmpty();
        double smallest = theme.equals("sun") || width == 390 ? 16 : 14;
        assertThat(number(SMALLEST_TEXT)).as("text on %s", where).isGreaterThanOrEqualTo(smallest);
        // The smaller pages share their parts with the large ones: one width each is enough of
        // them.
        if (width == 820 || page.isEmpty() || page.contains("nose-up")) {
          assertThat(violations()).as("axe on %s", where).isEmpty();
        }
      }
    }
  }

  @Test
  void theKeyboardAloneReachesACaseAndChangesItsSpeed() {
    tabTo("a.demo[href*='light-carver']");
    assertThat(active().getCssValue("outline-style")).isEqualTo("solid");
    active().sendKeys(Keys.ENTER);
    await(By.id("speed"));
    tabTo("#speed");
    active().sendKeys(Keys.chord(Keys.CONTROL, "a"), "25", Keys.ENTER);
    awaitAddress("speed=25");
    assertThat(speed()).isEqualTo("25");
    tabTo("button[name=step][value='1']");
    active().sendKeys(Keys.SPACE);
    awaitAddress("step=1");
    assertThat(speed()).isEqualTo("26");
  }

  @Test
  void aGoodFileIsAnsweredAndItsSpeedCanBeChanged() throws IOException {
    handIn(DemoCases.find("heavy-beginner").orElseThrow().text());
    await(By.className("verdict"));
    double before = Double.parseDouble(speed());
    driver().findElement(By.cssSelector("button[name=step][value='1']")).click();
    new WebDriverWait(driver(), PATIENCE).until(d -> Double.parseDouble(speed()) == before + 1);
    assertThat(driver().findElements(By.className("verdict"))).hasSize(1);
  }

  @Test
  void aBadFileIsExplainedAndCanBePutRightOnThePage() throws IOException {
    String good = DemoCases.find("light-carver").orElseThrow().text();
    String bad = good.replaceAll("salinity_g_kg: *[0-9.]+", "salinity_g_kg: 80");
    assertThat(bad).isNotEqualTo(good);
    handIn(bad);
    WebElement problems = await(By.className("problem-list"));
    assertThat(problems.getText()).contains("salinity_g_kg", "80", "42", "Line ");
    assertThat(violations()).isEmpty();
    WebElement text = driver().findElement(By.id("text"));
    assertThat(text.getDomProperty("value")).isEqualTo(bad);
    driver().executeScript("arguments[0].value = arguments[1]", text, good);
    driver().findElement(By.cssSelector("#edit button")).click();
    await(By.className("verdict"));
  }

  @Test
  void aSpeedThatCannotBeUsedIsExplainedAtItsField() {
    driver().get(shop.address() + "?case=light-carver&speed=fast");
    WebElement field = driver().findElement(By.id("speed"));
    assertThat(field.getDomProperty("value")).isEqualTo("fast");
    assertThat(field.getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(driver().findElement(By.id("speed-problem")).getText()).contains("from 5 to 60");
    assertThat(violations()).isEmpty();
  }

  @Test
  void aChosenThemeStaysWithTheBrowser() {
    choose("sun");
    driver().get(shop.address() + "");
    assertThat(theme()).isEqualTo("sun");
    driver().findElement(By.cssSelector("a.demo")).click();
    await(By.className("verdict"));
    assertThat(theme()).isEqualTo("sun");
  }

  @Test
  void withoutScriptsAThemeGoesWithTheForm() {
    driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", true));
    try {
      driver().get(shop.address() + "?case=light-carver&speed=22");
      driver().findElement(By.cssSelector("input[name=theme][value=dark]")).click();
      driver().findElement(By.cssSelector(".show")).click();
      awaitAddress("theme=dark");
      assertThat(driver().findElement(By.tagName("html")).getDomAttribute("data-theme"))
          .isEqualTo("dark");
      assertThat(driver().findElements(By.className("verdict"))).hasSize(1);
    } finally {
      driver().executeCdpCommand("Emulation.setScriptExecutionDisabled", Map.of("value", false));
    }
  }

  private void handIn(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("mine.yaml"), text);
    driver().findElement(By.id("file")).sendKeys(file.toString());
    driver().findElement(By.cssSelector("#hand-in button")).click();
  }

  private static void choose(String theme) {
    driver().findElement(By.cssSelector("input[name=theme][value=" + theme + "]")).click();
    assertThat(theme()).isEqualTo(theme);
  }

  private static String theme() {
    return (String) driver().executeScript("return document.documentElement.dataset.theme");
  }

  private static String speed() {
    return driver().findElement(By.id("speed")).getDomProperty("value");
  }

  private static void tabTo(String selector) {
    for (int i = 0; i < MOST_TABS; i++) {
      active().sendKeys(Keys.TAB);
      if ((Boolean)
          driver().executeScript("return document.activeElement.matches(arguments[0])", selector)) {
        return;
      }
    }
    throw new AssertionError("the tab key does not reach " + selector);
  }

  private static WebElement active() {
    return driver().switchTo().activeElement();
  }

  private static WebElement await(By what) {
    return new WebDriverWait(driver(), PATIENCE)
        .until(ExpectedConditions.presenceOfElementLocated(what));
  }

  private static void awaitAddress(String part) {
    new WebDriverWait(driver(), PATIENCE).until(ExpectedConditions.urlContains(part));
    await(By.id("speed"));
  }

  /** Legacy mode works in the page itself; the other opens a second window, for frames we lack. */
  @SuppressWarnings("deprecation")
  private static List<String> violations() {
    return new AxeBuilder()
        .setLegacyMode(true).analyze(driver()).getViolations().stream()
            .map(PageBrowserTest::words)
            .toList();
  }

  private static String words(Rule rule) {
    return rule.getId() + ": " + rule.getHelp() + " " + rule.getNodes().get(0).getHtml();
  }

  private static double number(String script) {
    return ((Number) driver().executeScript(script)).doubleValue();
  }

  private static List<?> list(String script, Object argument) {
    return (List<?>) driver().executeScript(script, argument);
  }

  private static ChromeDriver driver() {
    return browser.driver();
  }
}
