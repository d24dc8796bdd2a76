package trimwright.web;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import trimwright.desk.CaseShelf;

/** The shop of the tests, on a folder of its own that does not exist yet. */
@Configuration(proxyBeanMethods = false)
@Import(ShopConfiguration.class)
public class TestShop {
  @Bean
  CaseShelf caseShelf() throws IOException {
    Path place = Files.createTempDirectory("trimwright-web-test-");
    place.toFile().deleteOnExit();
    return new CaseShelf(place.resolve("shop"));
  }
}
