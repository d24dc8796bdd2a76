package trimwright.app.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.openqa.selenium.By;
import org.openqa.selenium.Keys;
import org.openqa.selenium.WebElement;
import org.openqa.selenium.support.ui.WebDriverWait;
import org.w3c.dom.Element;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.Reading;
import trimwright.exchange.read.SectionFiles;

/** What goes into the Bench and what comes out: files, the shelf, pictures and the sheet. */
class BenchFilesBrowserTest extends BenchBrowser {
  private static final Duration PATIENCE = Duration.ofSeconds(20);

  @TempDir private Path downloads;
  @TempDir private Path folder;

  @BeforeEach
  void open() {
    bench
        .driver()
        .executeCdpCommand(
            "Browser.setDownloadBehavior",
            Map.of("behavior", "allow", "downloadPath", downloads.toString()));
    size(BenchOnScreen.SIZES.get(1));
    bench.openFresh("?case=light-carver");
  }

  @Test
  void aCaseThatIsExportedAndImportedIsTheSame() throws IOException {
    bench.slider("shim").sendKeys(Keys.ARROW_RIGHT);
    bench.slider("mass").sendKeys(Keys.ARROW_RIGHT);
    bench.awaitDrawn();
    String pitch = bench.reading("pitch");
    String shim = bench.spoken("shim");
    bench.click("#save");
    bench.click("[data-export=yaml]");
    Path file = downloaded(".yaml");
    String text = Files.readString(file);
    assertThat(CaseReader.read(text, SectionFiles.NONE)).isInstanceOf(Reading.Accepted.class);
    bench.openFresh("?case=heavy-beginner");
    importFile(file);
    bench.awaitDrawn();
    assertThat(bench.spoken("shim")).isEqualTo(shim);
    assertThat(bench.reading("pitch")).isEqualTo(pitch);
    bench.click("#undo");
    bench.awaitDrawn();
    assertThat(bench.text("#case-title")).isEqualTo(title("heavy-beginner"));
  }

  @Test
  void aBadFileIsRefusedInWordsAndNothingIsLost() throws IOException {
    String good = DemoCases.find("light-carver").orElseThrow().text();
    String bad = good.replaceAll("salinity_g_kg: *[0-9.]+", "salinity_g_kg: 80");
    assertThat(bad).isNotEqualTo(good);
    importFile(Files.writeString(folder.resolve("mine.yaml"), bad));
    bench.await("return document.querySelector('#file-problems li') !== null");
    assertThat(bench.text("#file-problems")).contains("Line ", "80", "42");
    assertThat(bench.violations()).isEmpty();
    bench.press(Keys.ESCAPE);
    assertThat(bench.text("#case-title")).isEqualTo(title("light-carver"));
  }

  @Test
  void aCaseIsSavedOnTheShelfAndOpenedAgain() {
    bench.slider("wedge").sendKeys(Keys.ARROW_LEFT);
    bench.awaitDrawn();
    String wedge = bench.spoken("wedge");
    assertThat(bench.text("#sign")).isEqualTo("changed");
    saveAs("Tuesday's try");
    bench.await("return document.getElementById('save-said').textContent.includes('Saved')");
    bench.press(Keys.ESCAPE);
    assertThat(bench.text("#sign")).isEqualTo("saved");
    assertThat(bench.text("#case-title")).isEqualTo("Tuesday's try");
    bench.openFresh("?case=heavy-beginner");
    saveAs("Tuesday's try");
    bench.await("return !document.getElementById('save-replace').hidden");
    assertThat(bench.text("#save-said")).contains("Tuesday's try");
    bench.press(Keys.ESCAPE);
    bench.click("#open");
    WebElement item =
        bench
            .driver()
            .findElement(
                By.xpath("//button[contains(@class,'shelf-item')][contains(.,'Tuesday')]"));
    item.click();
    bench.awaitDrawn();
    bench.await("return document.getElementById('case-title').textContent.includes('Tuesday')");
    bench.awaitDrawn();
    assertThat(bench.spoken("wedge")).isEqualTo(wedge);
  }

  @ParameterizedTest
  @CsvSource({"side, svg", "side, png", "curves, svg", "curves, png"})
  void picturesAreSaved(String picture, String kind) throws Exception {
    WebElement button = bench.find("[data-save=" + picture + "][data-kind=" + kind + "]");
    bench.driver().executeScript("arguments[0].scrollIntoView({block: 'center'})", button);
    button.click();
    Path file = downloaded("." + kind);
    assertThat(file.getFileName().toString()).contains("km-h");
    if (kind.equals("png")) {
      assertThat(ImageIO.read(file.toFile()).getWidth()).isGreaterThan(600);
      return;
    }
    Element svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(Files.readAllBytes(file)))
            .getDocumentElement();
    assertThat(svg.getTagName()).isEqualTo("svg");
    assertThat(svg.getAttribute("viewBox")).isNotEmpty();
    assertThat(svg.getElementsByTagName("title").getLength()).isPositive();
    assertThat(Files.readString(file)).doesNotContain("class=", "var(");
  }

  @ParameterizedTest
  @CsvSource({"A4, metric", "LETTER, imperial"})
  void theSheetIsMadeOfWhatStandsOnTheBench(String paper, String measures) {
    bench.choose("measures", measures);
    bench.awaitDrawn();
    bench.click("#sheet");
    bench.find("#sheet-rider").sendKeys("A made-up rider");
    bench.choose("paper", paper);
    Object start =
        bench
            .driver()
            .executeAsyncScript(
                """
                const done = arguments[0];
                const form = document.getElementById('sheet-form');
                form.addEventListener('submit', async (event) => {
                  event.preventDefault();
                  const answer = await fetch(form.action,
                      { method: 'POST', body: new URLSearchParams(new FormData(form)) });
                  const text = await answer.text();
                  done(answer.status + ' ' + answer.headers.get('Content-Type') + ' ' + text.slice(0, 5));
                });
                document.getElementById('sheet-make').click();
                """);
    assertThat((String) start).startsWith("200 application/pdf").endsWith("%PDF-");
  }

  private static void saveAs(String name) {
    bench.click("#save");
    WebElement field = bench.find("#save-name");
    field.clear();
    field.sendKeys(name, Keys.ENTER);
  }

  private static void importFile(Path file) {
    bench.click("#open");
    bench.find("#file").sendKeys(file.toString());
  }

  private static String title(String id) {
    return DemoCases.find(id).orElseThrow().title();
  }

  private Path downloaded(String end) {
    return new WebDriverWait(bench.driver(), PATIENCE)
        .withMessage("a file that ends in " + end)
        .until(
            d -> {
              try (Stream<Path> files = Files.list(downloads)) {
                return files
                    .filter(f -> f.toString().endsWith(end))
                    .filter(f -> f.toFile().length() > 0)
                    .findFirst()
                    .orElse(null);
              } catch (IOException e) {
                throw new AssertionError(e);
              }
            });
  }
}
