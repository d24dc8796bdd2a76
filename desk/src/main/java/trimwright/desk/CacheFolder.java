package trimwright.desk;

import java.nio.file.Path;
import java.util.Map;

/**
 * Where computed tables lie unless somebody says otherwise: what TRIMWRIGHT_CACHE names, else
 * {@code trimwright} in the cache folder of the XDG Base Directory Specification. Not in the shop's
 * folder: nothing there is the shop's data, and several shops may share it.
 */
final class CacheFolder {
  /** What the tables may take [byte]: some 3,500 sections. */
  static final long MOST_BYTES = 64L * 1024 * 1024;

  private static final String OWN_VARIABLE = "TRIMWRIGHT_CACHE";
  private static final String COMMON_VARIABLE = "XDG_CACHE_HOME";
  private static final String NAME = "trimwright";

  private CacheFolder() {}

  /** The folder of this program's surroundings. */
  static Path standard() {
    return of(System.getenv(), Path.of(System.getProperty("user.home")));
  }

  /**
   * The folder of any surroundings.
   *
   * @param environment variables by name
   * @param home the user's home
   */
  static Path of(Map<String, String> environment, Path home) {
    String own = environment.getOrDefault(OWN_VARIABLE, "");
    if (!own.isBlank()) {
      return Path.of(own);
    }
    String common = environment.getOrDefault(COMMON_VARIABLE, "");
    // The specification wants relative ones passed over.
    boolean usable = !common.isBlank() && Path.of(common).isAbsolute();
    return (usable ? Path.of(common) : home.resolve(".cache")).resolve(NAME);
  }
}
