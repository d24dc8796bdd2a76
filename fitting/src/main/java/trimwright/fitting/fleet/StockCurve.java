package trimwright.fitting.fleet;

import java.util.List;

/**
 * Persons served against money.
 *
 * @param points from what is served with nothing bought upwards, each with more persons and more
 *     money than the one before
 * @param complete whether it goes up to the last person whom any money serves; not where time ran
 *     out
 */
public record StockCurve(List<StockPoint> points, boolean complete) {
  /** Copies the points. */
  public StockCurve {
    points = List.copyOf(points);
  }
}
