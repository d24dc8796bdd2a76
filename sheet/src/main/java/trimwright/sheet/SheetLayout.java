package trimwright.sheet;

/**
 * Sizes of the page's columns, pictures and letters.
 *
 * @param paper size of the paper
 * @param step 0 the airiest, {@link #STEPS} - 1 the densest
 * @param codeWidth side of the code [mm], 0 without one
 */
public record SheetLayout(Paper paper, int step, double codeWidth) {
  /** How many densities there are. */
  static final int STEPS = 24;

  /** From this step on the explanation is cut, for the letters become no smaller. */
  private static final int CUT_FROM = 13;

  /** White around the page [mm]: every printer reaches so far. */
  private static final double MARGIN = 10;

  /** Between two columns [mm]. */
  private static final double GAP = 5;

  /** Letters of the airiest and of the densest page [pt]. */
  private static final double LARGEST = 10;

  private static final double SMALLEST = 7;

  /** Between the airiest page, 0, and the densest, 1. */
  private double tight() {
    return Math.min(1, (double) step / (CUT_FROM - 1));
  }

  /** How many sentences of the explanation there is no room for. */
  int sentencesCut() {
    return Math.max(0, step - CUT_FROM + 1);
  }

  /** The page's style sheet head: paper, margin and letters. */
  public String pageStyle() {
    return "@page{size:"
        + paper.cssName()
        + ";margin:"
        + MARGIN
        + "mm;}body{font-size:"
        + (LARGEST - (LARGEST - SMALLEST) * tight())
        + "pt;}";
  }

  /** Width between the margins [mm]. */
  public double width() {
    return paper.width() - 2 * MARGIN;
  }

  /** Width of one of the large settings [mm]. */
  public double settingWidth() {
    // A hair less, or rounding would push the last one into the next line
    return (width() - 3 * 3) / 4 - 0.05;
  }

  double shimWidth() {
    return 0.34 * width();
  }

  /** Of the shim's column [mm]. */
  public double shimColumn() {
    return shimWidth();
  }

  double deckWidth() {
    return width() - shimWidth() - GAP;
  }

  /** Of the deck's column [mm]. */
  public double deckColumn() {
    return deckWidth();
  }

  /** Height of the deck's picture [mm]. */
  double deckHeight() {
    return 58 - 24 * tight();
  }

  /** Height of the shim's picture [mm], less by what its words need. */
  double shimHeight() {
    return deckHeight() - 13;
  }

  double rulerHeight() {
    return 14.5;
  }

  double sideWidth() {
    return 0.58 * width();
  }

  /** Of the side view's column [mm]. */
  public double sideColumn() {
    return sideWidth();
  }

  /** Of the speeds' column [mm]. */
  public double speedsColumn() {
    return width() - sideWidth() - GAP;
  }

  double sideHeight() {
    return 66 - 20 * tight();
  }

  /** Of each of the two columns of words [mm]. */
  public double wordsColumn() {
    return (width() - codeColumn() - 2 * GAP) / 2 - 0.05;
  }

  /** Of the code's column [mm]; room for its words where there is no code. */
  public double codeColumn() {
    return codeWidth > 0 ? codeWidth : 34;
  }

  /** Between two columns [mm]. */
  public double gap() {
    return GAP;
  }
}
