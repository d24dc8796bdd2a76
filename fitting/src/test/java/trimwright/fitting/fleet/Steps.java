package trimwright.fitting.fleet;

import java.time.Duration;

/** An allowance of so many questions, the same at every run. */
final class Steps implements Allowance {
  private int steps;

  Steps(int steps) {
    this.steps = steps;
  }

  @Override
  public Duration left() {
    return steps-- > 0 ? LONGEST : Duration.ZERO;
  }
}
