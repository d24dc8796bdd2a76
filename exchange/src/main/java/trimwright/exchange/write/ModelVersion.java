package trimwright.exchange.write;

/** The version of the model that computed a document. */
public final class ModelVersion {
  /**
   * Goes up whenever the same case gives other numbers; the change log's "Numbers changed" says
   * which and why.
   */
  public static final String TEXT = "0.1.0";

  private ModelVersion() {}
}
