package trimwright.web.trim;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.RequestBuilder;
import org.springframework.test.web.servlet.ResultActions;
import trimwright.exchange.demo.DemoCases;
import trimwright.web.ShopConfiguration;

@SpringBootTest(classes = ShopConfiguration.class)
@AutoConfigureMockMvc
class TrimPageTest {
  private static final String VIEW = "trim/page";
  private static final String GOOD = DemoCases.find("light-carver").orElseThrow().text();

  @Autowired private MockMvc web;

  @Test
  void startOffersTheDemoCasesAndAFormForAFile() throws Exception {
    ResultActions answer = web.perform(get("/")).andExpect(status().isOk());
    answer
        .andExpect(view().name(VIEW))
        .andExpect(content().string(containsString("type=\"file\"")));
    for (var demo : DemoCases.list()) {
      answer.andExpect(content().string(containsString("/?case=" + demo.id() + "&amp;")));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"heavy-beginner", "light-carver", "cold-salt-water", "nose-up-mismatch"})
  void aDemoCaseIsAnsweredAtItsAddress(String id) throws Exception {
    web.perform(get("/").param("case", id))
        .andExpect(status().isOk())
        .andExpect(view().name(VIEW))
        .andExpect(content().string(containsString("On your legs")))
        .andExpect(content().string(containsString("Why it rides so")))
        .andExpect(content().string(containsString("Side view of")))
        .andExpect(content().string(containsString("Moment terms at both speeds")))
        .andExpect(content().string(containsString("Rule these out first")))
        .andExpect(content().string(containsString("licensed instructor")));
  }

  @Test
  void aSpeedInTheAddressIsTheSpeedAnswered() throws Exception {
    web.perform(get("/").param("case", "light-carver").param("speed", "22"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("name=\"speed\" type=\"text\"")))
        .andExpect(content().string(containsString("value=\"22\"")))
        .andExpect(content().string(containsString("22.0 km/h")));
  }

