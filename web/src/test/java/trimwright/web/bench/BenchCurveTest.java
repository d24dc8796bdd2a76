package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class BenchCurveTest {
  private static final String CURVE = "/bench/curve";

  @Autowired private MockMvc web;

  private JsonNode answer(ObjectNode question) throws Exception {
    return Asked.read(
        web.perform(Asked.at(CURVE, question))
            .andExpect(status().isOk())
            .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON))
            .andReturn()
            .getResponse()
            .getContentAsString());
  }

  @Test
  void oneAnswerCarriesTheWholeCurve() throws Exception {
    JsonNode reply = answer(Asked.good());
    assertThat(reply.get("sequence").asLong()).isEqualTo(7);
    assertThat(reply.get("accepted").booleanValue()).isTrue();
    assertThat(reply.get("points").size()).isEqualTo(31);
    for (JsonNode point : reply.get("points")) {
      assertThat(point.get("tone").asString()).isIn("good", "warn", "bad");
      assertThat(point.get("verdict").size()).isEqualTo(2);
      int headline = point.at("/cause/headline").asInt();
      assertThat(reply.get("phrases").get(headline).asString()).isNotBlank();
      boolean trimmed = point.get("outcome").asString().equals("trimmed");
      assertThat(point.get("numbers").isArray()).isEqualTo(trimmed);
      assertThat(point.get("forces").isEmpty()).isEqualTo(!trimmed);
    }
    assertThat(reply.at("/craft/shapes").size()).isGreaterThan(5);
    assertThat(reply.at("/planforms/front_wing").size()).isGreaterThan(8);
    assertThat(reply.get("shim").size()).isEqualTo(3);
    assertThat(reply.get("rule_out").size()).isGreaterThan(3);
  }

  @Test
  void theWindowIsWidenedToTheWishedSpeed() throws Exception {
    JsonNode reply = answer(Asked.with("rider.wished_speed_kmh", "47.5"));
    assertThat(reply.get("points").get(reply.get("points").size() - 1).get("speed_kmh").asDouble())
        .isEqualTo(48);
  }

  @ParameterizedTest
  @CsvSource({
    "rider.mass_kg, ''",
    "rider.mass_kg, heavy",
    "rider.mass_kg, -82",
    "rider.mass_kg, 1e999",
    "rider.skill, wizard",
    "water.salinity_g_kg, 80",
    "setup.front_wing.tip_chord_mm, 5000",
    "setup.front_wing.section, ../../etc/passwd",
    "no.such.field, 1",
    "rider.mass_kg.more, 1",
    "setup.front_wing.stations.99999999999.eta, 1",
    "'..', 1",
    "'', 1",
  })
  void wrongFieldsAreAnsweredInWords(String path, String text) throws Exception {
    JsonNode reply = answer(Asked.with(path, text));
    assertThat(reply.get("accepted").booleanValue()).isFalse();
    assertThat(reply.get("sequence").asLong()).isEqualTo(7);
    assertThat(reply.get("problems")).isNotEmpty();
    assertThat(reply.get("problems"))
        .allSatisfy(
            problem -> {
              assertThat(problem.get("message").asString()).isNotBlank();
              assertThat(problem.get("paths").isArray()).isTrue();
            });
  }

  @Test
  void severalProblemsComeTogether() throws Exception {
    ObjectNode question = Asked.with("rider.mass_kg", "heavy");
    ((ObjectNode) question.get("fields")).put("water.salinity_g_kg", "80");
    JsonNode reply = answer(question);
    assertThat(reply.get("problems"))
        .extracting(problem -> problem.at("/paths/0").asString())
        .contains("rider.mass_kg", "water.salinity_g_kg");
  }

  @Test
  void noFieldAtAllIsARefusalAndNoFault() throws Exception {
    ObjectNode question = Asked.question();
    question.putObject("fields");
    assertThat(answer(question).get("accepted").booleanValue()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "{",
        "[]",
        "null",
        "7",
        "\"text\"",
        "{}",
        "{\"fields\":null}",
        "{\"fields\":[]}",
        "{\"fields\":{\"rider.mass_kg\":{\"a\":1}}}",
        "{\"fields\":{\"rider.mass_kg\":[[[[]]]]}}",
        "not json at all",
      })
  void whatIsNoQuestionIsAnsweredInWords(String body) throws Exception {
    web.perform(Asked.at(CURVE, body))
        .andExpect(status().isBadRequest())
        .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON))
        .andExpect(content().string(containsString("could not make sense")))
        .andExpect(content().string(not(containsString("Exception"))));
  }

  @Test
  void aTreeWithoutEndIsNoFault() throws Exception {
    String deep = "{\"fields\":{\"a\":" + "[".repeat(100_000) + "}}";
    web.perform(Asked.at(CURVE, deep)).andExpect(status().isBadRequest());
  }

  @Test
  void tenThousandFieldsAreNoFault() throws Exception {
    ObjectNode question = Asked.good();
    ObjectNode fields = (ObjectNode) question.get("fields");
    for (int i = 0; i < 10_000; i++) {
      fields.put("rider.x" + i, "1");
    }
    assertThat(answer(question).get("accepted").booleanValue()).isFalse();
  }

  @Test
  void anotherKindOfContentIsRefusedInWords() throws Exception {
    web.perform(
            post(CURVE)
                .with(csrf().asHeader())
                .contentType(MediaType.TEXT_PLAIN)
                .content(Asked.good().toString()))
        .andExpect(status().isUnsupportedMediaType())
        .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON));
  }

  @Test
  void aQuestionWithoutTheTokenIsRefusedInWords() throws Exception {
    web.perform(
            post(CURVE).contentType(MediaType.APPLICATION_JSON).content(Asked.good().toString()))
        .andExpect(status().isForbidden());
  }

  @Test
  void aPersonWhoTypesTheAddressGetsAPage() throws Exception {
    web.perform(get(CURVE).accept(MediaType.TEXT_HTML))
        .andExpect(status().isMethodNotAllowed())
        .andExpect(content().contentTypeCompatibleWith(MediaType.TEXT_HTML));
  }

  @Test
  void aQuestionThatIsFarTooLargeIsTurnedAway() throws Exception {
    web.perform(Asked.at(CURVE, "x".repeat(1_000_001))).andExpect(status().isContentTooLarge());
  }
}
