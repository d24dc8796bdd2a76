package trimwright.exchange.words;

/** First letters of sentences, in any locale's program the same. */
final class Sentence {
  private Sentence() {}

  static String lowerFirst(String text) {
    return Character.toLowerCase(text.charAt(0)) + text.substring(1);
  }

  static String upperFirst(String text) {
    return Character.toUpperCase(text.charAt(0)) + text.substring(1);
  }
}
