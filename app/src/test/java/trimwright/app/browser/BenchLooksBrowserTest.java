package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/**
 * Everything the Bench shows fits, can be read, can be hit, and is accessible, in every light. Each
 * width and each light of the plain Bench is looked at in every run, one of the strip and of setups
 * side by side, the rest of the nine combinations in long ones.
 */
class BenchLooksBrowserTest extends BenchBrowser {
  /** Smallest target for a finger [px]; rounding of the layout may take away less than one. */
  private static final int TARGET = 48;

  private static final int TARGET_IN_SUN = 56;
  private static final double LAYOUT_ROUNDING = 0.5;
  private static final int SMALLEST_TEXT = 14;
  private static final int SMALLEST_ON_PHONE_OR_IN_SUN = 16;
  private static final int PHONE = 390;
  private static final int DESK = 1280;

  /** Names every visible control smaller than asked; a radio button's target is its label. */
  private static final String SMALL_TARGETS =
      """
      const least = arguments[0];
      const small = [];
      document.querySelectorAll('a[href], button, summary, select, textarea, [role=slider],'
          + ' input:not([type=hidden])').forEach((element) => {
        const target = element.type === 'radio' ? element.closest('label') : element;
        const box = target.getBoundingClientRect();
        const shown = element.checkVisibility() && !element.matches('.hidden, .skip');
        if (shown && (box.width < least || box.height < least)) {
          small.push(element.outerHTML.slice(0, 90) + ' ' + box.width + ' x ' + box.height);
        }
      });
      return small;
      """;

  /** Numbers of the table that are wider than their columns. */
  private static final String CUT_OFF =
      """
      return [...document.querySelectorAll('.kept-table td span, .kept-table th span')]
        .filter((part) => !part.classList.contains('hidden'))
        .filter((part) => part.parentElement.scrollWidth > part.parentElement.clientWidth)
        .map((part) => part.textContent).join();
      """;

  private static final String PICTURES_END =
      "return scrollY + document.querySelector('.curves').getBoundingClientRect().bottom";

  private static final String SMALLEST =
      """
      let smallest = 1000;
      let what = '';
      const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
      while (walker.nextNode()) {
        const parent = walker.currentNode.parentElement;
        if (walker.currentNode.textContent.trim() && parent.checkVisibility()
            && !parent.closest('.hidden, noscript, script, svg title, svg desc, option')) {
          const size = parseFloat(getComputedStyle(parent).fontSize);
          if (size < smallest) {
            smallest = size;
            what = walker.currentNode.textContent.trim().slice(0, 40);
          }
        }
      }
      return smallest + ' px: ' + what;
      """;

  @ParameterizedTest
  @Tag("long")
  @CsvSource({"390, light", "390, dark", "820, light", "820, sun", "1280, dark", "1280, sun"})
  void theBenchFitsAndIsAccessibleElsewhere(int width, String theme) {
    theBenchFitsAndIsAccessible(width, theme);
  }

  @ParameterizedTest
  @CsvSource({"390, sun", "820, dark", "1280, light"})
  void theBenchFitsAndIsAccessible(int width, String theme) {
    at(width);
    bench.openFresh("?case=nose-up-mismatch&theme=" + theme);
    inspect("as it opens", width, theme);
    if (width == DESK) {
      assertThat(bench.number("return document.documentElement.scrollHeight"))
          .as("no page scroll at 1280 x 800 px")
          .isLessThanOrEqualTo(800);
    }
    bench.unfoldAll();
    bench.awaitDrawn();
    bench.await("return document.documentElement.dataset.bands === 'shown'");
    bench.await("return document.documentElement.dataset.envelope === 'shown'");
    inspect("with every fold open", width, theme);
    bench.click("#keep");
    bench.slider("speed").sendKeys(Keys.HOME);
    bench.awaitDrawn();
    inspect("beside a kept setup, at a speed without a trim", width, theme);
    bench.driver().executeScript("document.getElementById('inputs-fold').open = true");
    WebElement mass = bench.find("#field-rider-mass_kg");
    mass.clear();
    mass.sendKeys("heavy");
    bench.awaitDrawn();
    inspect("with a wrong input", width, theme);
  }

  @ParameterizedTest
  @Tag("long")
  @CsvSource({
    "390, light", "390, dark", "390, sun", "820, light",
    "820, dark", "820, sun", "1280, dark", "1280, sun"
  })
  void fourSideBySideFitAndAreAccessibleElsewhere(int width, String theme) {
    fourSideBySideFitAndAreAccessible(width, theme);
  }

