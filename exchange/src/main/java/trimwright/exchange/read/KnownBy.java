package trimwright.exchange.read;

/** How a part's geometry is known, from the least sure to the surest. */
public enum KnownBy {
  /** From a spec sheet. */
  SHEET("sheet"),
  /** Measured with a tape. */
  TAPE("tape"),
  /** Measured with a calliper. */
  CALLIPER("calliper"),
  /** From a three-dimensional scan. */
  SCAN("scan");

  private final String code;

  KnownBy(String code) {
    this.code = code;
  }

  /** The word in a case file. */
  public String code() {
    return code;
  }
}
