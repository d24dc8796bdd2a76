package trimwright.command;

import trimwright.desk.SharedProgress;

/** Says on standard error how far a choice for many riders is; stops with its thread. */
final class RidersProgress implements SharedProgress {
  private final Console console;
  private final Thread whoever = Thread.currentThread();

  RidersProgress(Console console) {
    this.console = console;
  }

  @Override
  public void riders(int done, int all) {
    say("Riders for whom the stock was looked through: " + done + " of " + all);
  }

  @Override
  public void confirmed(int done) {
    say("Cards solved in full so far: " + done);
  }

  @Override
  public void found(String words) {
    say(words);
  }

  private synchronized void say(String words) {
    console.err().println(words);
    console.err().flush();
  }

  @Override
  public boolean isStopped() {
    return whoever.isInterrupted();
  }
}
