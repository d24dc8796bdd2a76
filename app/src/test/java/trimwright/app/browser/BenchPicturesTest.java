package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.support.ui.WebDriverWait;
import trimwright.exchange.demo.DemoCases;
import trimwright.web.RunningShop;
import trimwright.web.ShopApplication;

/**
 * The Bench's pictures as Chromium draws them: to scale, arrows as long as the forces, words that
 * neither lie on one another nor move, files that stand alone.
 */
class BenchPicturesTest {
  /** Width and height of the side view on a phone, a tablet and a large desk [px]. */
  private static final int[][] SIDE_SIZES = {{356, 220}, {780, 300}, {900, 400}};

  /** The same of the curves; a phone shows one of them at a time. */
  private static final int[][] CURVE_SIZES = {{356, 220}, {460, 420}, {640, 330}};

  /** Themes that differ in the size of letters; a phone's are as large as those in sun. */
  private static final List<String> SIZES_OF_LETTERS = List.of("light", "sun");

  private static final List<String> QUANTITIES =
      List.of("pitch_deg", "foot_share", "legs", "electric_power_w");

  /** Coordinates are written with two decimals; a length has two ends with two coordinates each. */
  private static final double WRITTEN = 0.03;

  /** Below this length an arrow has no room for a shaft, and a hair's breadth is not drawn [px]. */
  private static final double DRAWN_FROM = 0.6;

  /**
   * What the arrows leave out, as a share of the weight: buoyancy (about 4 %) and the upright parts
   * of the drags.
   */
  private static final double NOT_DRAWN = 0.08;

  /** Times that a drag may be begun, and that its outcome is looked at. */
  private static final int HOLDS = 4;

  private static final int LOOKS = 100;

  private static final Duration PATIENCE = Duration.ofSeconds(20);

  private static RunningShop shop;
  private static Browser browser;
  @TempDir private static Path folder;
  @TempDir private static Path downloads;

