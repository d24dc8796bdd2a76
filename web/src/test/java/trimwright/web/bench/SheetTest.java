package trimwright.web.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
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
import org.springframework.http.MediaType;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class SheetTest {
  @Autowired private MockMvc web;

  private static MockHttpServletRequestBuilder form(String fields, String speed) {
    return post("/bench/sheet")
        .with(csrf())
        .accept(MediaType.TEXT_HTML)
        .contentType(MediaType.APPLICATION_FORM_URLENCODED)
        .param("fields", fields)
        .param("speed_kmh", speed);
  }

  private static String good() {
    return Asked.good().get("fields").toString();
  }

  @ParameterizedTest
  @CsvSource({"A4, metric, ''", "LETTER, imperial, Ana Example", "folio, cubits, <b>"})
  void theFieldsBecomeAPdfToLookAt(String paper, String measures, String rider) throws Exception {
    byte[] pdf =
        web.perform(
                form(good(), "22")
                    .param("paper", paper)
                    .param("measures", measures)
                    .param("rider", rider))
            .andExpect(status().isOk())
            .andExpect(content().contentTypeCompatibleWith(MediaType.APPLICATION_PDF))
            .andExpect(header().string("Content-Security-Policy", "frame-ancestors 'none'"))
            .andExpect(header().string("Content-Disposition", containsString("inline")))
            .andExpect(header().string("Content-Disposition", containsString("-sheet.pdf")))
            .andReturn()
            .getResponse()
            .getContentAsByteArray();
    assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
  }

  @Test
  void aNameWithoutEndIsCutAndNoFault() throws Exception {
    web.perform(form(good(), "22").param("rider", "\ud83c\udfc4".repeat(5000) + "\u0000\n"))
        .andExpect(status().isOk());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "fast", "0", "-22", "101", "NaN", "Infinity", "1e999"})
  void aSpeedThatIsNoneIsAnsweredByAPage(String speed) throws Exception {
    web.perform(form(good(), speed))
        .andExpect(status().isBadRequest())
        .andExpect(view().name("system/error"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "{", "[]", "7", "{}", "{\"rider.mass_kg\":\"heavy\"}", "{\"a\":{}}"})
  void fieldsThatMakeNoCaseAreAnsweredByAPage(String fields) throws Exception {
    web.perform(form(fields, "22"))
        .andExpect(status().isUnprocessableContent())
        .andExpect(view().name("system/error"))
        .andExpect(content().string(containsString("makes no case")))
        .andExpect(content().string(not(containsString("Exception"))));
  }

  @Test
  void aFormOfSomebodyElseIsRefused() throws Exception {
    web.perform(
            post("/bench/sheet")
                .contentType(MediaType.APPLICATION_FORM_URLENCODED)
                .param("fields", good())
                .param("speed_kmh", "22"))
        .andExpect(status().isForbidden());
  }
}
