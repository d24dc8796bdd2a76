package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.Locale;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;
import trimwright.kernel.play.Play;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class BenchMotionTest {
  private static final String ADDRESS = "/bench/motion";

  @Autowired private MockMvc web;

  private static ObjectNode played(ObjectNode question, String play, double kmh) {
    return question.put("play", play).put("speed_kmh", kmh);
  }

  private JsonNode answer(ObjectNode question) throws Exception {
    return Asked.read(
        web.perform(Asked.at(ADDRESS, question))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString());
  }

  @ParameterizedTest
  @EnumSource(Play.class)
  void everyPlayHasWordsAndTracesOfOneLength(Play play) throws Exception {
    String code = play.name().toLowerCase(Locale.ROOT);
    JsonNode answer = answer(played(Asked.good(), code, 24));
    assertThat(answer.get("outcome").asString()).isEqualTo("played");
    assertThat(answer.get("sequence").asLong()).isEqualTo(7);
    assertThat(answer.get("play").asString()).isEqualTo(code);
    int moments = answer.get("times_s").size();
    assertThat(moments).isGreaterThan(10);
    for (String trace :
        new String[] {
          "deck_pitch_deg",
          "speed_kmh_at",
          "immersion_mm",
          "foot_pressure_ahead_of_mast_mm",
          "thrust_n",
          "body_ahead_mm",
          "bow_clearance_mm",
          "water_mm"
        }) {
      assertThat(answer.get(trace).size()).isEqualTo(moments);
    }
    assertThat(answer.at("/speed_kmh_at/0").doubleValue()).isCloseTo(24, Offset.offset(0.01));
    assertThat(answer.at("/end/at_s").doubleValue())
        .isCloseTo(answer.at("/times_s/" + (moments - 1)).doubleValue(), Offset.offset(0.01));
    assertThat(answer.get("still_water").booleanValue()).isEqualTo(play != Play.CHOP);
    assertThat(answer.get("words").toString()).doesNotContain("safe");
  }

  /** The picture draws the water from the waves that come with the trace: they must agree. */
  @Test
  void wavesGiveTheWaterOfTheTrace() throws Exception {
    JsonNode answer = answer(played(Asked.good(), "chop", 24));
    JsonNode times = answer.get("times_s");
    double place = 0;
    for (int i = 0; i < times.size(); i++) {
      double time = times.get(i).doubleValue();
      if (i > 0) {
        double speed =
            (answer.at("/speed_kmh_at/" + i).doubleValue()
                    + answer.at("/speed_kmh_at/" + (i - 1)).doubleValue())
                / 7.2;
        place += speed * (time - times.get(i - 1).doubleValue());
      }
      double sum = 0;
      for (JsonNode wave : answer.at("/waves/components")) {
        double k = 2 * Math.PI * 1000 / wave.get("length_mm").doubleValue();
        double phase = Math.toRadians(wave.get("phase_deg").doubleValue());
        sum +=
            0.5
                * wave.get("height_mm").doubleValue()
                * Math.cos(k * place + Math.sqrt(9.80665 * k) * time + phase);
      }
      // The place is summed from rounded speeds: a centimetre of way, a tenth of the height.
      assertThat(answer.at("/water_mm/" + i).doubleValue()).isCloseTo(sum, Offset.offset(6.0));
    }
  }

  @Test
  void aSpeedWithoutATrimSaysSo() throws Exception {
    JsonNode answer = answer(played(Asked.good(), "breach", 3));
    assertThat(answer.get("outcome").asString()).isEqualTo("no_trim");
    assertThat(answer.get("words").toString()).contains("another speed");
  }

  @Test
  void fieldsThatAreNoCaseAreRefused() throws Exception {
    JsonNode answer = answer(played(Asked.with("rider.mass_kg", "heavy"), "breach", 20));
    assertThat(answer.get("accepted").booleanValue()).isFalse();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "jump", "NOSE_DROP"})
  void anUnknownPlayIsNoQuestion(String play) throws Exception {
    web.perform(Asked.at(ADDRESS, played(Asked.good(), play, 20)))
        .andExpect(status().isBadRequest());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -5, 1e9})
  void aSpeedThatNobodyRidesIsNoQuestion(double kmh) throws Exception {
    web.perform(Asked.at(ADDRESS, played(Asked.good(), "breach", kmh)))
        .andExpect(status().isBadRequest());
  }

  @Test
  void aQuestionWithoutTheTokenIsRefused() throws Exception {
    web.perform(
            post(ADDRESS)
                .contentType(MediaType.APPLICATION_JSON)
                .content(played(Asked.good(), "breach", 20).toString()))
        .andExpect(status().isForbidden());
  }
}
