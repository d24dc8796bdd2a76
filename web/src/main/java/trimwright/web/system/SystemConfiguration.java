package trimwright.web.system;

import jakarta.servlet.Filter;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Import;
import org.springframework.core.Ordered;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configuration.EnableWebSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.csrf.CookieCsrfTokenRepository;
import org.springframework.security.web.firewall.HttpFirewall;
import org.springframework.security.web.firewall.StrictHttpFirewall;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;

/**
 * Security headers, permitted hosts, forms of our own only. Nobody logs in on a program that one
 * person runs.
 */
@Configuration(proxyBeanMethods = false)
@EnableWebSecurity
@Import(ErrorPages.class)
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

  @Bean
  SecurityFilterChain filters(HttpSecurity http) throws Exception {
    CookieCsrfTokenRepository tokens = new CookieCsrfTokenRepository();
    tokens.setCookieName("form-token");
    tokens.setCookieCustomizer(cookie -> cookie.httpOnly(true).sameSite("Strict").path("/"));
    return http.authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
        .csrf(csrf -> csrf.csrfTokenRepository(tokens))
        .sessionManagement(
            sessions -> sessions.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
        .headers(
            headers ->
                headers
                    .contentSecurityPolicy(
                        policy -> policy.policyDirectives(CONTENT_SECURITY_POLICY))
                    .referrerPolicy(policy -> policy.policy(ReferrerPolicy.SAME_ORIGIN))
                    .permissionsPolicyHeader(policy -> policy.policy(PERMISSIONS_POLICY))
                    .frameOptions(frames -> frames.deny()))
        .formLogin(AbstractHttpConfigurer::disable)
        .httpBasic(AbstractHttpConfigurer::disable)
        .logout(AbstractHttpConfigurer::disable)
        .anonymous(AbstractHttpConfigurer::disable)
        .requestCache(AbstractHttpConfigurer::disable)
        .build();
  }

  /**
   * Answers only to the loopback's own names. A page of somebody else whose host name was pointed
   * at this machine would otherwise be able to read what is shown here.
   */
  @Bean
  HttpFirewall firewall() {
    StrictHttpFirewall firewall = new StrictHttpFirewall();
    firewall.setAllowedHostnames(PermittedHosts::isPermitted);
    return firewall;
  }

  /** Ahead of the security filters, because those read the whole form to find the token. */
  @Bean
  FilterRegistrationBean<Filter> sizeLimit() {
    FilterRegistrationBean<Filter> registration = new FilterRegistrationBean<>(new SizeLimit());
    registration.setOrder(Ordered.HIGHEST_PRECEDENCE + 1);
    return registration;
  }
}
