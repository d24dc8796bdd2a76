package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

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
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class BenchSectionsTest {
  private static final String SECTIONS = "/bench/sections";
  private static final String FIELD = "setup.front_wing.section";

  @Autowired private MockMvc web;

  private JsonNode answer(String address, ObjectNode question) throws Exception {
    return Asked.read(
        web.perform(Asked.at(address, question))
            .andExpect(status().isOk())
            .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_JSON))
            .andReturn()
            .getResponse()
            .getContentAsString());
  }

  @Test
  void usualSectionsAreReady() throws Exception {
    JsonNode state = answer(SECTIONS, Asked.good());
    assertThat(state.get("ready").booleanValue()).isTrue();
    assertThat(state.get("final").booleanValue()).isTrue();
    assertThat(state.get("words").asString()).isEmpty();
    assertThat(answer("/bench/curve", Asked.good()).get("sections").asString()).isEqualTo("layers");
  }

  @Test
  void aNewOutlineIsAnsweredFittedAndItsPolarsAreBegun() throws Exception {
    ObjectNode fresh = Asked.with(FIELD, "naca3314");
    assertThat(answer("/bench/curve", fresh).get("sections").asString()).isEqualTo("fitted");
    JsonNode state = answer(SECTIONS, fresh);
    assertThat(state.get("ready").booleanValue()).isFalse();
    assertThat(state.get("final").booleanValue()).isFalse();
    assertThat(state.get("words").asString()).contains("naca3314", "is being computed");
  }

  @Test
  void fieldsThatAreNoCaseBeginNothing() throws Exception {
    JsonNode state = answer(SECTIONS, Asked.with("rider.mass_kg", "heavy"));
    assertThat(state.get("final").booleanValue()).isTrue();
    assertThat(state.get("words").asString()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[]", "{\"fields\":null}"})
  void whatIsNoQuestionIsRefused(String body) throws Exception {
    web.perform(Asked.at(SECTIONS, body)).andExpect(status().isBadRequest());
  }

  @Test
  void aQuestionWithoutTheTokenIsRefused() throws Exception {
    web.perform(
            post(SECTIONS).contentType(MediaType.APPLICATION_JSON).content(Asked.good().toString()))
        .andExpect(status().isForbidden());
  }
}
