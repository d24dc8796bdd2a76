package trimwright.web.trim;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;

/** The first page and its downloads. */
@Configuration(proxyBeanMethods = false)
@Import({TrimController.class, DownloadController.class, TrimAnswers.class, DemoShelf.class})
public class TrimConfiguration {}
