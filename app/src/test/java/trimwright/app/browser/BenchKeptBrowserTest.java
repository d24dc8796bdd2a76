package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.openqa.selenium.Keys;

/** Up to three setups kept beside the one on the sliders: curves, names, table, reference. */
class BenchKeptBrowserTest extends BenchBrowser {
  private static final String SHOWN = "return document.documentElement.dataset.bands === 'shown'";

  /** Counts the questions for a curve, without changing what they do. */
  private static final String COUNT_CURVES =
      """
      window.curvesAsked = 0;
      const real = window.fetch;
      window.fetch = (...given) => {
        if (String(given[0]).endsWith('/bench/curve')) { curvesAsked += 1; }
        return real(...given);
      };
      """;

  private static final String LINES =
      "return [...document.querySelectorAll('#curves-view .pic-kept, #curves-view .pic-pinned')]"
          + ".filter((line) => line.checkVisibility() && line.getAttribute('d'))"
          + ".map((line) => line.getAttribute('stroke-dasharray'))";

  private static final String ENDS =
      "return [...document.querySelectorAll('#curves-view [data-label=kept]')]"
          + ".filter((label) => label.checkVisibility()).map((label) => label.textContent)";

  static Stream<int[]> sizes() {
    return BenchOnScreen.SIZES.stream();
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void threeAreKeptBesideTheSlidersAndNoMore(int[] size) {
    open(size);
    keepThree();
    bench.driver().executeScript("document.getElementById('kept-fold').open = true");
    bench.await("return document.querySelectorAll('#kept-heads th').length === 5");
    assertThat(texts("#kept-heads th"))
        .containsExactly("What", "Now", "A, the reference", "B", "C");
    int panels = size[0] < 720 ? 1 : 3;
    List<?> dashes = (List<?>) bench.driver().executeScript(LINES);
    assertThat(dashes).hasSize(3 * panels);
    assertThat(dashes.stream().distinct().count()).as("each line its own dashes").isEqualTo(3);
    List<?> ends = (List<?>) bench.driver().executeScript(ENDS);
    assertThat(ends.stream().filter(name -> "ABC".contains((String) name)).count())
        .as("each line is named at its end: %s", ends)
        .isEqualTo(3L * panels);
    assertThat(bench.find("#keep").getDomAttribute("aria-disabled")).isEqualTo("true");
    bench.click("#keep");
    assertThat(bench.text("#kept-said")).contains("Remove one");
    assertThat(bench.text("#kept-count").replace('\u00a0', ' ')).startsWith("A, B, C at ");
  }

  @Test
  void eachIsNamedByWhatItHasThatTheSlidersHaveNot() {
    open(BenchOnScreen.SIZES.get(1));
    bench.click("#keep");
    assertThat(name("A")).isEqualTo("Reference: as it stands on the sliders");
    bench.slider("wedge").sendKeys(Keys.ARROW_RIGHT);
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    String mass = bench.text("[data-slider=mass] .number");
    assertThat(name("A"))
        .matches(
            "Reference: wedge \\d\\.\\d°, deck nose-(up|down); rider \\d+\u00a0kg.*|"
                + "Reference: no mast wedge; rider \\d+\u00a0kg.*");
    assertThat(name("A")).contains("rider " + (Integer.parseInt(mass) - 1));
    bench.choose("measures", "imperial");
    bench.awaitDrawn();
    bench.await("return document.querySelectorAll('#kept-heads th').length === 3");
    assertThat(name("A")).contains("lb").doesNotContain("kg");
  }

  @Test
  void movingASliderAsksForTheLiveOneAlone() {
    open(BenchOnScreen.SIZES.get(2));
    keepThree();
    bench.driver().executeScript(COUNT_CURVES);
    for (int i = 0; i < 5; i++) {
      bench.slider("track").sendKeys(Keys.ARROW_RIGHT);
      bench.awaitDrawn();
    }
    assertThat(bench.number("return curvesAsked")).isEqualTo(5);
  }

  @Test
  void theTableReadsWhatTheReadingsReadAndItsDifferencesAddUp() {
    open(BenchOnScreen.SIZES.get(1));
    String before = bench.reading("power");
    bench.click("#keep");
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    int row = texts("#kept-rows th").indexOf("Power W") + 1;
    String cell = "#kept-rows tr:nth-child(" + row + ") td:nth-child(";
    assertThat(bench.text(cell + "2) .value")).isEqualTo(bench.reading("power"));
    assertThat(bench.text(cell + "3) .value")).isEqualTo(before);
    bench.slider("speed").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    assertThat(bench.text(cell + "2) .value")).isEqualTo(bench.reading("power"));
    assertThat(bench.text(cell + "3) .value")).isNotEqualTo(before);
    assertThat(bench.text(cell + "2) .more")).matches("alike|[+\u2212]?\\d+");
  }

  @Test
  void whatBandsSwallowIsSaidInAWord() {
    open(BenchOnScreen.SIZES.get(1));
    bench.click("#keep");
    bench.slider("wedge").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.click("#keep");
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.await(SHOWN);
    // B and A are the same but for the deck's angle: the power of both is one and the same.
    bench.await("return document.documentElement.dataset.apart === 'shown'");
    int row = texts("#kept-rows th").indexOf("Power W") + 1;
    bench.await(
        "return document.querySelector('#kept-rows tr:nth-child("
            + row
            + ") td:nth-child(4) .more').textContent === 'alike'");
    assertThat(bench.find("#kept-alike").isDisplayed()).isTrue();
    assertThat(bench.text("#kept-rows tr:first-child td:nth-child(4) .more"))
        .as("the wedge itself is no doubt of the gear")
        .matches("alike|[+\u2212]\\d\\.\\d");
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void byKeysAloneOneIsPinnedTakenAndRemoved(int[] size) {
    open(size);
    bench.tabTo("#keep");
    bench.press(Keys.ENTER);
    String first = bench.spoken("track");
    bench.slider("track").sendKeys(Keys.ARROW_RIGHT, Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    bench.tabTo("#keep");
    bench.press(Keys.ENTER);
    bench.slider("track").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    String third = bench.spoken("track");
    if (size[0] < 720) {
      bench.tabTo("#kept-fold > summary");
      bench.press(Keys.ENTER);
      bench.await("return document.querySelector('[data-kept=B]') !== null");
    }
    bench.tabTo("[data-kept=B] .kept-name");
    bench.press(Keys.ENTER);
    bench.tabTo("[data-kept=B] .tool");
    bench.press(Keys.SPACE);
    assertThat(bench.text("#kept-heads")).contains("B, the reference").doesNotContain("A, the");
    assertThat(bench.hasFocus("[data-kept=B] .tool")).isTrue();
    bench.press(Keys.SHIFT, Keys.TAB);
    bench.tabTo("[data-kept=A] .kept-name");
    bench.press(Keys.ENTER);
    bench.tabTo("[data-kept=A] .tool:nth-child(2)");
    bench.press(Keys.ENTER);
    bench.awaitDrawn();
    assertThat(bench.spoken("track")).isEqualTo(first);
    bench.press(Keys.chord(Keys.CONTROL, "z"));
    bench.awaitDrawn();
    assertThat(bench.spoken("track")).isEqualTo(third);
    bench.tabTo("[data-kept=A] .tool:nth-child(3)");
    bench.press(Keys.ENTER);
    assertThat(bench.text("#kept-count").replace('\u00a0', ' ')).startsWith("B at ");
    assertThat(bench.hasFocus("[data-kept=B] .kept-name")).isTrue();
    bench.remove("B");
    assertThat(bench.find("#kept").isDisplayed()).isFalse();
    assertThat(bench.hasFocus("#keep")).isTrue();
  }

  @Test
  void theyOutliveAReload() {
    open(BenchOnScreen.SIZES.get(2));
    keepThree();
    bench.useKept("B", 1);
    String name = name("C");
    bench.driver().executeScript("window.dispatchEvent(new Event('pagehide'))");
    bench.driver().navigate().refresh();
    bench.awaitDrawn();
    bench.await("return document.querySelectorAll('#kept-heads th').length === 5");
    assertThat(name("C")).isEqualTo(name);
    assertThat(bench.text("#kept-heads")).contains("B, the reference");
  }

  @Test
  void casesOfTheShelfAreKeptByTheirNamesInTheAddress() {
    size(BenchOnScreen.SIZES.get(2));
    bench.openFresh("?case=light-carver&kept=heavy-beginner&kept=no-such-case");
    bench.await("return document.querySelectorAll('#kept-heads th').length === 3");
    assertThat(bench.text("#kept-trouble")).contains("no-such-case", "cannot be opened");
    assertThat(name("A")).contains("beginner");
  }

  @Test
  void anotherPageHandsSetupsOver() {
    size(BenchOnScreen.SIZES.get(2));
    bench.openFresh("?case=light-carver");
    String hand =
        """
        const done = arguments[arguments.length - 1];
        const data = JSON.parse(document.getElementById('bench-data').textContent);
        const headers = { 'Content-Type': 'application/json',
          [document.querySelector('meta[name=csrf-header]').content]:
            document.querySelector('meta[name=csrf-token]').content };
        const text = async (kg) => (await fetch('/bench/export', { method: 'POST', headers,
          body: JSON.stringify({ kind: 'yaml', measures: 'metric',
            fields: { ...data.case.fields, 'rider.mass_kg': String(kg) } }) })).text();
        Promise.all([import('/bench/kept-outside.js'), text(61), text(72), text(83), text(94)])
          .then(([{ handToBench }, ...texts]) => done(handToBench(texts)));
        """;
    String address = (String) bench.driver().executeAsyncScript(hand);
    assertThat(address).isEqualTo("/");
    bench.open("");
    bench.await("return document.querySelectorAll('#kept-heads th').length === 5");
    bench.awaitDrawn();
    assertThat(bench.text("[data-slider=mass] .number")).isEqualTo("61");
    assertThat(name("A")).contains("rider 72");
    assertThat(name("B")).contains("rider 83");
    assertThat(name("C")).contains("rider 94");
    bench.open("");
    bench.await("return document.querySelectorAll('#kept-heads th').length === 5");
    assertThat(bench.text("[data-slider=mass] .number")).as("handed over once").isEqualTo("61");
  }

  private static void keepThree() {
    bench.click("#keep");
    for (String slider : List.of("track", "wedge")) {
      bench.slider(slider).sendKeys(Keys.ARROW_RIGHT);
      bench.awaitDrawn();
      bench.click("#keep");
    }
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
  }

  private static String name(String letter) {
    return bench.text("[data-kept=" + letter + "] .kept-words");
  }

  @SuppressWarnings("unchecked")
  private static List<String> texts(String selector) {
    return (List<String>)
        bench
            .driver()
            .executeScript(
                "return [...document.querySelectorAll(arguments[0])].map((e) =>"
                    + " e.textContent.trim())",
                selector);
  }

  private static void open(int[] size) {
    size(size);
    bench.openFresh("?case=light-carver");
  }
}
