package trimwright.web.trim;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import trimwright.exchange.demo.DemoCases;
import trimwright.exchange.read.CaseFile;
import trimwright.exchange.words.Shown;

/** The first page and its downloads. */
@Configuration(proxyBeanMethods = false)
@Import({TrimController.class, DownloadController.class, TrimAnswers.class, DemoShelf.class})
public class TrimConfiguration {

  /**
   * Reads the demo cases and answers one of them, so that the first visitor does not wait for that.
   * Meant to run beside the start of the server, on a thread of its own.
   */
  public static void warmUp() {
    CaseFile caseFile = new DemoShelf().getCase(DemoCases.list().get(0).id());
    new TrimAnswers().at(caseFile, Shown.kmh(caseFile.rideCase().rider().wishedSpeed()));
  }
}