  @ParameterizedTest
  @CsvSource({"22,1,23", "22,-1,21", "'22,5',1,23.5", "60,1,60", "5,-1,5", "22,7,22"})
  void theButtonsMoveTheSpeedByOneWithinItsRange(String speed, String step, String shown)
      throws Exception {
    web.perform(get("/").param("case", "light-carver").param("speed", speed).param("step", step))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("value=\"" + shown + "\"")));
  }

  @ParameterizedTest
  @CsvSource({
    "fast,must be a number",
    "4,was 4 km/h",
    "61,was 61 km/h",
    "-20,was -20 km/h",
    "1e9,must be a number",
    "NaN,must be a number",
    ".,must be a number",
    "'',Type the speed"
  })
  void aSpeedThatCannotBeUsedIsKeptAndExplained(String speed, String message) throws Exception {
    web.perform(get("/").param("case", "light-carver").param("speed", speed))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("value=\"" + speed + "\"")))
        .andExpect(content().string(containsString(message)))
        .andExpect(content().string(containsString("from 5 to 60 km/h")));
  }

  @Test
  void tooSlowASpeedIsAnAnswerAndNoError() throws Exception {
    web.perform(get("/").param("case", "light-carver").param("speed", "6"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("tone-bad")))
        .andExpect(content().string(containsString("no side view to draw")));
  }

  @Test
  void anUnknownDemoCaseIsNotFound() throws Exception {
    web.perform(get("/").param("case", "no-such-case"))
        .andExpect(status().isNotFound())
        .andExpect(view().name("system/error"));
  }

  @Test
  void aGoodFileIsAnsweredAndItsTextStaysOnThePage() throws Exception {
    web.perform(handIn(GOOD.getBytes(StandardCharsets.UTF_8)))
        .andExpect(status().isOk())
        .andExpect(view().name(VIEW))
        .andExpect(content().string(containsString("Why it rides so")))
        .andExpect(content().string(containsString("formaction=\"/side-view.svg\"")))
        .andExpect(content().string(containsString("front_foot_mm")));
  }

  @Test
  void everyProblemOfABadFileIsListedAndTheTextIsKept() throws Exception {
    String bad =
        GOOD.replaceAll("salinity_g_kg: *[0-9.]+", "salinity_g_kg: 80")
            .replaceAll("mass_kg: 58", "mass_kg: -3");
    web.perform(handIn(bad.getBytes(StandardCharsets.UTF_8)))
        .andExpect(status().isUnprocessableContent())
        .andExpect(view().name(VIEW))
        .andExpect(content().string(containsString("2 things have to be put right")))
        .andExpect(content().string(containsString("salinity_g_kg")))
        .andExpect(content().string(containsString("80")))
        .andExpect(content().string(containsString("42")))
        .andExpect(content().string(containsString("<textarea")))
        .andExpect(content().string(containsString("salinity_g_kg: 80")));
  }

  @Test
  void anEmptyFileIsExplained() throws Exception {
    web.perform(handIn(new byte[0]))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("Choose a case file first")));
  }

  @Test
  void aFileThatIsNoTextIsExplained() throws Exception {
    web.perform(handIn(new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1}))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(containsString("not plain text in UTF-8")));
  }

  @Test
  void aFileThatIsTooLargeIsExplained() throws Exception {
    byte[] large = "# padding\n".repeat(30_000).getBytes(StandardCharsets.UTF_8);
    web.perform(handIn(large))
        .andExpect(status().isContentTooLarge())
        .andExpect(content().string(containsString("293 kB")))
        .andExpect(content().string(containsString("at most 256 kB")));
  }

  @Test
  void markupInANameIsShownAsText() throws Exception {
    String hostile = "name: \"<script>alert(1)</script>\\\" onload=x\"\n" + withoutName(GOOD);
    web.perform(handIn(hostile.getBytes(StandardCharsets.UTF_8)))
        .andExpect(status().isOk())
        .andExpect(content().string(not(containsString("<script>alert"))))
        .andExpect(content().string(containsString("&#34; onload=x\">")))
        .andExpect(content().string(containsString("&lt;script&gt;alert(1)")));
  }

  @Test
  void markupInABadTextIsShownAsText() throws Exception {
    String hostile = "</textarea><script>alert(1)</script>: {\n";
    web.perform(post("/").param("text", hostile).with(csrf()))
        .andExpect(status().isUnprocessableContent())
        .andExpect(content().string(not(containsString("<script>alert"))));
  }

  @Test
  void aFormWithoutItsTokenIsRefused() throws Exception {
    web.perform(post("/").param("text", GOOD)).andExpect(status().isForbidden());
  }

  @Test
  void theTextOnThePageCanBeComputedAgainAtAnotherSpeed() throws Exception {
    web.perform(
            post("/")
                .param("text", GOOD.replace("\n", "\r\n"))
                .param("speed", "30")
                .param("step", "-1")
                .with(csrf()))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("value=\"29\"")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"light", "dark", "sun"})
  void theThemeOfTheAddressIsTheThemeOfThePage(String theme) throws Exception {
    web.perform(get("/").param("theme", theme))
        .andExpect(content().string(containsString("data-theme=\"" + theme + "\"")));
  }

  @Test
  void anUnknownThemeIsTheLightOne() throws Exception {
    web.perform(get("/").param("theme", "\"><script>"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("data-theme=\"light\"")))
        .andExpect(content().string(not(containsString("\"><script>"))));
  }

  @ParameterizedTest
  @CsvSource({
    "case.yaml,application/yaml",
    "side-view.svg,image/svg+xml",
    "curves.svg,image/svg+xml",
    "curve.csv,text/csv",
    "curve.json,application/json"
  })
  void downloadsAnswerADemoCaseByAddressAndAHandedInOneByForm(String file, String type)
      throws Exception {
    web.perform(get("/" + file).param("case", "light-carver").param("speed", "22"))
        .andExpect(status().isOk())
        .andExpect(content().contentTypeCompatibleWith(type))
        .andExpect(header().string("Content-Disposition", containsString("attachment")));
    web.perform(post("/" + file).param("text", GOOD).param("speed", "22").with(csrf()))
        .andExpect(status().isOk())
        .andExpect(content().contentTypeCompatibleWith(type));
  }

  @Test
  void theCaseFileComesBackAsItWasWritten() throws Exception {
    web.perform(get("/case.yaml").param("case", "light-carver").param("speed", "22"))
        .andExpect(content().bytes(GOOD.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aDownloadWithoutACaseSaysSo() throws Exception {
    web.perform(get("/curves.svg").param("speed", "22"))
        .andExpect(status().isBadRequest())
        .andExpect(content().string(containsString("Nothing to save")));
  }

  @Test
  void aNameOfACaseIsHarmlessAsAFileName() throws Exception {
    String hostile = "name: \"../../etc/passwd; x\"\n" + withoutName(GOOD);
    web.perform(post("/case.yaml").param("text", hostile).param("speed", "22").with(csrf()))
        .andExpect(status().isOk())
        .andExpect(header().string("Content-Disposition", containsString("etc-passwd-x.yaml")));
  }

  private static String withoutName(String text) {
    return text.replaceAll("(?m)^name:.*\\R", "");
  }

  private static RequestBuilder handIn(byte[] bytes) {
    return multipart("/")
        .file(new MockMultipartFile("file", "C:\\rides\\mine.yaml", "text/yaml", bytes))
        .with(csrf());
  }
}
