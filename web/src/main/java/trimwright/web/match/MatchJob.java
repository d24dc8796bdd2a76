package trimwright.web.match;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Future;
import java.util.function.LongSupplier;
import trimwright.exchange.words.MatchProgressWords;
import trimwright.fitting.match.Progress;

/**
 * One look through a stock, from the question until its answer is no longer wanted. Its numbers are
 * written by whoever works and read by whoever asks.
 */
final class MatchJob implements Progress {
  /** Where a job is. */
  enum State {
    /** Others come first. */
    WAITING,
    /** It works. */
    RUNNING,
    /** It has its answer. */
    DONE,
    /** Somebody stopped it, or nobody asked for it. */
    STOPPED,
    /** A fault inside. */
    FAILED
  }

  private final String id;
  private final String visitor;
  private final LongSupplier clock;
  private final long patience;

  private volatile long lastAsked;
  private volatile boolean isStopped;
  private State state = State.WAITING;
  private String section = "";
  private MatchProgressWords progress = MatchProgressWords.NONE;
  private String answer = "";
  private String reference = "";
  private Future<?> future;

  /**
   * A job that nobody works at yet.
   *
   * @param id its name, which nobody guesses
   * @param visitor whose it is
   * @param clock [ns]
   * @param patience how long it goes on when nobody asks [ns]
   */
  MatchJob(String id, String visitor, LongSupplier clock, long patience) {
    this.id = id;
    this.visitor = visitor;
    this.clock = clock;
    this.patience = patience;
    lastAsked = clock.getAsLong();
  }

  String id() {
    return id;
  }

  String visitor() {
    return visitor;
  }

  synchronized void set(Future<?> work) {
    future = work;
    if (isStopped) {
      work.cancel(true);
    }
  }

  /** Notes that somebody still wants it. */
  void noteAsked() {
    lastAsked = clock.getAsLong();
  }

  /** How long nobody has asked [ns]. */
  long unasked() {
    return clock.getAsLong() - lastAsked;
  }

  @Override
  public synchronized void at(Stage stage, int done, int all) {
    MatchProgressWords p = progress;
    section = "";
    // Several workers tell: the number that came last need not be the largest.
    progress =
        switch (stage) {
          case SCREEN ->
              new MatchProgressWords(
                  Math.max(done, p.pairs()), all, p.solved(), p.mostSolved(), 0, 0);
          case CONFIRM ->
              new MatchProgressWords(
                  p.pairs(), p.allPairs(), Math.max(done, p.solved()), all, 0, 0);
          case ROBUST ->
              new MatchProgressWords(
                  p.pairs(),
                  p.allPairs(),
                  p.solved(),
                  p.mostSolved(),
                  Math.max(done, p.varied()),
                  all);
        };
  }

  /**
   * Told how far the polars of a section are.
   *
   * @throws CancellationException if the job is not wanted any more
   */
  void atSection(String name, double share) {
    if (isStopped()) {
      throw new CancellationException("stopped");
    }
    synchronized (this) {
      section =
          "Working out the section " + name + ", once for all (" + Math.round(100 * share) + " %)";
    }
  }

  @Override
  public boolean isStopped() {
    return isStopped || unasked() > patience;
  }

  /** Calls it off, wherever it is; an answer that is there goes. */
  synchronized void stop() {
    isStopped = true;
    if (state != State.FAILED) {
      state = State.STOPPED;
    }
    answer = "";
    if (future != null) {
      future.cancel(true);
    }
  }

  /** Notes that somebody works at it; false where it is not wanted any more. */
  synchronized boolean begin() {
    if (isStopped()) {
      state = State.STOPPED;
      return false;
    }
    state = State.RUNNING;
    return true;
  }

  /** Takes the answer, unless it came too late. */
  synchronized void finish(String found) {
    if (!isStopped) {
      answer = found;
      state = State.DONE;
    }
  }

  synchronized void end() {
    state = State.STOPPED;
  }

  synchronized void fail(String number) {
    reference = number;
    state = State.FAILED;
  }

  synchronized State state() {
    return state;
  }

  /** The answer, where it is there. */
  synchronized Optional<String> findAnswer() {
    return state == State.DONE ? Optional.of(answer) : Optional.empty();
  }

  /** How much is done, 0 to 1. */
  synchronized double share() {
    return state == State.DONE ? 1 : progress.share();
  }

  /**
   * What a person reads.
   *
   * @param ahead how many others come first
   */
  synchronized String words(int ahead) {
    return switch (state) {
      case WAITING ->
          ahead > 1
              ? ahead + " other looks through a stock come first."
              : "Another look through a stock comes first.";
      case RUNNING -> section.isEmpty() ? progress.text() : section;
      case DONE -> "Done.";
      case STOPPED -> "Stopped. Nothing of it was kept but finished tables of wings.";
      case FAILED ->
          "Something went wrong inside Trimwright; it is not your input's fault. Reference number "
              + reference
              + ".";
    };
  }
}
