package trimwright.reference;

import java.util.Locale;

/** How a published figure came into the tables. */
public enum Provenance {
  /** Seen in a copy of the source or in a text that quotes it. */
  READ("read"),
  /** Recalled, not seen. Counted apart. */
  MEMORY("memory"),
  /** Worked out here, by other means than the checked code, from a published formula or theory. */
  EVALUATED("evaluated");

  private final String text;

  Provenance(String text) {
    this.text = text;
  }

  /** The word used in tables and documents. */
  public String text() {
    return text;
  }

  /**
   * The provenance named by a word of the tables.
   *
   * @param text one of read, memory, evaluated
   * @throws IllegalArgumentException if the word is none of these
   */
  public static Provenance of(String text) {
    return valueOf(text.toUpperCase(Locale.ROOT));
  }
}
