package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;

/** What is typed: good, wrong, contradictory, in either measures, and after a reload. */
class BenchInputsBrowserTest extends BenchBrowser {
  private static final String MASS = "#field-rider-mass_kg";

  static Stream<int[]> sizes() {
    return BenchOnScreen.SIZES.stream();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void aWrongInputIsSaidAtItsFieldAndWhatWasTypedIsKept(int[] size) {
    open(size);
    String pictures = bench.reading("pitch");
    type(MASS, "heavy");
    bench.awaitDrawn();
    assertThat(bench.find(MASS).getDomProperty("value")).isEqualTo("heavy");
    assertThat(bench.find(MASS).getDomAttribute("aria-invalid")).isEqualTo("true");
    assertThat(problem(MASS)).containsIgnoringCase("mass").contains("heavy", "kg");
    assertThat(bench.find(MASS).getDomAttribute("aria-describedby")).contains("-problem");
    assertThat(bench.reading("pitch")).as("the last good state stays").isEqualTo(pictures);
    assertThat(bench.find("#side-view ~ .not-this").isDisplayed()).isTrue();
    bench.tabTo("#wrong");
    bench.press(Keys.ENTER);
    assertThat(bench.hasFocus(MASS)).isTrue();
    type(MASS, "70");
    bench.awaitDrawn();
    assertThat(bench.find(MASS).getDomAttribute("aria-invalid")).isNull();
    assertThat(bench.reading("pitch")).isNotEqualTo(pictures);
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void fieldsThatContradictEachOtherSaySoTogether(int[] size) {
    open(size);
    String area = "#field-setup-front_wing-area_cm2";
    type(area, "4000");
    bench.awaitDrawn();
    List<String> concerned =
        List.of(
            area,
            "#field-setup-front_wing-span_mm",
            "#field-setup-front_wing-root_chord_mm",
            "#field-setup-front_wing-tip_chord_mm");
    String said = problem(area);
    assertThat(said).contains("4000");
    for (String field : concerned) {
      assertThat(problem(field)).as(field).isEqualTo(said);
      assertThat(bench.find(field).getDomAttribute("aria-invalid")).isEqualTo("true");
    }
    bench.click("#undo");
    bench.awaitDrawn();
    for (String field : concerned) {
      assertThat(bench.find(field).getDomAttribute("aria-invalid")).as(field).isNull();
    }
  }

  @Test
  void aMassInPoundsIsTheMassInKilograms() {
    open(BenchOnScreen.SIZES.get(1));
    type(MASS, "80");
    bench.awaitDrawn();
    String metric = bench.reading("power");
    bench.choose("measures", "imperial");
    bench.awaitDrawn();
    assertThat(Double.parseDouble(bench.find(MASS).getDomProperty("value")))
        .isBetween(176.3, 176.4);
    type(MASS, "500000");
    bench.awaitDrawn();
    assertThat(problem(MASS)).contains("lb").doesNotContain("kg");
    type(MASS, "176,37");
    bench.awaitDrawn();
    bench.choose("measures", "metric");
    bench.awaitDrawn();
    assertThat(bench.reading("power")).isEqualTo(metric);
  }

  @Test
  void aReloadLosesNothing() {
    open(BenchOnScreen.SIZES.get(1));
    bench.click("#keep");
    bench.slider("track").sendKeys(Keys.ARROW_RIGHT);
    bench.slider("speed").sendKeys(Keys.ARROW_RIGHT);
    type(MASS, "hea");
    bench.awaitDrawn();
    String track = bench.spoken("track");
    String speed = bench.spoken("speed");
    bench.driver().navigate().refresh();
    bench.awaitDrawn();
    assertThat(bench.spoken("track")).isEqualTo(track);
    assertThat(bench.spoken("speed")).isEqualTo(speed);
    assertThat(bench.find(MASS).getDomProperty("value")).isEqualTo("hea");
    assertThat(bench.text("#kept-count").replace('\u00a0', ' ')).startsWith("A at ");
    bench.click("#undo");
    bench.awaitDrawn();
    assertThat(bench.find(MASS).getDomAttribute("aria-invalid")).isNull();
  }

  @Test
  void theVerdictIsAnnouncedOnceNothingMovesAnyMore() {
    open(BenchOnScreen.SIZES.get(1));
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.await(
        "return document.getElementById('announcer').textContent"
            + ".includes(document.getElementById('verdict-first').textContent)");
  }

  @Test
  void theShimIsSaidByItsEdgeAndItsThickEnd() {
    open(BenchOnScreen.SIZES.get(1));
    WebElement shim = bench.slider("shim");
    shim.sendKeys(Keys.HOME);
    bench.awaitDrawn();
    assertThat(bench.spoken("shim")).contains("leading edge down", "thick end at the");
    assertThat(bench.text("[data-slider=shim]")).doesNotContain("-").doesNotContain("\u2212");
  }

  private static String problem(String field) {
    return bench.text(field + "-problem");
  }

  private static void type(String field, String text) {
    WebElement input = bench.find(field);
    input.sendKeys(Keys.chord(Keys.CONTROL, "a"), text);
  }

  private static void open(int[] size) {
    size(size);
    bench.openFresh("?case=light-carver");
    bench.unfoldAll();
  }
}
