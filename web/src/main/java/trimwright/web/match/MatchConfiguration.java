package trimwright.web.match;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The match. What it needs beside: the Bench's cases. */
@Configuration(proxyBeanMethods = false)
@Import(MatchController.class)
public class MatchConfiguration {
  @Bean(destroyMethod = "stop")
  MatchJobs matchJobs() {
    return new MatchJobs();
  }
}
