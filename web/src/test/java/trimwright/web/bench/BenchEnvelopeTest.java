package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;
import trimwright.exchange.unit.Measures;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class BenchEnvelopeTest {
  private static final String ADDRESS = "/bench/envelope";

  @Autowired private MockMvc web;

  private JsonNode answer(ObjectNode question) throws Exception {
    return Asked.read(
        web.perform(Asked.at(ADDRESS, question))
            .andExpect(status().isOk())
            .andExpect(header().exists("Content-Security-Policy"))
            .andReturn()
            .getResponse()
            .getContentAsString());
  }

  @Test
  void marksTurnsAndSentencesComeTogether() throws Exception {
    JsonNode answer = answer(Asked.good());
    assertThat(answer.get("sequence").asLong()).isEqualTo(7);
    assertThat(ids(answer)).contains("stall", "take_off", "longest", "farthest", "cavitation");
    double last = 0;
    for (JsonNode mark : answer.get("marks")) {
      assertThat(mark.get("speed_kmh").doubleValue()).isGreaterThanOrEqualTo(last);
      last = mark.get("speed_kmh").doubleValue();
    }
    JsonNode banks = answer.at("/turns/banks");
    assertThat(banks.get(0).get("bank_deg").doubleValue()).isZero();
    assertThat(banks.get(0).get("radius_m").isNull()).isTrue();
    for (int i = 1; i < banks.size(); i++) {
      JsonNode flatter = banks.get(i - 1);
      JsonNode turn = banks.get(i);
      assertThat(turn.get("bank_deg").doubleValue())
          .isGreaterThan(flatter.get("bank_deg").doubleValue());
      assertThat(turn.get("tip_depth_mm").doubleValue())
          .isLessThan(flatter.get("tip_depth_mm").doubleValue());
      assertThat(turn.get("load_factor").doubleValue())
          .isGreaterThanOrEqualTo(flatter.get("load_factor").doubleValue());
    }
    List<String> titles =
        answer.get("notes").valueStream().map(note -> note.get("title").asString()).toList();
    assertThat(titles).contains("Take-off", "Power and range", "Slow flight", "Turns", "Loads");
    answer.get("notes").forEach(note -> assertThat(note.get("basis").asString()).isNotBlank());
    assertThat(answer.toString()).contains("no maker's rating, so no verdict");
  }

  private static List<String> ids(JsonNode answer) {
    return answer.get("marks").valueStream().map(mark -> mark.get("id").asString()).toList();
  }

  @Test
  void aTipThatComesOutIsFoundWhereTheMastIsBarelyWet() throws Exception {
    JsonNode turns = answer(Asked.with("ride.mast_immersion_mm", "250")).get("turns");
    double breach = turns.get("breach_bank_deg").doubleValue();
    JsonNode there =
        turns
            .get("banks")
            .valueStream()
            .filter(turn -> turn.get("bank_deg").doubleValue() == breach)
            .findFirst()
            .orElseThrow();
    // It is looked for to a quarter of a degree, over half a span of less than half a metre.
    assertThat(there.get("tip_depth_mm").doubleValue())
        .isBetween(
            turns.get("chop_mm").doubleValue() / 2 - 3, turns.get("chop_mm").doubleValue() / 2);
    assertThat(there.get("inside_limits").booleanValue()).isFalse();
  }

  @Test
  void aMakersRatingIsTheMakersWord() throws Exception {
    assertThat(answer(Asked.with("setup.mast.rating_nm", "1500")).toString())
        .contains("the maker rates it for 1500", "Ratings are the makers'");
  }

  @Test
  void fieldsThatAreNoCaseAreRefused() throws Exception {
    JsonNode answer = answer(Asked.with("rider.mass_kg", "heavy"));
    assertThat(answer.get("accepted").booleanValue()).isFalse();
    assertThat(answer.get("problems").size()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[]", "{\"fields\":null}"})
  void whatIsNoQuestionIsRefused(String body) throws Exception {
    web.perform(Asked.at(ADDRESS, body)).andExpect(status().isBadRequest());
  }

  @Test
  void aQuestionWithoutTheTokenIsRefused() throws Exception {
    web.perform(
            post(ADDRESS).contentType(MediaType.APPLICATION_JSON).content(Asked.good().toString()))
        .andExpect(status().isForbidden());
  }

  @Test
  void whoeverMovesASliderStopsIt() throws Exception {
    CaseFile caseFile =
        CaseReader.read(DemoCases.list().get(0).text(), SectionFiles.NONE)
            .findValue()
            .orElseThrow();
    BenchAnswers answers = new BenchAnswers(Duration.ofSeconds(30));
    AtomicBoolean isOver = new AtomicBoolean();
    CountDownLatch isMoving = new CountDownLatch(1);
    ExecutorService other = Executors.newSingleThreadExecutor();
    try {
      Future<?> moves =
          other.submit(
              () -> {
                while (!isOver.get()) {
                  answers.accepted(1, Measures.METRIC, caseFile);
                  isMoving.countDown();
                }
              });
      isMoving.await();
      JsonNode answer = Asked.read(answers.envelope(3, Measures.METRIC, caseFile));
      isOver.set(true);
      moves.get();
      assertThat(answer.get("accepted").booleanValue()).isFalse();
      assertThat(answer.get("stopped").booleanValue()).isTrue();
      assertThat(
              Asked.read(answers.envelope(4, Measures.METRIC, caseFile))
                  .get("accepted")
                  .booleanValue())
          .isTrue();
    } finally {
      isOver.set(true);
      other.shutdownNow();
    }
  }
}
