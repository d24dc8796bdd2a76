package trimwright.web.system;

import java.util.Locale;
import java.util.Set;

/** The names under which the loopback address may be called. */
final class PermittedHosts {
  private static final Set<String> NAMES = Set.of("127.0.0.1", "localhost", "[::1]", "::1");

  private PermittedHosts() {}

  static boolean isPermitted(String host) {
    return NAMES.contains(host.toLowerCase(Locale.ROOT));
  }
}
