package trimwright.app.browser;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.logging.Level;
import java.util.stream.Stream;
import org.openqa.selenium.chrome.ChromeDriver;
import org.openqa.selenium.chrome.ChromeDriverService;
import org.openqa.selenium.chrome.ChromeOptions;
import org.openqa.selenium.logging.LogType;
import org.openqa.selenium.logging.LoggingPreferences;

/**
 * Chromium without a screen, from the packages of the machine. Where one is missing the test fails:
 * a page that was not looked at was not proved.
 */
final class Browser implements AutoCloseable {
  private static final String CHROMIUM = "/usr/bin/chromium";
  private static final String DRIVER = "/usr/bin/chromedriver";
  private static final Duration PAGE_LOAD = Duration.ofSeconds(30);

  private final Path profile;
  private final ChromeDriver driver;

  private Browser(Path profile, ChromeDriver driver) {
    this.profile = profile;
    this.driver = driver;
  }

  /**
   * Starts a browser with an empty profile.
   *
   * @param more arguments for this one alone
   */
  static Browser start(String... more) {
    for (String needed : List.of(CHROMIUM, DRIVER)) {
      if (!Files.isExecutable(Path.of(needed))) {
        throw new AssertionError(
            needed + " is missing: install the packages chromium and chromium-driver");
      }
    }
    // The driver's own helper would otherwise look for downloads.
    System.setProperty("se.offline", "true");
    System.setProperty("se.avoid-stats", "true");
    try {
      Path profile = Files.createTempDirectory("trimwright-browser-");
      ChromeDriverService service =
          new ChromeDriverService.Builder()
              .usingDriverExecutable(new File(DRIVER))
              .usingAnyFreePort()
              .withSilent(true)
              .build();
      ChromeDriver driver = new ChromeDriver(service, options(profile).addArguments(more));
      driver.manage().timeouts().pageLoadTimeout(PAGE_LOAD);
      return new Browser(profile, driver);
    } catch (IOException e) {
      throw new UncheckedIOException("no folder for the browser's profile", e);
    }
  }

  private static ChromeOptions options(Path profile) {
    ChromeOptions options = new ChromeOptions();
    options.setBinary(CHROMIUM);
    options.addArguments(
        "--headless=new",
        "--no-sandbox",
        "--disable-gpu",
        "--disable-quic",
        "--no-first-run",
        "--disable-background-networking",
        "--disable-component-update",
        "--disable-sync",
        "--hide-scrollbars",
        "--user-data-dir=" + profile);
    LoggingPreferences logs = new LoggingPreferences();
    logs.enable(LogType.BROWSER, Level.ALL);
    options.setCapability(ChromeOptions.LOGGING_PREFS, logs);
    return options;
  }

  /** Sets the page's own size, which on narrow sizes is smaller than any window can be. */
  void setSize(int width, int height) {
    driver.executeCdpCommand(
        "Emulation.setDeviceMetricsOverride",
        Map.of("width", width, "height", height, "deviceScaleFactor", 1, "mobile", false));
  }

  /**
   * What the browser complained about since the last call, such as breaches of the page's policy.
   */
  List<String> complaints() {
    return driver.manage().logs().get(LogType.BROWSER).getAll().stream()
        .filter(entry -> entry.getLevel().intValue() >= Level.WARNING.intValue())
        .map(Object::toString)
        .toList();
  }

  ChromeDriver driver() {
    return driver;
  }

  @Override
  public void close() {
    driver.quit();
    try (Stream<Path> files = Files.walk(profile)) {
      files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
    } catch (IOException e) {
      throw new UncheckedIOException("the browser's profile cannot be removed", e);
    }
  }
}
