package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trimwright.desk.CaseShelf;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class BenchPageTest {
  private static final Pattern DATA =
      Pattern.compile(
          "<script type=\"application/json\" id=\"bench-data\">(.*?)</script>", Pattern.DOTALL);

  /** Half of the last printed digit of a speed. */
  private static final double PRINTED_KMH = 5e-5;

  @Autowired private MockMvc web;
  @Autowired private CaseShelf shelf;

  private JsonNode data(String id, String measures) throws Exception {
    String page =
        web.perform(get("/").param("case", id).param("measures", measures))
            .andExpect(status().isOk())
            .andExpect(view().name("bench/page"))
            .andReturn()
            .getResponse()
            .getContentAsString();
    Matcher found = DATA.matcher(page);
    assertThat(found.find()).isTrue();
    return JsonMapper.builder().build().readTree(found.group(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"heavy-beginner", "light-carver", "cold-salt-water", "nose-up-mismatch"})
  void aMadeUpCaseOpensWithItsAnswer(String id) throws Exception {
    JsonNode data = data(id, "metric");
    assertThat(data.at("/case/id").asString()).isEqualTo(id);
    assertThat(data.at("/case/kind").asString()).isEqualTo("demo");
    assertThat(data.at("/case/fields/rider.mass_kg").asString()).isNotBlank();
    assertThat(data.at("/reply/accepted").booleanValue()).isTrue();
    assertThat(data.at("/reply/points").size()).isEqualTo(31);
    assertThat(data.at("/reply/points/15/speed_kmh").doubleValue()).isEqualTo(25);
  }

  @Test
  void theDataHasEveryFieldBothMeasuresAndTheShelf() throws Exception {
    JsonNode data = data("light-carver", "metric");
    assertThat(data.get("fields")).anyMatch(f -> f.at("/path").asString().equals("rider.mass_kg"));
    assertThat(data.at("/measures/metric/km~1h/symbol").asString()).isEqualTo("km/h");
    assertThat(data.at("/measures/imperial/km~1h/symbol").asString()).isEqualTo("mph");
    assertThat(data.get("shelf"))
        .extracting(item -> item.get("id").asString())
        .containsAll(DemoCases.list().stream().map(demo -> demo.id()).toList());
  }

  @Test
  void imperialStepsByWholeMiles() throws Exception {
    JsonNode reply = data("light-carver", "imperial").get("reply");
    assertThat(reply.get("measures").asString()).isEqualTo("imperial");
    assertThat(reply.at("/points/0/speed_kmh").doubleValue())
        .isCloseTo(6 * 1.609344, within(PRINTED_KMH));
  }

  @Test
  void thePageCarriesTheTokenForItsScripts() throws Exception {
    web.perform(get("/"))
        .andExpect(status().isOk())
        .andExpect(content().string(containsString("name=\"csrf-header\"")))
        .andExpect(content().string(containsString("name=\"csrf-token\"")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"no-such-case", "saved-", "saved-../../etc/passwd", "<b>"})
  void aCaseThatIsNotThereIsNotFound(String id) throws Exception {
    web.perform(get("/").param("case", id))
        .andExpect(status().isNotFound())
        .andExpect(view().name("system/error"));
  }

  @ParameterizedTest
  @CsvSource({"theme, neon", "measures, cubits"})
  void whatTheAddressGetsWrongIsPassedOver(String name, String value) throws Exception {
    web.perform(get("/").param("case", "light-carver").param(name, value))
        .andExpect(status().isOk());
  }

  @Test
  void noNameOfACaseLeavesTheDataBlock() throws Exception {
    String name = "</script><script>alert(1)</script><!--<b>\u2028";
    String text =
        DemoCases.list()
            .get(0)
            .text()
            .replaceAll("(?m)^name:.*$", Matcher.quoteReplacement("name: \"" + name + "\""));
    // A line separator is no plain text for the reader, so that the rest of the name is tried.
    String readable = text.replace("\u2028", "");
    shelf.save(CaseReader.read(readable, SectionFiles.NONE).findValue().orElseThrow(), true);
    String page =
        web.perform(get("/"))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString();
    assertThat(page).doesNotContain("<script>alert").doesNotContain("<b>");
    JsonNode data = data("saved-script-script-alert-1-script-b", "metric");
    assertThat(data.at("/case/title").asString()).isEqualTo(name.replace("\u2028", ""));
    assertThat(data.at("/case/kind").asString()).isEqualTo("saved");
  }
}
