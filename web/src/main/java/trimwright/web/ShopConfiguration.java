package trimwright.web;

import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.context.ConfigurationPropertiesAutoConfiguration;
import org.springframework.boot.autoconfigure.context.PropertyPlaceholderAutoConfiguration;
import org.springframework.boot.security.autoconfigure.SecurityAutoConfiguration;
import org.springframework.boot.security.autoconfigure.web.servlet.SecurityFilterAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.HttpEncodingAutoConfiguration;
import org.springframework.boot.servlet.autoconfigure.MultipartAutoConfiguration;
import org.springframework.boot.tomcat.autoconfigure.servlet.TomcatServletWebServerAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.DispatcherServletAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.WebMvcAutoConfiguration;
import org.springframework.boot.webmvc.autoconfigure.error.ErrorMvcAutoConfiguration;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import trimwright.web.bench.BenchConfiguration;
import trimwright.web.page.PageConfiguration;
import trimwright.web.system.SystemConfiguration;

/**
 * Joins the pages. The parts of the framework are named one by one instead of being searched for on
 * the class path: the start is quicker and nothing comes in unasked.
 */
@Configuration(proxyBeanMethods = false)
@ImportAutoConfiguration({
  PropertyPlaceholderAutoConfiguration.class,
  ConfigurationPropertiesAutoConfiguration.class,
  TomcatServletWebServerAutoConfiguration.class,
  DispatcherServletAutoConfiguration.class,
  HttpEncodingAutoConfiguration.class,
  MultipartAutoConfiguration.class,
  WebMvcAutoConfiguration.class,
  ErrorMvcAutoConfiguration.class,
  SecurityAutoConfiguration.class,
  SecurityFilterAutoConfiguration.class
})
@Import({PageConfiguration.class, SystemConfiguration.class, BenchConfiguration.class})
public class ShopConfiguration {}
