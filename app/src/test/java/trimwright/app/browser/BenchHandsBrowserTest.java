package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.interactions.Actions;

/** The Bench by keyboard alone and by pointer, on a phone, a tablet and a desk. */
class BenchHandsBrowserTest extends BenchBrowser {
  private static final List<String> SLIDERS =
      List.of("speed", "shim", "wedge", "track", "feet", "width", "mass", "wind", "wish");

  /** Those that change where the craft trims, and not only what is asked of it. */
  private static final List<String> MOVING =
      List.of("shim", "wedge", "track", "feet", "width", "mass", "wind");

  static Stream<int[]> sizes() {
    return BenchOnScreen.SIZES.stream();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void everySliderMovesByKeysAndItsStepIsUndone(int[] size) {
    open(size);
    for (String name : SLIDERS) {
      String before = bench.spoken(name);
      String pictures = bench.pictures();
      bench.tabTo("#slider-" + name);
      assertThat(bench.active().getCssValue("outline-style"))
          .as("focus on %s", name)
          .isNotEqualTo("none");
      bench.press(Keys.ARROW_RIGHT);
      bench.awaitDrawn();
      assertThat(bench.spoken(name)).as(name).isNotEqualTo(before);
      assertThat(bench.pictures()).as("pictures after %s", name).isNotEqualTo(pictures);
      bench.press(Keys.chord(Keys.CONTROL, "z"));
      bench.awaitDrawn();
      assertThat(bench.spoken(name)).as("%s undone", name).isEqualTo(before);
      bench.press(Keys.chord(Keys.CONTROL, Keys.SHIFT, "z"));
      bench.awaitDrawn();
      assertThat(bench.spoken(name)).as("%s done again", name).isNotEqualTo(before);
      bench.press(Keys.chord(Keys.CONTROL, "z"));
      bench.awaitDrawn();
    }
    assertThat(bench.text("#sign")).isEqualTo("saved");
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void theLineOverTheCurvesMovesByKeysAndByPointer(int[] size) {
    open(size);
    String first = bench.text("[data-slider=speed] .number");
    bench.tabTo(".speed-handle");
    bench.press(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    String second = bench.text("[data-slider=speed] .number");
    assertThat(Integer.parseInt(second)).isEqualTo(Integer.parseInt(first) + 1);
    WebElement handle = bench.find(".speed-handle");
    int quarter = handle.getSize().getWidth() / 4;
    new Actions(bench.driver())
        .moveToElement(handle)
        .clickAndHold()
        .moveByOffset(-quarter, 0)
        .release()
        .perform();
    bench.awaitDrawn();
    // A quarter of the way from the middle of 10 to 40 km/h.
    assertThat(Integer.parseInt(bench.text("[data-slider=speed] .number"))).isBetween(17, 18);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void slidersMoveByPointerAndByTheirButtons(int[] size) {
    open(size);
    for (String name : MOVING) {
      String pictures = bench.pictures();
      WebElement slider = bench.slider(name);
      bench.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", slider);
      int width = slider.getSize().getWidth();
      new Actions(bench.driver()).moveToElement(slider, width / 3, 0).click().perform();
      bench.awaitDrawn();
      assertThat(bench.pictures()).as(name).isNotEqualTo(pictures);
      String dragged = bench.spoken(name);
      List<WebElement> steps =
          bench.driver().findElements(By.cssSelector("[data-slider=" + name + "] .step"));
      steps.get(0).click();
      bench.awaitDrawn();
      assertThat(bench.spoken(name)).as("%s, one less", name).isNotEqualTo(dragged);
      steps.get(1).click();
      bench.awaitDrawn();
      assertThat(bench.spoken(name)).as("%s, and one more", name).isEqualTo(dragged);
      bench.click("[data-slider=" + name + "] .back");
      bench.awaitDrawn();
      assertThat(bench.find("[data-slider=" + name + "] .back").isEnabled()).isFalse();
    }
    assertThat(bench.text("#sign")).isEqualTo("saved");
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void aLockedSliderDoesNotMoveAndItsFieldNeither(int[] size) {
    open(size);
    bench.tabTo("[data-slider=mass] .lock");
    bench.press(Keys.SPACE);
    String before = bench.spoken("mass");
    assertThat(bench.find("[data-slider=mass] .lock").getDomAttribute("aria-pressed"))
        .isEqualTo("true");
    assertThat(bench.slider("mass").isEnabled()).isFalse();
    assertThat(bench.find("#field-rider-mass_kg").getDomAttribute("readonly")).isNotNull();
    bench.press(Keys.SPACE);
    bench.tabTo("#slider-mass");
    bench.press(Keys.ARROW_LEFT);
    bench.awaitDrawn();
    assertThat(bench.spoken("mass")).isNotEqualTo(before);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void aPinnedReferenceShowsTheDifference(int[] size) {
    open(size);
    bench.tabTo("#keep");
    bench.press(Keys.ENTER);
    bench.awaitDrawn();
    String pinned = bench.reading("pitch");
    int back = Integer.parseInt(bench.reading("back"));
    bench.slider("wedge").sendKeys(Keys.ARROW_LEFT);
    bench.slider("wedge").sendKeys(Keys.ARROW_LEFT);
    bench.awaitDrawn();
    assertThat(bench.reading("pitch")).isNotEqualTo(pinned);
    // A wedge turns the deck by its own angle and leaves the feet nearly alone.
    String pitch = bench.text("[data-reading=pitch] .remark").replace('\u2212', '-');
    assertThat(Double.parseDouble(pitch.substring(0, pitch.indexOf('°')))).isBetween(-1.1, -0.9);
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    String more = bench.text("[data-reading=back] .remark").replace('\u2212', '-');
    assertThat(Integer.parseInt(more.split("\u00a0")[0]))
        .as("what one reads adds up: %s", more)
        .isEqualTo(Integer.parseInt(bench.reading("back")) - back);
    bench.remove("A");
    // What stands there now is no difference, at most how far off the pitch may be.
    assertThat(bench.text("[data-reading=pitch] .remark")).matches("|±.*");
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void imperialAndBackLeavesTheCaseAsItWas(int[] size) {
    open(size);
    String words = bench.text("#verdict-first");
    String back = bench.reading("back");
    bench.choose("measures", "imperial");
    bench.awaitDrawn();
    assertThat(bench.text("[data-slider=speed] .unit")).contains("mph");
    assertThat(bench.text("#verdict-first") + bench.text("#verdict-second"))
        .contains("mph")
        .doesNotContain("km/h");
    assertThat(bench.text("[data-reading=back]")).contains("lb");
    double pounds = Double.parseDouble(bench.reading("back"));
    assertThat(pounds).isGreaterThan(Double.parseDouble(back));
    bench.choose("measures", "metric");
    bench.awaitDrawn();
    assertThat(bench.text("#verdict-first")).isEqualTo(words);
    assertThat(bench.reading("back")).isEqualTo(back);
    assertThat(bench.text("#sign")).isEqualTo("saved");
  }

  private static void open(int[] size) {
    size(size);
    bench.openFresh("?case=light-carver");
  }
}
