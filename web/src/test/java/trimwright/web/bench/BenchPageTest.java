package trimwright.web.bench;

import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.view;

import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.webmvc.test.autoconfigure.AutoConfigureMockMvc;
import org.springframework.test.web.servlet.MockMvc;
import trimwright.web.TestShop;

@SpringBootTest(classes = TestShop.class)
@AutoConfigureMockMvc
class BenchPageTest {
  @Autowired private MockMvc web;

  @Test
  void thePageCarriesItsDataAndTheToken() throws Exception {
    web.perform(get("/"))
        .andExpect(status().isOk())
        .andExpect(view().name("bench/page"))
        .andExpect(content().string(containsString("id=\"bench-data\"")))
        .andExpect(content().string(containsString("\"accepted\":true")))
        .andExpect(content().string(containsString("name=\"csrf-token\"")));
  }

  @Test
  void aCaseThatIsNotThereIsNotFound() throws Exception {
    web.perform(get("/").param("case", "no-such-case")).andExpect(status().isNotFound());
  }
}
