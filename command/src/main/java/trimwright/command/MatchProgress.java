package trimwright.command;

import trimwright.fitting.match.Progress;

/** Says on standard error how far a match is; stops with the thread that made it. */
final class MatchProgress implements Progress {
  private static final int PARTS = 10;

  private final Console console;
  private final Thread whoever = Thread.currentThread();
  private Stage stage;
  private int said;

  MatchProgress(Console console) {
    this.console = console;
  }

  @Override
  public synchronized void at(Stage at, int done, int all) {
    if (at != stage) {
      stage = at;
      said = 0;
    }
    int part = all == 0 ? PARTS : PARTS * done / all;
    if (part > said) {
      said = part;
      console.err().println(words(at) + ": " + done + " of " + all);
      console.err().flush();
    }
  }

  private static String words(Stage stage) {
    return switch (stage) {
      case SCREEN -> "Pairs of wings looked through by tables";
      case CONFIRM -> "Setups solved in full, at most";
      case ROBUST -> "Bands, weights and waters of setups";
    };
  }

  @Override
  public boolean isStopped() {
    return whoever.isInterrupted();
  }
}
