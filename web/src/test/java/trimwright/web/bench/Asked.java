package trimwright.web.bench;

import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import java.util.Map;
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.read.CaseReader;
import trimwright.exchange.read.SectionFiles;

/** Questions as the page's scripts ask them. */
final class Asked {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private Asked() {}

  static ObjectNode question() {
    return MAPPER.createObjectNode();
  }

  /** The fields of a good case. */
  static ObjectNode good() {
    ObjectNode question = question().put("sequence", 7).put("measures", "metric");
    ObjectNode fields = question.putObject("fields");
    String text = DemoCases.find("light-carver").orElseThrow().text();
    Map<String, String> values =
        CaseDraft.fields(CaseReader.read(text, SectionFiles.NONE).findValue().orElseThrow());
    values.forEach(fields::put);
    return question;
  }

  /** The same with one field written otherwise. */
  static ObjectNode with(String path, String text) {
    ObjectNode question = good();
    ((ObjectNode) question.get("fields")).put(path, text);
    return question;
  }

  static MockHttpServletRequestBuilder at(String address, ObjectNode question) {
    return at(address, question.toString());
  }

  static MockHttpServletRequestBuilder at(String address, String body) {
    return post(address)
        .with(csrf().asHeader())
        .accept(MediaType.ALL)
        .contentType(MediaType.APPLICATION_JSON)
        .content(body);
  }

  static JsonNode read(String answer) {
    return MAPPER.readTree(answer);
  }
}
