package trimwright.exchange.read.internal;

/**
 * Paths of keys as people read them: {@code setup.front_wing.stations[2].eta}, lists counted from
 * 0.
 */
public final class Paths {
  private Paths() {}

  /** The path of a key below a path. */
  public static String child(String path, String key) {
    return path.isEmpty() ? key : path + "." + key;
  }

  /** The path of a list's element. */
  public static String element(String path, int index) {
    return path + "[" + index + "]";
  }

  /** The path above; empty above the top keys. */
  public static String parent(String path) {
    int cut = Math.max(path.lastIndexOf('.'), path.lastIndexOf('['));
    return cut < 0 ? "" : path.substring(0, cut);
  }

  /** Whether a path is the other or lies below it. */
  public static boolean within(String path, String above) {
    return path.equals(above)
        || path.startsWith(above)
            && (above.isEmpty()
                || path.charAt(above.length()) == '.'
                || path.charAt(above.length()) == '[');
  }
}
