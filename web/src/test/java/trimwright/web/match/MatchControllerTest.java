package trimwright.web.match;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.demo.DemoCases;
import trimwright.fitting.wish.Wish;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class MatchControllerTest {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();
  private static final Pattern DATA =
      Pattern.compile(
          "<script type=\"application/json\" id=\"match-data\">(.*?)</script>", Pattern.DOTALL);

  @Autowired private MockMvc web;

  private static String smallStock() throws IOException {
    try (InputStream in = MatchControllerTest.class.getResourceAsStream("small-stock.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static ObjectNode question() throws IOException {
    ObjectNode question =
        MAPPER
            .createObjectNode()
            .put("visitor", "a test")
            .put("case", "light-carver")
            .put("measures", "metric")
            .put("stock", smallStock())
            .put("from_kmh", 24)
            .put("to_kmh", 32)
            .put("feet_reach_mm", 100)
            .put("weight_spread_kg", 5)
            .put("waters", "cold_sea")
            .put("trade_one", "take_off")
            .put("trade_other", "range");
    question.putObject("fields").put("range", "4");
    return question;
  }

  private static MockHttpServletRequestBuilder at(String address, String body) {
    return post(address)
        .with(csrf().asHeader())
        .accept(MediaType.ALL)
        .contentType(MediaType.APPLICATION_JSON)
        .content(body);
  }

  private MockHttpServletResponse response(String address, ObjectNode question) throws Exception {
    return web.perform(at(address, question.toString())).andReturn().getResponse();
  }

  private JsonNode answer(String address, ObjectNode question) throws Exception {
    MockHttpServletResponse response = response(address, question);
    assertThat(response.getStatus()).isEqualTo(200);
    return MAPPER.readTree(response.getContentAsString(StandardCharsets.UTF_8));
  }

  private static ObjectNode of(String name, String value) {
    return MAPPER.createObjectNode().put(name, value);
  }

  @Test
  void thePageHasItsDataTheTokenAndTheWayToTheBench() throws Exception {
    String page =
        web.perform(get("/match"))
            .andExpect(status().isOk())
            .andExpect(view().name("match/page"))
            .andExpect(
                header().string("Content-Security-Policy", containsString("script-src 'self'")))
            .andExpect(content().string(containsString("name=\"csrf-token\"")))
            .andExpect(content().string(containsString("href=\"/\"")))
            .andReturn()
            .getResponse()
            .getContentAsString();
    Matcher found = DATA.matcher(page);
    assertThat(found.find()).isTrue();
    JsonNode data = MAPPER.readTree(found.group(1));
    assertThat(data.get("shelf")).hasSizeGreaterThanOrEqualTo(DemoCases.list().size());
    assertThat(data.get("wishes")).hasSize(Wish.values().length);
    assertThat(data.get("weights")).hasSize(5);
    assertThat(data.at("/measures/imperial/km~1h/symbol").asString()).isEqualTo("mph");
  }

  @Test
  void theBenchShowsTheWayToTheMatch() throws Exception {
    web.perform(get("/").param("case", "light-carver"))
        .andExpect(content().string(containsString("href=\"/match\"")));
  }

  @Test
  void aRiderCanBeNamedInTheAddressAndAnUnknownOneIsNotFound() throws Exception {
    web.perform(get("/match").param("case", "heavy-beginner"))
        .andExpect(content().string(containsString("\"case\":\"heavy-beginner\"")));
    web.perform(get("/match").param("case", "nobody"))
        .andExpect(status().isNotFound())
        .andExpect(view().name("system/error"));
  }

  @Test
  void aBeginnersWishesAreTheBeginners() throws Exception {
    JsonNode rider = answer("/match/rider", of("case", "heavy-beginner"));
    assertThat(rider.get("first_flights").booleanValue()).isTrue();
    assertThat(rider.get("words").asString()).contains("105 kg", "first flights");
    assertThat(rider.get("wishes"))
        .allSatisfy(
            wish -> {
              assertThat(wish.get("good").asString()).isNotBlank();
              assertThat(wish.get("poor").asString()).isNotBlank();
              assertThat(wish.get("why").asString()).endsWith(".");
            });
    assertThat(rider.get("cautions").get(0).asString()).contains("licensed instructor");
    ObjectNode imperial = of("case", "heavy-beginner").put("measures", "imperial");
    assertThat(answer("/match/rider", imperial).get("words").asString()).contains("lb", "mph");
  }

  @Test
  void theMadeUpStockIsThereAndAFileIsCounted() throws Exception {
    JsonNode demo = answer("/match/stock", MAPPER.createObjectNode());
    assertThat(demo.get("driven").longValue()).isGreaterThan(1_000_000);
    JsonNode small = answer("/match/stock", of("stock", smallStock()));
    assertThat(small.get("driven").longValue()).isEqualTo(2 * 2 * 3 * 3);
  }

  @Test
  void aWrongStockIsRefusedWithAllItsProblems() throws Exception {
    String wrong =
        smallStock()
            .replace("mass_kg: 9.5", "mass_kg: -9.5")
            .replace("angle_deg: 0.5", "angel: 0.5");
    MockHttpServletResponse refused = response("/match/stock", of("stock", wrong));
    assertThat(refused.getStatus()).isEqualTo(422);
    JsonNode problems =
        MAPPER.readTree(refused.getContentAsString(StandardCharsets.UTF_8)).get("problems");
    assertThat(problems.toString()).contains("mass_kg", "angel").doesNotContain("Exception");
    assertThat(problems).hasSizeGreaterThanOrEqualTo(2);
    assertThat(problems.get(0).get("line").intValue()).isPositive();
    assertThat(response("/match/stock", of("stock", "x".repeat(300_000))).getStatus())
        .isEqualTo(413);
    assertThat(response("/match/start", question().put("stock", wrong)).getStatus()).isEqualTo(422);
  }

  @ParameterizedTest
  @CsvSource({
    "30, 20, slowest speed must lie below",
    "2, 20, looked through at speeds",
    "20, 90, looked through at speeds"
  })
  void speedsThatCannotBeAreRefusedInWords(double from, double to, String words) throws Exception {
    MockHttpServletResponse refused =
        response("/match/start", question().put("from_kmh", from).put("to_kmh", to));
    assertThat(refused.getStatus()).isEqualTo(422);
    assertThat(refused.getContentAsString()).contains(words);
  }

  @Test
  void aStockThatMakesNoSetupIsRefusedInWords() throws Exception {
    String out = smallStock().replace("id: drive-135", "id: drive-135\n    count: 0");
    MockHttpServletResponse refused = response("/match/start", question().put("stock", out));
    assertThat(refused.getStatus()).isEqualTo(422);
    assertThat(refused.getContentAsString()).contains("mount together");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"/match/rider", "/match/start", "/match/state", "/match/stop", "/match/result"})
  void whatIsNoQuestionIsRefused(String address) throws Exception {
    for (String body : new String[] {"", "{", "[]", "{}"}) {
      MockHttpServletResponse refused = web.perform(at(address, body)).andReturn().getResponse();
      assertThat(refused.getStatus()).isEqualTo(400);
      assertThat(refused.getContentType()).startsWith(MediaType.APPLICATION_JSON_VALUE);
      assertThat(refused.getContentAsString()).doesNotContain("Exception", "java");
    }
  }

  @ParameterizedTest
  @CsvSource({
    "trade_one, manners",
    "trade_one, range",
    "trade_one, money",
    "waters, bath",
    "visitor, ''"
  })
  void wordsThatThePageDoesNotSendAreRefused(String name, String value) throws Exception {
    assertThat(response("/match/start", question().put(name, value)).getStatus()).isEqualTo(400);
  }

  @Test
  void aQuestionWithoutTheTokenIsRefused() throws Exception {
    web.perform(
            post("/match/start")
                .contentType(MediaType.APPLICATION_JSON)
                .content(question().toString()))
        .andExpect(status().isForbidden());
  }

  @Test
  void whatIsNotThereIsGone() throws Exception {
    JsonNode state = answer("/match/state", of("job", "none"));
    assertThat(state.get("state").asString()).isEqualTo("gone");
    assertThat(response("/match/result", of("job", "none")).getStatus()).isEqualTo(404);
    assertThat(response("/match/stop", of("job", "none")).getStatus()).isEqualTo(200);
  }

  @Test
  @Timeout(180)
  void aSmallStockIsLookedThroughByTheRealSearch() throws Exception {
    JsonNode begun = answer("/match/start", question());
    String job = begun.get("job").asString();
    String state = "waiting";
    while (state.equals("waiting") || state.equals("running")) {
      Thread.sleep(50);
      JsonNode now = answer("/match/state", of("job", job));
      state = now.get("state").asString();
      assertThat(now.get("words").asString()).isNotBlank();
    }
    assertThat(state).isEqualTo("done");
    JsonNode found = answer("/match/result", of("job", job));
    JsonNode metric = found.get("metric");
    assertThat(metric.get("setups").longValue()).isEqualTo(36);
    assertThat(metric.get("rows")).isNotEmpty();
    JsonNode first = metric.get("rows").get(0);
    assertThat(first.get("case").asString()).contains("rider:");
    assertThat(found.get("planforms").has(first.at("/parts/front_wing").asString())).isTrue();
    assertThat(found.at("/texts/metric")).hasSameSizeAs(metric.get("rows"));
    assertThat(found.at("/imperial/rows")).hasSameSizeAs(metric.get("rows"));
    assertThat(found.at("/good/imperial/take_off").asString()).contains("mph");
    assertThat(metric.at("/wishes")).anyMatch(w -> w.get("weight").intValue() == 4);
    assertThat(first.get("varied").toString()).contains("cold sea");
  }
}
