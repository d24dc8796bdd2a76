package trimwright.app.browser;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.openqa.selenium.Keys;
import org.openqa.selenium.interactions.Actions;
import org.openqa.selenium.interactions.Pause;
import org.openqa.selenium.interactions.PointerInput;
import org.openqa.selenium.interactions.Sequence;

/**
 * Moves each slider of a running Bench by real keys and by a real pointer, and says how long the
 * picture takes to follow. {@code bench/sliders} builds what this needs and calls it; {@code
 * slider-clock.js} says what is timed.
 */
final class SliderTimes {
  private static final int WIDTH = 1280;
  private static final int HEIGHT = 900;
  private static final int DELAY_MS = 100;

  /** Time between two places of the dragged pointer; a hand and a screen are about as quick. */
  private static final Duration DRAG_STEP = Duration.ofMillis(33);

  private static final int DRAG_STEPS_AT_ONCE = 50;

  /** A drag that has come so many times as far as it should is following nothing. */
  private static final int MOST_STEPS_A_MOVE = 5;

  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private static final String WHEN_SETTLED =
      "const done = arguments[0]; const r = document.documentElement.dataset;"
          + "const look = () => r.ready !== undefined && r.asked === r.drawn"
          + " && sliderClock.open.length === 0"
          + " ? requestAnimationFrame(() => setTimeout(done, 0)) : setTimeout(look, 10);"
          + "look();";

  private final Browser browser;
  private final int moves;

  private SliderTimes(Browser browser, int moves) {
    this.browser = browser;
    this.moves = moves;
  }

  /**
   * Measures.
   *
   * @param args the Bench's address, moves per slider and way, the permitted 95th percentile [ms],
   *     seconds to wait before the first move
   */
  public static void main(String[] args) throws Exception {
    int limit = Integer.parseInt(args[2]);
    boolean isQuick;
    try (Browser browser = Browser.start()) {
      SliderTimes times = new SliderTimes(browser, Integer.parseInt(args[1]));
      times.open(args[0]);
      Thread.sleep(Duration.ofSeconds(Integer.parseInt(args[3])).toMillis());
      isQuick = times.measureAll(limit);
    }
    System.exit(isQuick ? 0 : 1);
  }

  private void open(String address) throws IOException {
    browser.driver().manage().timeouts().scriptTimeout(PATIENCE);
    browser.setSize(WIDTH, HEIGHT);
    browser.driver().get(address);
    try (InputStream clock = SliderTimes.class.getResourceAsStream("slider-clock.js")) {
      script("{" + new String(clock.readAllBytes(), StandardCharsets.UTF_8) + "}");
    }
    settle();
  }

  private boolean measureAll(int limit) {
    boolean isQuick = true;
    System.out.printf(
        "%-8s %-22s %6s %8s %8s %8s%n", "slider", "moved by", "moves", "median", "95 %", "longest");
    for (String name : names()) {
      isQuick &= report(name, "keys", keys(name)) <= limit;
      isQuick &= report(name, "pointer", drag(name)) <= limit;
    }
    delay(DELAY_MS);
    for (String name : names()) {
      report(name, "pointer, " + DELAY_MS + " ms later", drag(name));
    }
    delay(0);
    System.out.printf(
        "older states that replaced newer ones: %d; said that it is catching up: %s%n",
        ((Number) script("return sliderClock.backwards")).intValue(),
        script("return sliderClock.saidSo"));
    return isQuick;
  }

  private List<String> names() {
    return strings(
        "return [...document.querySelectorAll('[data-slider]')].map(s => s.dataset.slider)");
  }

  /** One press after the other, each when the one before is on the screen. */
  private double[] keys(String name) {
    begin(name);
    Keys towards = Keys.ARROW_RIGHT;
    for (int done = 0; done < moves; done++) {
      if (isAtEnd(name, towards)) {
        towards = towards == Keys.ARROW_RIGHT ? Keys.ARROW_LEFT : Keys.ARROW_RIGHT;
      }
      new Actions(browser.driver()).sendKeys(towards).perform();
      settle();
    }
    return end(name);
  }

  private boolean isAtEnd(String name, Keys towards) {
    String end = towards == Keys.ARROW_RIGHT ? "max" : "min";
    return (boolean) script("const s = " + range(name) + "; return s.value === s." + end);
  }

