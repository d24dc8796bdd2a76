package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** A stock file is looked through, and what suits goes to the Bench. */
@Timeout(600)
class MatchBrowserTest extends BenchBrowser {
  /** The small stock takes some seconds of a processor that others may want too. */
  private static final Duration PATIENCE = Duration.ofSeconds(180);

  private static final int TARGET = 48;
  private static final int TARGET_IN_SUN = 56;
  private static final double LAYOUT_ROUNDING = 0.5;

  /** Names every visible control smaller than asked; a box's or button's target is its label. */
  private static final String SMALL_TARGETS =
      """
      const least = arguments[0];
      const small = [];
      document.querySelectorAll('a[href], button, summary, select, input').forEach((element) => {
        const isInLabel = element.type === 'radio' || element.type === 'checkbox';
        const target = isInLabel ? element.closest('label') : element;
        const box = target.getBoundingClientRect();
        const shown = element.checkVisibility() && !element.matches('.hidden, .skip');
        if (shown && (box.width < least || box.height < least)) {
          small.push(element.outerHTML.slice(0, 90) + ' ' + box.width + ' x ' + box.height);
        }
      });
      return small;
      """;

  @TempDir private static Path folder;

  private static Path stock;

  @BeforeAll
  static void writeStock() throws IOException {
    stock = folder.resolve("small-stock.yaml");
    try (InputStream in = MatchBrowserTest.class.getResourceAsStream("small-stock.yaml")) {
      Files.copy(in, stock);
    }
  }

  private static void awaitMatch(String state) {
    new WebDriverWait(bench.driver(), PATIENCE)
        .withMessage("match " + state)
        .until(
            d ->
                state.equals(
                    bench.driver().executeScript("return document.documentElement.dataset.match")));
  }

  private static void open(String query) {
    bench.openFresh("match?case=light-carver" + query);
  }

  private static void handIn(Path file) {
    bench.choose("stock", "file");
    bench.find("#stock-input").sendKeys(file.toString());
  }

  private static void lookThroughTheSmallStock() {
    handIn(stock);
    bench.await("return document.getElementById('stock-words').textContent.includes('36 setups')");
    bench.click("#look");
    awaitMatch("shown");
  }

  private static void inspect(String what, int width, String theme) {
    String where = what + ", at " + width + " px, " + theme;
    assertThat(bench.number("return document.documentElement.scrollWidth"))
        .as("width, %s", where)
        .isLessThanOrEqualTo(width);
    int target = theme.equals("sun") ? TARGET_IN_SUN : TARGET;
    assertThat((List<?>) bench.driver().executeScript(SMALL_TARGETS, target - LAYOUT_ROUNDING))
        .as("targets, %s", where)
        .isEmpty();
    assertThat(bench.violations()).as("accessibility, %s", where).isEmpty();
  }

  @Test
  void whatSuitsIsShownKeptAndGoesToTheBench() {
    size(BenchOnScreen.SIZES.get(2));
    open("");
    assertThat(bench.text("#rider-words")).contains("58 kg", "carving");
    lookThroughTheSmallStock();
    assertThat(bench.text("#result-words")).contains("Try this first", "36 setups");
    int rows =
        bench.driver().executeScript("return document.querySelectorAll('#rows .card').length")
                instanceof Number number
            ? number.intValue()
            : 0;
    assertThat(rows).isEqualTo(4);
    assertThat(bench.text("#rows .card")).contains("Setup 1", "stabilizer-", "Range", "Open on");
    assertThat(bench.number("return document.querySelectorAll('#front-view .pic-marker').length"))
        .isEqualTo(rows);
    assertThat(bench.text("#front-rows")).contains("km/h");
    assertThat(bench.text("#grounds")).contains("pass the limits that tables know");
    assertThat(bench.text("#parts-rows")).contains("Front wings", "wing-1000-780");
    assertThat(bench.find("#stale").isDisplayed()).isFalse();

    bench.choose("measures", "imperial");
    assertThat(bench.text("#rows")).contains("mi");
    assertThat(bench.text("#result-for")).contains("mph");
    bench.choose("measures", "metric");

    bench.find("#notch-wish-range").sendKeys(Keys.END);
    bench.await("return !document.getElementById('stale').hidden");
    bench.driver().navigate().refresh();
    bench.awaitDrawn();
    assertThat(bench.text("#result-words")).as("a reload loses nothing").contains("Try this first");

    bench.click("#rows .card:nth-child(1) input[type=checkbox]");
    bench.click("#rows .card:nth-child(2) input[type=checkbox]");
    assertThat(bench.text("#compare-go")).isEqualTo("Compare 2 on the Bench");
    bench.click("#compare-go");
    bench.await("return location.pathname === '/' && 'ready' in document.documentElement.dataset");
    bench.await("return document.querySelectorAll('#kept-list > li').length === 1");
    bench.awaitDrawn();
    assertThat(bench.driver().executeScript("return document.title + location.pathname"))
        .isNotNull();

    bench.click(".places a[href='/match']");
    bench.await(
        "return location.pathname === '/match' && 'ready' in document.documentElement.dataset");
    assertThat(bench.text("#result-words")).as("so does the way to the Bench").contains("Try this");
  }