  @ParameterizedTest
  @CsvSource({"1280, light"})
  void fourSideBySideFitAndAreAccessible(int width, String theme) {
    at(width);
    bench.openFresh("?case=nose-up-mismatch&theme=" + theme);
    for (String slider : List.of("shim", "wedge", "track")) {
      bench.click("#keep");
      bench.slider(slider).sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
      bench.awaitDrawn();
    }
    bench.await("return document.documentElement.dataset.bands === 'shown'");
    double before = bench.number(PICTURES_END);
    bench.openKept("B");
    assertThat(bench.number(PICTURES_END)).as("nothing above it moves").isEqualTo(before);
    inspect("four side by side", width, theme);
    assertThat((String) bench.driver().executeScript(CUT_OFF))
        .as("numbers that leave their cells at %s px, %s", width, theme)
        .isEmpty();
    if (width == DESK) {
      assertThat(bench.number("return document.documentElement.scrollHeight"))
          .as("no page scroll at 1280 x 800 px")
          .isLessThanOrEqualTo(800);
    }
  }

  @ParameterizedTest
  @Tag("long")
  @CsvSource({
    "390, light", "390, dark", "390, sun", "820, light",
    "820, sun", "1280, light", "1280, dark", "1280, sun"
  })
  void thePlayedWhatIfFitsAndIsAccessibleElsewhere(int width, String theme) {
    thePlayedWhatIfFitsAndIsAccessible(width, theme);
  }

  @ParameterizedTest
  @CsvSource({"820, dark"})
  void thePlayedWhatIfFitsAndIsAccessible(int width, String theme) {
    at(width);
    bench.openFresh("?case=light-carver&theme=" + theme);
    bench.await("return document.documentElement.dataset.bands === 'shown'");
    bench.await("return document.documentElement.dataset.envelope === 'shown'");
    double before = bench.number(PICTURES_END);
    bench.driver().executeScript(BenchPlayBrowserTest.stub());
    bench.unfold("#what-if-toggle");
    bench.await(BenchPlayBrowserTest.SHOWN);
    assertThat(bench.number(PICTURES_END)).as("nothing above it moves").isEqualTo(before);
    bench.choose("play", "nose_drop");
    bench.await(BenchPlayBrowserTest.SHOWN);
    bench.find(".time-handle").sendKeys(Keys.END);
    inspect("a fall", width, theme);
  }

  @ParameterizedTest
  @ValueSource(strings = {"open", "save", "sheet"})
  void theDialogsFitAndAreAccessible(String name) {
    for (int[] size : BenchOnScreen.SIZES) {
      size(size);
      for (String theme : BenchOnScreen.THEMES) {
        bench.openFresh("?case=light-carver&theme=" + theme);
        bench.click("#" + name);
        bench.await("return document.getElementById('" + name + "-dialog').open");
        inspect("dialog " + name, size[0], theme);
      }
    }
  }

  @Test
  void aPageThatIsNotThereFitsAndIsAccessible() {
    for (int[] size : BenchOnScreen.SIZES) {
      size(size);
      for (String theme : BenchOnScreen.THEMES) {
        bench.driver().get(bench.address() + "no-such-page?theme=" + theme);
        inspect("a page that is not there", size[0], theme);
      }
    }
  }

  @Test
  void aChosenLightStaysWithTheBrowser() {
    at(820);
    bench.openFresh("?case=light-carver");
    for (String theme : BenchOnScreen.THEMES) {
      bench.choose("theme", theme);
      bench.open("?case=heavy-beginner");
      assertThat(bench.driver().executeScript("return document.documentElement.dataset.theme"))
          .isEqualTo(theme);
    }
  }

  private static void at(int width) {
    size(BenchOnScreen.SIZES.stream().filter(s -> s[0] == width).findFirst().orElseThrow());
  }

  private static void inspect(String what, int width, String theme) {
    String where = what + ", at " + width + " px, " + theme;
    boolean large = theme.equals("sun") || width == PHONE;
    assertThat(bench.number("return document.documentElement.scrollWidth"))
        .as("width, %s", where)
        .isLessThanOrEqualTo(width);
    int target = theme.equals("sun") ? TARGET_IN_SUN : TARGET;
    assertThat((List<?>) bench.driver().executeScript(SMALL_TARGETS, target - LAYOUT_ROUNDING))
        .as("targets, %s", where)
        .isEmpty();
    String smallest = (String) bench.driver().executeScript(SMALLEST);
    assertThat(Double.parseDouble(smallest.substring(0, smallest.indexOf(' '))))
        .as("text, %s: %s", where, smallest)
        .isGreaterThanOrEqualTo(large ? SMALLEST_ON_PHONE_OR_IN_SUN : SMALLEST_TEXT);
    assertThat(bench.violations()).as("accessibility, %s", where).isEmpty();
  }
}
