package trimwright.web.system;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.csrf;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.cookie;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.context.annotation.Import;
import org.springframework.stereotype.Controller;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ResponseBody;
import trimwright.web.TestShop;

@SpringBootTest(classes = {TestShop.class})
@Import(SystemTest.Broken.class)
@AutoConfigureMockMvc
class SystemTest {
  private static final String SECRET = "nobody should read this";

  @Autowired private MockMvc web;

  /** A page with a fault in it. */
  @Controller
  static class Broken {
    @GetMapping("/broken")
    @ResponseBody
    String broken() {
      throw new IllegalStateException(SECRET);
    }
  }

  @Test
  void everyAnswerCarriesTheSecurityHeaders() throws Exception {
    web.perform(get("/"))
        .andExpect(
            header().string("Content-Security-Policy", SystemConfiguration.CONTENT_SECURITY_POLICY))
        .andExpect(header().string("X-Content-Type-Options", "nosniff"))
        .andExpect(header().string("X-Frame-Options", "DENY"))
        .andExpect(header().string("Referrer-Policy", "same-origin"))
        .andExpect(header().exists("Permissions-Policy"));
  }

  @Test
  void thePolicyAllowsNothingInsideThePage() {
    assertThat(SystemConfiguration.CONTENT_SECURITY_POLICY)
        .startsWith("default-src 'none'")
        .doesNotContain("unsafe");
  }

  @Test
  void theTokensCookieIsOutOfReachOfScriptsAndOtherSites() throws Exception {
    web.perform(get("/"))
        .andExpect(cookie().httpOnly("form-token", true))
        .andExpect(cookie().sameSite("form-token", "Strict"));
  }

  @Test
  void noSessionIsKept() throws Exception {
    web.perform(get("/")).andExpect(cookie().doesNotExist("JSESSIONID"));
  }

  @Test
  void aPageThatIsNotThereHasAPageOfItsOwn() throws Exception {
    web.perform(get("/no-such-page"))
        .andExpect(status().isNotFound())
        .andExpect(view().name("system/error"))
        .andExpect(content().string(containsString("There is no such page here.")))
        .andExpect(content().string(containsString("reference number")));
  }

  @Test
  void aFaultShowsAReferenceNumberAndNothingOfItself() throws Exception {
    web.perform(get("/broken").param("theme", "dark"))
        .andExpect(status().isInternalServerError())
        .andExpect(view().name("system/error"))
        .andExpect(content().string(matchesPattern("(?s).*class=\"reference\">[0-9A-F]{8}<.*")))
        .andExpect(content().string(containsString("data-theme=\"dark\"")))
        .andExpect(content().string(not(containsString(SECRET))))
        .andExpect(content().string(not(containsString("Exception"))));
  }

  @Test
  void aMethodThatIsNotOfferedIsNoFault() throws Exception {
    web.perform(post("/theme.js").with(csrf())).andExpect(status().is4xxClientError());
  }

  @ParameterizedTest
  @ValueSource(strings = {"evil.example", "127.0.0.1.evil.example", "localhost.evil.example"})
  void aHostNameOfSomebodyElseIsRefused(String host) throws Exception {
    web.perform(
            get("/")
                .with(
                    request -> {
                      request.setServerName(host);
                      return request;
                    }))
        .andExpect(status().isBadRequest());
  }

  @ParameterizedTest
  @ValueSource(strings = {"127.0.0.1", "localhost", "LOCALHOST", "[::1]"})
  void theLoopbacksNamesAreAnswered(String host) throws Exception {
    web.perform(
            get("/")
                .with(
                    request -> {
                      request.setServerName(host);
                      return request;
                    }))
        .andExpect(status().isOk());
  }

  @Test
  void aRequestThatIsFarTooLargeIsTurnedAwayUnread() throws Exception {
    byte[] huge = new byte[(int) SizeLimit.LARGEST_REQUEST + 1];
    web.perform(post("/").content(huge)).andExpect(status().isContentTooLarge());
  }

  @Test
  void staticFilesAreServedForAYear() throws Exception {
    web.perform(get("/trimwright.css"))
        .andExpect(status().isOk())
        .andExpect(header().string("Cache-Control", containsString("max-age=31536000")));
  }
}
