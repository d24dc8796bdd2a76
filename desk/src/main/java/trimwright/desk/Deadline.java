package trimwright.desk;

import java.time.Duration;
import trimwright.fitting.fleet.Allowance;

/** Time until a moment, or until somebody stops. */
final class Deadline implements Allowance {
  private final long end;
  private final SharedProgress progress;

  Deadline(Duration time, SharedProgress progress) {
    end = System.nanoTime() + time.toNanos();
    this.progress = progress;
  }

  @Override
  public Duration left() {
    return progress.isStopped() ? Duration.ZERO : Duration.ofNanos(end - System.nanoTime());
  }
}
