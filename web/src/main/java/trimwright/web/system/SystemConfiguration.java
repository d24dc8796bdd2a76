package trimwright.web.system;

import jakarta.servlet.Filter;
import java.util.List;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.security.web.DefaultSecurityFilterChain;
import org.springframework.security.web.FilterChainProxy;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.springframework.security.web.header.HeaderWriterFilter;
import org.springframework.security.web.header.writers.CacheControlHeadersWriter;
import org.springframework.security.web.header.writers.ContentSecurityPolicyHeaderWriter;
import org.springframework.security.web.header.writers.PermissionsPolicyHeaderWriter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.XContentTypeOptionsHeaderWriter;
import org.springframework.security.web.header.writers.XXssProtectionHeaderWriter;
import org.springframework.security.web.header.writers.frameoptions.XFrameOptionsHeaderWriter;
import org.springframework.security.web.header.writers.frameoptions.XFrameOptionsHeaderWriter.XFrameOptionsMode;
import org.springframework.security.web.util.matcher.AnyRequestMatcher;

/**
 * Security headers, permitted hosts, forms of our own only. Nobody logs in on a program that one
 * person runs, so that two filters are all there is.
 */
@Configuration(proxyBeanMethods = false)
@Import({ErrorPages.class, ServletConfiguration.class})
public class SystemConfiguration {
  /**
   * Scripts, styles and pictures come from this server alone, and nothing stands inside the page's
   * text. A picture that is saved as PNG is first loaded as an image from the SVG that the page
   * drew, which a browser does only from a {@code blob:} or {@code data:} address.
   */
  static final String CONTENT_SECURITY_POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:;"
          + " connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final String PERMISSIONS_POLICY =
      "camera=(), geolocation=(), microphone=(), payment=(), usb=()";

  /** Called as the framework calls it by itself: its tests look for that name. */
  @Bean
  FilterChainProxy springSecurityFilterChain() {
    List<Filter> filters = List.of(headers(), ownForms());
    FilterChainProxy proxy =
        new FilterChainProxy(new DefaultSecurityFilterChain(AnyRequestMatcher.INSTANCE, filters));
    proxy.setFirewall(firewall());
    return proxy;
  }

  private static HeaderWriterFilter headers() {
    return new HeaderWriterFilter(
        List.of(
            new XContentTypeOptionsHeaderWriter(),
            new XXssProtectionHeaderWriter(),
            new CacheControlHeadersWriter(),
            new XFrameOptionsHeaderWriter(XFrameOptionsMode.DENY),
            new ContentSecurityPolicyHeaderWriter(CONTENT_SECURITY_POLICY),
            new ReferrerPolicyHeaderWriter(ReferrerPolicy.SAME_ORIGIN),
            new PermissionsPolicyHeaderWriter(PERMISSIONS_POLICY)));
  }

  private static CsrfFilter ownForms() {
    CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
    tokens.setCookieName("form-token");
    tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Strict").path("/"));
    return new CsrfFilter(tokens);
  }

  /**
   * Answers only to the loopback's own names. A page of somebody else whose host name was pointed
   * at this machine would otherwise be able to read what is shown here.
   */
  private static HttpFirewall firewall() {
    StrictHttpFirewall firewall = new StrictHttpFirewall();
    firewall.setAllowedHostnames(PermittedHosts::isPermitted);
    return firewall;
  }
}
