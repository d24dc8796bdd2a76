package trimwright.web.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.springframework.core.io.Resource;
import org.springframework.http.CacheControl;
import org.springframework.util.DigestUtils;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;

/**
 * Scripts that load each other by name. Their addresses carry no digest, so a browser asks each
 * time whether a file is still the one it has; the answer goes by the content, for the time stamps
 * inside a jar are the same for every version.
 */
final class ScriptModules implements WebMvcConfigurer {
  @Override
  public void addResourceHandlers(ResourceHandlerRegistry registry) {
    add(registry, "bench");
    add(registry, "match");
  }

  private static void add(ResourceHandlerRegistry registry, String folder) {
    registry
        .addResourceHandler("/" + folder + "/**")
        .addResourceLocations("classpath:/static/" + folder + "/")
        .setCacheControl(CacheControl.noCache())
        .setUseLastModified(false)
        .setEtagGenerator(ScriptModules::digest);
  }

  private static String digest(Resource resource) {
    try (InputStream in = resource.getInputStream()) {
      return "\"" + DigestUtils.md5DigestAsHex(in) + "\"";
    } catch (IOException e) {
      throw new UncheckedIOException("a script cannot be read", e);
    }
  }
}
