package trimwright.web;

import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import trimwright.web.bench.BenchConfiguration;
import trimwright.web.match.MatchConfiguration;
import trimwright.web.page.PageConfiguration;
import trimwright.web.system.SystemConfiguration;

/**
 * Joins the pages. Every part is named, and none is searched for on the class path: the start is
 * quicker and nothing comes in unasked.
 */
@Configuration(proxyBeanMethods = false)
@Import({
  PageConfiguration.class,
  SystemConfiguration.class,
  BenchConfiguration.class,
  MatchConfiguration.class
})
public class ShopConfiguration {}
