package trimwright.web.bench;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import trimwright.exchange.unit.Measures;

/** The Bench. */
@Configuration(proxyBeanMethods = false)
@Import({BenchController.class, BenchAnswers.class, DemoShelf.class})
public class BenchConfiguration {

  /**
   * Reads the demo cases and answers one of them, so that the first visitor does not wait for that.
   * Meant to run beside the start of the server, on a thread of its own.
   */
  public static void warmUp() {
    new BenchAnswers().accepted(0, Measures.METRIC, new DemoShelf().list().get(0).caseFile());
  }
}
