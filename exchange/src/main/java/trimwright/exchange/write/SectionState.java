package trimwright.exchange.write;

/**
 * How far the polars of a case's sections are, for a page whose numbers stand on fitted sections.
 *
 * @param ready whether all are there: whoever asks for the case again has it on them
 * @param isFinal whether nothing more will come
 * @param words what to say to a person; empty where there is nothing to say
 */
public record SectionState(boolean ready, boolean isFinal, String words) {
  /** All are there. */
  public static final SectionState READY = new SectionState(true, true, "");

  /**
   * A section's polars are being computed.
   *
   * @param section its name
   * @param share done so far, 0 to 1 [1]
   */
  public static SectionState underWay(String section, double share) {
    return new SectionState(
        false,
        false,
        "The flow about "
            + section
            + " is being computed ("
            + Math.round(100 * share)
            + " %). Until then these numbers stand on a fit to measured sections.");
  }

  /**
   * A section's polars cannot be computed.
   *
   * @param section its name
   */
  public static SectionState impossible(String section) {
    return new SectionState(
        false,
        true,
        "The flow about "
            + section
            + " cannot be computed. These numbers stand on a fit to measured sections.");
  }

  /** As the page reads it. */
  public String json() {
    return JsonStream.text(
        json -> json.flag("ready", ready).flag("final", isFinal).text("words", words));
  }
}
