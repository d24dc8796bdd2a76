package trimwright.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.ViewResolver;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/** Templates that were made into classes at build time. */
@Configuration(proxyBeanMethods = false)
public class PageConfiguration {
  private static final String TEMPLATE_PACKAGE = "trimwright.web.template";

  @Bean
  TemplateEngine templateEngine() {
    return TemplateEngine.createPrecompiled(
        null, ContentType.Html, PageConfiguration.class.getClassLoader(), TEMPLATE_PACKAGE);
  }

  @Bean
  ViewResolver jteViewResolver(TemplateEngine engine) {
    return new JteViewResolver(engine);
  }

  @Bean
  WebMvcConfigurer scriptModules() {
    return new ScriptModules();
  }
}
