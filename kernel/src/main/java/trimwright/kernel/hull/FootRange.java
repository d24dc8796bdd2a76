package trimwright.kernel.hull;

/**
 * A stretch of the deck for the foot-pressure centre.
 *
 * @param from its aft end, ahead of the mast's axis [m]
 * @param to its forward end [m], not below {@code from}
 */
public record FootRange(double from, double to) {
  /** Whether another stretch has a part of it. */
  public boolean meets(FootRange other) {
    return from <= other.to && other.from <= to;
  }
}
