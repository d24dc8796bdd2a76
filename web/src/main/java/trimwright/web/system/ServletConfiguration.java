package trimwright.web.system;

import jakarta.servlet.Filter;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.boot.web.servlet.ServletRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.Ordered;
import org.springframework.http.CacheControl;
import org.springframework.http.converter.ByteArrayHttpMessageConverter;
import org.springframework.http.converter.HttpMessageConverters.ServerBuilder;
import org.springframework.http.converter.StringHttpMessageConverter;
import org.springframework.security.web.FilterChainProxy;
import org.springframework.web.context.WebApplicationContext;
import org.springframework.web.filter.CharacterEncodingFilter;
import org.springframework.web.servlet.DispatcherServlet;
import org.springframework.web.servlet.config.annotation.EnableWebMvc;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * The servlet that hands requests to the pages, and the filters before it, each in its place. They
 * are put together here by hand: to have the framework find out by itself what a program needs
 * takes longer than all the rest of the start.
 */
@Configuration(proxyBeanMethods = false)
@EnableWebMvc
class ServletConfiguration implements WebMvcConfigurer {
  /** The address of a static file carries a digest of what is in it, so it may be kept for long. */
  private static final Duration STATIC_FILES_KEPT = Duration.ofDays(365);

  private static final int ENCODING_FIRST = Ordered.HIGHEST_PRECEDENCE;
  private static final int SIZE_SECOND = ENCODING_FIRST + 1;
  private static final int SECURITY_THIRD = SIZE_SECOND + 1;

  @Bean
  ServletRegistrationBean<DispatcherServlet> pages(WebApplicationContext context) {
    return new ServletRegistrationBean<>(new DispatcherServlet(context), "/");
  }

  @Bean
  FilterRegistrationBean<Filter> encoding() {
    return filter(new CharacterEncodingFilter(StandardCharsets.UTF_8.name(), true), ENCODING_FIRST);
  }

  /** Ahead of the security filters, because those read the whole form to find the token. */
  @Bean
  FilterRegistrationBean<Filter> sizeLimit() {
    return filter(new SizeLimit(), SIZE_SECOND);
  }

  @Bean
  FilterRegistrationBean<Filter> security(FilterChainProxy chain) {
    return filter(chain, SECURITY_THIRD);
  }

  private static FilterRegistrationBean<Filter> filter(Filter filter, int place) {
    FilterRegistrationBean<Filter> registration = new FilterRegistrationBean<>(filter);
    registration.setOrder(place);
    return registration;
  }

  @Override
  public void addResourceHandlers(ResourceHandlerRegistry registry) {
    registry
        .addResourceHandler("/**")
        .addResourceLocations("classpath:/static/")
        .setCacheControl(CacheControl.maxAge(STATIC_FILES_KEPT));
  }

  /** Bodies go in and out as text or bytes; what they mean is for others to read. */
  @Override
  public void configureMessageConverters(ServerBuilder builder) {
    builder
        .addCustomConverter(new ByteArrayHttpMessageConverter())
        .addCustomConverter(new StringHttpMessageConverter(StandardCharsets.UTF_8));
  }
}
