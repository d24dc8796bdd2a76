package trimwright.command;

/** Says on standard error how far polars are: results stay alone on their own. */
final class PolarProgress {
  private final Console console;
  private int said;
  private String of = "";

  PolarProgress(Console console) {
    this.console = console;
  }

  /** A line for every eighth of the way. */
  void say(String section, double share) {
    if (!section.equals(of)) {
      of = section;
      said = 0;
    }
    int eighths = (int) Math.floor(8 * share + 1e-9);
    if (eighths > said) {
      said = eighths;
      console
          .err()
          .println("Computing polars of " + section + ": " + Math.round(100 * share) + " %");
      console.err().flush();
    }
  }

  /** What the reader should know about where polars came from. */
  void remark(String section, String remark) {
    console.err().println("Polars of " + section + ": " + remark + ".");
  }
}
