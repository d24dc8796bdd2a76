package trimwright.web.page;

import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.ViewResolver;

/** Finds the template of a view's name and writes it into the response. */
final class JteViewResolver implements ViewResolver {
  /** Templates are mostly larger than this; it saves the first few copies. */
  private static final int FIRST_CAPACITY = 32_768;

  private static final String CONTENT_TYPE = "text/html;charset=utf-8";

  private final TemplateEngine engine;

  JteViewResolver(TemplateEngine engine) {
    this.engine = engine;
  }

  @Override
  public View resolveViewName(String viewName, Locale locale) {
    String template = viewName + ".jte";
    return engine.hasTemplate(template) ? new JteView(engine, template) : null;
  }

  private record JteView(TemplateEngine engine, String template) implements View {
    @Override
    public String getContentType() {
      return CONTENT_TYPE;
    }

    /**
     * Renders the whole page before the first byte leaves: a template that fails then still gives a
     * clean error page, and the token's cookie still finds its place in the headers.
     */
    @Override
    public void render(
        Map<String, ?> model, HttpServletRequest request, HttpServletResponse response)
        throws IOException {
      Map<String, Object> values = new HashMap<>(model);
      values.put("csrf", csrf(request));
      StringOutput output = new StringOutput(FIRST_CAPACITY);
      engine.render(template, values, output);
      byte[] page = output.toString().getBytes(StandardCharsets.UTF_8);
      response.setContentType(CONTENT_TYPE);
      response.setContentLength(page.length);
      response.getOutputStream().write(page);
    }

    private static Csrf csrf(HttpServletRequest request) {
      return request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token
          ? new Csrf(token.getParameterName(), token.getHeaderName(), token.getToken())
          : Csrf.NONE;
    }
  }
}
