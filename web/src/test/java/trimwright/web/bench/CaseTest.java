package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.desk.CaseShelf;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class CaseTest {
  private static final String GOOD = DemoCases.find("light-carver").orElseThrow().text();

  @Autowired private MockMvc web;
  @Autowired private CaseShelf shelf;

  private static CaseFile read(String text) {
    return CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow();
  }

  private static JsonNode json(ResultActions answer) throws Exception {
    return Asked.read(
        answer
            .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON))
            .andReturn()
            .getResponse()
            .getContentAsString());
  }

  private ResultActions open(String text) throws Exception {
    return web.perform(Asked.at("/bench/open", Asked.question().put("text", text)));
  }

  @Test
  void aFileIsOpenedAsFieldsWhateverItsLineEnds() throws Exception {
    for (String text : new String[] {GOOD, GOOD.replace("\n", "\r\n"), "\ufeff" + GOOD}) {
      JsonNode opened = json(open(text).andExpect(status().isOk()));
      assertThat(opened.get("accepted").booleanValue()).isTrue();
      assertThat(opened.get("title").asString()).isEqualTo(read(GOOD).name());
      assertThat(opened.get("fields")).isEqualTo(Asked.good().get("fields"));
    }
  }

  @Test
  void everyProblemOfAFileIsSaidWithItsLine() throws Exception {
    String bad =
        GOOD.replaceFirst("mass_kg: 58", "mass_kg: heavy").replaceFirst("salinity", "salt");
    JsonNode refused = json(open(bad).andExpect(status().isUnprocessableContent()));
    assertThat(refused.get("accepted").booleanValue()).isFalse();
    assertThat(refused.get("problems").size()).isGreaterThan(1);
    assertThat(refused.get("problems"))
        .anySatisfy(
            problem -> {
              assertThat(problem.get("line").asInt()).isGreaterThan(1);
              assertThat(problem.get("line_text").asString()).contains("heavy");
              assertThat(problem.get("message").asString()).contains("mass");
            });
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " \n ", "\u0000", "just words", "a: *b", "{{{{", "- 1\n- 2", "!!x y"})
  void aTextThatIsNoCaseIsAnsweredInWords(String text) throws Exception {
    JsonNode refused = json(open(text).andExpect(status().isUnprocessableContent()));
    assertThat(refused.at("/problems/0/message").asString()).isNotBlank();
  }

  @Test
  void lettersThatWereNotUtf8AreFound() throws Exception {
    JsonNode refused =
        json(
            open(GOOD.replaceFirst("(?m)^name:.*$", "name: J\ufffdrgen"))
                .andExpect(status().isUnprocessableContent()));
    assertThat(refused.at("/problems/0/message").asString()).contains("UTF-8");
    assertThat(refused.at("/problems/0/line_text").asString()).startsWith("name:");
  }

  @Test
  void aFileThatIsTooLargeIsAnsweredWithBothSizes() throws Exception {
    JsonNode refused = json(open("#".repeat(300 * 1024)).andExpect(status().isContentTooLarge()));
    assertThat(refused.at("/problems/0/message").asString()).contains("300 kB").contains("256 kB");
  }

  @Test
  void anExportedCaseReadsBackToTheSame() throws Exception {
    String yaml =
        web.perform(Asked.at("/bench/export", Asked.good()))
            .andExpect(status().isOk())
            .andExpect(header().string("Content-Disposition", containsString("attachment")))
            .andExpect(header().string("Content-Disposition", containsString(".yaml")))
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(read(yaml).digest()).isEqualTo(read(GOOD).digest());
    JsonNode opened = json(open(yaml).andExpect(status().isOk()));
    assertThat(opened.at("/fields/rider.mass_kg"))
        .isEqualTo(Asked.good().at("/fields/rider.mass_kg"));
  }

  @ParameterizedTest
  @CsvSource({"csv, speed_kmh, .csv", "json, trimwright-curve/1, .json"})
  void theCurveIsTakenAlong(String kind, String part, String ending) throws Exception {
    web.perform(Asked.at("/bench/export", Asked.good().put("kind", kind)))
        .andExpect(status().isOk())
        .andExpect(header().string("Content-Disposition", containsString(ending)))
        .andExpect(content().string(containsString(part)));
  }

  @Test
  void aNameMeansNothingToTheFileSystemOfWhoTakesItAlong() throws Exception {
    web.perform(Asked.at("/bench/export", Asked.with("name", "../../\"x\"\r\nA: b.exe")))
        .andExpect(
            result -> {
              String name = result.getResponse().getHeader("Content-Disposition");
              assertThat(name == null || name.matches("attachment; filename=\"[a-z0-9-]+\\.yaml\""))
                  .isTrue();
            });
  }

  @Test
  void whatIsNoCaseIsNotExported() throws Exception {
    JsonNode refused =
        json(
            web.perform(Asked.at("/bench/export", Asked.with("rider.mass_kg", "heavy")))
                .andExpect(status().isUnprocessableContent()));
    assertThat(refused.at("/problems/0/paths/0").asString()).isEqualTo("rider.mass_kg");
    web.perform(Asked.at("/bench/export", Asked.good().put("kind", "exe")))
        .andExpect(status().isBadRequest());
  }

  private ResultActions save(ObjectNode question, String name, boolean replace) throws Exception {
    return web.perform(Asked.at("/bench/save", question.put("name", name).put("replace", replace)));
  }

  @Test
  void aSavedCaseStandsOnTheShelfAndOpens() throws Exception {
    JsonNode saved = json(save(Asked.good(), " Ana on Tuesday ", false).andExpect(status().isOk()));
    assertThat(saved.get("saved").booleanValue()).isTrue();
    assertThat(saved.get("id").asString()).isEqualTo("saved-ana-on-tuesday");
    assertThat(saved.get("title").asString()).isEqualTo("Ana on Tuesday");
    assertThat(saved.at("/shelf")).extracting(i -> i.get("kind").asString()).contains("saved");
    JsonNode opened =
        json(
            web.perform(get("/bench/case").param("id", "saved-ana-on-tuesday"))
                .andExpect(status().isOk()));
    assertThat(opened.at("/fields/name").asString()).isEqualTo("Ana on Tuesday");
    assertThat(opened.at("/fields/rider.mass_kg"))
        .isEqualTo(Asked.good().at("/fields/rider.mass_kg"));
    web.perform(get("/").param("case", "saved-ana-on-tuesday")).andExpect(status().isOk());
  }

  @Test
  void aNameThatIsTakenIsSaidAndReplacedOnlyWhenAsked() throws Exception {
    save(Asked.good(), "Ben", false).andExpect(status().isOk());
    ObjectNode heavier = Asked.with("rider.mass_kg", "90");
    JsonNode taken = json(save(heavier, "BEN", false).andExpect(status().isConflict()));
    assertThat(taken.get("taken").booleanValue()).isTrue();
    assertThat(taken.at("/problems/0/message").asString()).contains("\"Ben\"");
    assertThat(mass("ben")).isEqualTo("58");
    save(heavier, "BEN", true).andExpect(status().isOk());
    assertThat(mass("ben")).isEqualTo("90");
  }

  private String mass(String id) {
    CaseFile caseFile = shelf.find(id).orElseThrow().findValue().orElseThrow();
    return CaseDraft.fields(caseFile).get("rider.mass_kg");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   ", "!!!", "../.."})
  void aCaseWithoutAUsableNameIsNotSaved(String name) throws Exception {
    JsonNode refused =
        json(save(Asked.good(), name, false).andExpect(status().isUnprocessableContent()));
    assertThat(refused.get("saved").booleanValue()).isFalse();
    assertThat(refused.at("/problems/0/paths/0").asString()).isEqualTo("name");
  }

  @Test
  void whatIsNoCaseIsNotSaved() throws Exception {
    JsonNode refused =
        json(
            save(Asked.with("rider.mass_kg", "heavy"), "Wrong", false)
                .andExpect(status().isUnprocessableContent()));
    assertThat(refused.at("/problems/0/paths/0").asString()).isEqualTo("rider.mass_kg");
    assertThat(shelf.find("wrong")).isEmpty();
  }

  @Test
  void aDamagedFileIsListedWithAWordAndTheRestStillOpens() throws Exception {
    save(Asked.good(), "Cleo", false).andExpect(status().isOk());
    Files.writeString(shelf.folder().resolve("torn.yaml"), "rider: {mass_kg: ");
    JsonNode list = json(web.perform(get("/bench/shelf")).andExpect(status().isOk()));
    assertThat(list.get("shelf"))
        .anySatisfy(
            item -> {
              assertThat(item.get("kind").asString()).isEqualTo("damaged");
              assertThat(item.get("title").asString()).isEqualTo("torn");
              assertThat(item.get("story").asString()).contains("cannot be opened");
            });
    JsonNode refused =
        json(
            web.perform(get("/bench/case").param("id", "saved-torn"))
                .andExpect(status().isUnprocessableContent()));
    assertThat(refused.get("accepted").booleanValue()).isFalse();
    assertThat(refused.at("/problems/0/message").asString()).isNotBlank();
    web.perform(get("/").param("case", "saved-torn")).andExpect(status().isNotFound());
    web.perform(get("/")).andExpect(status().isOk());
  }

  @Test
  void aFileThatIsReadableAndNoCaseSaysWhyWhenItIsOpened() throws Exception {
    save(Asked.good(), "Dora", false).andExpect(status().isOk());
    Files.writeString(
        shelf.folder().resolve("wrong.yaml"), GOOD.replaceFirst("mass_kg: 58", "mass_kg: heavy"));
    JsonNode refused =
        json(
            web.perform(get("/bench/case").param("id", "saved-wrong"))
                .andExpect(status().isUnprocessableContent()));
    assertThat(refused.at("/problems/0/line").asInt()).isGreaterThan(1);
    assertThat(refused.at("/problems/0/message").asString()).contains("heavy");
    // The newest file is that one; the page opens with the newest good one.
    web.perform(get("/")).andExpect(status().isOk());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "saved-", "saved-../cleo", "saved-..%2fcleo", "nothing"})
  void aCaseThatIsNotOnTheShelfIsNotFound(String id) throws Exception {
    web.perform(get("/bench/case").param("id", id)).andExpect(status().isNotFound());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/bench/open", "/bench/save", "/bench/export"})
  void whatIsNoQuestionIsAnsweredInWords(String address) throws Exception {
    for (String body :
        new String[] {"", "{}", "[]", "{\"text\":7,\"name\":7,\"fields\":7}", "\u0000"}) {
      json(web.perform(Asked.at(address, body)).andExpect(status().isBadRequest()));
    }
  }
}