  @BeforeAll
  static void open() {
    shop = ShopApplication.start(0, folder);
    browser = Browser.start();
    browser.setSize(1280, 900);
    driver().manage().timeouts().scriptTimeout(PATIENCE.multipliedBy(3));
    driver()
        .executeCdpCommand(
            "Browser.setDownloadBehavior",
            Map.of("behavior", "allow", "downloadPath", downloads.toString()));
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

  @AfterEach
  void nothingWasComplainedOf() {
    assertThat(browser.complaints()).isEmpty();
  }

  static Stream<String> demoCases() {
    return DemoCases.list().stream().map(demo -> demo.id());
  }

  @ParameterizedTest
  @MethodSource("demoCases")
  void noWordOfTheSideViewLiesOnAnotherOrLeavesThePicture(String id) throws IOException {
    show(id);
    for (int[] size : SIDE_SIZES) {
      for (String theme : SIZES_OF_LETTERS) {
        assertThat(faults("side", size, theme, List.of())).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @MethodSource("demoCases")
  void noWordOfTheCurvesLiesOnAnotherOrLeavesThePicture(String id) throws IOException {
    show(id);
    for (int[] size : CURVE_SIZES) {
      boolean isPhone = size == CURVE_SIZES[0];
      for (List<String> together :
          isPhone ? QUANTITIES.stream().map(List::of).toList() : List.of(threeOf(QUANTITIES))) {
        for (String theme : SIZES_OF_LETTERS) {
          assertThat(faults("curves", size, theme, together)).isEmpty();
        }
      }
    }
  }

  private static List<String> threeOf(List<String> all) {
    return List.of(all.get(0), all.get(1), all.get(3));
  }

  @ParameterizedTest
  @MethodSource("demoCases")
  void wordsKeepTheirPlacesWhileTheSpeedMoves(String id) throws IOException {
    show(id);
    for (int[] size : SIDE_SIZES) {
      assertThat(list("return benchPictures.places(...arguments)", size[0], size[1])).hasSize(1);
    }
  }

  @ParameterizedTest
  @MethodSource("demoCases")
  void theSideViewIsToScale(String id) throws IOException {
    show(id);
    for (int[] size : SIDE_SIZES) {
      for (double share : new double[] {0, 0.5, 1}) {
        Map<?, ?> seen =
            (Map<?, ?>) run("return benchPictures.scale(...arguments)", share, size[0], size[1]);
        double perMetre = number(seen, "perMetre");
        double perNewton = number(seen, "perNewton");
        assertThat(number(seen, "mastPixels"))
            .isCloseTo(perMetre * number(seen, "mastMillimetres") / 1000, within(2 * WRITTEN));
        assertThat(number(seen, "barPixels"))
            .isCloseTo(perMetre * number(seen, "barMillimetres") / 1000, within(WRITTEN));
        assertThat(number(seen, "arrowPixels"))
            .isCloseTo(perNewton * number(seen, "arrowNewtons"), within(WRITTEN));
        arrowsAreAsLongAsTheForces((List<?>) seen.get("forces"), perNewton);
      }
    }
  }

  private static void arrowsAreAsLongAsTheForces(List<?> forces, double perNewton) {
    assertThat(forces).hasSizeGreaterThanOrEqualTo(4);
    double up = 0;
    double weight = 0;
    for (Object entry : forces) {
      Map<?, ?> force = (Map<?, ?>) entry;
      double pixels = number(force, "pixels");
      assertThat(pixels)
          .as("%s", force.get("kind"))
          .isGreaterThan(DRAWN_FROM)
          .isCloseTo(perNewton * number(force, "newtons"), within(WRITTEN));
      double upright = number(force, "upPixels") / perNewton;
      up += upright;
      String kind = (String) force.get("kind");
      weight -= kind.endsWith("foot-load") || kind.equals("gear-weight") ? upright : 0;
    }
    assertThat(weight).isGreaterThan(0);
    assertThat(up).isCloseTo(0, within(NOT_DRAWN * weight));
  }

  @Test
  void iconsOfOneSizeAreToOneScale() throws IOException {
    show("heavy-beginner");
    List<?> icons = list("return benchPictures.planforms()");
    assertThat(icons).hasSize(3);
    double perMetre = number((Map<?, ?>) icons.get(0), "perMetre");
    for (Object entry : icons) {
      Map<?, ?> icon = (Map<?, ?>) entry;
      assertThat(number(icon, "perMetre")).isEqualTo(perMetre);
      assertThat(number(icon, "width"))
          .isCloseTo(perMetre * number(icon, "metres"), within(2 * WRITTEN));
    }
  }

  @Test
  void aPinnedReferenceIsDottedAndInsideThePicture() throws IOException {
    show("light-carver");
    for (int[] size : SIDE_SIZES) {
      Map<?, ?> seen =
          (Map<?, ?>) run("return benchPictures.pinned(...arguments)", size[0], size[1]);
      assertThat((List<?>) seen.get("found")).isEmpty();
      assertThat(number(seen, "outlines")).isEqualTo(5);
      assertThat(number(seen, "curves")).isEqualTo(3);
      assertThat(number(seen, "left")).isZero();
    }
  }

  @Test
  void aSpeedWithoutATrimShowsTheLevelCraftAndTheReason() throws IOException {
    show("heavy-beginner");
    Map<?, ?> seen = (Map<?, ?>) run("return benchPictures.noTrim()");
    assertThat(number(seen, "arrows")).isZero();
    assertThat((String) seen.get("transform")).endsWith("rotate(0)");
    assertThat((String) seen.get("words")).contains((String) seen.get("reason"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"side", "curves"})
  void aSavedPictureStandsAlone(String kind) throws IOException {
    show("light-carver");
    Map<?, ?> saved = (Map<?, ?>) run("return benchPictures.saved(arguments[0])", kind);
    String text = (String) saved.get("text");
    assertThat((String) saved.get("fault")).isEmpty();
    assertThat(saved.get("root")).isEqualTo("svg");
    assertThat(saved.get("namespace")).isEqualTo("http://www.w3.org/2000/svg");
    assertThat((String) saved.get("title")).contains("Light carver");
    List<?> attributes = (List<?>) saved.get("attributes");
    assertThat(attributes.stream().map(Object::toString).toList())
        .contains("width", "height", "viewBox", "font-family", "font-size", "fill", "stroke")
        .doesNotContain("class", "style", "id", "href");
    assertThat(text).doesNotContain("var(", "currentColor", "<style", "url(", "NaN", "undefined");
  }

  @Test
  void aPictureIsSavedAsAFileOfEitherKind() throws IOException {
    show("light-carver");
    for (String kind : List.of("svg", "png")) {
      run("return benchPictures.save(...arguments)", kind, "light carver side view");
    }
    // Which speed is shown depends on where the case begins to fly.
    String name = "light-carver-side-view-" + run("return benchPictures.savedSpeed()") + "-km-h";
    Path svg = await(name + ".svg");
    assertThat(Files.readString(svg)).startsWith("<?xml").contains("<svg", "</svg>");
    // Twice the picture with its rim: width 356 + 2 x 16.
    ByteBuffer png = ByteBuffer.wrap(Files.readAllBytes(await(name + ".png")));
    assertThat(png.getInt(0)).isEqualTo(0x89504E47);
    assertThat(png.getInt(16)).isEqualTo(2 * (356 + 32));
  }

  @Test
  void numbersComeBackAsTheyWereInEveryUnit() throws IOException {
    show("light-carver");
    assertThat(list("return benchPictures.roundTrips()")).isEmpty();
    assertThat(list("return benchPictures.texts('metric')"))
        .isEqualTo(
            List.of(
                "0.0",
                "−0.1",
                "1.01",
                "3",
                "–",
                "25.0\u00A0km/h",
                "254\u00A0mm",
                "level",
                "1.3° nose-down",
                "10",
                "0.5",
                "254"));
    assertThat(list("return benchPictures.texts('imperial')").subList(5, 12))
        .isEqualTo(
            List.of(
                "15.5\u00A0mph", "10.0\u00A0in", "level", "1.3° nose-down", "254", "0.5", "10"));
  }

  @Test
  void theUprightLineMovesByKeysAndPointer() throws IOException {
    show("light-carver");
    Map<?, ?> start = (Map<?, ?>) run("return benchPictures.keepCurves(460, 420)");
    int index = (int) number(start, "index");
    int last = (int) number(start, "last");
    WebElement handle = driver().findElement(By.id("kept-handle"));
    assertThat(handle.getDomAttribute("role")).isEqualTo("slider");
    assertThat(afterKey(handle, Keys.ARROW_RIGHT)).isEqualTo(index + 1);
    assertThat(afterKey(handle, Keys.ARROW_DOWN)).isEqualTo(index);
    assertThat(afterKey(handle, Keys.PAGE_UP)).isEqualTo(index + 5);
    assertThat(handle.getDomAttribute("aria-valuetext")).contains("km/h", "nose-up", "front foot");
    assertThat(afterKey(handle, Keys.END)).isEqualTo(last);
    assertThat(handle.getDomAttribute("aria-valuenow"))
        .isEqualTo(handle.getDomAttribute("aria-valuemax"));
    assertThat(afterKey(handle, Keys.HOME)).isZero();
    int width = handle.getSize().width;
    Actions hand = new Actions(driver());
    // Under its driver the browser now and then drops a drag that it has just begun.
    boolean dragged = false;
    for (int hold = 0; hold < HOLDS && !dragged; hold++) {
      hand.release().moveToElement(handle).clickAndHold().perform();
      assertThat(comesToChoose(last / 2)).isTrue();
      hand.moveByOffset(width / 4, 3).perform();
      dragged = comesToChoose(0.75 * last);
    }
    assertThat(dragged).isTrue();
    hand.release().moveByOffset(-width / 4, 0).perform();
    assertThat((double) chosen()).isCloseTo(0.75 * last, within(0.6));
    run("benchPictures.dropCurves()");
  }

  @Test
  void theUprightAxesStandWhileASliderMovesALittle() throws IOException {
    show("heavy-beginner");
    List<?> seen =
        list(
            "return benchPictures.axes('rider.mass_kg', arguments[0])",
            List.of(105, 106, 108, 104, 103, 105));
    assertThat(seen).hasSize(6);
    assertThat(Set.copyOf(seen)).hasSize(1);
  }

  @Test
  void theTableBehindThePicturesHoldsEverySpeed() throws IOException {
    show("light-carver");
    Map<?, ?> table = (Map<?, ?>) run("return benchPictures.table()");
    int columns = ((List<?>) table.get("heads")).size();
    List<?> rows = (List<?>) table.get("rows");
    assertThat(rows).hasSize(31);
    for (Object entry : rows) {
      Map<?, ?> row = (Map<?, ?>) entry;
      boolean trims = row.get("note").equals("");
      assertThat((List<?>) row.get("cells")).hasSize(trims ? columns : 1);
    }
  }

  private static int afterKey(WebElement handle, Keys key) {
    handle.sendKeys(key);
    return chosen();
  }

  /** Whether the picture asks for a speed soon: a pointer's moves come with the next frames. */
  private static boolean comesToChoose(double index) {
    for (int look = 0; look < LOOKS; look++) {
      if (Math.abs(chosen() - index) < 0.6) {
        return true;
      }
    }
    return false;
  }

  private static int chosen() {
    return ((Number) run("return keptCurves.chosen()")).intValue();
  }

  private static Path await(String file) {
    Path path = downloads.resolve(file);
    new WebDriverWait(driver(), PATIENCE).until(d -> Files.exists(path));
    return path;
  }

  /** Opens a case and brings the measuring script into its page. */
  private static void show(String id) throws IOException {
    driver().get(shop.address() + "?case=" + id);
    try (InputStream in = BenchPicturesTest.class.getResourceAsStream("bench-pictures.js")) {
      String script = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(driver().executeAsyncScript(script)).isEqualTo("");
    }
  }

  private static List<?> faults(String kind, int[] size, String theme, List<String> quantities) {
    return list(
        "return benchPictures.everySpeed(...arguments)", kind, size[0], size[1], theme, quantities);
  }

  private static Object run(String script, Object... arguments) {
    return driver().executeScript(script, arguments);
  }

  private static List<?> list(String script, Object... arguments) {
    return (List<?>) run(script, arguments);
  }

  private static double number(Map<?, ?> from, String key) {
    return ((Number) from.get(key)).doubleValue();
  }

  private static ChromeDriver driver() {
    return browser.driver();
  }
}
