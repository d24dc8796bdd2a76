package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;

/** An outline whose polars nobody has computed yet. */
class BenchSectionsBrowserTest extends BenchBrowser {
  private static final String SECTION = "#field-setup-front_wing-section";
  private static final String SAID = "#sections-said";

  /** No table of it comes with the program; no other test asks for it. */
  private static final String NEW = "naca3413";

  /** A build takes 5 to 8 s of a processor that others may want too. */
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  @Test
  void theBenchAnswersAtOnceSaysOnWhatAndAnswersAnewWhenThePolarsAreThere() {
    size(BenchOnScreen.SIZES.get(2));
    bench.openFresh("?case=light-carver");
    bench.unfoldAll();
    assertThat(bench.find(SAID).isDisplayed()).as("usual sections need no notice").isFalse();
    WebElement input = bench.find(SECTION);
    input.sendKeys(Keys.chord(Keys.CONTROL, "a"), NEW, Keys.TAB);
    bench.awaitDrawn();
    String first = bench.reading("pitch");
    assertThat(first).containsPattern("\\d");
    bench.await("return !document.querySelector('" + SAID + "').hidden");
    assertThat(bench.text(SAID)).contains(NEW, "is being computed", "fit to measured sections");
    assertThat(bench.find(SAID).getDomAttribute("role")).isEqualTo("status");
    new WebDriverWait(bench.driver(), PATIENCE)
        .withMessage("the notice goes when the polars are there")
        .until(d -> !bench.find(SAID).isDisplayed());
    bench.awaitDrawn();
    assertThat(bench.find(SAID).getDomProperty("hidden")).isEqualTo("true");
    assertThat(bench.reading("pitch") + bench.reading("power"))
        .as("a reading stands there again")
        .containsPattern("\\d");
  }
}