  @Test
  void aLookThatIsStoppedShowsNothingAndMayBeBegunAnew() {
    size(BenchOnScreen.SIZES.get(1));
    open("");
    bench.click("#look");
    bench.await("return document.documentElement.dataset.match === 'working'");
    bench.click("#job-stop");
    awaitMatch("stopped");
    assertThat(bench.find("#result").isDisplayed()).isFalse();
    assertThat(bench.text("#job-said")).contains("Stopped");
    assertThat(bench.hasFocus("#look")).isTrue();
    assertThat(bench.find("#look").isEnabled()).isTrue();
  }

  @Test
  void aFileThatIsNoStockIsRefusedWithAllThatIsWrong() throws IOException {
    size(BenchOnScreen.SIZES.get(0));
    open("");
    Path wrong = folder.resolve("wrong.yaml");
    Files.writeString(
        wrong,
        Files.readString(stock)
            .replace("mass_kg: 9.5", "mass_kg: -9.5")
            .replace("angle_deg: 0.5", "angel: 0.5"));
    handIn(wrong);
    bench.await("return document.querySelectorAll('#stock-problems li').length >= 2");
    assertThat(bench.text("#stock-problems")).contains("wrong.yaml", "Line", "angel");
    bench.click("#look");
    bench.await("return document.getElementById('start-problems').textContent !== ''");
    inspect("a refused stock", BenchOnScreen.SIZES.get(0)[0], "light");
    bench.choose("stock", "demo");
    bench.await("return document.getElementById('stock-words').textContent.includes('1,254,960')");
    assertThat(bench.text("#stock-problems")).isEmpty();
  }

  @Test
  void theKeyboardIsEnough() {
    size(BenchOnScreen.SIZES.get(1));
    open("");
    bench.find("#rider").sendKeys(Keys.TAB);
    bench.tabTo("#notch-from-kmh");
    String before = bench.active().getDomAttribute("aria-valuetext");
    bench.press(Keys.ARROW_RIGHT);
    assertThat(bench.active().getDomAttribute("aria-valuetext")).isNotEqualTo(before);
    bench.tabTo("#wishes-fold > summary");
    bench.press(Keys.ENTER);
    bench.tabTo("#notch-wish-level");
    bench.press(Keys.HOME);
    assertThat(bench.active().getDomAttribute("aria-valuetext")).isEqualTo("not at all");
    assertThat(bench.text("#wishes-sum")).contains("1 other");
    bench.tabTo("#look");
  }

  @Test
  void thePageFitsAndIsAccessibleInEveryLight() {
    open("");
    size(BenchOnScreen.SIZES.get(2));
    lookThroughTheSmallStock();
    for (int i = 0; i < BenchOnScreen.SIZES.size(); i++) {
      int[] size = BenchOnScreen.SIZES.get(i);
      String theme = BenchOnScreen.THEMES.get(i);
      size(size);
      bench.choose("theme", theme);
      bench.unfoldAll();
      bench
          .driver()
          .executeAsyncScript("requestAnimationFrame(() => requestAnimationFrame(arguments[0]))");
      inspect("a result with every fold open", size[0], theme);
    }
    WebElement front = bench.find("#front-view svg");
    assertThat(front.getDomAttribute("role")).isEqualTo("img");
  }

  @Test
  void thePageAsItOpensFitsInEveryLight() {
    for (int i = 0; i < BenchOnScreen.SIZES.size(); i++) {
      int[] size = BenchOnScreen.SIZES.get(i);
      String theme = BenchOnScreen.THEMES.get((i + 1) % BenchOnScreen.THEMES.size());
      size(size);
      bench.openFresh("match?case=heavy-beginner&theme=" + theme);
      assertThat(bench.find("#first-flights").isDisplayed()).isTrue();
      inspect("as it opens", size[0], theme);
    }
  }
}