  /**
   * To and fro at the speed of a hand, whether or not the picture follows. The knob is taken hold
   * of anew every now and then: longer words above it may have moved it away under the hand, and a
   * pointer that is not a real one loses it then.
   */
  private double[] drag(String name) {
    begin(name);
    PointerInput pointer = new PointerInput(PointerInput.Kind.MOUSE, "hand");
    boolean rightwards = true;
    for (int tries = 0; count() < moves; tries++) {
      if (tries * DRAG_STEPS_AT_ONCE > MOST_STEPS_A_MOVE * moves) {
        throw new IllegalStateException("the slider " + name + " does not follow the pointer");
      }
      Track track = track(name);
      double at = track.knob();
      double step = rightwards ? track.step() : -track.step();
      Sequence drag = new Sequence(pointer, 0);
      drag.addAction(place(pointer, track, at));
      drag.addAction(pointer.createPointerDown(PointerInput.MouseButton.LEFT.asArg()));
      for (int i = 0; i < DRAG_STEPS_AT_ONCE; i++) {
        if (at + step > track.right() || at + step < track.left()) {
          step = -step;
        }
        at += step;
        drag.addAction(place(pointer, track, at));
        drag.addAction(new Pause(pointer, DRAG_STEP));
      }
      drag.addAction(pointer.createPointerUp(PointerInput.MouseButton.LEFT.asArg()));
      browser.driver().perform(List.of(drag));
      rightwards = step > 0;
    }
    return end(name);
  }

  private static org.openqa.selenium.interactions.Interaction place(
      PointerInput pointer, Track track, double x) {
    return pointer.createPointerMove(
        Duration.ZERO, PointerInput.Origin.viewport(), (int) Math.round(x), (int) track.height());
  }

  /**
   * Where a slider lies [px].
   *
   * @param left its knob's place at the first notch
   * @param right its knob's place at the last notch
   * @param height its middle's distance from the top
   * @param knob its knob's place
   * @param step way to the next notch, or a little more where notches lie closer than pixels
   */
  private record Track(double left, double right, double height, double knob, double step) {}

  private Track track(String name) {
    @SuppressWarnings("unchecked")
    Map<String, Number> box =
        (Map<String, Number>)
            script(
                "const s = "
                    + range(name)
                    + "; const b = s.getBoundingClientRect(); return {x: b.x, y: b.y, w: b.width,"
                    + " h: b.height, least: +s.min, most: +s.max, at: +s.value}");
    double half = Math.min(12, box.get("h").doubleValue() / 2);
    double left = box.get("x").doubleValue() + half;
    double right = left + box.get("w").doubleValue() - 2 * half;
    double span = box.get("most").doubleValue() - box.get("least").doubleValue();
    double notch = (right - left) / span;
    double knob = left + notch * (box.get("at").doubleValue() - box.get("least").doubleValue());
    double height = box.get("y").doubleValue() + box.get("h").doubleValue() / 2;
    return new Track(left, right, height, knob, Math.max(notch, 2));
  }

  private void begin(String name) {
    script(range(name) + ".scrollIntoView({block: 'center'}); " + range(name) + ".focus()");
    settle();
    script("sliderClock.times = []");
  }

  /** The times, with the slider back where it was. */
  private double[] end(String name) {
    settle();
    @SuppressWarnings("unchecked")
    List<Number> times = (List<Number>) script("return sliderClock.times");
    script("document.querySelector('[data-slider=" + name + "] .back').click()");
    settle();
    return times.stream().mapToDouble(Number::doubleValue).limit(moves).sorted().toArray();
  }

  private int count() {
    return ((Number) script("return sliderClock.times.length")).intValue();
  }

  /**
   * Waits until the page shows all that was asked of it, and the frame that does so is painted. The
   * page itself says so: to ask it again and again would take from the processors what is measured.
   */
  private void settle() {
    browser.driver().executeAsyncScript(WHEN_SETTLED);
  }

  /** Each answer later by that much, as over a slow network. */
  private void delay(int milliseconds) {
    browser.driver().executeCdpCommand("Network.enable", Map.of());
    browser
        .driver()
        .executeCdpCommand(
            "Network.emulateNetworkConditions",
            Map.of(
                "offline",
                false,
                "latency",
                milliseconds,
                "downloadThroughput",
                -1,
                "uploadThroughput",
                -1));
  }

  private static double report(String name, String way, double[] sorted) {
    double p95 = sorted[(int) Math.ceil(0.95 * sorted.length) - 1];
    System.out.printf(
        Locale.ROOT,
        "%-8s %-22s %6d %5.1f ms %5.1f ms %5.1f ms%n",
        name,
        way,
        sorted.length,
        sorted[sorted.length / 2],
        p95,
        Arrays.stream(sorted).max().orElseThrow());
    return p95;
  }

  private static String range(String name) {
    return "document.getElementById('slider-" + name + "')";
  }

  @SuppressWarnings("unchecked")
  private List<String> strings(String script) {
    return (List<String>) script(script);
  }

  private Object script(String script) {
    return browser.driver().executeScript(script);
  }
}
