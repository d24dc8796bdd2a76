package trimwright.web.bench;

import java.net.URI;
import java.nio.file.Path;
import java.util.concurrent.Future;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import trimwright.desk.CaseShelf;
import trimwright.exchange.read.CaseDraft;
import trimwright.exchange.unit.Measures;

/** The Bench. What it needs beside: a {@link CaseShelf}. */
@Configuration(proxyBeanMethods = false)
@Import({BenchController.class, CaseController.class, SheetController.class})
public class BenchConfiguration {
  /** Made on first use, by whichever thread comes first: the warm-up's or the first visitor's. */
  private static final class Shared {
    static final BenchAnswers ANSWERS = new BenchAnswers();
  }

  @Bean(destroyMethod = "stop")
  BenchAnswers benchAnswers() {
    return Shared.ANSWERS;
  }

  @Bean
  BenchCases benchCases(CaseShelf shelf) {
    return new BenchCases(shelf);
  }

  /**
   * Answers the case that the first page will open with, so that the first visitor does not wait
   * for that; and once that page has been asked for, goes on with {@link Practice} for some
   * seconds. Meant to run beside the server, on a thread of its own.
   *
   * @param shopFolder where the shop keeps its files
   * @param shop the shop's address, once it is open
   */
  public static void warmUp(Path shopFolder, Future<URI> shop) {
    BenchCases.Opened first = new BenchCases(new CaseShelf(shopFolder)).first();
    Shared.ANSWERS.first(Measures.METRIC, first.caseFile());
    new Practice(Shared.ANSWERS, shop).go(CaseDraft.fields(first.caseFile()));
  }
}
