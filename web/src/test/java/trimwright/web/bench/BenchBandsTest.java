package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
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
class BenchBandsTest {
  @Autowired private MockMvc web;

  private JsonNode answer(String address, ObjectNode question) throws Exception {
    return Asked.read(
        web.perform(Asked.at(address, question))
            .andExpect(status().isOk())
            .andReturn()
            .getResponse()
            .getContentAsString());
  }

  @Test
  void everyPointOfTheCurveHasItsBands() throws Exception {
    JsonNode curve = answer("/bench/curve", Asked.good());
    JsonNode bands = answer("/bench/bands", Asked.good());
    assertThat(bands.get("sequence").asLong()).isEqualTo(7);
    assertThat(bands.get("case_digest")).isEqualTo(curve.get("case_digest"));
    assertThat(bands.get("points").size()).isEqualTo(curve.get("points").size());
    int keys = bands.get("band_keys").size();
    for (int i = 0; i < bands.get("points").size(); i++) {
      JsonNode numbers = curve.get("points").get(i).get("numbers");
      JsonNode point = bands.get("points").get(i);
      assertThat(point.get("bands").isNull()).isEqualTo(numbers.isNull());
      if (!numbers.isNull()) {
        assertThat(point.get("bands").size()).isEqualTo(2 * keys);
        // Pitch comes first in both.
        double pitch = numbers.get(0).doubleValue();
        assertThat(point.get("bands").get(0).doubleValue()).isBetween(pitch - 2, pitch - 0.3);
        assertThat(point.get("bands").get(1).doubleValue()).isBetween(pitch + 0.3, pitch + 2);
        assertThat(point.get("sure").size()).isPositive();
      }
    }
  }

  @Test
  void aPartKnownBetterNarrowsThem() throws Exception {
    JsonNode sheet = answer("/bench/bands", Asked.with("setup.stabilizer.known_by", "sheet"));
    JsonNode scan = answer("/bench/bands", Asked.with("setup.stabilizer.known_by", "scan"));
    assertThat(width(scan)).isLessThan(0.8 * width(sheet));
  }

  private static double width(JsonNode answer) {
    JsonNode bands = answer.get("points").get(15).get("bands");
    return bands.get(3).doubleValue() - bands.get(2).doubleValue();
  }

  @Test
  void aPinnedReferenceIsHeldAgainstIt() throws Exception {
    ObjectNode same = Asked.with("rider.mass_kg", "58.5");
    same.set("pinned", Asked.good().get("fields"));
    assertThat(apart(same)).startsWith("At this speed it cannot be told apart from the pinned");
    ObjectNode wedge = Asked.with("setup.mast.base_angle_deg", "1");
    wedge.set("pinned", Asked.good().get("fields"));
    assertThat(apart(wedge)).startsWith("The deck rides ").contains("more nose-up than in");
    assertThat(answer("/bench/bands", Asked.good()).at("/points/15/apart").size()).isZero();
  }

  @Test
  void numbersThatCannotBeToldApartAreNamed() throws Exception {
    ObjectNode wedge = Asked.with("setup.mast.base_angle_deg", "1");
    wedge.set("pinned", Asked.good().get("fields"));
    JsonNode answer = answer("/bench/bands", wedge);
    List<String> alike = new ArrayList<>();
    answer
        .at("/points/15/alike")
        .forEach(place -> alike.add(answer.at("/band_keys/" + place.asInt()).asString()));
    // A wedge turns the deck and little else.
    assertThat(alike).contains("electric_power_w", "foot_share").doesNotContain("pitch_deg");
    assertThat(answer("/bench/bands", Asked.good()).at("/points/15/alike").size()).isZero();
  }

  private String apart(ObjectNode question) throws Exception {
    JsonNode answer = answer("/bench/bands", question);
    int first = answer.at("/points/15/apart/0").asInt();
    return answer.get("phrases").get(first).asString();
  }

  @Test
  void fieldsThatAreNoCaseAreRefused() throws Exception {
    JsonNode answer = answer("/bench/bands", Asked.with("rider.mass_kg", "heavy"));
    assertThat(answer.get("accepted").booleanValue()).isFalse();
    assertThat(answer.get("problems").size()).isEqualTo(1);
  }

  @Test
  void whoeverMovesASliderStopsThem() throws Exception {
    CaseFile caseFile =
        CaseReader.read(DemoCases.list().get(0).text(), SectionFiles.NONE)
            .findValue()
            .orElseThrow();
    BenchAnswers answers = new BenchAnswers();
    AtomicBoolean isOver = new AtomicBoolean();
    ExecutorService other = Executors.newSingleThreadExecutor();
    try {
      Future<?> moves =
          other.submit(
              () -> {
                while (!isOver.get()) {
                  answers.accepted(1, Measures.METRIC, caseFile);
                }
              });
      JsonNode answer = Asked.read(answers.banded(3, Measures.METRIC, caseFile, Optional.empty()));
      isOver.set(true);
      moves.get();
      assertThat(answer.get("accepted").booleanValue()).isFalse();
      assertThat(answer.get("stopped").booleanValue()).isTrue();
      assertThat(
              Asked.read(answers.banded(4, Measures.METRIC, caseFile, Optional.empty()))
                  .get("points")
                  .size())
          .isPositive();
    } finally {
      isOver.set(true);
      other.shutdownNow();
    }
  }
}
